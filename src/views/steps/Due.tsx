/** The step that is due, in reverse, with what was done before it, what follows, and the keys. */

import type { ComponentChildren, JSX } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { openCard, wasJustClosed } from '../../board/card';
import { interrupt } from '../../board/interruption';
import { stepsLang } from '../../board/language';
import { canGoBack, flyAgain, goAround, goBack, tick } from '../../board/stepping';
import type { Moment, Step, StepRow, Walk } from '../../core';
import { CardOpener } from '../../parts/card/CardOpener';
import { Key } from '../../parts/key/Key';
import { TickKey } from '../../parts/key/TickKey';
import { marked } from '../../parts/marked';
import { Before } from './Before';
import { Cannot } from './Cannot';
import styles from './Due.module.css';
import { liveText } from './liveText';
import { Next } from './Next';
import { WhatIsDue } from './WhatIsDue';
import { words } from './words';

interface DueProps {
  readonly walk: Walk;
  readonly row: StepRow;
  readonly barrier: Step | Moment | null;
  /** A list is walked, and not the phases. */
  readonly inList: boolean;
}

/** The due step and its keys. */
export function Due({ walk, row, barrier, inList }: DueProps): JSX.Element {
  const [asking, setAsking] = useState(false);
  const { step } = row;
  const key = `${row.pass}/${step.id}/${row.state.kind}`;
  useEffect(() => setAsking(false), [key]);
  const item = liveText(step.item);
  return (
    <>
      <Before walk={walk} />
      <p class="spoken" role="status">
        {lastSpoken(walk.lastHandled)}{' '}
        {marked(stepsLang(), words.spokenDue, item, liveText(step.response))}
      </p>
      <WhatIsDue
        walk={walk}
        row={row}
        barrier={barrier}
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
        {!inList && <PhaseKey walk={walk} />}
        <Key className={styles.small} onPress={() => setAsking(true)}>
          {words.cannot}
        </Key>
      </WhatIsDue>
      <Next upcoming={walk.next} heldBack={walk.heldBack} blocked={barrier !== null} />
      <div class={styles.keys}>
        <Key moving disabled={!canGoBack()} onPress={goBack}>
          {words.back}
        </Key>
        <TickKey
          refusals={words.refused}
          moving
          step={key}
          // Before a barrier, and for what was held back already, there is no later; a note asks for nothing.
          disabled={barrier !== null || step.kind === 'barrier' || step.kind === 'note'}
          onPress={() => tick(row, 'held')}
        >
          {words.hold}
        </TickKey>
        <TickKey
          refusals={words.refused}
          look="pick"
          moving
          step={key}
          hold={step.critical}
          holdHint={words.holdHint}
          onPress={() => tick(row, 'done')}
        >
          <span class={styles.doneFace}>{doneWords(step)}</span>
          {step.critical && <span class={styles.doneHint}>{words.holdTheKey}</span>}
        </TickKey>
      </div>
      {asking && (
        <Cannot
          item={item}
          onClose={() => setAsking(false)}
          onReason={(why) => {
            setAsking(false);
            tick(row, 'cannot', why);
          }}
        />
      )}
    </>
  );
}

const doneWords = ({ kind }: Step) =>
  kind === 'say' ? words.said : kind === 'note' ? words.seen : words.done;

const hasLanded = ({ phase, phases }: Walk) => phase === 'after' && phases.at(-1)?.handled === 0;

/** Which of the wider things stands in the corner, where the timers are on a phone. */
function cornerClass(walk: Walk, inList: boolean): string | undefined {
  if (!inList && hasLanded(walk)) return styles.landed;
  return walk.heldBack.length > 0 ? styles.counted : undefined;
}

/** On the approach nobody is called away, and after the landing one may take off again. */
function PhaseKey({ walk }: { walk: Walk }) {
  if (walk.phase === 'recovery') {
    return (
      <Key className={styles.small} onPress={goAround}>
        {words.goAround}
      </Key>
    );
  }
  return hasLanded(walk) ? (
    <Key className={styles.small} onPress={() => flyAgain('take-off')}>
      {words.takeOffAgain}
    </Key>
  ) : (
    <Key className={styles.small} disabled={!canGoBack()} onPress={() => interrupt()}>
      {words.away}
    </Key>
  );
}

/** What was just done, for those who do not see it. */
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
