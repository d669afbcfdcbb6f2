/** The face of the card in the steps: the due step or moment. */

import type { ComponentChildren } from 'preact';
import { day, sortie } from '../../board/board';
import { cautions } from '../../board/flight/cautions';
import { wallMs } from '../../board/flight/time';
import { callLang, stepsLang, stepsLanguage, withinSentence } from '../../board/language';
import {
  canGoBack,
  doIt,
  flyAgain,
  goAround,
  goBack,
  offered,
  tick,
} from '../../board/steps/stepping';
import { unproceduredAircraft } from '../../board/writing/firstProcedure';
import {
  handledAs,
  type LiveName,
  type Main,
  type Moment,
  type Offers,
  type Step,
  type StepRow,
  type StepsBrief,
  type Upcoming,
  type Walk,
  wantsHold,
} from '../../core';
import { pageLanguage } from '../../device/pageLanguage';
import { ago } from '../../parts/ago';
import { lasting, stopwatch, wholeNumber } from '../../parts/format';
import { joined, marked, type Worded, worded } from '../../parts/marked';
import { momentWords, phaseWords } from '../../parts/procedure';
import { quoted } from '../../parts/quoted/Quoted';
import { stepWords } from '../../parts/stepTextWords';
import { cautionText } from '../../parts/verdict/cautionText';
import { words as verdictWords } from '../../parts/verdict/words';
import styles from './Card.module.css';
import { endWords, liveWords, number, radioText, read } from './edges';
import type { Face } from './face';
import { words } from './words';

/** A sentence in the page's words alone, and one that contains texts of the procedure. */
const ofPage = (text: string): Worded => ({ text, drawn: text });
const ofSteps = (sentence: (...texts: string[]) => string, ...texts: string[]): Worded =>
  worded(stepsLang(), sentence, ...texts);

const NO_LINE = ofPage('');

/** What all faces in the steps share. */
type Frame = Pick<Face, 'share' | 'head' | 'foot'>;

/** What is due over the whole screen; null before there is a procedure. */
export function stepFace(): Face | null {
  const brief = day.steps();
  const now = offered.value;
  if (brief === null || now === null) return null;
  const walk = brief.abnormal?.walk ?? brief.walk;
  const frame = frameOf(brief, walk);
  const { main } = now;
  switch (main.what) {
    case 'resume':
      return awayFace(frame, walk, main);
    case 'tick':
    case 'supply':
      return dueFace(frame, walk, main, now.putOff);
    case 'stamp':
      return momentFace(frame, main, now);
    case 'go-outside': {
      const shown = cautions.value.filter(({ stops }) => stops).map(cautionText);
      const [worst = NO_LINE, ...others] = shown;
      return mainFace(
        frame,
        main,
        verdictWords.stops,
        joined('. ', [worst, ...others]),
        verdictWords.goOn,
      );
    }
    case 'close-list': {
      const leads = leadsWords(main);
      return mainFace(frame, main, words.listEnd, ofPage(leads), leads);
    }
    case 'end-sortie':
      return mainFace(frame, main, words.end, NO_LINE, words.endIt);
  }
}

function frameOf({ abnormal }: StepsBrief, walk: Walk): Frame {
  const inPhase = walk.phases.filter(({ phase }) => abnormal !== null || phase === walk.phase);
  const count = (what: 'handled' | 'total') => inPhase.reduce((sum, one) => sum + one[what], 0);
  const [handled, total] = [count('handled'), count('total')];
  const title = abnormal?.list.title;
  const progress = (name: string) => words.progress(name, handled, total);
  return {
    share: total === 0 ? null : handled / total,
    head: [
      title === undefined ? progress(phaseWords[walk.phase]) : marked(stepsLang(), progress, title),
      endWords(),
      liveWords(walk),
    ],
    foot: [
      nextWords(walk.next[0]),
      walk.heldBack.length === 0 ? '' : words.held(walk.heldBack.length),
    ],
  };
}

function nextWords(next: Upcoming | undefined): ComponentChildren {
  if (next === undefined) return '';
  if (next.kind === 'moment') return words.followsMoment(momentWords[next.moment]);
  const { item, response } = next.row.step;
  return marked(stepsLang(), words.follows, read(item), read(response));
}

