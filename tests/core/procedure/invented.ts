/** A small invented procedure, facts to walk it under, and a pilot who walks it. */

import { rowsOf } from '../../../src/core/day/steps';
import { type FlownAgain, passesAgain } from '../../../src/core/procedure/again';
import type { Facts } from '../../../src/core/procedure/facts';
import { passedBefore } from '../../../src/core/procedure/passed';
import type { Phase, Procedure, Step } from '../../../src/core/procedure/procedure';
import { sawOf } from '../../../src/core/procedure/stepState';
import { type Walk, type WalkPosition, walk } from '../../../src/core/procedure/walk';
import type { Entry, Moment, SortieEvent, StepOutcome } from '../../../src/core/sortie/entry';
import { foldSortie } from '../../../src/core/sortie/fold';
import { entry, OPEN, RUN } from '../sortie/recorder';

/** A step that says nothing about itself but its name. */
export const step = (id: string, more: Partial<Step> = {}): Step => ({
  id,
  kind: 'do',
  item: id,
  response: 'set',
  ...more,
});

/** A procedure with these steps. */
export const procedureOf = (phases: Partial<Record<Phase, readonly Step[]>>): Procedure => ({
  lapstrip: 'procedure',
  version: 1,
  code: 'invented',
  name: 'Invented',
  aircraft: 'invented',
  about: 'Not flown.',
  phases: Object.entries(phases).map(([phase, steps]) => ({
    phase: phase as Phase,
    steps: [...steps],
  })),
  lists: [
    {
      id: 'rejected-takeoff',
      title: 'Stopped',
      steps: [step('idle'), step('brakes-full'), step('call')],
      // biome-ignore lint/suspicious/noThenProperty: an object under this name never makes a promise; only a function would.
      then: { phase: 'taxi', reopen: ['taxi', 'line-up', 'roll'] },
    },
  ],
});

/** One or two steps in every phase, with everything that a step can have. */
export const SMALL = procedureOf({
  ramp: [
    step('pins'),
    step('lamps', { when: { fact: 'night' } }),
    step('brief', { response: '{runway}', until: 'line-up' }),
  ],
  taxi: [
    step('flaps'),
    step('course', { response: '{runwayMagnetic}', until: 'line-up' }),
    step('barrier', { kind: 'barrier' }),
  ],
  'line-up': [step('heading', { response: '{runwayMagnetic}' }), step('power')],
  roll: [step('lever', { tiedTo: 'brakes released' })],
  climb: [step('gear', { response: 'by {gearKt}' }), step('reheat')],
  recovery: [step('landing-end', { response: '{runway}' }), step('gear-down')],
  after: [step('pins-in'), step('lamps-off', { when: { fact: 'lights' } })],
});

/** By day, on runway 28 of an uncontrolled field, everything known. */
export const BY_DAY: Facts = {
  night: false,
  lights: false,
  wet: false,
  controlled: false,
  lightWind: false,
  crossesRunway: false,
  cable: null,
  supersonic: false,
  stores: false,
  passengers: false,
  options: 'chute',
  runway: '28',
  runwayMagnetic: 280,
  wind: '27012KT',
  windKt: 12,
  headwindKt: 12,
  crosswindKt: 2,
  field: 'Invented',
  callsign: 'Gannet 1',
  ground: 'Harrow traffic',
  tower: 'Harrow traffic',
  crossing: '01/19',
  crossingAt: 'B1',
  qnh: 1009,
  temperatureC: 14,
  densityAltitudeFt: 100,
  massKg: 9200,
  landingMassKg: 7300,
  fuelKg: 2420,
  taxiKt: 18,
  turnKt: 11,
  breakaway: 66,
  keepRolling: '49–52',
  markM: 300,
  markKt: 84,
  markLeastKt: 79,
  lastStopKt: 121,
  goOnKt: null,
  rotateKt: 138,
  liftOffKt: 165,
  runM: 1250,
  gearKt: 240,
  flapsKt: 265,
  reheatOffKt: 320,
  climbKt: '345–375',
  climbPitch: '13–17',
  referenceKt: 155,
  approachKt: 161,
  landingM: 1400,
};

