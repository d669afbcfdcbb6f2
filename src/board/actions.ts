/** What a view may do: each action adds to the record, and nothing else changes anything. */

import type { ListedAircraft, ListedField } from 'virtual:lapstrip-catalogue';
import { batch, signal } from '@preact/signals';
import {
  type Chosen,
  type Entry,
  type Event,
  type Id,
  type Inputs,
  type LeadsTo,
  type ListId,
  type Moment,
  type SealedFigure,
  type StepOutcome,
  type StepRow,
  sawOf,
  sortieTimeMs,
} from '../core';
import { newId } from '../record/record';
import {
  draft,
  enteredWind,
  inputs,
  numbers,
  purpose,
  record,
  settled,
  sortie,
  steps,
  typedWind,
  wind,
} from './board';
import { procedureFor } from './documents';
import { typing } from './places';
import { wallMs, wallNowMs } from './time';

/** Adds to the sortie being flown; the first entry begins one. */
function add(...events: readonly Event[]): readonly Entry[] {
  return addTo(sortie.value.id ?? newId(), ...events);
}

function addTo(id: Id, ...events: readonly Event[]): readonly Entry[] {
  const now = wallNowMs();
  const at = { wallMs: now, sortieMs: Math.round(sortieTimeMs(sortie.value.clock, now)) };
  return batch(() => {
    wallMs.value = now;
    return record.add(id, at, ...events);
  });
}

/** What was changed just now and can be taken back with one tap. */
export interface Undoable {
  readonly what: 'end' | 'field' | 'aircraft' | 'sortie' | 'jump';
  readonly entries: readonly Entry[];
}

/** The change that is offered to be taken back; null most of the time. */
export const undoable = signal<Undoable | null>(null);

/** Takes the offered change back. */
export function undoChange(): void {
  const change = undoable.value;
  undoable.value = null;
  for (const entry of change?.entries ?? []) {
    addTo(entry.sortie, { kind: 'undo', target: entry.id });
  }
}

/** Sets what the pilot chose. */
export function setInputs(chosen: Partial<Inputs>): void {
  add({ kind: 'set', inputs: chosen });
}

/** Goes to another field; an end of the old one cannot stay in use. */
export function chooseField(field: ListedField): void {
  if (field.hash === inputs.value.field) return;
  const first = inputs.value.field === null;
  const entries = add({ kind: 'set', inputs: { field: field.hash, chosen: null } });
  if (!first) undoable.value = { what: 'field', entries };
}

/** Takes another aircraft, with the procedure it is flown with. */
export function chooseAircraft(aircraft: ListedAircraft): void {
  if (aircraft.hash === inputs.value.aircraft) return;
  const { run } = sortie.value;
  const changed: Event = {
    kind: 'set',
    inputs: { aircraft: aircraft.hash, procedure: procedureFor(aircraft.code)?.hash ?? null },
  };
  // The steps of the old aircraft are left where they are; the new one begins its own.
  const left: Event[] = run === null ? [] : [{ kind: 'close', run: run.id, leadsTo: 'return' }];
  const first = inputs.value.aircraft === null;
  const entries = add(...left, changed);
  if (!first) undoable.value = { what: 'aircraft', entries };
}

/** Sets the sortie's clock. */
export function setClock(sortieMs: number, rate: number): void {
  add({ kind: 'clock', sortieMs, rate });
}

const DRAFT_KEPT_AFTER_MS = 400;
let draftTimer: ReturnType<typeof setTimeout> | undefined;

/** Takes what is typed so far; it is kept a moment after the last key, so that a reload loses nothing. */
export function typeWind(text: string): void {
  draft.value = text;
  clearTimeout(draftTimer);
  draftTimer = setTimeout(keepDraft, DRAFT_KEPT_AFTER_MS);
}

/** Keeps what is typed so far. */
export function keepDraft(): void {
  clearTimeout(draftTimer);
  if (draft.value !== inputs.value.draft) setInputs({ draft: draft.value });
}

/** Makes the typed wind the wind in use. What cannot be used stays typed, to be mended. */
export function setWind(): boolean {
  const text = draft.value.trim();
  if (text === '' || typedWind.value.report?.wind == null) return false;
  clearTimeout(draftTimer);
  batch(() => {
    add(
      { kind: 'wind', text, north: inputs.value.typedNorth },
      { kind: 'set', inputs: { draft: '' } },
    );
    draft.value = '';
  });
  return true;
}

/** Closes the keypad; a wind that can be used is set. */
export function closeKeypad(): void {
  setWind();
  keepDraft();
  typing.value = false;
}

/** Throws away what is typed, back to the wind in use. */
export function dropDraft(): void {
  draft.value = '';
  keepDraft();
}

/** Uses a runway end, for what Wind judges for. */
export function useEnd(end: Chosen['end']): void {
  setWind();
  const changing = wind.value.using !== null && wind.value.using !== end;
  const entries = add({ kind: 'set', inputs: { chosen: { end, purpose: purpose.value } } });
  undoable.value = changing ? { what: 'end', entries } : null;
}

/** The run to tick in: the procedure's, begun with its first tick. */
function openRun(): { readonly id: Id; readonly events: readonly Event[] } | null {
  const { run } = sortie.value;
  if (run !== null && run.procedure === inputs.value.procedure) return { id: run.id, events: [] };
  const { procedure } = inputs.value;
  if (procedure === null) return null;
  const id = newId();
  return { id, events: [{ kind: 'open', run: id, procedure, list: null }] };
}

