/** What the demo procedures promise, and how their words follow the published guidance. */

import { describe, expect, test } from 'vitest';
import { languageOf } from '../../../src/core/language';
import { factsIn } from '../../../src/core/procedure/condition';
import { CONDITION_FACTS } from '../../../src/core/procedure/conditionFacts';
import { PHASES } from '../../../src/core/procedure/phases';
import type { Procedure, Step } from '../../../src/core/procedure/procedure';
import { allSteps, demoAircraft, demoProcedures, stepsOf } from './demo';

const each = demoProcedures.map((procedure) => [procedure.code, procedure] as const);
const inEnglish = each.filter(([, procedure]) => languageOf(procedure) === 'en');

/** The longest that live numbers get in the demo's story. */
const LONGEST: Readonly<Record<string, string>> = {
  runway: '23R',
  runwayMagnetic: '280',
  wind: '270° 12 gust 20',
  callsign: 'Tallow one two',
  field: 'Harrow Sound',
  keepRolling: '850–1000',
  breakaway: '1300',
  climbKt: '345–375',
  climbPitch: '13–17',
};
const filled = (text: string) => text.replace(/\{(\w+)\}/g, (_, name) => LONGEST[name] ?? '165');

const aircraftOf = ({ aircraft }: Procedure) => {
  const found = demoAircraft.find(({ code }) => code === aircraft);
  if (found === undefined) throw new Error(`there is no demo aircraft ${aircraft}`);
  return found;
};

const ids = (steps: readonly Step[]) => steps.map(({ id }) => id);

