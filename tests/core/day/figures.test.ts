import fc from 'fast-check';
import { beforeAll, expect, test } from 'vitest';
import { loadSheet } from '../../../src/core/aircraft/loadSheet';
import { endsOf } from '../../../src/core/airfield/ends';
import { degreesOf } from '../../../src/core/angle';
import { airOf } from '../../../src/core/day/air';
import { declaredFigures } from '../../../src/core/day/declared';
import type { Documents } from '../../../src/core/day/sources';
import { sunFigure } from '../../../src/core/day/sunFigure';
import { type LandingToday, type TakeoffToday, todayStage } from '../../../src/core/day/today';
import { type WeatherBrief, weatherStage } from '../../../src/core/day/weather';
import { lowSunAhead } from '../../../src/core/earth/lowSun';
import type { AnyFigure } from '../../../src/core/figure';
import { envelopeOf } from '../../../src/core/weather/envelope';
import { readReport } from '../../../src/core/weather/readReport';
import { speak } from '../../../src/parts/catalogues';
import { words } from '../../../src/views/why/words.en';
import { FORMULAS, figuresIn, MODELS, workedOutAgain } from './figures';
import {
  type AskedMoment,
  anyDocuments,
  anyMoment,
  anyTables,
  type Brief,
  brief,
  documentsAt,
  flown,
  moment,
  TABLES,
} from './moments';

beforeAll(() => speak('en'));

/** The groups that the weather's figures come from, each now and then missing. */
const anyReport = fc
  .record({
    wind: fc.constantFrom('28010KT', '28010G25KT', '/////KT'),
    temperature: fc.constantFrom('15/08', 'M12/M15', '15///', '///', '/////'),
    pressure: fc.oneof(
      fc.integer({ min: 900, max: 1060 }).map((hpa) => `Q${String(hpa).padStart(4, '0')}`),
      fc.constantFrom('A2992', 'Q////', ''),
    ),
  })
  .map((groups) => readReport(`METAR XHAR 051830Z ${Object.values(groups).join(' 9999 ')}`));

/** Any load of either demo aircraft, now and then without fuel, and no load at all. */
const anyLoad = fc.option(
  fc.record({
    fuelKg: fc.integer({ min: 0, max: 3000 }).map((kg) => (kg < 300 ? 0 : kg)),
    stations: fc.record({
      belly: fc.constantFrom(0, 220, 310),
      bags: fc.integer({ min: 0, max: 60 }),
    }),
  }),
);

/** Today's numbers on the end in use or the best; null where they are not worked out. */
function todayOf(
  { inputs }: AskedMoment,
  { field, aircraft }: Documents,
  { wind }: Brief,
  weather: WeatherBrief,
) {
  if (field === null || aircraft === null) return null;
  const air = airOf(field.place.elevationFt, inputs, weather);
  const load = loadSheet(aircraft, inputs.load);
  const end = wind.inUse ?? wind.ranked?.best ?? null;
  const given = { field, aircraft, load, air, inputs };
  const worked = todayStage(given, end?.designator ?? null, end?.headwindLeastKt ?? null, 7);
  return {
    air,
    takeoff: [worked.takeoff.expected, worked.takeoff.planned].map(figuresOf),
    landing: [worked.landing.expected, worked.landing.planned].map(figuresOf),
  };
}

const figuresOf = (today: TakeoffToday | LandingToday) =>
  today.because === null ? today.figures : null;

const anyBrief = fc
  .tuple(anyMoment, anyDocuments, anyTables, anyReport, anyLoad)
  .map(([moment, documents, tables, report, load]) => {
    // Today's numbers are worked out below, for the weather of the report.
    const told = brief(moment, documents, { ...tables, physics: 'loading' });
    const { aircraft } = documents;
    const sheet = aircraft && loadSheet(aircraft, load);
    const weather = weatherStage(report, told.settled);
    const inputs = { ...moment.inputs, load };
    const today = todayOf({ ...moment, inputs }, documents, told, weather);
    const { settled, wind, numbers, taxi } = told;
    return { told: { settled, wind, numbers, taxi, weather, load: sheet, today } };
  });

test('every figure is the one that its own inputs give', () => {
  fc.assert(
    fc.property(anyBrief, ({ told }) => {
      for (const [path, figure] of figuresIn(told)) {
        if (figure.value === null) continue;
        const again = workedOutAgain(figure.why);
        const off = Math.abs(figure.value - again);
        // A heading of 360 minus nothing and one of nothing are one direction.
        const apart = figure.unit === 'deg' ? Math.min(off, Math.abs(360 - off)) : off;
        // Found by trial, to the hundredth of a knot.
        const near = figure.why.formula === 'engine-out-run' ? 0.02 : 1e-9;
        expect([path, apart < near]).toEqual([path, true]);
      }
    }),
    { numRuns: 150 },
  );
});

