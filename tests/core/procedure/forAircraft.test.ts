/** A first procedure for an aircraft that has none, by the demo's aircraft. */

import * as v from 'valibot';
import { describe, expect, test } from 'vitest';
import type { Aircraft } from '../../../src/core/aircraft/aircraft';
import { AIRCRAFT_CLASSES } from '../../../src/core/aircraft/classNames';
import { newAircraft } from '../../../src/core/aircraft/make/edit';
import { optionsIn } from '../../../src/core/procedure/condition';
import { liveNamesIn } from '../../../src/core/procedure/facts';
import { adapted, starter } from '../../../src/core/procedure/forAircraft';
import type { Procedure } from '../../../src/core/procedure/procedure';
import { procedureSchema } from '../../../src/core/procedure/procedure.schema';
import { starterWords } from '../../../src/parts/starter/starterWords';
import { starter as german } from '../../../src/parts/starter/words.de';
import { allSteps, demoAircraft, demoProcedures, stepsOf } from '../documents/demo';

const english = starterWords();
const inGermanWords = { ...english, ...german };

const NAMING = { code: 'mine-own', name: 'Mine' };

const aircraftOf = (code: string): Aircraft => {
  const found = demoAircraft.find((one) => one.code === code);
  if (found === undefined) throw new Error(`there is no ${code}`);
  return found;
};

const ids = (procedure: Procedure) => allSteps(procedure).map(({ id }) => id);
const namedIn = (procedure: Procedure) =>
  new Set(
    allSteps(procedure).flatMap(({ item, response, note = '', call = '', gate }) => [
      ...[item, response, note, call].flatMap(liveNamesIn),
      ...(gate === undefined ? [] : [gate]),
    ]),
  );

const pairs = demoProcedures.flatMap((procedure) =>
  demoAircraft.map((to) => [procedure.code, to.code, procedure, to] as const),
);

describe.each(pairs)('%s copied for the %s', (_, __, procedure, to) => {
  const copy = adapted(procedure, aircraftOf(procedure.aircraft), to, NAMING);

  test('is a whole procedure of that aircraft, under a name of its own', () => {
    expect(v.safeParse(procedureSchema, copy).issues).toBeUndefined();
    expect(copy).toMatchObject({ ...NAMING, aircraft: to.code });
  });

  test('asks for nothing that the aircraft has on no day', () => {
    const named = namedIn(copy);
    if (to.limits.gearKt === undefined) expect(named).not.toContain('gearKt');
    if (to.climb.reheatOffKt === undefined) expect(named).not.toContain('reheatOffKt');
    if (to.performance?.oneEngineOut === undefined) expect(named).not.toContain('goOnKt');
    const options = allSteps(copy).flatMap(({ when }) =>
      when === undefined ? [] : optionsIn(when),
    );
    if (to.performance?.parachute === undefined) expect(options).toEqual([]);
  });

  test('keeps the order of what is left, and adds nothing', () => {
    const kept = ids(copy);
    expect(ids(procedure).filter((id) => kept.includes(id))).toEqual(kept);
  });
});

test('a copy for the same aircraft has every step', () => {
  for (const procedure of demoProcedures) {
    const aircraft = aircraftOf(procedure.aircraft);
    expect(ids(adapted(procedure, aircraft, aircraft, NAMING))).toEqual(ids(procedure));
  }
});

test('copied for an aircraft without chute or reheat, a procedure has no step for either', () => {
  const sleet = demoProcedures.find(({ code }) => code === 'sleet-usual');
  if (sleet === undefined) throw new Error('there is no such procedure');
  const copy = adapted(sleet, aircraftOf('sleet'), aircraftOf('turnstone'), NAMING);
  const left = ids(copy);
  for (const id of ['chute-packed', 'chute-dropped', 'stop-chute', 'reheat-off']) {
    expect(ids(sleet)).toContain(id);
    expect(left).not.toContain(id);
  }
  expect(copy.options).toBeUndefined();
  expect(copy.lists.map(({ id }) => id)).not.toContain('reheat-fails');
});