describe.each(each)('%s', (_, procedure) => {
  const steps = allSteps(procedure);

  test('has every phase', () => {
    expect(procedure.phases.map(({ phase }) => phase)).toEqual([...PHASES]);
  });

  test('ends the taxi with a barrier, the only one', () => {
    expect(stepsOf(procedure, 'taxi').at(-1)?.kind).toBe('barrier');
    expect(steps.filter(({ kind }) => kind === 'barrier')).toHaveLength(1);
  });

  test('waits for two indications in turn, last of all before the roll', () => {
    const kinds = stepsOf(procedure, 'line-up').map(({ kind }) => kind);
    expect(kinds.slice(-3)).toEqual(['do', 'wait', 'wait']);
    expect(steps.filter((step) => step.kind === 'wait' && !step.expectS)).toEqual([]);
  });

  test('ties one step to brake release, and asks for nothing else on the roll', () => {
    expect(stepsOf(procedure, 'roll').map(({ tiedTo }) => tiedTo)).toEqual(['brakes released']);
  });

  test('has a climb gate for each speed that its aircraft has, in the order they come', () => {
    const { climb, limits } = aircraftOf(procedure);
    const speeds = [
      climb.gearUpByKt === undefined ? [] : ['gearKt'],
      ['flapsKt'],
      climb.reheatOffKt === undefined ? [] : ['reheatOffKt'],
      ['climbKt'],
    ].flat();
    const gates = stepsOf(procedure, 'climb').flatMap(({ gate }) => gate ?? []);
    expect(gates).toEqual(speeds);
    const named = new Set(steps.flatMap(({ item, response, note = '' }) => item + response + note));
    if (limits.gearKt === undefined) expect([...named].join()).not.toContain('{gearKt}');
  });

  test('is due again before the line-up is over where it depends on the runway', () => {
    const told = [...stepsOf(procedure, 'ramp'), ...stepsOf(procedure, 'taxi')].filter(
      ({ response, note = '' }) => /\{runway/.test(response + note),
    );
    expect(told.length).toBeGreaterThanOrEqual(5);
    expect(told.filter(({ until }) => until !== 'line-up')).toEqual([]);
  });

  test('compares the heading with the runway before anything else in the line-up', () => {
    const [first] = stepsOf(procedure, 'line-up');
    expect(first?.response).toContain('{runwayMagnetic}');
    expect(first?.critical).toBe(true);
  });

  test('says every call either to someone who controls or to the traffic', () => {
    const calls = steps.filter(({ kind, when }) => kind === 'say' && when !== undefined);
    const half = (negated: boolean) =>
      calls.filter(({ when }) => when !== undefined && 'not' in when === negated);
    expect(half(true).length).toBe(half(false).length);
    expect(calls.every(({ when }) => when && factsIn(when).join() === 'controlled')).toBe(true);
  });

  test('takes up the taxi again after stopping, with the line-up due again', () => {
    const [list] = procedure.lists;
    expect(list?.id).toBe('rejected-takeoff');
    expect(list?.then).toEqual({ phase: 'taxi', reopen: ['taxi', 'line-up', 'roll'] });
  });

  // Common practice, no published source: nobody holds a key down while stopping on a runway.
  test('holds no key down while the aircraft is being stopped', () => {
    const { stop } = aircraftOf(procedure);
    const list = procedure.lists[0]?.steps ?? [];
    expect(list.slice(0, stop.length).filter(({ critical }) => critical)).toEqual([]);
  });

  // A. Degani and E. L. Wiener, The Normal Checklist, NASA CR-177549 (1990): the response is the
  // state or value, and "set", "check" or "completed" say nothing.
  test('answers with a state, never with a bare "checked", "set" or "completed"', () => {
    const bare = steps.filter(({ response }) =>
      /checked|completed|^(set|check|ok|gesetzt|gestellt)$|geprüft|kontrolliert|erledigt/i.test(
        response,
      ),
    );
    expect(ids(bare)).toEqual([]);
  });

  // The same report: the most critical items first, as far as the order of things allows it.
  test('puts the critical items of the ramp and the line-up first', () => {
    for (const phase of ['ramp', 'line-up']) {
      const set = stepsOf(procedure, phase).filter(({ kind }) => kind !== 'wait');
      const firstOther = set.findIndex(({ critical }) => !critical);
      expect(ids(set.slice(firstOther).filter(({ critical }) => critical))).toEqual([]);
    }
  });

  // UK CAA CAP 676, Guidelines for the Design and Presentation of Emergency and Abnormal Checklists:
  // every list has a title, is short enough to be found through, and says where it ends (value from
  // memory). The number of steps is common practice, no published source.
  test('has a list for what can go wrong with its aircraft, each short and with an end', () => {
    const { engine, limits } = aircraftOf(procedure);
    const needed = [
      'rejected-takeoff',
      ...(engine === 'jet with reheat' ? ['reheat-fails'] : []),
      ...(limits.gearKt === undefined ? [] : ['gear-unsafe']),
      'limit-light',
      'engine-fire-ground',
      'go-around',
    ];
    const lists = procedure.lists.map(({ id }) => id);
    expect(needed.filter((id) => !lists.includes(id))).toEqual([]);
    for (const { steps: inList, title } of procedure.lists) {
      expect(title.length).toBeLessThanOrEqual(32);
      expect(inList.length).toBeGreaterThanOrEqual(5);
      expect(inList.length).toBeLessThanOrEqual(10);
    }
  });

  test('ends a fire on the ground for good, and leads from a go-around to the next approach', () => {
    const then = (id: string) => procedure.lists.find((list) => list.id === id)?.then;
    expect(then('engine-fire-ground')).toBe('end');
    expect(then('go-around')).toEqual({ phase: 'recovery', reopen: ['recovery'] });
  });

  // CAP 676: what must be done at once comes first (value from memory).
  test('begins each list with something to be done, not with something to be read', () => {
    const first = procedure.lists.map(({ steps: inList }) => inList[0]?.kind);
    expect(first.filter((kind) => kind === 'say' || kind === 'note')).toEqual([]);
  });

  // The app's own rule: nothing here may sound like a clearance or a promise.
  test('never says "safe", "cleared" or "any traffic", in either language', () => {
    const words = JSON.stringify(procedure).toLowerCase();
    expect(words).not.toMatch(/\bsafe|\bcleared|\bclearance|any traffic/);
    expect(words).not.toMatch(/\bsicher|freigabe|freigegeben|piste frei/);
  });

  test('fits a phone in large type, live numbers filled in', () => {
    const long = steps.flatMap(({ id, item, response, note = '', call = '' }) => [
      ...(filled(item).length > 24 ? [`${id}: ${filled(item)}`] : []),
      ...(filled(response).length > 28 ? [`${id}: ${filled(response)}`] : []),
      ...(filled(note).length > 70 ? [`${id}: ${filled(note)}`] : []),
      ...(filled(call).length > 90 ? [`${id}: ${filled(call)}`] : []),
    ]);
    expect(long).toEqual([]);
  });
});

// What the aircraft says to do to stop is English in every language.
describe.each(inEnglish)('%s', (_, procedure) => {
  test('begins the stopping list with what the aircraft says to do to stop, in that order', () => {
    const { stop } = aircraftOf(procedure);
    const list = procedure.lists[0]?.steps ?? [];
    const firstWords = (text: string) => text.toLowerCase().split(' ')[0];
    expect(list.slice(0, stop.length).map(({ item }) => firstWords(item))).toEqual(
      stop.map(firstWords),
    );
  });
});

describe('the demo procedures together', () => {
  test.each(['en', 'de'])('are one for each aircraft in the language %s', (language) => {
    const flown = demoProcedures
      .filter((procedure) => languageOf(procedure) === language)
      .map(({ aircraft }) => aircraft);
    expect(flown.sort()).toEqual(demoAircraft.map(({ code }) => code).sort());
  });

  test('ask for every fact that a condition can ask for', () => {
    const asked = demoProcedures
      .flatMap(allSteps)
      .flatMap(({ when }) => (when === undefined ? [] : factsIn(when)));
    expect([...new Set(asked)].sort()).toEqual([...CONDITION_FACTS, 'options', 'windKt'].sort());
  });

  test('hold every kind of step', () => {
    const kinds = new Set(demoProcedures.flatMap(allSteps).map(({ kind }) => kind));
    expect([...kinds].sort()).toEqual(['barrier', 'check', 'do', 'gate', 'note', 'say', 'wait']);
  });
});