test('what is left of an end is left of a length that the field declares', () => {
  fc.assert(
    fc.property(anyBrief, ({ told: { settled, wind } }) => {
      const { field, rules } = settled;
      for (const { designator, given } of field === null ? [] : endsOf(field)) {
        const left = wind.figures.get(designator)?.left;
        if (left === undefined || left.value === null) continue;
        const ldaM = Math.min(given.ldaM, rules.holdShortM?.[designator] ?? given.ldaM);
        const { neededM: _, ...named } = left.why.inputs;
        expect({ toraM: given.toraM, todaM: given.todaM, ldaM }).toMatchObject(named);
      }
    }),
  );
});

test('a figure that is not known has a cause, and one that is known is a number', () => {
  fc.assert(
    fc.property(anyBrief, ({ told }) => {
      for (const [path, figure] of figuresIn(told)) {
        if (figure.value === null)
          expect([path, words.causes[figure.because]]).toEqual([path, expect.any(String)]);
        else expect([path, Number.isFinite(figure.value)]).toEqual([path, true]);
      }
    }),
  );
});

/** The weather at a field so low, under a pressure so high, that the standard atmosphere does not reach there. */
function belowTheSea() {
  const { settled } = brief(moment(null), documentsAt('XHAR'), TABLES);
  if (settled.field === null) throw new Error('no field');
  const place = { ...settled.field.place, elevationFt: -1400 };
  const report = readReport('METAR XHAR 051830Z 28010KT 9999 15/08 Q1060');
  return weatherStage(report, { ...settled, field: { ...settled.field, place } });
}

/** The sun on each end of Harrow Sound through a day in April: low ahead on some, and on others not. */
function lowSuns() {
  const { field } = documentsAt('XHAR');
  if (field === null) throw new Error('no field');
  const { place } = field;
  return [6, 12, 18].flatMap((hour) =>
    endsOf(field).map(({ heading }) =>
      sunFigure(lowSunAhead(place, heading, new Date(Date.UTC(1987, 3, 5, hour, 50))), place),
    ),
  );
}

/** The tourer at the high field on a day so hot and low that it leaves the ground and can go no higher. */
function tooHighToClimb() {
  const documents = { ...documentsAt('XTUM'), ...flown('tussock') };
  const hot = moment(null, { ownQnhHpa: 850, ownTemperatureC: 55 });
  const told = brief(hot, documents, TABLES);
  const weather = weatherStage(
    readReport('METAR XTUM 051830Z 28010KT 9999 15/08 Q1010'),
    told.settled,
  );
  return todayOf(hot, documents, told, weather);
}

/** A jet of an older document, which does not say what heat takes of its thrust. */
function olderJet() {
  const { aircraft } = flown('turnstone');
  const { performance } = aircraft ?? {};
  if (!aircraft || performance?.thrust.kind !== 'jet') throw new Error('no jet');
  const { at20Hotter: _, ...thrust } = performance.thrust;
  const older = { ...aircraft, performance: { ...performance, thrust } };
  const { today } = brief(moment('28010KT'), { ...documentsAt('XHAR'), aircraft: older }, TABLES);
  return today?.takeoff.planned.because === null ? today.takeoff.planned.figures : null;
}

/** What the ends of Harrow Sound offer by its document. */
function declaredLengths() {
  const { settled } = brief(moment(null), documentsAt('XHAR'), TABLES);
  const { field, variation } = settled;
  return field === null ? [] : endsOf(field).map((end) => declaredFigures(end, variation));
}

/** A weak wind on a field with one end open: from wherever it blows, that end is best. */
const alwaysBest = () =>
  brief(
    moment('09006KT', { closedToday: ['27'] }),
    { ...documentsAt('XCAI'), ...flown('tussock') },
    TABLES,
  );

test('the height of a low sun is the one that its own place and time give', () => {
  for (const figure of lowSuns()) {
    if (figure.value !== null) expect(workedOutAgain(figure.why)).toBe(figure.value);
  }
});