/** Undoes the last thing; undefined if there is none. */
export const undoLast = () => (canGoBack() ? goBack : undefined);

function dueFace(
  frame: Frame,
  walk: Walk,
  main: Extract<Main, { what: 'tick' | 'supply' }>,
  putOff: StepRow | null,
): Face {
  const { row, barrier } = main;
  const { step, state } = row;
  const critical = wantsHold(main, true);
  const done = () => doIt(main);
  const isHeld = putOff !== null;
  const hold = putOff === null ? undefined : () => tick(putOff, 'held');
  const across = undoLast();
  const [item, response] = [read(step.item), read(step.response)];
  const missing = main.what === 'supply' ? main.unknown : main.without;
  const lines = linesOf(walk, row, barrier, missing);
  const what = doneWords(step);
  const opens = main.what === 'supply' ? stepWords.supply[main.at] : null;
  return {
    ...frame,
    name: `${sortie.value.list?.id ?? ''}/${row.pass}/${step.id}/${state.kind}/${main.what}`,
    drawn: (
      <>
        {lines.before.text !== '' && <span class={styles.flag}>{lines.before.drawn}</span>}
        <strong class={styles.item} lang={stepsLang()}>
          {item}
        </strong>{' '}
        <span class={styles.response} lang={stepsLang()}>
          {response}
        </span>
        {lines.call !== '' && (
          <span class={styles.aside} lang={callLang()}>
            {lines.call}
          </span>
        )}
        {lines.after.map((line) => (
          <span key={line} class={styles.aside}>
            {line}
          </span>
        ))}
      </>
    ),
    // A wait's counting seconds don't cause a new measurement.
    text: [lines.before.text, item, response, lines.call, ...lines.after]
      .join(' ')
      .replace(/\d:\d\d/, ''),
    hint:
      opens !== null
        ? words.hints.tap(withinSentence(opens, pageLanguage()))
        : critical
          ? words.hints[isHeld ? 'critical' : 'criticalBarrier']
          : words.hints[isHeld ? 'step' : 'barrier'],
    label: marked(stepsLang(), (text) => words.does(opens ?? what, text), `${item}, ${response}`),
    spoken: (
      <>
        {lastSpoken(walk.lastHandled)} {marked(stepsLang(), words.due, item, response)}{' '}
        {missing !== null && stepWords.notKnown(stepWords.live[missing])}
      </>
    ),
    critical,
    held: critical ? words.doneNow : isHeld ? words.heldNow : '',
    does: {
      ...(critical ? { hold: done } : { tap: done, ...(hold && { hold }) }),
      ...(hold && { down: hold }),
      ...(across && { across }),
    },
    keys: [
      { name: words.back, onPress: across },
      { name: words.holdBack, onPress: hold },
    ],
  };
}

const doneWords = ({ kind }: Step): string =>
  kind === 'say' ? words.said : kind === 'note' ? words.seen : words.done;

function linesOf(
  walk: Walk,
  { step, state }: StepRow,
  barrier: Step | Moment | null,
  missing: LiveName | null,
) {
  const before = [
    ...(missing === null ? [] : [ofPage(stepWords.notKnown(stepWords.live[missing]))]),
    ...(barrier === null ? [] : [heldBefore(barrier)]),
    ...(state.kind !== 'again'
      ? []
      : [ofPage('outcome' in state.tick ? words.doAgain : words.neededNow)]),
  ];
  const after = [
    ...(step.gateFt !== undefined ? [words.atFt(wholeNumber(step.gateFt))] : []),
    ...(step.gate !== undefined ? [words.byKt(number(step.gate))] : []),
    ...(step.kind === 'wait' ? [waitWords(walk, step)] : []),
  ];
  const call = step.call === undefined ? '' : quoted(radioText(step.call));
  return { before: joined('. ', before), call, after };
}

const heldBefore = (barrier: Step | Moment): Worded =>
  typeof barrier === 'string'
    ? ofPage(words.heldBefore(withinSentence(momentWords[barrier], pageLanguage())))
    : ofSteps(words.heldBefore, withinSentence(barrier.item, stepsLanguage()));

