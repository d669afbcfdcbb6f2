/**
 * The aircraft being made or edited: its draft, which outlives the window, its physics, which follows
 * from what was typed, and what it becomes.
 */

import type { ListedAircraft } from 'virtual:lapstrip-catalogue';
import { computed, effect, signal } from '@preact/signals';
import {
  type Aircraft,
  type AircraftClass,
  type AircraftEdit,
  aircraftChanges,
  type DocumentProblem,
  type Fit,
  type FitQuestion,
  fitQuestion,
  type Hash,
  type History,
  loadDocumentReader,
  newAircraft,
  type StarterWords,
  sameData,
} from '../../core';
import { pageLanguage } from '../../device/pageLanguage';
import { type FitOutcome, type Fitting, fitApart } from '../../exchange/fitApart';
import { listedAircraft, listedBy } from '../documents/documents';
import { NOT_READ } from '../documents/keptField';
import { deletedDocuments, keepOwn, keptBy } from '../documents/ownDocuments';
import { proceduresFor } from '../documents/procedures';
import { draftOf, faultsOf, loadCheck } from './draft';
import { firstFor, keepFirst } from './firstProcedure';

/** The draft that was saved as an aircraft: it isn't continued. */
let done: History<Aircraft, AircraftEdit> | null = null;

/** The name of the draft: the aircraft being edited, or a new one. */
const draftName = signal<Hash | 'new'>('new');

/** The name the device stores it under. */
const keptUnder = (name: string) => ` aircraft/${name}`;

const draft = draftOf<Aircraft, AircraftEdit>({
  changes: aircraftChanges,
  name: () => keptUnder(draftName.peek()),
  isDone: (history) => history === done,
});

/**
 * The aircraft as typed, null before it is loaded; whether there is something to undo or redo; whether
 * the draft will survive a reload.
 */
export const { document: typedAircraft, canUndo, canRedo, stays, undo, redo } = draft;

/** Changes it. Typing on in one box is one change. */
export const changeAircraft = (edit: AircraftEdit): void => draft.edit(edit, true);

/** Makes a change that stands alone. */
export const changeOnce = (edit: AircraftEdit): void => draft.edit(edit);

/** What has a say in its physics; nothing else starts a fit. */
const ofPhysics = ({
  engine,
  masses,
  limits,
  takeoff,
  climb,
  landing,
  handbook,
  performance,
}: Aircraft) => ({
  engine,
  masses,
  gearKt: limits.gearKt,
  takeoff: [takeoff.rotateKt, takeoff.liftOffKt, takeoff.runM],
  climb: climb.speedKt,
  landing,
  handbook,
  performance,
});

interface Asked {
  readonly question: FitQuestion;
  readonly about: ReturnType<typeof ofPhysics>;
}

let askedLast: Asked | null = null;

/** What is to be fitted; null without a table. The same object while nothing of it changes. */
const asked = computed((): Asked | null => {
  const aircraft = typedAircraft.value;
  const question = aircraft === null ? null : fitQuestion(aircraft);
  if (question === null) return null;
  const about = ofPhysics(question.aircraft);
  const isSame = askedLast !== null && sameData(askedLast.about, about);
  askedLast = isSame ? askedLast : { question, about };
  return askedLast;
});

/** How far a fit has come. */
export type FitState =
  | { readonly kind: 'none' }
  /** It starts when the typing pauses, or runs. */
  | { readonly kind: 'running' }
  | FitOutcome;

const outcome = signal<{ readonly of: Asked; readonly told: FitOutcome } | null>(null);

/** The fit of what is typed now. */
export const fitState = computed((): FitState => {
  if (asked.value === null) return { kind: 'none' };
  const { of, told } = outcome.value ?? { of: null, told: null };
  return told === null || of !== asked.value ? { kind: 'running' } : told;
});

/** A fit takes seconds: it starts once nothing was typed for this long, ms. */
const PAUSE_MS = 700;

const isOpen = signal(false);
let fitting: Fitting | null = null;
/** What its own physics was fitted to, when it was opened. */
let fittedBefore: Asked | null = null;

effect(() => {
  const now = asked.value;
  if (now === null || !isOpen.value || outcome.peek()?.of === now) return;
  const timer = setTimeout(() => void runFit(now), PAUSE_MS);
  return () => {
    clearTimeout(timer);
    fitting?.stop();
  };
});

async function runFit(of: Asked): Promise<void> {
  const { question } = of;
  const own = typedAircraft.peek()?.performance;
  const isFitted = of === fittedBefore && own !== undefined;
  const aircraft = isFitted ? { ...question.aircraft, performance: own } : question.aircraft;
  const begun = fitApart({ question: { ...question, aircraft }, isFitted });
  fitting = begun;
  const told = await begun.outcome;
  if (fitting === begun) fitting = null;
  // What was typed on since has its own fit.
  if (of === asked.peek()) outcome.value = { of, told };
}

/** Ends the fit that runs. */
export const stopFit = (): void => fitting?.stop();

/** Starts it again. */
export function startFit(): void {
  const now = asked.value;
  outcome.value = null;
  if (now !== null) void runFit(now);
}

/** The fit, if there is one. */
export const fitNow = computed((): Fit | null =>
  fitState.value.kind === 'fitted' ? fitState.value.fit : null,
);

