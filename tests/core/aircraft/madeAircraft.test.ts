/** An aircraft made from a class: what is typed, what follows, and what is taken back. */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Aircraft } from '../../../src/core/aircraft/aircraft';
import { AIRCRAFT_CLASSES } from '../../../src/core/aircraft/classNames';
import { fitAircraft } from '../../../src/core/aircraft/fit/fitAircraft';
import type { Loading } from '../../../src/core/aircraft/load';
import { begunFrom, fitQuestion } from '../../../src/core/aircraft/make/begun';
import { CLASSES } from '../../../src/core/aircraft/make/classes';
import {
  type AircraftEdit,
  aircraftChanges,
  assumedFigures,
  editedAircraft,
  newAircraft,
} from '../../../src/core/aircraft/make/edit';
import { FIGURE_NAMES, figureSpec } from '../../../src/core/aircraft/make/figures';
import { newLoading } from '../../../src/core/aircraft/make/loading';
import { readTable } from '../../../src/core/aircraft/make/readTable';
import { performanceFaults } from '../../../src/core/aircraft/performanceFaults';
import { documentFaults, readDocument } from '../../../src/core/readDocument.schema';
import {
  beginHistory,
  changed,
  documentNow,
  redone,
  restoredHistory,
  storedHistory,
  undone,
} from '../../../src/core/writing/history';

const TEXTS = { language: 'en', stop: ['throttle idle', 'brakes'] };

const fresh = (of: (typeof AIRCRAFT_CLASSES)[number]) => newAircraft(of, TEXTS);

const made = (start: Aircraft, ...edits: readonly AircraftEdit[]) =>
  edits.reduce(editedAircraft, start);

const named: AircraftEdit = { kind: 'head', set: { code: 'heron', name: 'Made-up Heron' } };

describe.each(AIRCRAFT_CLASSES)('%s', (of) => {
  test('is a document once it has a name, and says which figures are starting values', () => {
    const aircraft = made(fresh(of), named);
    expect(documentFaults(aircraft)).toEqual([]);
    expect(readDocument(JSON.stringify(aircraft)).problems).toBeNull();
    expect(assumedFigures(aircraft).length).toBeGreaterThan(19);
    expect(aircraft.performance).toBeUndefined();
  });

  test('has a physics to begin with that lifts off, climbs and contradicts itself nowhere', () => {
    const aircraft = made(fresh(of), named, {
      kind: 'figure',
      name: 'handbook.minimumControlKt',
      to: 60,
    });
    const performance = begunFrom(CLASSES[of], aircraft);
    expect(performanceFaults({ ...aircraft, performance })).toEqual([]);
    const rows = [{ runM: 100, to50ftM: 200, climbFtMin: 100, landingRunM: 100, landingM: 200 }];
    const fit = fitAircraft({ ...aircraft, performance, handbook: { rows } });
    expect(fit?.figures.map(({ because }) => because)).toEqual([null, null, null, null, null]);
    expect(documentFaults({ ...aircraft, performance } as Aircraft)).toEqual([]);
  });
});

describe('what follows from a figure', () => {
  const start = made(fresh('piston-single'), named);

  test('moves until it is typed, and stands then', () => {
    const heavy = made(start, { kind: 'figure', name: 'masses.maxTakeoffKg', to: 1500 });
    expect(heavy.masses.usualTakeoffKg).toBe(1500);
    const typed = made(
      start,
      { kind: 'figure', name: 'masses.usualTakeoffKg', to: 1000 },
      { kind: 'figure', name: 'masses.maxTakeoffKg', to: 1500 },
    );
    expect(typed.masses.usualTakeoffKg).toBe(1000);
    expect(assumedFigures(typed)).not.toContain('masses.usualTakeoffKg');
  });

  test('comes back as a starting value when it is emptied', () => {
    const typed = made(start, { kind: 'figure', name: 'takeoff.rotateKt', to: 61 });
    const emptied = made(typed, { kind: 'figure', name: 'takeoff.rotateKt', to: null });
    expect(emptied).toEqual(start);
  });

  test('never grows on a worse surface', () => {
    const calm = made(start, { kind: 'figure', name: 'limits.crosswindKt.dry', to: 7 });
    expect(calm.limits.crosswindKt.wet).toBeLessThanOrEqual(7);
    expect(documentFaults(calm)).toEqual([]);
  });

  test('a gear limit brings the speed to raise it by, and takes it along', () => {
    const retractable = made(start, { kind: 'figure', name: 'limits.gearKt', to: 120 });
    expect(retractable.climb.gearUpByKt).toBe(110);
    expect(documentFaults(retractable)).toEqual([]);
    const fixed = made(retractable, { kind: 'figure', name: 'limits.gearKt', to: null });
    expect(fixed.climb.gearUpByKt).toBeUndefined();
    expect(documentFaults(fixed)).toEqual([]);
  });

  test('the usual load has the fuel that makes the usual masses', () => {
    const loaded = made(
      start,
      { kind: 'figure', name: 'masses.emptyKg', to: 700 },
      { kind: 'figure', name: 'masses.usualTakeoffKg', to: 1000 },
      { kind: 'figure', name: 'masses.usualLandingKg', to: 950 },
      {
        kind: 'load',
        part: null,
        to: {
          fuel: { maxKg: 120, landingKg: 1 },
          crew: [{ name: 'Pilot', kg: 85 }],
          stations: [{ id: 'rear', name: 'Rear', kind: 'baggage', maxKg: 150 }],
          presets: [{ name: 'Usual', fuelKg: 1, stations: { rear: 110 } }],
        },
      },
    );
    expect(loaded.load?.presets[0]?.fuelKg).toBe(105);
    expect(loaded.load?.fuel.landingKg).toBe(55);
    expect(documentFaults(loaded)).toEqual([]);
  });
});