/** The names in every figure of many briefs: formulas, sources, inputs. */
function namesMet() {
  const met = {
    formulas: new Set<string>(),
    sources: new Set<string>(),
    inputs: new Set<string>(),
    causes: new Set<string>(),
  };
  const meet = (figure: AnyFigure) => {
    if (figure.value === null) {
      met.causes.add(figure.because);
      return;
    }
    met.formulas.add(figure.why.formula);
    met.sources.add(figure.why.source);
    for (const name of Object.keys(figure.why.inputs)) met.inputs.add(name);
  };
  for (const { told } of fc.sample(anyBrief, { numRuns: 400, seed: 1987 })) {
    for (const [, figure] of figuresIn(told)) meet(figure);
  }
  for (const [, figure] of figuresIn([
    belowTheSea(),
    lowSuns(),
    tooHighToClimb(),
    alwaysBest(),
    olderJet(),
    declaredLengths(),
  ]))
    meet(figure);
  for (const name of MODELS.keys()) met.sources.add(name);
  return met;
}

test('there are words for all that can stand behind a figure, and none without a figure', () => {
  const met = namesMet();
  const known = (sentences: object) => Object.keys(sentences).sort();
  expect([...met.formulas].sort()).toEqual(known(words.formulas));
  expect([...met.sources].sort()).toEqual(known(words.sources));
  expect([...met.inputs].sort()).toEqual(known(words.inputNames));
  expect([...met.causes].sort()).toEqual(known(words.causes));
});

test('what an end offers is what its document declares, and its heading turns by the variation', () => {
  const { field } = documentsAt('XHAR');
  const lengths = declaredLengths();
  expect(lengths.length).toBeGreaterThan(3);
  for (const [index, end] of (field === null ? [] : endsOf(field)).entries()) {
    const { toraM, todaM, asdaM, ldaM, headingMagnetic } = lengths[index] ?? {};
    expect([toraM, todaM, asdaM, ldaM].map((one) => one?.value)).toEqual([
      end.given.toraM,
      end.given.todaM,
      end.given.asdaM,
      end.given.ldaM,
    ]);
    if (headingMagnetic === undefined || headingMagnetic.value === null)
      throw new Error('no heading');
    expect(headingMagnetic.value).toBeCloseTo(workedOutAgain(headingMagnetic.why), 9);
  }
});

test('every formula there are words for is worked out again in these tests', () => {
  expect(Object.keys(FORMULAS).sort()).toEqual(Object.keys(words.formulas).sort());
});

test('the angles behind the worst winds are angles at which the wind may blow', () => {
  const directed = anyBrief.filter(({ told }) => told.wind.fromTrueDeg !== null);
  fc.assert(
    fc.property(directed, ({ told: { wind, settled } }) => {
      const blowing = wind.report?.wind;
      if (!blowing || settled.field === null) return;
      const envelope = envelopeOf(blowing);
      if (envelope.kind !== 'sector') return;
      // To the wind's own north, where the envelope is; the runway is turned there with the mean.
      const turned = (wind.fromTrueDeg ?? 0) - (blowing.fromDeg ?? 0);
      for (const { designator, heading } of endsOf(settled.field)) {
        const figures = wind.figures.get(designator);
        if (figures === undefined) continue;
        const offs = Array.from({ length: envelope.widthDeg + 1 }, (_, deg) => {
          const off = Math.abs(envelope.fromDeg + deg + turned - degreesOf(heading)) % 360;
          return Math.min(off, 360 - off);
        });
        const nearest = Math.min(...offs.map((off) => Math.abs(90 - off)));
        const across = angleOf(figures.crosswindWorst);
        const behind = angleOf(figures.tailwindWorst);
        // Whole degrees may miss the very angle by half of one.
        if (across !== null) expect(Math.abs(Math.abs(90 - across) - nearest)).toBeLessThan(0.501);
        if (behind !== null) expect(Math.abs(behind - Math.max(...offs))).toBeLessThan(0.501);
      }
    }),
    { numRuns: 300 },
  );
});

function angleOf(figure: AnyFigure): number | null {
  if (figure.value === null) return null;
  const { angleDeg } = figure.why.inputs;
  return typeof angleDeg === 'number' ? angleDeg : null;
}

test('the angle of a wind that never comes from behind is not that of one from the side', () => {
  const { wind } = brief(moment('28010KT'), documentsAt('XHAR'), TABLES);
  const tailwind = wind.figures.get('28')?.tailwindWorst;
  expect(tailwind?.value).toBe(0);
  expect(tailwind && angleOf(tailwind)).toBeLessThan(30);
});

test('an aircraft that does not give a figure is the cause that there is none', () => {
  const documents = documentsAt('XHAR');
  const aircraft = documents.aircraft;
  if (aircraft === null) throw new Error('no aircraft');
  const { gearKt: _, ...limits } = aircraft.limits;
  const told = brief(moment(null), { ...documents, aircraft: { ...aircraft, limits } }, TABLES);
  expect(told.numbers?.limits.gearKt).toEqual({ value: null, because: 'not-in-aircraft' });
  expect(told.numbers?.limits.flapsKt.value).toBe(285);
});
