/**
 * The day, composed once: conditions → lengths → wind → numbers → route → verdict → steps.
 *
 * Each stage depends only on the ones before it and the sources; none is filled in by a later one.
 * The app passes a memo made of signals, everything else the plain one.
 */

import { usualLoad } from '../aircraft/load';
import { type LoadFigures, loadSheet } from '../aircraft/loadSheet';
import { endsOf } from '../airfield/ends';
import type { SunDay } from '../earth/sun';
import type { Facts } from '../procedure/facts';
import { type PhaseTimes, phaseTimes } from '../procedure/phaseTimes';
import type { Phase } from '../procedure/procedure';
import { preferenceApplies } from '../runway/preference';
import type { Purpose, RankedEnd } from '../runway/question';
import { sameData } from '../same';
import type { Inputs } from '../sortie/entry';
import { brakesUsedMs, type EnteredWind } from '../sortie/fold';
import type { Wind } from '../weather/report';
import { type Report, statesWeather } from '../weather/whole/report';
import { type Conditions, isControlled, variationFigure } from './conditions';
import type { ExpectedBrief } from './expected';
import type { Ladder } from './ladder';
import { bookRuns, type LengthsNeeded, taxiDistance } from './lengths';
import type { Memo } from './memo';
import { type NumbersBrief, numbersStage } from './numbers';
import type { OutlookBrief } from './outlook';
import { type NoParachute, noParachuteOf } from './parachute';
import { type OnTheGround, routeOf, type Standing, standingOf } from './route';
import { purposeOf, rulesOf, type SettledFacts, windLimits } from './settled';
import {
  type Getters,
  type LatePart,
  type LateParts,
  present,
  type Sources,
  type WindText,
} from './sources';
import { givenQnhHpa, stepFacts } from './stepFacts';
import { type StepsBrief, stepsStage } from './steps';
import { type TaxiBrief, taxiStage } from './taxi';
import type { DayGiven, TodayBrief } from './today';
import { type Verdict, verdictOf } from './verdict';
import { answerWind, type ReadWind, readEnteredWind, type WindAnswer } from './wind';
import { windsHere } from './winds';

/** Everything worked out about a day. */
export interface DayBrief extends Standing, OnTheGround {
  readonly inputs: Inputs;
  readonly purpose: Purpose;
  /** The wind in use, as it was entered last at this field; null before the first. */
  readonly enteredWind: EnteredWind | null;
  /** All winds, reports and forecasts that count at this field, oldest first. */
  readonly windsHere: readonly EnteredWind[];
  /** The last wind of another field, which doesn't count, while there is none of this one. */
  readonly windElsewhere: EnteredWind | null;
  /** The wind in use is what a forecast gives for now, because no other was entered. */
  readonly windIsForecast: boolean;
  /**
   * What was entered last is a forecast that can be used, or one that takes another's place; null
   * until the code has loaded.
   */
  readonly expects: boolean | null;
  readonly enteredText: WindText | null;
  readonly read: ReadWind;

  /** The last report entered, read whole; null without one, and until the reader has loaded. */
  readonly report: Report | null;
  /** The text it stands in, with whatever else was pasted. */
  readonly reportText: string | null;
  /** Whether a wind was entered after it, which replaced its wind and nothing else. */
  readonly windIsNewer: boolean;
  readonly weather: Conditions['weather'];
  readonly issuedMs: number | null;
  readonly lowSunOn: Conditions['lowSunOn'];
  /** Sunrise, sunset and civil twilight at the field on the sortie's day; null without a field. */
  readonly sunToday: SunDay | null;
  readonly air: Conditions['air'];
  readonly conditions: Conditions;

  /** The aircraft's mass with today's load, or its usual one; null without an aircraft. */
  readonly load: LoadFigures | null;
  /** Why the parachute doesn't count; null if it does, or there is none. */
  readonly noParachute: NoParachute | null;
  /** What today's numbers need, but for the wind; null while something is missing. */
  readonly dayGiven: DayGiven | null;
  readonly settled: SettledFacts;