/** The aircraft as it would be saved: what was typed, with the physics that follows. */
export const madeAircraft = computed((): Aircraft | null => {
  const typed = typedAircraft.value;
  if (typed === null) return null;
  const found = fitNow.value;
  if (found !== null) return { ...typed, performance: found.performance };
  // Without its table nothing says how it flies; what was started from another keeps its physics.
  const { performance: _, ...plain } = typed;
  return typed.madeFrom === undefined ? typed : plain;
});

/** What keeps it from being saved. */
export const madeFaults = computed(() => faultsOf(madeAircraft.value));

/** Starts an aircraft or editing one, or continues where that was left. Rejects if it isn't available. */
export async function openAircraft(of: Hash | null, stop: readonly string[]): Promise<void> {
  await loadCheck();
  isOpen.value = true;
  const name = of ?? 'new';
  const now = draft.history.peek();
  if (name === draftName.peek() && now !== null && now !== done) return;
  draft.close();
  draftName.value = name;
  const left = await draft.left(keptUnder(name));
  draft.open(
    left?.history ?? (of === null ? nothingMade('piston-single', stop) : await asKept(of)),
  );
  fittedBefore = left === null ? asked.value : null;
}

/** Nothing is fitted while nobody looks. */
export function leaveAircraft(): void {
  isOpen.value = false;
}

const nothingMade = (of: AircraftClass, stop: readonly string[]): Aircraft =>
  newAircraft(of, { language: pageLanguage(), stop });

async function asKept(of: Hash): Promise<Aircraft> {
  const listed = listedBy(of);
  if (listed?.kind !== 'aircraft') throw new Error('there is no such aircraft');
  return listed.load();
}

/** Starts from a class: what was typed already stays. */
export function startFromClass(of: AircraftClass, stop: readonly string[]): void {
  const now = typedAircraft.value;
  if (now === null) return;
  if (now.madeFrom !== undefined) changeOnce({ kind: 'class', to: of });
  else {
    const { name, code } = now;
    changeOnce({ kind: 'anew', aircraft: { ...nothingMade(of, stop), name, code } });
  }
}

/** Starts from an aircraft at hand, under the name typed so far. Rejects if it isn't available. */
export async function startFromAircraft(hash: Hash): Promise<void> {
  const from = await asKept(hash);
  const { name = '', code = '' } = typedAircraft.value ?? {};
  changeOnce({ kind: 'anew', aircraft: { ...from, name, code } });
}

/** Starts over: with nothing, or with the aircraft as it was. Can be undone. */
export function startAnew(stop: readonly string[]): void {
  const { start } = draft.history.value ?? {};
  if (start === undefined) return;
  const aircraft = isNew.value ? nothingMade('piston-single', stop) : start;
  changeOnce({ kind: 'anew', aircraft });
}

/** Whether it is a new one, and none that is being edited. */
export const isNew = computed(() => draftName.value === 'new');

/** Names it; a new one has its code from its name. */
export function nameAircraft(name: string): void {
  const code = isNew.value ? { code: name === '' ? '' : codeFor(name) } : {};
  changeAircraft({ kind: 'head', set: { name, ...code } });
}

const LONGEST_CODE = 24;

/** A code that no aircraft has or had, from a name. */
function codeFor(name: string): string {
  const plain = name
    .normalize('NFD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-+|-+$/g, '');
  const code = plain.length < 2 ? 'aircraft' : plain;
  const taken = new Set([
    ...listedAircraft.value.map((listed) => listed.code),
    ...deletedDocuments.value.map(({ content }) => Object(content).code),
  ]);
  for (let number = 1; ; number++) {
    const end = number === 1 ? '' : `-${number}`;
    const own = `${code.slice(0, LONGEST_CODE - end.length)}${end}`;
    if (!taken.has(own)) return own;
  }
}

/** What came of keeping an aircraft. */
export type KeptAircraft =
  | {
      readonly listed: ListedAircraft;
      /** A procedure was written for it, since it had none. */
      readonly isWritten: boolean;
      readonly problems: null;
    }
  | { readonly listed: null; readonly problems: readonly DocumentProblem[] };

const refused = (problems: readonly DocumentProblem[]): KeptAircraft => ({
  listed: null,
  problems,
});

/**
 * Saves the aircraft as one of the pilot's own, with a procedure if it has none: `words` and `named`
 * are its words and its name. Never rejects.
 */
export async function keepAircraft(
  words: StarterWords,
  named: (aircraft: string) => string,
): Promise<KeptAircraft> {
  try {
    const made = draft.history.value;
    const readDocument = await loadDocumentReader();
    const { document, problems } = readDocument(JSON.stringify(madeAircraft.value));
    if (document === null) return refused(problems);
    if (document.kind !== 'aircraft') return refused(NOT_READ);
    const { content } = document;
    const hadNone = proceduresFor(content.code).length === 0;
    // What was put beside others of its code stays there.
    const line = keptBy(draftName.value)?.line;
    const hash = await keepOwn({ kind: 'aircraft', content, from: 'written', line });
    const procedure = hadNone
      ? await keepFirst(firstFor(content, words, named(content.name)))
      : null;
    done = made;
    void draft.keeper.now();
    const listed = listedAircraft.value.find((one) => one.hash === hash);
    if (listed === undefined) return refused(NOT_READ);
    return { listed, isWritten: procedure !== null, problems: null };
  } catch {
    return refused(NOT_READ);
  }
}
