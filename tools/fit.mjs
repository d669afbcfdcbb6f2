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
 * printed beside them, with the row that doesn't fit and whatever still contradicts itself. The app
 * fits by the same code (`src/core/aircraft/fit`). Nothing is written.
 */

import { readFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { readableJson } from './demo/json.mjs';

async function main([aircraftFile, rowsFile]) {
  if (aircraftFile === undefined) {
    throw new Error('npm run fit -- <aircraft.json> [<handbook.json>]');
  }
  const { runnerImport } = await import('vite');
  const core = fileURLToPath(new URL('../src/core/aircraft/fit/fitAircraft.ts', import.meta.url));
  const { fitAircraft, plainRows } = (await runnerImport(core, { configFile: false })).module;
  const read = async (file) => JSON.parse(await readFile(file, 'utf8'));
  const aircraft = await read(aircraftFile);
  const rows = rowsFile === undefined ? [] : await read(rowsFile);
  if (aircraft.performance === undefined) {
    throw new Error(`${aircraftFile} has no performance to begin from: copy a neighbour's.`);
  }
  aircraft.performance.landing.pathDeg ??= 3;
  const asked = rows.length > 0 ? rows : plainRows(aircraft);
  const fit = fitAircraft({ ...aircraft, handbook: { rows: asked } });
  if (fit === null) throw new Error('There is no figure to fit to.');
  for (const { row, name, book, found } of fit.figures) {
    const over = found === null ? 'none' : `${(100 * (found / book - 1)).toFixed(1)} %`;
    console.log(
      `row ${row + 1}  ${name}: book ${book}, found ${found?.toFixed(0)}, left over ${over}`,
    );
  }
  for (const { name, factor } of fit.moved) console.log(`${name} × ${factor.toFixed(2)}`);
  for (const { code, row, figure, ...more } of fit.troubles) {
    console.log(`row ${row + 1}  ${figure}: ${code} ${JSON.stringify(more)}`);
  }
  for (const { path, code, values = [] } of fit.faults) {
    console.log(`contradicts itself: ${path.join('.')}: ${[code, ...values].join(' ')}`);
  }
  console.log(`\n"performance": ${readableJson(fit.performance, '  ')}`);
}

await main(process.argv.slice(2));