describe('another class', () => {
  const typed = made(
    fresh('jet-with-reheat'),
    named,
    { kind: 'figure', name: 'takeoff.rotateKt', to: 133 },
    { kind: 'figure', name: 'climb.reheatOffKt', to: 310 },
  );

  test('keeps what was typed, and assumes the rest anew', () => {
    const twin = made(typed, { kind: 'class', to: 'twin-jet' });
    expect(twin.takeoff.rotateKt).toBe(133);
    expect(twin.masses).toEqual(fresh('twin-jet').masses);
    expect(twin.name).toBe('Made-up Heron');
    expect(documentFaults(twin)).toEqual([]);
  });

  test('without reheat has no speed to put it out at', () => {
    expect(made(typed, { kind: 'class', to: 'jet' }).climb.reheatOffKt).toBeUndefined();
  });

  test('there and back is where it began', () => {
    const plain = made(fresh('turboprop'), named);
    const back = made(plain, { kind: 'class', to: 'jet' }, { kind: 'class', to: 'turboprop' });
    expect(back).toEqual(plain);
  });
});

test('the speed to put reheat out at comes back as the class has it when it is emptied', () => {
  const start = made(fresh('jet-with-reheat'), named);
  const typed = made(start, { kind: 'figure', name: 'climb.reheatOffKt', to: 280 });
  expect(made(typed, { kind: 'figure', name: 'climb.reheatOffKt', to: null })).toEqual(start);
});

describe('a load sheet to begin with', () => {
  const texts = { pilot: 'Pilot', usual: 'Usual' };

  test.each(AIRCRAFT_CLASSES)('holds together for the class %s', (of) => {
    const start = made(fresh(of), named);
    const loaded = made(start, { kind: 'load', part: null, to: newLoading(start, texts) });
    expect(documentFaults(loaded)).toEqual([]);
  });

  test('moves the usual landing mass with the fuel to land with, until that mass is typed', () => {
    const start = made(fresh('piston-single'), named);
    const load = newLoading(start, texts);
    const landing = (kg: number): AircraftEdit => ({
      kind: 'load',
      part: null,
      to: { ...load, fuel: { ...load.fuel, landingKg: kg } },
    });
    const loaded = made(start, landing(30));
    expect(loaded.masses.usualLandingKg).toBe(start.masses.emptyKg + 85 + 30);
    const typed = made(loaded, { kind: 'figure', name: 'masses.usualLandingKg', to: 900 });
    expect(typed.load?.fuel.landingKg).toBe(900 - start.masses.emptyKg - 85);
  });
});

test('a figure that is needed stays where no class says another', () => {
  const { madeFrom: _, ...own } = made(fresh('jet'), named);
  expect(made(own, { kind: 'figure', name: 'takeoff.rotateKt', to: null })).toEqual(own);
});

