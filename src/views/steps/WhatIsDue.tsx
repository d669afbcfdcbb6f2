/** The due step itself: what, how, by when, and why again. */

import type { ComponentChildren, JSX } from 'preact';
import { day, sortie } from '../../board/board';
import { wallMs } from '../../board/flight/time';
import { callLang, stepsLang, stepsLanguage, withinSentence } from '../../board/language';
import {
  type FactName,
  type LiveName,
  type Moment,
  rowsOf,
  type Step,
  type StepRow,
  type Walk,
} from '../../core';
import { pageLanguage } from '../../device/pageLanguage';
import { lasting, stopwatch, wholeNumber } from '../../parts/format';
import { marked } from '../../parts/marked';
import { QuotedPassage, quoted } from '../../parts/quoted/Quoted';
import { stepWords } from '../../parts/stepTextWords';
import { mass } from '../../parts/units';
import styles from './Due.module.css';
import { callText, liveNumber, liveText } from './liveText';
import { becameWords } from './StepMark';
import { words } from './words';

interface WhatIsDueProps {
  readonly walk: Walk;
  readonly row: StepRow;
  readonly barrier: Step | Moment | null;
  /** A live number of the step that isn't known. */
  readonly missing: LiveName | null;
  /** A list is being walked, not the phases. */
  readonly inList: boolean;
  /** If what takes the corner leaves no room for the timers on a phone. */
  readonly className: string | undefined;
  /** The small keys in the corner. */
  readonly children: ComponentChildren;
}

/** The block in reverse. */
export function WhatIsDue(props: WhatIsDueProps): JSX.Element {
  const { walk, row, barrier, missing, inList, className, children } = props;
  const { step } = row;
  return (
    <div class={`${styles.due} ${className ?? ''}`}>
      {barrier !== null && <p class={styles.flag}>{beforeWords(barrier)}</p>}
      {row.state.kind === 'again' && <p class={styles.flag}>{whyAgain(walk, row)}</p>}
      {missing !== null && <p class={styles.flag}>{stepWords.notKnown(stepWords.live[missing])}</p>}
      <p class={styles.step} lang={stepsLang()}>
        <strong class={styles.item}>{liveText(step.item)}</strong>{' '}
        <span class={styles.response}>{liveText(step.response)}</span>
      </p>
      {step.kind === 'gate' && <p class={styles.gate}>{gateWords(step)}</p>}
      {step.call !== undefined && (
        <p class={styles.call} lang={callLang()}>
          {quoted(callText(step.call))}
        </p>
      )}
      {step.note !== undefined && (
        <QuotedPassage class={styles.note} lang={stepsLang()}>
          {liveText(step.note)}
        </QuotedPassage>
      )}
      {step.kind === 'wait' && <Waiting expectS={step.expectS} />}
      <Timers
        walk={walk}
        withClocks={inList || walk.phase !== 'climb'}
        withStep={step.kind !== 'wait'}
      />
      <div class={styles.corner}>{children}</div>
    </div>
  );
}

const beforeWords = (barrier: Step | Moment) =>
  typeof barrier === 'string'
    ? words.before(withinSentence(words.moment[barrier], pageLanguage()))
    : marked(stepsLang(), words.before, withinSentence(barrier.item, stepsLanguage()));

/** Why a step that was done, or not needed, is due; and how many others are. */
function whyAgain(walk: Walk, row: StepRow): string {
  if (row.state.kind !== 'again') return '';
  const { tick, moved } = row.state;
  const why = moved.length === 0 ? words.undone : whyMoved(moved[0]);
  const others = rowsOf(walk).filter(({ state }) => state.kind === 'again').length - 1;
  const said = 'outcome' in tick ? words.again(why) : words.neededNow(why);
  return others > 0 ? words.andOthers(said, others) : said;
}

function whyMoved(name: FactName | undefined): string {
  if (name === undefined) return words.movedOther;
  const value = day.steps()?.facts[name] ?? null;
  return words.moved[name] ?? becameWords(name, value) ?? words.movedOther;
}

function gateWords({ gate, gateFt }: Step): string {
  if (gateFt !== undefined) return words.gateFt(wholeNumber(gateFt));
  return gate === undefined ? '' : words.gateKt(liveNumber(gate));
}

/** When the last thing was done in this walk, ms of the device's clock. */
const lastMs = (): number | null => {
  const { run, list } = sortie.value;
  const at = list === null ? run?.last?.at : (list.last?.at ?? list.openedAt);
  return at?.wallMs ?? null;
};

/** Counts the seconds since the previous step was done. */
function Waiting({ expectS }: { expectS: number | undefined }) {
  const since = lastMs() ?? wallMs.value;
  return (
    <p class={styles.waiting}>
      {words.waited(stopwatch(wallMs.value - since))}
      {expectS !== undefined && `, ${words.expect(lasting(expectS))}`}
    </p>
  );
}

interface TimersProps {
  readonly walk: Walk;
  /** The climb has its own clock: the speeds over it, with the seconds left. */
  readonly withClocks: boolean;
  readonly withStep: boolean;
}

/** How long the phase and the step have taken so far; in the air, the fuel to turn back at. */
function Timers({ walk, withClocks, withStep }: TimersProps) {
  const { bingoKg } = day.inputs();
  const isAloft = walk.phase === 'climb' || walk.phase === 'recovery';
  const bingo = isAloft && bingoKg !== null ? <span>{words.bingo(mass(bingoKg))}</span> : null;
  const since = lastMs();
  const took = day.times();
  if (!withClocks || since === null || took === null) {
    return bingo && <p class={styles.timers}>{bingo}</p>;
  }
  const goneMs = wallMs.value - since;
  const inPhase = sortie.value.list === null && took.lastMs !== null;
  return (
    <p class={styles.timers}>
      {inPhase && (
        <span>
          <span class={styles.timed}>{words.phase[walk.phase]} </span>
          {stopwatch((took.ms.get(walk.phase) ?? 0) + goneMs)}
        </span>
      )}
      {withStep && (
        <span class={styles.stepTimer}>
          {words.thisStep} {stopwatch(goneMs)}
        </span>
      )}
      {bingo}
    </p>
  );
}
