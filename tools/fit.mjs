/**
 * Fits an aircraft's physics to the few figures that a handbook prints:
 * `npm run fit -- <aircraft.json> <handbook.json>`, or `npm run fit -- <aircraft.json>` to use only
 * the document's plain figures.
 *
 * The document needs a `performance` to start from; one from the same class will do, with its own
 * wing area, thrust and gear. The handbook file is a list of rows, each with any of `massKg`,
 * `pressureAltitudeFt`, `temperatureC`, `headwindKt`, and the book's figures for them: `runM`,
 * `to50ftM`, `climbFtMin`, `landingRunM`, `landingM` (from 50 ft), `takeoffStallKt`.
 *
 * Lift, drag and friction move until the rows fit, none further than it must; what remains is
 * printed beside them, with whatever still contradicts itself. Nothing is written.
 */

import { readFile } from 'node:fs/promises';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { readableJson } from './demo/json.mjs';

/** What may move: its path in the performance, for which figures, and by what factor. */
const TERMS = [
  { path: ['wing', 'ground', 'cd'], of: ['runM', 'to50ftM'], most: 2 },
  { path: ['wing', 'rotated', 'cd'], of: ['runM', 'to50ftM'], most: 2 },
  { path: ['wing', 'ground', 'cl'], of: ['runM', 'to50ftM'], most: 1.5 },
  { path: ['rolling', 'dry'], of: ['runM', 'to50ftM'], most: 2 },
  { path: ['wing', 'cleanCd'], of: ['climbFtMin'], most: 2 },
  { path: ['wing', 'induced'], of: ['climbFtMin'], most: 2 },
  { path: ['wing', 'flapsCd'], of: ['to50ftM'], most: 3 },
  { path: ['brakes', 'friction', 'dry'], of: ['landingRunM', 'landingM'], most: 2 },
  { path: ['wing', 'rollout', 'cd'], of: ['landingRunM', 'landingM'], most: 2 },
];

/** The cost of moving a term against missing a row: a tenth moved equals a thousandth missed. */
const TETHER = 0.01;

const NAMES = ['runM', 'to50ftM', 'climbFtMin', 'landingRunM', 'landingM'];

const valueAt = (object, path) => path.reduce((inside, key) => inside?.[key], object);

/** A copy with the values at some paths multiplied. */
function scaled(performance, terms, factors) {
  const copy = structuredClone(performance);
  terms.forEach(({ path }, index) => {
    const inside = valueAt(copy, path.slice(0, -1));
    inside[path.at(-1)] *= factors[index];
  });
  return copy;
}

/** What physics makes of a row; null for what it can't work out. */
function workedOut(aircraft, row, { takeoff, landing }) {
  const { masses } = aircraft;
  const { pressureAltitudeFt = 0, temperatureC = 15, headwindKt = 0 } = row;
  const asked = {
    aircraft,
    air: { pressureAltitudeFt, temperatureC },
    headwindKt,
    slopePercent: 0,
    surface: 'dry',
    ground: 'asphalt',
  };
  const runway = { toraM: 9000, todaM: 9000, asdaM: 9000 };
  const up = takeoff({
    ...asked,
    massKg: row.massKg ?? masses.usualTakeoffKg,
    runway,
    rollsFromM: 0,
  });
  const down = landing({
    ...asked,
    massKg: row.massKg ?? masses.usualLandingKg,
    ldaM: 9000,
    gustSpreadKt: 0,
  });
  const flies = up.kind === 'takeoff';
  const lands = down.kind === 'landing';
  return {
    runM: flies ? up.run.runM : null,
    to50ftM: flies ? up.to50ftM.value : null,
    climbFtMin: flies ? up.climb.rateFtMin : null,
    landingRunM: lands ? down.runM : null,
    landingM: lands ? down.neededM : null,
  };
}

const plainRows = ({ takeoff, landing, masses }) => [
  { massKg: masses.usualTakeoffKg, runM: takeoff.runM },
  { massKg: masses.usualLandingKg, landingRunM: landing.runM },
];

/**
 * Fits, with core's `takeoff`, `landing`, `speedAtLiftKt` and `liftCoefficient` as `physics`.
 * Returns the performance found, and each figure of the book beside its fit.
 */