describe('a made-up handbook page of eight rows, pasted', () => {
  const PAGE = [
    'Pressure altitude ft\tOAT °C\tGround run m\tTo 50 ft m\tLanding run m\tLanding distance m',
    '0\t0\t205\t400\t140\t365',
    '0\t20\t235\t452\t150\t380',
    '0\t40\t268\t512\t160\t396',
    '2000\t0\t246\t478\t150\t382',
    '2000\t20\t281\t545\t162\t398',
    '4000\t0\t296\t580\t162\t400',
    '4000\t20\t340\t670\t174\t417',
    '4000\t30\t362\t722\t180\t426',
  ].join('\n');
  const figures: readonly AircraftEdit[] = [
    named,
    { kind: 'figure', name: 'masses.emptyKg', to: 680 },
    { kind: 'figure', name: 'masses.maxTakeoffKg', to: 1043 },
    { kind: 'figure', name: 'takeoff.rotateKt', to: 54 },
    { kind: 'figure', name: 'takeoff.liftOffKt', to: 57 },
    { kind: 'figure', name: 'landing.approachKt', to: 61 },
    { kind: 'figure', name: 'climb.speedKt.0', to: 70 },
    { kind: 'figure', name: 'climb.speedKt.1', to: 78 },
  ];
  const table = readTable(PAGE, { length: 'm', mass: 'kg' });
  const aircraft = made(fresh('piston-single'), ...figures, {
    kind: 'rows',
    part: null,
    to: table.rows,
  });
  const question = fitQuestion(aircraft);
  const fit = question && fitAircraft(question.aircraft, question.guesses);

  test('is read whole', () => {
    expect(table.problems).toEqual([]);
    expect(table.rows).toHaveLength(8);
  });

  test('is met in every row within 3 %, by a document that holds together', () => {
    expect(fit?.troubles).toEqual([]);
    expect(Math.abs(fit?.worst?.by ?? 1)).toBeLessThan(0.03);
    expect(documentFaults({ ...aircraft, performance: fit?.performance } as Aircraft)).toEqual([]);
  });
});

const LOAD: Loading = {
  fuel: { maxKg: 100, landingKg: 10 },
  crew: [{ name: 'Pilot', kg: 80 }],
  stations: [],
  presets: [{ name: 'Usual', fuelKg: 50, stations: {} }],
};

describe('the history', () => {
  const figure = fc.record({
    kind: fc.constant('figure' as const),
    name: fc.constantFrom(...FIGURE_NAMES),
    to: fc.option(fc.integer({ min: 1, max: 900 })),
  });
  const row = fc.record({ runM: fc.integer({ min: 50, max: 900 }) });
  const edit: fc.Arbitrary<AircraftEdit> = fc.oneof(
    figure,
    fc.record({
      kind: fc.constant('head' as const),
      set: fc.record({ name: fc.constantFrom('A', 'B'), code: fc.constantFrom('aa', 'bb') }),
    }),
    fc.record({
      kind: fc.constant('text' as const),
      name: fc.constantFrom('rotateTo', 'afterBreakaway', 'steering'),
      to: fc.constantFrom('', 'pedals'),
    }),
    fc.record({
      kind: fc.constant('power-unit' as const),
      unit: fc.constantFrom('%' as const, 'rpm' as const),
    }),
    fc.record({ kind: fc.constant('stop' as const), to: fc.constant(['brakes']) }),
    fc.record({
      kind: fc.constant('rows' as const),
      part: fc.constantFrom(null, '0.runM'),
      to: fc.array(row, { maxLength: 3 }),
    }),
    fc.constantFrom(...AIRCRAFT_CLASSES).map((to) => ({ kind: 'class' as const, to })),
    fc.record({
      kind: fc.constant('load' as const),
      part: fc.constantFrom(null, 'fuel'),
      to: fc.constantFrom(null, LOAD),
    }),
    fc.constantFrom(...AIRCRAFT_CLASSES).map((of) => ({
      kind: 'anew' as const,
      aircraft: fresh(of),
    })),
  );
  const start = beginHistory<Aircraft, AircraftEdit>(fresh('piston-single'));
  const performed = (edits: readonly AircraftEdit[]) =>
    edits.reduce((history, one) => changed(aircraftChanges, history, one, true), start);

  test('takes everything back to what was begun, and again to what was made', () => {
    fc.assert(
      fc.property(fc.array(edit, { maxLength: 25 }), (edits) => {
        const all = performed(edits);
        const back = all.steps.reduce((history) => undone(history), all);
        expect(documentNow(back)).toEqual(start.start);
        expect(documentNow(all.steps.reduce((history) => redone(history), back))).toEqual(
          documentNow(all),
        );
      }),
    );
  });

  test('stored and read again is the same', () => {
    fc.assert(
      fc.property(fc.array(edit, { maxLength: 25 }), (edits) => {
        const all = performed(edits);
        const read = restoredHistory(
          aircraftChanges,
          JSON.parse(JSON.stringify(storedHistory(all))),
        );
        expect(documentNow(read)).toEqual(documentNow(all));
      }),
    );
  });

  test('never makes a document of another shape, whatever is typed', () => {
    fc.assert(
      fc.property(fc.array(edit, { maxLength: 25 }), (edits) => {
        const codes = documentFaults(documentNow(performed(edits))).map(({ code }) => code);
        expect(codes).not.toContain('not-of-shape');
      }),
    );
  });

  test('reads back what was typed, in every figure', () => {
    for (const name of FIGURE_NAMES) {
      const { read, least } = figureSpec(name);
      const typed = made(fresh('jet-with-reheat'), { kind: 'figure', name, to: least + 7 });
      expect([name, read(typed)]).toEqual([name, least + 7]);
    }
  });
});
