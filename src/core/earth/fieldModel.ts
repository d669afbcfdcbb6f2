/**
 * Which model of the earth's magnetic field answers for a date, and its coefficients on that date.
 *
 * | from                | model     |                                                            |
 * | ------------------- | --------- | ---------------------------------------------------------- |
 * | 1900-01-01          | IGRF-12   | degree 13 (10 before 2000), linear between five-year epochs |
 * | 2015-01-01          | WMM2015   | degree 12, base and yearly change from 2015.0               |
 * | 2018-09-18          | WMM2015v2 | the same, corrected in the Arctic, from the date of its file |
 * | 2020-01-01          | WMM2020   | degree 12, base and yearly change from 2020.0               |
 * | 2025-01-01          | WMM2025   | degree 12, base and yearly change from 2025.0               |
 * | 2030-01-01 00:00 Z  |           | nothing is published for later                              |
 *
 * Variation jumps where one model follows another: a forecast ends and a fresh survey begins. Where
 * a compass can be used, it jumps by up to 0.1°, 0.5°, 0.2° and 0.6° between 60 N and 60 S at the four
 * switches, and by up to 0.9° in higher latitudes; the tests hold it to that.
 *
 * Each model's coefficients are a module of their own, loaded when a date first asks for them.
 */

/** A model as its publisher names it. */
export type FieldModelName = 'IGRF-12' | 'WMM2015' | 'WMM2015v2' | 'WMM2020' | 'WMM2025';

/** A model of the magnetic field, with its coefficients loaded. Made by {@link fieldModelFor}. */
export interface FieldModel {
  readonly name: FieldModelName;
  /** The first moment it covers. */
  readonly from: Date;
  /** The last moment it covers; here, except in 2030, the next model begins. */
  readonly until: Date;
  /**
   * g10, g11, h11, g20, ... in nT at a moment. Throws RangeError outside `from` to `until`, both
   * included. The last moment's answer is cached, so many places at one date cost one
   * interpolation.
   */
  coefficientsAt(at: Date): Float64Array;
}

interface Span {
  readonly name: FieldModelName;
  readonly fromMs: number;
  readonly untilMs: number;
  /** Loads the tables and returns the coefficients as a function of the decimal year. */
  readonly load: () => Promise<(year: number) => Float64Array>;
}

const START_2015 = Date.UTC(2015, 0, 1);
const START_2015V2 = Date.UTC(2018, 8, 18);
const START_2020 = Date.UTC(2020, 0, 1);
const START_2025 = Date.UTC(2025, 0, 1);

const SPANS: readonly Span[] = [
  {
    name: 'WMM2025',
    fromMs: START_2025,
    untilMs: Date.UTC(2030, 0, 1),
    load: async () => forecast(await import('./coefficients/wmm2025')),
  },
  {
    name: 'WMM2020',
    fromMs: START_2020,
    untilMs: START_2025,
    load: async () => forecast(await import('./coefficients/wmm2020')),
  },
  {
    name: 'WMM2015v2',
    fromMs: START_2015V2,
    untilMs: START_2020,
    load: async () => forecast(await import('./coefficients/wmm2015v2')),
  },
  {
    name: 'WMM2015',
    fromMs: START_2015,
    untilMs: START_2015V2,
    load: async () => forecast(await import('./coefficients/wmm2015')),
  },
  {
    name: 'IGRF-12',
    fromMs: Date.UTC(1900, 0, 1),
    untilMs: START_2015,
    load: async () => betweenEpochs(await import('./coefficients/igrf12')),
  },
];

const loaded = new Map<FieldModelName, FieldModel>();

/**
 * The model for a moment, its tables loaded. At a switch it is the newer model. The same model is
 * the same object each time.
 *
 * Rejects with RangeError for an invalid date and outside 1900-01-01 to 2030-01-01 00:00 UTC, and
 * with the loader's own error if the tables can't be fetched; call again to retry.
 */
export async function fieldModelFor(at: Date): Promise<FieldModel> {
  const span = SPANS.find(({ fromMs, untilMs }) => isWithin(at, fromMs, untilMs));
  if (!span) throw new RangeError('no magnetic model for this date: 1900-01-01 to 2030-01-01');
  const inHand = loaded.get(span.name);
  if (inHand) return inHand;
  const model = modelOf(span, await span.load());
  loaded.set(span.name, model);
  return model;
}

function modelOf(span: Span, inYear: (year: number) => Float64Array): FieldModel {
  const { name, fromMs, untilMs } = span;
  let keptMs = Number.NaN;
  let kept: Float64Array = new Float64Array();
  return {
    name,
    from: new Date(fromMs),
    until: new Date(untilMs),
    coefficientsAt(at) {
      if (at.getTime() === keptMs) return kept;
      if (!isWithin(at, fromMs, untilMs))
        throw new RangeError(`${name} has no field for this date`);
      kept = inYear(decimalYear(at));
      keptMs = at.getTime();
      return kept;
    },
  };
}

/** False for an invalid date, whose time is NaN. */
function isWithin(at: Date, fromMs: number, untilMs: number): boolean {
  return at.getTime() >= fromMs && at.getTime() <= untilMs;
}

/** The decimal year, UTC, as the models' epochs count: 2024-07-02T00:00Z is 2024.5. */
function decimalYear(at: Date): number {
  const year = at.getUTCFullYear();
  const start = Date.UTC(year, 0, 1);
  return year + (at.getTime() - start) / (Date.UTC(year + 1, 0, 1) - start);
}

interface Forecast {
  readonly epoch: number;
  readonly mainField: readonly number[];
  readonly changePerYear: readonly number[];
}

/**
 * Main field plus its yearly change since the epoch. WMM2025 Technical Report, relevant model
 * equations.
 */
function forecast({ epoch, mainField, changePerYear }: Forecast) {
  return (year: number) =>
    Float64Array.from(mainField, (base, i) => base + (year - epoch) * (changePerYear[i] ?? 0));
}

interface Epochs {
  readonly firstYear: number;
  readonly yearsApart: number;
  readonly mainFields: readonly (readonly number[])[];
}

/**
 * Linear between epochs; a row that lacks the higher degrees has them as zero. Alken et al. 2021.
 */
function betweenEpochs({ firstYear, yearsApart, mainFields }: Epochs) {
  return (year: number) => {
    const position = (year - firstYear) / yearsApart;
    // The last epoch closes the last interval rather than opening one without an end.
    const row = Math.min(Math.floor(position), mainFields.length - 2);
    const before = mainFields[row] ?? [];
    const after = mainFields[row + 1] ?? [];
    const gone = position - row;
    return Float64Array.from(after, (end, i) => {
      const start = before[i] ?? 0;
      return start + gone * (end - start);
    });
  };
}