/** How long the wait has lasted. */
function waitWords(_walk: Walk, { expectS }: Step): string {
  const { run, list } = sortie.value;
  const at = list === null ? run?.last?.at : (list.last?.at ?? list.openedAt);
  const waited = words.waited(stopwatch(wallMs.value - (at?.wallMs ?? wallMs.value)));
  return expectS === undefined ? waited : `${waited}, ${words.expect(lasting(expectS))}`;
}

/** What was just done, for those who can't see it. */
function lastSpoken(row: StepRow | null): ComponentChildren {
  if (row === null) return '';
  const { kind } = row.state;
  const sentence =
    kind === 'held' ? words.spokenHeld : kind === 'cannot' ? words.spokenCannot : words.spokenDone;
  return marked(stepsLang(), sentence, read(row.step.item));
}

/** A face that is pressed once, with a line under it. */
function mainFace(
  frame: Frame,
  main: Main,
  title: string,
  line: Worded,
  what: string,
  more: Face['keys'] = [],
): Face {
  const across = undoLast();
  const critical = wantsHold(main, true);
  const drawn: ComponentChildren = (
    <>
      <strong class={styles.item}>{title}</strong>
      {line.text !== '' && <span class={styles.aside}>{line.drawn}</span>}
    </>
  );
  return {
    ...frame,
    name: `${title}/${what}/${sortie.value.run?.passes.roll ?? 1}`,
    drawn,
    text: `${title} ${line.text}`,
    hint: words.hints[critical ? 'hold' : 'tap'](withinSentence(what, pageLanguage())),
    label: what,
    spoken: (
      <>
        {title}. {line.drawn}
      </>
    ),
    critical,
    held: critical ? words.doneNow : '',
    does: { [critical ? 'hold' : 'tap']: () => doIt(main), ...(across && { across }) },
    keys: [{ name: words.back, onPress: across }, ...more],
  };
}

/** Releasing the brakes, and having landed; the ladder between them is no face. */
function momentFace(
  frame: Frame,
  main: Extract<Main, { what: 'stamp' }>,
  { goAround: mayGoAround, again }: Offers,
): Face {
  if (main.moment === 'landed') {
    const touchAndGo = () => flyAgain('touch-and-go');
    return mainFace(frame, main, words.landed, NO_LINE, words.landed, [
      { name: words.goAround, onPress: mayGoAround ? goAround : undefined },
      { name: words.touchAndGo, onPress: again.includes('touch-and-go') ? touchAndGo : undefined },
    ]);
  }
  const tied = main.tied.map(({ step }) => `${read(step.item)}, ${read(step.response)}`);
  const line = joined('. ', [
    ...(day.wind().using === null ? [ofPage(words.noEnd)] : []),
    ...(tied.length === 0 ? [] : [ofSteps((steps) => steps, tied.join('; '))]),
  ]);
  return mainFace(frame, main, words.released, line, words.released);
}

function leadsWords({ leadsTo, back }: Extract<Main, { what: 'close-list' }>): string {
  if (leadsTo === 'return') return words.returns;
  if (leadsTo === 'end') return words.endIt;
  const name = phaseWords[leadsTo.phase];
  return back ? words.leads(name) : words.leadsOn(name);
}

/** The pilot was called away: the last thing done, and what is due. */
function awayFace(
  frame: Frame,
  { lastHandled, position }: Walk,
  main: Extract<Main, { what: 'resume' }>,
): Face {
  const due = position.kind === 'step' ? position.row.step : null;
  const line = joined(' ', [
    ...(lastHandled === null
      ? []
      : [ofSteps(words.last[handledAs(lastHandled)], read(lastHandled.step.item))]),
    ...(due === null ? [] : [ofSteps(words.due, read(due.item), read(due.response))]),
  ]);
  const left = words.left(ago(wallMs.value - main.left.wallMs));
  return { ...mainFace(frame, main, left, line, words.goOn), name: 'away' };
}

/** Before there is a procedure. */
export function noFace(): Face {
  const without = unproceduredAircraft.value;
  const line =
    without !== null
      ? words.without(without.name)
      : sortie.value.inputs.aircraft === null
        ? words.nothing
        : words.loading;
  return {
    name: 'none',
    share: null,
    head: ['', endWords(), ''],
    drawn: line,
    text: line,
    foot: ['', ''],
    hint: '',
    label: line,
    spoken: line,
    critical: false,
    held: '',
    does: {},
    keys: [],
  };
}