/** What the lists of a kind of cockpit begin with; common practice, no published source. */
const FIRST_LISTS = {
  'piston-single': ['rejected-takeoff', 'engine-low', 'engine-high', 'fire-ground', 'fire-flight'],
  'piston-twin': ['rejected-takeoff', 'engine-out', 'one-engine-landing', 'fire-ground'],
  turboprop: ['rejected-takeoff', 'engine-low', 'engine-high', 'fire-ground', 'fire-flight'],
  jet: ['rejected-takeoff', 'engine-low', 'engine-high', 'fire-ground', 'fire-flight'],
  'jet-with-reheat': ['rejected-takeoff', 'engine-low', 'engine-high', 'fire-ground'],
  'twin-jet': ['rejected-takeoff', 'engine-out', 'engine-high', 'one-engine-landing'],
} as const;

describe.each(AIRCRAFT_CLASSES)('the procedure of an aircraft made from the class %s', (of) => {
  const aircraft = {
    ...newAircraft(of, { language: 'en', stop: ['throttle idle', 'brakes'] }),
    code: 'heron',
    name: 'Heron',
  };
  const [made, inGerman] = [
    starter(aircraft, aircraft.stop, english, 'en', NAMING),
    starter(aircraft, aircraft.stop, inGermanWords, 'de', NAMING),
  ];

  test('is a procedure, and the same step for step in both languages', () => {
    expect(v.safeParse(procedureSchema, made).issues).toBeUndefined();
    expect(v.safeParse(procedureSchema, inGerman).issues).toBeUndefined();
    expect(ids(inGerman)).toEqual(ids(made));
    const calls = (of: Procedure) => allSteps(of).map(({ call }) => call);
    expect(calls(inGerman)).toEqual(calls(made));
  });

  test('has the lists of its kind, and can go around', () => {
    const lists = made.lists.map(({ id }) => id);
    expect(lists.slice(0, FIRST_LISTS[of].length)).toEqual(FIRST_LISTS[of]);
    expect(lists).toContain('go-around');
    expect(lists.includes('gear-unsafe')).toBe(aircraft.limits.gearKt !== undefined);
    for (const { steps } of made.lists) expect(steps.length).toBeLessThanOrEqual(8);
  });

  test('asks for no number that its class does not have, and no part of another cockpit', () => {
    for (const name of ['lastStopKt', 'markKt', 'landingM', 'breakaway', 'climbPitch'])
      expect(namedIn(made)).not.toContain(name);
    const isPiston = aircraft.engine === 'piston';
    expect(ids(made).includes('magnetos')).toBe(isPiston);
    expect(ids(made).includes('canopy-shut')).toBe(aircraft.engine.startsWith('jet'));
    expect(ids(made).includes('carb-heat-cold')).toBe(of === 'piston-single');
    expect(ids(made).includes('engines-run')).toBe(of.includes('twin'));
  });
});

describe.each([
  ['en', english],
  ['de', inGermanWords],
] as const)('the short procedure in the language %s', (language, words) => {
  test.each(demoAircraft.map((aircraft) => [aircraft.code, aircraft] as const))(
    'is one of the %s, and can be flown',
    (_, aircraft) => {
      const made = starter(aircraft, aircraft.stop, words, language, NAMING);
      expect(v.safeParse(procedureSchema, made).issues).toBeUndefined();
      expect(made).toMatchObject({ ...NAMING, aircraft: aircraft.code, language });
      const hasGear = aircraft.limits.gearKt !== undefined;
      expect(ids(made).includes('gear-down')).toBe(hasGear);
      expect(ids(made).includes('gear-up')).toBe(hasGear);
      expect(ids(made).includes('reheat-off')).toBe(aircraft.engine === 'jet with reheat');
      expect(stepsOf(made, 'roll').map(({ tiedTo }) => tiedTo)).toEqual(['brakes released']);
      // Common practice, no published source: whoever says "ready" has nothing left to do.
      expect(
        stepsOf(made, 'taxi')
          .slice(-5)
          .map(({ id }) => id),
      ).toEqual([
        'take-off-brief',
        'transponder',
        'before-runway',
        'ready-call-tower',
        'ready-call-traffic',
      ]);
      expect(made.lists[0]?.steps.map(({ response }) => response)).toEqual(aircraft.stop);
    },
  );
});

test('the short procedure of an aircraft without physics or load asks for no number of theirs', () => {
  const { performance: _p, load: _l, ...plain } = aircraftOf('turnstone');
  const made = starter(plain, plain.stop, english, 'en', NAMING);
  expect(ids(made)).not.toContain('fuel');
  for (const name of ['lastStopKt', 'markKt', 'landingM', 'referenceKt'])
    expect(namedIn(made)).not.toContain(name);
});
