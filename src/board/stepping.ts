/** What the pilot does with the steps: ticks, moments, lists, back, and the sortie's end. */

import {
  type Entry,
  type Event,
  type Id,
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
import { add, addTo, undoable } from './adding';
import { enteredWind, inputs, record, settled, sortie, wind } from './board';
import { numbers, steps } from './flight';
import { wallNowMs } from './time';

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
  undoable.value = null;
  if (event !== null) add(...run.events, event);
}

/** Stamps a moment, together with the steps tied to it. The figures shown at moments that count are sealed. */
export function stamp(what: Moment, tied: readonly StepRow[] = []): void {
  const run = openRun();
  if (run === null) return;
  const ticks = tied.flatMap((row) => tickEvent(run.id, row, 'done') ?? []);
  const sealed = what === 'brakes released' || what === 'landed' ? [seal()] : [];
  // What Wind judged for by hand was for this part of the sortie.
  const judged: Event[] =
    inputs.value.purpose === null ? [] : [{ kind: 'set', inputs: { purpose: null } }];
  add(...run.events, ...ticks, { kind: 'stamp', what }, ...sealed, ...judged);
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
  if (held.length === 0) return;
  if (run.events.length > 0) add(...run.events);
  undoable.value = { what: 'jump', entries: add(...held) };
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
  if (last === null) return;
  add(...togetherWith(last.id).map(({ id }): Event => ({ kind: 'undo', target: id })));
}

/** What was added in one go with an entry: a moment comes with the steps tied to it, its seal, the list it opens. */
function togetherWith(id: Id): readonly Entry[] {
  const entry = record.entries.find((candidate) => candidate.id === id);
  if (entry?.kind !== 'stamp' && entry?.kind !== 'open') return entry === undefined ? [] : [entry];
  return record.entries.filter(
    ({ kind, sortie: of, at }) =>
      of === entry.sortie &&
      at.wallMs === entry.at.wallMs &&
      (kind === 'stamp' || kind === 'done' || kind === 'sealed' || kind === 'open'),
  );
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
