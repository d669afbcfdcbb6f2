/** What the pilot does with the steps: ticks, moments, lists, back, and the end of the sortie. */

import { computed } from '@preact/signals';
import {
  type Caution,
  canMove,
  type EnteredAt,
  type Event,
  type FlownAgain,
  type Id,
  isWaiting,
  type LeadsTo,
  type ListId,
  type Main,
  type Moment,
  notAccepted,
  offers,
  PHASES,
  type Phase,
  passedBefore,
  passesAgain,
  putOffBefore,
  rowsOf,
  type StepId,
  type StepOutcome,
  type StepRow,
  sawOf,
  tieKey,
  togetherWith,
} from '../../core';
import { askToKeepStorage } from '../../device/storage';
import { newId } from '../../record/record';
import { day, record, sortie } from '../board';
import { chosenProcedure, procedure } from '../documents/inUse';
import { openPlace, openSheet, openTyping } from '../places';
import { add, undoable } from '../record/adding';
import { endSortie } from '../record/nextSortie';
import { seal } from '../record/sealing';
import { closeCard } from './card';
import { resume } from './interruption';

/** The run to tick in: the procedure's, begun with its first tick. */
function openRun(): { readonly id: Id; readonly events: readonly Event[] } | null {
  const { run } = sortie.value;
  // A version saved under way is for the next sortie; `takeUp` already closed what is to start
  // afresh.
  if (run !== null) return { id: run.id, events: [] };
  const procedure = chosenProcedure.value;
  if (procedure === null) return null;
  const id = newId();
  return { id, events: [{ kind: 'open', run: id, procedure, list: null }] };
}

function tickEvent(run: Id, row: StepRow, outcome: StepOutcome, why?: string): Event | null {
  const brief = day.steps();
  if (brief === null) return null;
  const saw = sawOf(row.step, brief.facts);
  const event = { kind: outcome, run, pass: row.pass, step: row.step.id, saw } as const;
  return why === undefined ? event : { ...event, why };
}

/** Records what was done with a step of the procedure, or of the open list. */
export function tick(row: StepRow, outcome: StepOutcome, why?: string, lasting = false): void {
  const { list } = sortie.value;
  const run = list === null ? openRun() : { id: list.id, events: [] };
  if (run === null) return;
  const event = tickEvent(run.id, row, outcome, why);
  undoable.value = null;
  if (event === null) return;
  const remembered = lasting ? notSimulatedWith(row.step.id) : [];
  add(...run.events, ...passing(run.id, row), ...remembered, event);
  // From the first tick there is something to lose, so the pilot understands the browser's
  // question.
  void askToKeepStorage();
}

/** The simulation hasn't got a step: it isn't asked for in the next sorties. */
function notSimulatedWith(step: StepId): readonly Event[] {
  const by = procedure.value;
  // The steps of a list are needed when something is wrong, whatever the simulation has.
  if (by === null || sortie.value.list !== null) return [];
  const others = day.inputs().notSimulated;
  return [{ kind: 'set', inputs: { notSimulated: [...others, tieKey(by.code, step)] } }];
}

/** What going on to a row, or to the end of the walk, passes over. */
function passing(run: Id, row: StepRow | null): readonly Event[] {
  const brief = day.steps();
  if (brief === null) return [];
  const rows = rowsOf(brief.abnormal?.walk ?? brief.walk);
  return passedBefore(rows, row, brief.facts).map((one) => ({ kind: 'passed', run, ...one }));
}

/** The first step of the phases after one; null if there is none. */
function firstAfter(phase: Phase): StepRow | null {
  const later = PHASES.slice(PHASES.indexOf(phase) + 1);
  const brief = day.steps();
  const rows = brief === null ? [] : rowsOf(brief.walk);
  return rows.find((row) => later.includes(row.phase)) ?? null;
}

/**
 * Stamps a moment, together with the steps tied to it. At moments that count, seals the figures
 * shown.
 */
export function stamp(what: Moment, tied: readonly StepRow[] = []): void {
  const run = openRun();
  if (run === null) return;
  const ticks = tied.flatMap((row) => tickEvent(run.id, row, 'done') ?? []);
  const sealed = what === 'brakes released' || what === 'landed' ? [seal()] : [];
  // What Wind judged for by hand applied to this part of the sortie.
  const judged: Event[] =
    day.inputs().purpose === null ? [] : [{ kind: 'set', inputs: { purpose: null } }];
  const passed = what === 'brakes released' ? passing(run.id, firstAfter('roll')) : [];
  add(...run.events, ...passed, ...ticks, { kind: 'stamp', what }, ...sealed, ...judged);
}

/** Stopping on the roll: stamps it, and opens the list for it at once. */
export function stopRoll(): void {
  const { run } = sortie.value;
  if (run === null) return;
  const list: ListId = 'rejected-takeoff';
  const opened = hasList(list)
    ? [{ kind: 'open', run: newId(), procedure: run.procedure, list } as const]
    : [];
  add({ kind: 'stamp', what: 'stopping' }, ...opened);
}

const hasList = (list: ListId) => procedure.value?.lists.some(({ id }) => id === list) ?? false;

/**
 * Opens a list over the steps, or over the open list: its end leads back there. A list that is
 * already open beneath is returned to.
 */