/** The same with some facts changed. */
export const facts = (more: Partial<Facts> = {}): Facts => ({ ...BY_DAY, ...more });

/** More than any procedure here has: a way that does not end must fail rather than go on. */
const MOST_STEPS = 100;

/** A pilot with a procedure and a record: does things, and looks where that leads. */
export class Pilot {
  readonly entries: Entry[] = [entry(OPEN, 1)];
  now: Facts = BY_DAY;
  readonly #procedure: Procedure;
  /** The last walk, for as long as nothing was recorded since and the facts are the same. */
  #walked: { readonly key: readonly [number, Facts]; readonly walk: Walk } | null = null;

  constructor(procedure: Procedure = SMALL) {
    this.#procedure = procedure;
  }

  /** Records what happened. */
  record(event: SortieEvent): Entry {
    const added = entry(event, this.entries.length + 1);
    this.entries.push(added);
    return added;
  }

  /** Ticks a step by its name, in the present pass; what is passed on the way is recorded with it. */
  tick(outcome: StepOutcome, id: string): Entry {
    const walked = this.walk();
    const row = rowOf(walked, id);
    const saw = sawOf(row.step, this.now);
    for (const one of passedBefore(rowsOf(walked), row, this.now)) {
      this.record({ kind: 'passed', run: RUN, ...one });
    }
    return this.record({ kind: outcome, run: RUN, pass: row.pass, step: id, saw });
  }

  /** Ticks every step as it comes and stamps every moment, until it is at `id`, or at the end. */
  goTo(id: string): void {
    for (let left = MOST_STEPS; left > 0 && ![id, 'end'].includes(this.at()); left--) this.goOn();
    if (this.at() !== id) throw new Error(`the way does not lead to ${id}`);
  }

  /** Does what is due until nothing is, and says what was, in order. */
  goToTheEnd(): string[] {
    const order: string[] = [];
    for (let left = MOST_STEPS; left > 0 && this.at() !== 'end'; left--) {
      order.push(this.at());
      this.goOn();
    }
    return order;
  }

  /** Does what is due. */
  goOn(): void {
    const { position } = this.walk();
    if (position.kind === 'step') this.tick('done', position.row.step.id);
    if (position.kind !== 'moment') return;
    for (const { step: tied } of position.tied) this.tick('done', tied.id);
    this.stamp(position.moment);
  }

  stamp(what: Moment): Entry {
    return this.record({ kind: 'stamp', what });
  }

  /** Flies phases again. */
  flyAgain(what: FlownAgain): Entry {
    const { run } = foldSortie(this.entries);
    if (run === null) throw new Error('nothing was flown');
    const reopen = { kind: 'reopen', run: RUN, passes: passesAgain(this.#procedure, run, what) };
    return this.record(reopen as SortieEvent);
  }

  undo(undone: Entry): Entry {
    return this.record({ kind: 'undo', target: undone.id });
  }

  walk(): Walk {
    const key = [this.entries.length, this.now] as const;
    if (this.#walked?.key[0] === key[0] && this.#walked.key[1] === key[1]) {
      return this.#walked.walk;
    }
    const { run, stamps } = foldSortie(this.entries);
    this.#walked = { key, walk: walk(this.#procedure, run, stamps, this.now) };
    return this.#walked.walk;
  }

  /** The name of what is due. */
  at(): string {
    return nameOf(this.walk().position);
  }

  stateOf(id: string): string {
    return rowOf(this.walk(), id).state.kind;
  }
}

/** What is due, as a name: that of a step or of a moment, or `end`. */
export function nameOf(position: WalkPosition): string {
  if (position.kind === 'step') return position.row.step.id;
  return position.kind === 'moment' ? position.moment : position.kind;
}

/** The row of a step. */
export function rowOf({ phases }: Walk, id: string) {
  const row = phases.flatMap(({ rows }) => rows).find((one) => one.step.id === id);
  if (row === undefined) throw new Error(`there is no step ${id}`);
  return row;
}