export function fitToBook(aircraft, rows, physics) {
  const asked = rows.length > 0 ? rows : plainRows(aircraft);
  const begun = withStalls(aircraft, asked, physics);
  const terms = TERMS.filter(
    ({ path, of }) =>
      valueAt(begun, path) > 0 && asked.some((row) => of.some((name) => row[name] !== undefined)),
  );
  const compared = (performance) =>
    asked.flatMap((row, index) => {
      const found = workedOut({ ...aircraft, performance }, row, physics);
      return NAMES.filter((name) => row[name] !== undefined).map((name) => ({
        row: index + 1,
        name,
        book: row[name],
        found: found[name],
      }));
    });
  const missed = (logs) => {
    const factors = logs.map((log, index) => Math.exp(held(log, terms[index].most)));
    const tether = logs.reduce((sum, log) => sum + (TETHER * log) ** 2, 0);
    return compared(scaled(begun, terms, factors)).reduce(
      // A figure that can't be worked out counts as twice the book's.
      (sum, { book, found }) => sum + (found === null ? 1 : (found / book - 1) ** 2),
      tether,
    );
  };
  const logs = lowest(
    missed,
    terms.map(() => 0),
  );
  const factors = logs.map((log, index) => Math.exp(held(log, terms[index].most)));
  const performance = rounded(scaled(begun, terms, factors), terms);
  return {
    performance,
    figures: compared(performance),
    moved: terms.map(({ path }, index) => ({ path, factor: factors[index] })),
  };
}

/** Greatest lift in closed form: from the approach speed, and from the stall if a row has it. */
function withStalls(aircraft, rows, { liftCoefficient }) {
  const { performance, masses, landing } = aircraft;
  const { areaM2 } = performance.wing;
  const stall = rows.find(({ takeoffStallKt }) => takeoffStallKt !== undefined);
  const clMax = {
    takeoff: stall
      ? liftCoefficient(stall.massKg ?? masses.usualTakeoffKg, areaM2, stall.takeoffStallKt)
      : performance.wing.clMax.takeoff,
    landing: liftCoefficient(
      masses.usualLandingKg,
      areaM2,
      landing.approachKt / performance.landing.reference,
    ),
  };
  const to3 = (cl) => Math.round(cl * 1000) / 1000;
  return {
    ...performance,
    wing: {
      ...performance.wing,
      clMax: { takeoff: to3(clMax.takeoff), landing: to3(clMax.landing) },
    },
  };
}

/** Keeps a logarithm within a factor and its inverse. */
const held = (log, most) => Math.min(Math.max(log, -Math.log(most)), Math.log(most));

/** A fit is good for three figures at most. */
function rounded(performance, terms) {
  const copy = structuredClone(performance);
  for (const { path } of terms) {
    const inside = valueAt(copy, path.slice(0, -1));
    inside[path.at(-1)] = Number(inside[path.at(-1)].toPrecision(3));
  }
  return copy;
}

/** Where `f` is least: coordinate descent, with a step that halves when nothing helps. */
function lowest(f, start) {
  let best = start;
  let least = f(best);
  for (let step = 0.2; step > 1e-4; ) {
    let helped = false;
    for (let index = 0; index < start.length; index++) {
      for (const sign of [1, -1]) {
        const tried = best.map((x, at) => (at === index ? x + sign * step : x));
        const value = f(tried);
        if (value < least) {
          best = tried;
          least = value;
          helped = true;
        }
      }
    }
    if (!helped) step /= 2;
  }
  return best;
}

async function main([aircraftFile, rowsFile]) {
  if (aircraftFile === undefined) {
    throw new Error('npm run fit -- <aircraft.json> [<handbook.json>]');
  }
  const { runnerImport } = await import('vite');
  const load = async (name) => {
    const path = fileURLToPath(new URL(`../src/core/aircraft/${name}.ts`, import.meta.url));
    return (await runnerImport(path, { configFile: false })).module;
  };
  const read = async (file) => JSON.parse(await readFile(file, 'utf8'));
  const aircraft = await read(aircraftFile);
  const rows = rowsFile === undefined ? [] : await read(rowsFile);
  if (aircraft.performance === undefined) {
    throw new Error(`${aircraftFile} has no performance to begin from: copy a neighbour's.`);
  }
  aircraft.performance.landing.pathDeg ??= 3;
  const physics = {
    ...(await load('takeoff')),
    ...(await load('landing')),
    ...(await load('aerodynamics')),
  };
  const { performance, figures, moved } = fitToBook(aircraft, rows, physics);
  for (const { row, name, book, found } of figures) {
    const over = found === null ? 'none' : `${(100 * (found / book - 1)).toFixed(1)} %`;
    console.log(`row ${row}  ${name}: book ${book}, found ${found?.toFixed(0)}, left over ${over}`);
  }
  for (const { path, factor } of moved) console.log(`${path.join('.')} × ${factor.toFixed(2)}`);
  const { performanceFaults } = await load('performanceFaults');
  for (const { path, code } of performanceFaults({ ...aircraft, performance })) {
    console.log(`contradicts itself: ${path.join('.')}: ${code}`);
  }
  console.log(`\n"performance": ${readableJson(performance, '  ')}`);
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) {
  await main(process.argv.slice(2));
}
