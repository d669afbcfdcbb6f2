/** The due step, in reverse, with what was done before it, what follows, and the keys. */

import type { ComponentChildren, JSX } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { stepsLang } from '../../board/language';
import { openCard, wasJustClosed } from '../../board/steps/card';
import { interrupt } from '../../board/steps/interruption';
import { doIt, flyAgain, goAround, offered, tick } from '../../board/steps/stepping';
import { type Main, type Step, type StepRow, type Walk, wantsHold } from '../../core';
import { CardOpener } from '../../parts/card/CardOpener';
import { Key } from '../../parts/key/Key';
import { TickKey } from '../../parts/key/TickKey';
import { marked } from '../../parts/marked';
import { stepWords } from '../../parts/stepTextWords';
import { BackKey } from './BackKey';
import { Before } from './Before';
import { CannotDo } from './Cannot';
import styles from './Due.module.css';
import { liveText } from './liveText';
import { Next } from './Next';
import { WhatIsDue } from './WhatIsDue';
import { words } from './words';

interface DueProps {
  readonly walk: Walk;
  readonly main: Extract<Main, { what: 'tick' | 'supply' }>;
  /** A list is being walked, not the phases. */
  readonly inList: boolean;
}

/** The due step and its keys. */
export function Due({ walk, main, inList }: DueProps): JSX.Element {
  const [asking, setAsking] = useState(false);
  const { row, barrier } = main;
  const missing = main.what === 'supply' ? main.unknown : main.without;
  const { step } = row;
  const now = offered.value;
  const putOff = now?.putOff ?? null;
  const key = `${row.pass}/${step.id}/${row.state.kind}/${main.what}`;
  useEffect(() => setAsking(false), [key]);
  const item = liveText(step.item);
  const isHeld = wantsHold(main, false);
  return (
    <>
      <Before walk={walk} />
      <p class="spoken" role="status">
        {lastSpoken(walk.lastHandled)}{' '}
        {marked(stepsLang(), words.spokenDue, item, liveText(step.response))}{' '}
        {missing !== null && stepWords.notKnown(stepWords.live[missing])}
      </p>
      <WhatIsDue
        walk={walk}
        row={row}
        barrier={barrier}
        missing={missing}
        inList={inList}
        className={cornerClass(walk, inList)}
      >
        {walk.heldBack.length > 0 && (
          <span class={styles.heldCount}>{words.heldCount(walk.heldBack.length)}</span>
        )}
        <CardOpener
          name={words.bigCard}
          className={styles.small}
          wasJustClosed={wasJustClosed}
          onOpen={() => openCard('steps')}
        />
        {!inList && <PhaseKey />}
        <Key
          className={styles.small}
          disabled={now?.cannot == null}
          onPress={() => setAsking(true)}
        >
          {words.cannot}
        </Key>
      </WhatIsDue>
      <Next upcoming={walk.next} heldBack={walk.heldBack} blocked={barrier !== null} />
      <div class={styles.keys}>
        <BackKey />
        <TickKey
          refusals={words.refused}
          moving
          step={key}
          disabled={putOff === null}
          onPress={() => putOff && tick(putOff, 'held')}
        >
          {words.hold}
        </TickKey>
        <TickKey
          refusals={words.refused}
          look="pick"
          moving
          step={key}
          hold={isHeld}
          holdHint={words.holdHint}
          onPress={() => doIt(main)}
        >
          {main.what === 'supply' ? (
            stepWords.supply[main.at]
          ) : (
            <>
              <span class={styles.doneFace}>{doneWords(step)}</span>
              {isHeld && <span class={styles.doneHint}>{words.holdTheKey}</span>}
            </>
          )}
        </TickKey>
      </div>
      {asking && (
        <CannotDo
          item={item}
          onClose={() => setAsking(false)}
          onReason={(why, lasting) => {
            setAsking(false);
            tick(row, 'cannot', why, lasting);
          }}
        />
      )}
    </>
  );
}

const doneWords = ({ kind }: Step) =>
  kind === 'say' ? words.said : kind === 'note' ? words.seen : words.done;

/** Which of the wider things takes the corner, where a phone has its timers. */
function cornerClass(walk: Walk, inList: boolean): string | undefined {
  if (!inList && offered.value?.again.includes('take-off')) return styles.landed;
  return walk.heldBack.length > 0 ? styles.counted : undefined;
}

/** On the approach nobody is called away, and after landing one may take off again. */
function PhaseKey() {
  const now = offered.value;
  if (now?.goAround) {
    return (
      <Key className={styles.small} onPress={goAround}>
        {words.goAround}
      </Key>
    );
  }
  return now?.again.includes('take-off') ? (
    <Key className={styles.small} onPress={() => flyAgain('take-off')}>
      {words.takeOffAgain}
    </Key>
  ) : (
    <Key className={styles.small} disabled={!now?.interrupt} onPress={() => interrupt()}>
      {words.away}
    </Key>
  );
}

/** What was just done, for those who can't see it. */
function lastSpoken(row: StepRow | null): ComponentChildren {
  if (row === null) return '';
  const said = (sentence: (item: string) => string) =>
    marked(stepsLang(), sentence, liveText(row.step.item));
  switch (row.state.kind) {
    case 'held':
      return said(words.spokenHeld);
    case 'cannot':
      return said(words.spokenCannot);
    default:
      return said(words.spokenDone);
  }
}