  readonly wind: WindAnswer;
  /** Where the winds entered so far lead; null until the code has loaded. */
  readonly outlook: OutlookBrief | null;
  /** What is forecast, judged for that runway; null until the code has loaded. */
  readonly expected: ExpectedBrief | null;

  /** The document's plain figures; null without an aircraft. */
  readonly numbers: NumbersBrief | null;
  /** The end the numbers are for: the one in use, else the best. */
  readonly numbersEnd: RankedEnd | null;
  /** Today's numbers; null until loaded, without field or aircraft, and with book figures only. */
  readonly today: TodayBrief | null;
  /** The ladder of the roll; null without a take-off to base it on. */
  readonly ladder: Ladder | null;

  readonly taxi: TaxiBrief | null;
  readonly verdict: Verdict;
  readonly facts: Facts;
  /** Null without a procedure. */
  readonly steps: StepsBrief | null;
  /** Time spent in each phase; null without a procedure. */
  readonly times: PhaseTimes | null;
}

export type Day = Getters<DayBrief>;

/** The day, worked out from its sources on demand. */
export function day(sources: Sources, memo: Memo): Day {
  const { sortie, documents, minuteMs, secondMs, parts } = sources;
  const { field, aircraft, procedure } = documents;
  const at = () => new Date(minuteMs());
  const reports = memo(() => present(parts.reports()));
  const physics = memo(() => present(parts.physics()));
  const sun = memo(() => present(parts.sun()));

  // The sortie's inputs, grouped by what they settle.
  const inputs = memo(() => sortie().inputs, sameData);
  const group = <T>(of: (inputs: Inputs) => T) => memo(() => of(inputs()), sameData);
  const surface = group((all) => all.surface);
  const chosen = group((all) => all.chosen);
  const taxiClosed = group((all) => all.taxiClosed);
  const limits = memo(() => windLimits(aircraft(), inputs()), sameData);
  const purpose = memo(() => purposeOf(inputs(), sortie()));
  const winds = memo(() => windsHere(sortie(), field()?.code ?? null, sources.fieldCode), sameData);
  const placedWind = memo(() => winds().inUse);
  const enteredWind = memo(() => placedWind()?.entered ?? null);
  const windIsForecast = memo(() => placedWind()?.isForecast === true);
  const enteredText = memo((): WindText | null => {
    const entered = enteredWind();
    return entered === null ? null : { text: entered.text, north: entered.north };
  }, sameData);
  const read = memo(() => readEnteredWind(enteredText()));

  // Conditions. What is entered replaces what it states: a wind in short the wind alone.
  const weatherIn = (text: string): Report | null => {
    const whole = reports()?.readReport(text) ?? null;
    return whole !== null && statesWeather(whole) ? whole : null;
  };
  const windsBefore = memo(() => sortie().windsBefore, sameData);
  const placedReport = memo(() => {
    const placed = winds().all.findLast(({ entered }) => weatherIn(entered.text) !== null);
    const whole = weatherIn(placed?.entered.text ?? '');
    return placed === undefined || whole === null ? null : { ...placed, report: whole };
  });
  const report = memo(() => placedReport()?.report ?? null);
  const windIsNewer = memo(() => {
    const [of, last] = [placedReport(), placedWind()];
    return of !== null && last !== null && last.place !== of.place;
  });
  const weather = memo(() => {
    const [code, whole] = [reports(), report()];
    if (code === null || whole === null) return null;
    return code.weatherStage(whole, { field: field(), surface: surface() });
  });
  const issuedMs = memo(() => {
    const [code, issued] = [reports(), report()?.issued ?? null];
    return code === null || issued === null ? null : code.issuedAt(issued, at()).getTime();
  });
  const variation = memo(
    () => variationFigure(inputs().variationDeg, field(), at(), present(parts.variation())),
    sameData,
  );
  const sunFacts = memo(() => {
    const [code, place] = [sun(), field()?.place];
    return code === null || place === undefined ? null : code.sunFacts(place, at());
  }, sameData);
  const lowSunOn = memo(() => {
    const [code, of] = [sun(), field()];
    if (code === null || of === null) return new Map();
    return new Map(
      endsOf(of).map(({ designator, heading }) => [
        designator,
        code.lowSunAhead(of.place, heading, at()),
      ]),
    );
  }, sameData);
  const sunToday = memo(() => {
    const [code, place] = [sun(), field()?.place];
    return code === null || place === undefined ? null : code.sunDay(place, at());
  }, sameData);
  const controlled = memo(() => {
    const of = field();
    return of === null ? null : isControlled(of);
  });
  const typedBefore = memo(() => {
    const { ownQnhHpa, ownTemperatureC } = windsBefore();
    const place = placedReport()?.place ?? -1;
    return [
      ...(place >= ownQnhHpa ? (['qnh'] as const) : []),
      ...(place >= ownTemperatureC ? (['temperature'] as const) : []),
    ];
  }, sameData);
  const air = memo(() => {
    const [code, of] = [physics(), field()];
    return code === null || of === null
      ? null
      : code.airOf(of.place.elevationFt, inputs(), weather(), typedBefore());
  }, sameData);
  const conditions = memo(
    (): Conditions => ({
      surface: surface(),
      variation: variation(),
      sun: sunFacts(),
      lowSunOn: lowSunOn(),
      controlled: controlled(),
      weather: weather(),
      issuedMs: issuedMs(),
      air: air(),
    }),
  );

  // Lengths and taxi distances.
  const loading = group((all) => all.load);
  const load = memo(() => {
    const flown = aircraft();
    return flown === null ? null : loadSheet(flown, loading());
  }, sameData);
  const noParachute = memo(() =>
    noParachuteOf({
      aircraft: aircraft(),
      procedure: procedure(),
      run: sortie().run,
      inputs: inputs(),
    }),
  );
  const rolling = memo(() => {
    const { rollsFromM, taxiEntry, checkMarkM, holdShortM, factors } = inputs();
    const where = { rollsFromM, taxiEntry, chosen: chosen() };
    const given = {
      ...where,
      checkMarkM,
      holdShortM,
      factors,
      noParachute: noParachute() !== null,
    };
    return { surface: surface(), load: loading(), ...given };
  }, sameData);
  const dayGiven = memo((): DayGiven | null => {
    const [of, flown, airNow, sheet] = [field(), aircraft(), air(), load()];
    if (of === null || flown === null || airNow === null || sheet === null) return null;
    if (flown.performance === undefined) return null;
    return { field: of, aircraft: flown, air: airNow, load: sheet, inputs: rolling() };
  });
  const lengthNeededM = memo((): LengthsNeeded | null => {
    const [code, given, flown] = [physics(), dayGiven(), aircraft()];
    if (code !== null && given !== null) return code.lengthsNeeded(given);
    return flown === null ? null : bookRuns(flown);
  });
  const standing = standingOf(sources, taxiClosed, memo);
  const taxiDistanceM = memo(() => {
    const [code, of, from] = [present(parts.taxi()), field(), standing.from()];
    if (code === null || of === null || from === null) return null;
    return taxiDistance(code, of, from, standing.rules());
  });

  // Rules, and what else is settled before the wind.
  const applies = memo(() => {
    const now = weather()?.now;
    return preferenceApplies({
      purpose: purpose(),
      surface: surface(),
      visibilityM: now?.visibilityM ?? null,
      ceilingFt: now?.ceilingFt ?? null,
      windShear: now?.windShear ?? false,
      thunderstorm: now?.thunderstorm ?? false,
    });
  });
  const rules = memo(() => {
    const leastWidthM = aircraft()?.limits.leastWidthM;
    return rulesOf(inputs(), field(), applies(), weather()?.closure, {
      ...(leastWidthM === undefined ? {} : { leastWidthM }),
      ...(sunFacts()?.night.holds === true ? { night: true } : {}),
    });
  }, sameData);
  const settled = memo(
    (): SettledFacts => ({
      field: field(),
      aircraft: aircraft(),
      surface: surface(),
      variation: variation(),
      ...limits(),
      rules: rules(),
      lengthNeededM: lengthNeededM(),
      taxiDistanceM: taxiDistanceM(),
      sun: sunFacts(),
      controlled: controlled(),
    }),
  );

  // Wind: judged anew only if the text says another one.
  const forecasts = memo(
    () => reports()?.forecastsHere(winds().all, placedReport(), field()?.code ?? null) ?? [],
    sameData,
  );
  const expects = memo(() => {
    const last = winds().all.at(-1);
    const code = reports();
    if (last?.isForecast !== true) return false;
    if (code === null) return null;
    const { text, at: entered } = last.entered;
    return code
      .forecastsIn(text, entered.sortieMs)
      .some(({ state, parts }) => state !== 'given' || parts.length > 0);
  });
  const forecastInUse = memo(() =>
    windIsForecast() ? (reports()?.windForecast(forecasts(), at()) ?? null) : null,
  );
  const said = memo(
    (): { readonly wind: Wind | null; readonly north: ReadWind['north'] } =>
      windIsForecast()
        ? { wind: forecastInUse()?.wind ?? null, north: 'true' }
        : { wind: read().report?.wind ?? null, north: read().north },
    sameData,
  );
  const wind = memo(() => {
    const { wind: blowing, north } = said();
    return answerWind(settled(), blowing, north, purpose(), chosen(), at());
  });
  const outlook = memo(() => {
    const blown = winds()
      .all.filter(({ isForecast }) => !isForecast)
      .map(({ entered: { text, north, at } }) => ({ text, north, timeMs: at.sortieMs }));
    return reports()?.outlookStage(blown, settled(), purpose(), at()) ?? null;
  });
  const expected = memo(() => {
    const end = wind().inUse ?? wind().ranked?.best ?? null;
    const code = reports();
    return code === null
      ? null
      : code.expectedStage(
          forecasts(),
          settled(),
          purpose(),
          end?.designator ?? wind().using,
          at(),
          forecastInUse(),
        );
  });

  // Numbers.
  const numbers = memo(() => numbersStage(aircraft()));
  const numbersEnd = memo(() => wind().inUse ?? wind().ranked?.best ?? null);
  const today = memo((): TodayBrief | null => {
    const [code, given] = [physics(), dayGiven()];
    if (code === null || given === null) return null;
    const end = numbersEnd();
    const { speedKt, gustKt } = wind().wind ?? { speedKt: null, gustKt: null };
    return code.todayStage(
      given,
      end?.designator ?? wind().using,
      end?.headwindLeastKt ?? null,
      speedKt === null || gustKt === null ? 0 : gustKt - speedKt,
      end?.headwindKt ?? end?.headwindLeastKt ?? null,
    );
  });
  const ladder = memo(() => {
    const [code, known] = [physics(), today()];
    return code === null || known === null ? null : code.ladderOf(known);
  });

  // Route on the ground.
  const using = memo(() => wind().using);
  const qnhHpa = memo(() => givenQnhHpa(air()));
  const phase = memo((): Phase | null => steps()?.walk.phase ?? null);
  const ground = routeOf(sources, { ...standing, purpose, using, today, qnhHpa, phase }, memo);
  const crossesRunway = memo(() => {
    const way = ground.route();
    return way === null ? null : way.crossings.length > 0;
  });

  // Verdict.
  const awaited = memo(() => partsThat(parts, 'loading'), sameData);
  const failed = memo(() => partsThat(parts, 'failed'), sameData);
  const windAgeMin = memo(() => {
    const entered = enteredWind();
    // What is forecast for now is as old as the forecast, whose time is checked.
    if (entered === null || windIsForecast()) return null;
    const sinceMs = windIsNewer() ? null : issuedMs();
    return (minuteMs() - (sinceMs ?? entered.at.sortieMs)) / 60_000;
  });
  const minima = group(({ ownVisibilityM, ownCeilingFt }) => ({ ownVisibilityM, ownCeilingFt }));
  const bingoKg = memo(() => inputs().bingoKg);
  const fuel = memo(() => {
    const [bingo, flown] = [bingoKg(), aircraft()];
    if (bingo === null || flown?.load === undefined) return null;
    return { onBoardKg: (inputs().load ?? usualLoad(flown.load)).fuelKg, bingoKg: bingo };
  }, sameData);
  const brakesUsedMin = memo(() => {
    const usedMs = brakesUsedMs(sortie());
    // They cool by the device's clock, whatever the sortie's is set to.
    return usedMs === null ? null : Math.floor((secondMs() - usedMs) / 60_000);
  });
  const bookLeftOver = memo(() => {
    const [code, flown] = [physics(), aircraft()];
    return code === null || flown === null ? null : (code.bookLeftOver(flown)?.by ?? null);
  });
  const verdict = memo(() =>
    verdictOf({
      wind: wind(),
      load: load(),
      noParachute: noParachute(),
      today: today(),
      settled: settled(),
      conditions: { weather: weather(), air: air(), lowSunOn: lowSunOn() },
      windAgeMin: windAgeMin(),
      minima: minima(),
      fuel: fuel(),
      brakesUsedMin: brakesUsedMin(),
      bookLeftOver: bookLeftOver(),
      expected: expected(),
      awaited: awaited(),
      failed: failed(),
    }),
  );

  // Steps.
  const facts = memo(
    () =>
      stepFacts({
        settled: settled(),
        wind: wind(),
        entered: enteredText(),
        numbers: numbers(),
        today: today(),
        awaited: parts.physics() === 'loading' && aircraft()?.performance !== undefined,
        air: air(),
        load: load(),
        crossesRunway: crossesRunway(),
        crossing: ground.crossingStep(),
        procedure: procedure(),
        inputs: inputs(),
      }),
    sameData,
  );
  const habits = group(({ ties, notSimulated }) => ({ ties, notSimulated }));
  const steps = memo(() => {
    const { run, list, stamps } = sortie();
    return stepsStage(procedure(), habits(), run, list, stamps, facts());
  });
  const times = memo(() => {
    const { run, stamps } = sortie();
    const now = steps();
    return now === null ? null : phaseTimes(now.procedure, run, stamps);
  });

  return {
    inputs,
    purpose,
    enteredWind,
    windsHere: memo(() => winds().all.map(({ entered }) => entered)),
    windElsewhere: memo(() => winds().elsewhere),
    windIsForecast,
    expects,
    enteredText,
    read,
    report,
    reportText: memo(() => placedReport()?.entered.text ?? null),
    windIsNewer,
    weather,
    issuedMs,
    lowSunOn,
    sunToday,
    air,
    conditions,
    load,
    noParachute,
    dayGiven,
    ...standing,
    settled,
    wind,
    outlook,
    expected,
    numbers,
    numbersEnd,
    today,
    ladder,
    ...ground,
    taxi: memo(() => taxiStage(aircraft(), field())),
    verdict,
    facts,
    steps,
    times,
  };
}

/** Parts in a given state. */
function partsThat(
  parts: Sources['parts'],
  state: 'loading' | 'failed',
): readonly (keyof LateParts)[] {
  const all: Readonly<Record<keyof LateParts, () => LatePart<object>>> = parts;
  const names = ['reports', 'physics', 'taxi', 'sun', 'variation'] as const;
  return names.filter((name) => all[name]() === state);
}