export function openList(list: ListId): void {
  const { run, lists } = sortie.value;
  const begun = openRun();
  const flown = run?.procedure ?? chosenProcedure.value;
  if (begun === null || flown === null || !hasList(list)) return;
  undoable.value = null;
  openPlace('steps');
  const under = lists.findIndex((one) => one.list === list);
  const above = under < 0 ? [] : lists.slice(under + 1).reverse();
  const closing = above.map((one): Event => ({ kind: 'close', run: one.id, leadsTo: 'return' }));
  if (closing.length > 0) add(...closing);
  if (under >= 0) return;
  add(...begun.events, { kind: 'open', run: newId(), procedure: flown, list });
}

/**
 * Closes the open list, which leads where the procedure says. What a later phase skips is held
 * back.
 */
export function closeList(leadsTo: LeadsTo): void {
  const { list, lists } = sortie.value;
  if (list === null) return;
  const close = { kind: 'close', run: list.id, leadsTo } as const;
  if (leadsTo === 'end') endSortie();
  else if (leadsTo === 'return') undoable.value = { what: 'list', entries: add(close) };
  else {
    const under = lists.filter((one) => one !== list);
    const closing = under.map((one): Event => ({ kind: 'close', run: one.id, leadsTo: 'return' }));
    add(...leftBehind(leadsTo.phase, leadsTo.reopen), close, ...closing);
  }
}

/** Holds back what waits before a phase and isn't flown again. */
function leftBehind(phase: Phase, reopen: readonly Phase[]): readonly Event[] {
  const { run } = sortie.value;
  const brief = day.steps();
  if (run === null || brief === null) return [];
  return rowsOf(brief.walk)
    .filter((row) => PHASES.indexOf(row.phase) < PHASES.indexOf(phase))
    .filter((row) => !reopen.includes(row.phase) && isWaiting(row) && canMove(row.step))
    .flatMap((row) => tickEvent(run.id, row, 'held') ?? []);
}

/** Breaks off the approach: opens the list for it, or starts the approach afresh. */
export function goAround(): void {
  if (hasList('go-around')) openList('go-around');
  else flyAgain('approach');
}

/** Flies phases again: after a touch-and-go, for another take-off, or for another approach. */
export function flyAgain(what: FlownAgain): void {
  const { run } = sortie.value;
  const brief = day.steps();
  if (run === null || brief === null) return;
  const passes = passesAgain(brief.procedure, run, what);
  const reopen = { kind: 'reopen', run: run.id, passes } as const;
  undoable.value = null;
  if (what === 'touch-and-go') {
    // Landed in the pass that ends, airborne in the one that begins.
    add({ kind: 'stamp', what: 'landed' }, seal(), reopen, { kind: 'stamp', what: 'airborne' });
  } else if (what === 'take-off') add({ kind: 'set', inputs: { purpose: 'take-off' } }, reopen);
  else add(reopen);
}

/** Begins the sortie at a phase, as in the air: what waits before it is not flown. */
export function beginAt(phase: Phase): void {
  const run = openRun();
  if (run === null) return;
  if (run.events.length > 0) add(...run.events);
  undoable.value = { what: 'begun', entries: add({ kind: 'begun', run: run.id, phase }) };
}

/** Holds back everything before a step, so that it is the one due. */
export function resumeFrom(row: StepRow): void {
  const brief = day.steps();
  const run = openRun();
  if (brief === null || run === null) return;
  const passed = putOffBefore(brief, row);
  const held = passed.flatMap((skipped) => tickEvent(run.id, skipped, 'held') ?? []);
  if (held.length === 0) return;
  if (run.events.length > 0) add(...run.events);
  undoable.value = { what: 'jump', entries: add(...held) };
}

/** Goes on outside limits, which the record tells with the figures. */
function goOutside(cautions: readonly Caution[]): void {
  const { end, purpose } = day.verdict();
  undoable.value = null;
  add({ kind: 'accepted', end, purpose, cautions });
}

/** What may be done in the steps now; null before there is a procedure. */
export const offered = computed(() => {
  const brief = day.steps();
  return brief && offers(brief, sortie.value, notAccepted(day.verdict(), sortie.value.accepted));
});

/** Whether there is something to undo. */
export const canGoBack = (): boolean => (offered.value?.undo ?? null) !== null;

/** Undoes the last thing done in the steps; after an interruption, resumes first. */
export function goBack(): void {
  const last = offered.value?.undo ?? null;
  if (last === null) return;
  resume();
  add(...togetherWith(record.entries, last).map(({ id }): Event => ({ kind: 'undo', target: id })));
}

/** Opens where something is entered; the Big card makes room for it. */
function openEntry(at: EnteredAt): void {
  closeCard();
  if (at === 'keypad') openTyping();
  else if (at === 'sortie') openSheet({ kind: 'sortie' });
  else if (at === 'load') openSheet({ kind: 'load', over: null });
  else openPlace(at);
}

/** Does what is offered next. */
export function doIt(main: Main): void {
  if (main.what === 'tick') tick(main.row, 'done');
  else if (main.what === 'supply') openEntry(main.at);
  else if (main.what === 'stamp') stamp(main.moment, main.tied);
  else if (main.what === 'go-outside') goOutside(main.cautions);
  else if (main.what === 'close-list') closeList(main.leadsTo);
  else if (main.what === 'end-sortie') endSortie();
  else resume();
}
