/** The step that is due, in reverse, with what was done before it, what follows, and the keys. */

import type { JSX } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { sortie } from '../../board/board';
import { interrupt } from '../../board/interruption';
import { canGoBack, goBack, tick } from '../../board/stepping';
import { wallMs } from '../../board/time';
import type { Moment, Step, StepRow, Upcoming, Walk } from '../../core';
import { stopwatch, zulu } from '../../parts/format';
import { Key } from '../../parts/key/Key';
import { TickKey } from '../../parts/key/TickKey';
import { Cannot } from './Cannot';
import styles from './Due.module.css';
import { liveText } from './liveText';
import { Mark, stateWords } from './StepMark';
import { words } from './words.en';

/** How many held-back steps are shown; the others are counted. */
const HELD_SHOWN = 2;

/** How many steps that follow are shown. */
const NEXT_SHOWN = 3;

interface DueProps {
  readonly walk: Walk;
  readonly row: StepRow;
  readonly barrier: Step | Moment | null;
}

/** The due step and its keys. */
export function Due({ walk, row, barrier }: DueProps): JSX.Element {
  const [asking, setAsking] = useState(false);
  const { step } = row;
  const key = `${row.pass}/${step.id}/${row.state.kind}`;
  useEffect(() => setAsking(false), [key]);
  const item = liveText(step.item);
  return (
    <>
      <Before walk={walk} />
      <p class="spoken" role="status">
        {lastSpoken(walk.lastHandled)} {words.spokenDue(item, liveText(step.response))}
      </p>
      <div class={styles.due}>
        {barrier !== null && <p class={styles.flag}>{words.before(nameOf(barrier))}</p>}
        {row.state.kind === 'again' && <p class={styles.flag}>{words.again(whyAgain(row))}</p>}
        <p class={styles.step}>
          <strong class={styles.item}>{item}</strong>{' '}
          <span class={styles.response}>{liveText(step.response)}</span>
        </p>
        {step.note !== undefined && <p class={styles.note}>{liveText(step.note)}</p>}
        {step.kind === 'wait' && <Waiting expectS={step.expectS} />}
        <div class={styles.corner}>
          {walk.heldBack.length > 0 && (
            <span class={styles.heldCount}>{words.heldCount(walk.heldBack.length)}</span>
          )}
          <Key className={styles.small} disabled={!canGoBack()} onPress={() => interrupt()}>
            {words.away}
          </Key>
          <Key className={styles.small} onPress={() => setAsking(true)}>
            {words.cannot}
          </Key>
        </div>
      </div>
      <Next upcoming={walk.next} heldBack={walk.heldBack} blocked={barrier !== null} />
      <div class={styles.keys}>
        <Key moving disabled={!canGoBack()} onPress={goBack}>
          {words.back}
        </Key>
        <TickKey
          refusals={words.refused}
          moving
          step={key}
          // Before a barrier, and for what was held back already, there is no later.
          disabled={barrier !== null || step.kind === 'barrier'}
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
          <span class={styles.doneFace}>{step.kind === 'say' ? words.said : words.done}</span>
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

const nameOf = (barrier: Step | Moment) =>
  typeof barrier === 'string' ? words.moment[barrier].toLowerCase() : barrier.item.toLowerCase();

function whyAgain(row: StepRow): string {
  const name = row.state.kind === 'again' ? row.state.moved[0] : undefined;
  return (name && words.moved[name]) ?? words.movedOther;
}

/** Counts the seconds since the step before was done. */
function Waiting({ expectS }: { expectS: number | undefined }) {
  const since = sortie.value.run?.last?.at.wallMs ?? wallMs.value;
  return (
    <p class={styles.waiting}>
      {words.waited(stopwatch(wallMs.value - since))}
      {expectS !== undefined && `, ${words.expect(expectS)}`}
    </p>
  );
}

/** What was just done, for those who do not see it. */
function lastSpoken(row: StepRow | null): string {
  if (row === null) return '';
  const item = liveText(row.step.item);
  switch (row.state.kind) {
    case 'held':
      return words.spokenHeld(item);
    case 'cannot':
      return words.spokenCannot(item);
    default:
      return words.spokenDone(item);
  }
}

/** The moment that was stamped last, where no step was done since. */
function lastMoment(): string {
  const last = sortie.value.stamps.at(-1);
  return last === undefined
    ? words.nothingYet
    : words.stamped(words.moment[last.what], zulu(last.at.sortieMs));
}

/** What was just done, and what is held back. */
function Before({ walk }: { walk: Walk }) {
  const { lastHandled, heldBack } = walk;
  const more = heldBack.length - HELD_SHOWN;
  const shown = [
    ...(lastHandled !== null && lastHandled.state.kind !== 'held' ? [lastHandled] : []),
    ...heldBack.slice(0, HELD_SHOWN),
  ];
  return (
    <ul class={styles.before} aria-label={words.lastDone}>
      {shown.length === 0 && <li class={styles.beforeRow}>{lastMoment()}</li>}
      {shown.map((row) => (
        <li key={row.step.id} class={styles.beforeRow}>
          <Mark row={row} />
          <span class={styles.beforeItem}>{liveText(row.step.item)}</span>
          {row.state.kind === 'held' ? (
            <span class={styles.heldState}>
              <span class={styles.held}>{words.heldBack}</span>
              <Key
                className={styles.now}
                label={`${words.doneNow}: ${liveText(row.step.item)}`}
                onPress={() => tick(row, 'done')}
              >
                {words.doneNow}
              </Key>
            </span>
          ) : (
            <span class={styles.beforeState}>{stateWords(row)}</span>
          )}
        </li>
      ))}
      {more > 0 && <li class={`${styles.beforeRow} ${styles.more}`}>{words.moreHeld(more)}</li>}
    </ul>
  );
}

interface NextProps {
  readonly upcoming: readonly Upcoming[];
  readonly heldBack: readonly StepRow[];
  readonly blocked: boolean;
}

/** The next steps; a barrier says what stands before it. */
function Next({ upcoming, heldBack, blocked }: NextProps) {
  const first = heldBack[0];
  return (
    <ol class={styles.next} aria-label={words.next}>
      {upcoming.slice(0, NEXT_SHOWN).map((entry) => {
        if (entry.kind === 'moment') {
          return (
            <li key={entry.moment} class={`${styles.nextRow} ${styles.barrier}`}>
              <span>{words.moment[entry.moment]}</span>
            </li>
          );
        }
        const { step } = entry.row;
        const barrier = step.kind === 'barrier';
        return (
          <li key={step.id} class={`${styles.nextRow} ${barrier ? styles.barrier : ''}`}>
            <span>{liveText(step.item)}</span>
            <b>
              {barrier && first !== undefined && !blocked
                ? words.barrierFirst(liveText(first.step.item))
                : liveText(step.response)}
            </b>
          </li>
        );
      })}
    </ol>
  );
}