function tickEvent(run: Id, row: StepRow, outcome: StepOutcome, why?: string): Event | null {
  const brief = steps.value;
  if (brief === null) return null;
  const saw = sawOf(row.step, brief.facts);
  const event = { kind: outcome, run, pass: row.pass, step: row.step.id, saw } as const;
  return why === undefined ? event : { ...event, why };
}

/** Records what was done with a step of the procedure, or of the open list. */
export function tick(row: StepRow, outcome: StepOutcome, why?: string): void {
  const { list } = sortie.value;
  const run = list === null ? openRun() : { id: list.id, events: [] };
  if (run === null) return;
  const event = tickEvent(run.id, row, outcome, why);
  if (event !== null) add(...run.events, event);
}

/** Stamps a moment, together with the steps tied to it. The figures shown at moments that count are sealed. */
export function stamp(what: Moment, tied: readonly StepRow[] = []): void {
  const run = openRun();
  if (run === null) return;
  const ticks = tied.flatMap((row) => tickEvent(run.id, row, 'done') ?? []);
  const sealed = what === 'brakes released' || what === 'landed' ? [seal()] : [];
  add(...run.events, ...ticks, { kind: 'stamp', what }, ...sealed);
}

/** Stopping on the roll: stamped, and the list for it opened at once. */
export function stopRoll(): void {
  const { run } = sortie.value;
  if (run === null) return;
  const list: ListId = 'rejected-takeoff';
  const opened = steps.value?.procedure.lists.some(({ id }) => id === list)
    ? [{ kind: 'open', run: newId(), procedure: run.procedure, list } as const]
    : [];
  add({ kind: 'stamp', what: 'stopping' }, ...opened);
}

/** Closes the open list; it leads where the procedure says. */
export function closeList(leadsTo: LeadsTo): void {
  const { list } = sortie.value;
  if (list !== null) add({ kind: 'close', run: list.id, leadsTo });
}

/** Leaves everything before a step held back, so that it is the one that is due. */
export function goOnFrom(row: StepRow): void {
  const brief = steps.value;
  const run = openRun();
  if (brief === null || run === null) return;
  const rows = brief.walk.phases.flatMap((phase) => phase.rows);
  const passed = rows
    .slice(
      0,
      rows.findIndex(({ step }) => step.id === row.step.id),
    )
    .filter(
      ({ state, step }) =>
        state.kind === 'open' && step.kind !== 'barrier' && step.tiedTo === undefined,
    );
  const held = passed.flatMap((skipped) => tickEvent(run.id, skipped, 'held') ?? []);
  if (held.length > 0) undoable.value = { what: 'jump', entries: add(...run.events, ...held) };
}

/** Whether there is something to take back. */
export const canGoBack = (): boolean => lastDone() !== null;

function lastDone() {
  const { run, list } = sortie.value;
  return list?.last ?? run?.last ?? null;
}

/** Takes the last thing done in the steps back. */
export function goBack(): void {
  const last = lastDone();
  if (last !== null) add({ kind: 'undo', target: last.id });
}

/** Marks that the pilot was called away from the steps. */
export function interrupt(): void {
  const run = sortie.value.list ?? sortie.value.run;
  if (run !== null && run.interruptedAt === null && sortie.value.endedAt === null) {
    add({ kind: 'interrupted', run: run.id });
  }
}

/** Takes the steps up again. */
export function resume(): void {
  const run = sortie.value.list ?? sortie.value.run;
  if (run !== null && run.interruptedAt !== null) add({ kind: 'resumed', run: run.id });
}

/** Ends the sortie, seals its figures, and begins the next with the same field, aircraft and limits. */
export function endSortie(): void {
  const { run, clock } = sortie.value;
  const { draft: _draft, chosen: _chosen, purpose: _purpose, ...kept } = inputs.value;
  const closing = run === null ? [] : add(seal(), { kind: 'close', run: run.id, leadsTo: 'end' });
  const next: Event[] = [{ kind: 'set', inputs: kept }];
  if (clock !== null) {
    next.push({ kind: 'clock', sortieMs: sortieTimeMs(clock, wallNowMs()), rate: clock.rate });
  }
  undoable.value = { what: 'sortie', entries: [...closing, ...addTo(newId(), ...next)] };
}

/** The figures as they are shown now, and the documents they come from. */
function seal(): Event {
  const { field, aircraft } = inputs.value;
  const procedure = sortie.value.run?.procedure ?? inputs.value.procedure;
  const end = wind.value.inUse;
  const figures: Record<string, SealedFigure> = {};
  const put = (name: string, value: number | string | null | undefined, unit: string) => {
    if (value !== null && value !== undefined) figures[name] = { value, unit };
  };
  put('runway', wind.value.using, '');
  put('wind', enteredWind.value?.text, '');
  put('headwindKt', end?.headwindKt, 'kt');
  put('crosswindWorstKt', end?.crosswindWorstKt, 'kt');
  put('tailwindWorstKt', end?.tailwindWorstKt, 'kt');
  put('variationDeg', settled.value.variation.value, 'deg');
  put('rotateKt', numbers.value?.takeoff.rotateKt.value, 'kt');
  put('liftOffKt', numbers.value?.takeoff.liftOffKt.value, 'kt');
  put('approachKt', numbers.value?.landing.approachKt.value, 'kt');
  const documents = Object.fromEntries(
    Object.entries({ field, aircraft, procedure }).flatMap(([kind, hash]) =>
      hash === null ? [] : [[kind, hash]],
    ),
  );
  return { kind: 'sealed', documents, figures };
}
