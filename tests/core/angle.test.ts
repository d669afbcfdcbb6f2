import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import fc from 'fast-check';
import { afterAll, beforeAll, expect, test } from 'vitest';
import {
  cosDeg,
  degreesOf,
  magneticDeg,
  relativeDeg,
  sinDeg,
  toMagnetic,
  toTrue,
  trueDeg,
  wrapDeg,
} from '../../src/core/angle';

const anyDeg = fc.double({ min: -1e6, max: 1e6, noNaN: true });
const anyVariation = fc.double({ min: -180, max: 180, noNaN: true });

test('any number of degrees is a direction from 0 to under 360', () => {
  fc.assert(
    fc.property(anyDeg, (deg) => {
      expect(wrapDeg(deg)).toBeGreaterThanOrEqual(0);
      expect(wrapDeg(deg)).toBeLessThan(360);
      const turns = (deg - wrapDeg(deg)) / 360;
      expect(turns).toBeCloseTo(Math.round(turns), 6);
    }),
  );
  for (const north of [0, 360, -360, 720, -1e-15]) expect(wrapDeg(north) === 0).toBe(true);
});

test.each([
  { a: 10, b: 350, difference: 20 },
  { a: 350, b: 10, difference: -20 },
  { a: 270, b: 90, difference: 180 },
  { a: 90, b: 270, difference: 180 },
  { a: 0, b: 179.5, difference: -179.5 },
  { a: 360, b: 0, difference: 0 },
])('$a° lies $difference° clockwise of $b°', ({ a, b, difference }) => {
  expect(relativeDeg(trueDeg(a), trueDeg(b))).toBeCloseTo(difference, 9);
  expect(relativeDeg(magneticDeg(a), magneticDeg(b))).toBeCloseTo(difference, 9);
});

test('the difference of two directions turns one into the other, the shorter way round', () => {
  fc.assert(
    fc.property(anyDeg, anyDeg, (a, b) => {
      const difference = relativeDeg(trueDeg(a), trueDeg(b));
      expect(difference).toBeGreaterThan(-180);
      expect(difference).toBeLessThanOrEqual(180);
      expect(cosDeg(wrapDeg(b) + difference)).toBeCloseTo(cosDeg(wrapDeg(a)), 9);
      expect(sinDeg(wrapDeg(b) + difference)).toBeCloseTo(sinDeg(wrapDeg(a)), 9);
    }),
  );
});

test('variation east, magnetic least; variation west, magnetic best', () => {
  // FAA-H-8083-25B, ch. 16: east is least and west is best.
  expect(degreesOf(toMagnetic(trueDeg(90), 10))).toBe(80);
  expect(degreesOf(toMagnetic(trueDeg(90), -10))).toBe(100);
  expect(degreesOf(toMagnetic(trueDeg(5), 10))).toBe(355);
  expect(degreesOf(toTrue(magneticDeg(355), 10))).toBe(5);
});

test('to magnetic and back is where one began', () => {
  fc.assert(
    fc.property(anyDeg, anyVariation, (deg, variationDeg) => {
      const start = trueDeg(deg);
      const back = toTrue(toMagnetic(start, variationDeg), variationDeg);
      expect(Math.abs(relativeDeg(back, start))).toBeLessThan(1e-9);
    }),
  );
});

test('what lies between two directions is the same from either north', () => {
  fc.assert(
    fc.property(anyDeg, anyDeg, anyVariation, (a, b, variationDeg) => {
      const [one, other] = [trueDeg(a), trueDeg(b)];
      const magnetic = relativeDeg(toMagnetic(one, variationDeg), toMagnetic(other, variationDeg));
      const apart = wrapDeg(magnetic - relativeDeg(one, other));
      expect(Math.min(apart, 360 - apart)).toBeLessThan(1e-9);
    }),
  );
});

// What angle.types.ts holds line by line, once with the compiler's own words: the refusal must come
// from the norths, not from a slip in the line.
const root = fileURLToPath(new URL('../..', import.meta.url));
const typescript = createRequire(import.meta.url).resolve('typescript/package.json');
const tsc = join(dirname(typescript), 'bin/tsc');
let folder = '';
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'norths-'));
});
afterAll(() => rmSync(folder, { recursive: true }));

/** What the compiler says of these lines; empty where they compile. */
function compile(name: string, lines: string): string {
  const file = join(folder, `${name}.ts`);
  const from = JSON.stringify(join(root, 'src/core/angle'));
  writeFileSync(
    file,
    `import { magneticDeg, relativeDeg, toMagnetic, trueDeg } from ${from};\n${lines}\n`,
  );
  const flags = ['--ignoreConfig', '--noEmit', '--strict', '--module', 'esnext'];
  return spawnSync(process.execPath, [tsc, ...flags, '--target', 'es2022', file], {
    encoding: 'utf8',
    cwd: folder,
  }).stdout;
}

test('the compiler refuses a true wind against a magnetic heading, by name', () => {
  expect(compile('same', 'relativeDeg(toMagnetic(trueDeg(270), -14), magneticDeg(280));')).toBe('');
  const mixed = compile('mixed', 'relativeDeg(trueDeg(270), magneticDeg(280));');
  expect(mixed).toContain('error TS2769: No overload matches this call.');
  expect(mixed).toContain(`Type '"true"' is not assignable to type '"magnetic"'.`);
  const subtracted = compile('subtracted', 'trueDeg(270) - magneticDeg(280);');
  expect(subtracted).toContain('error TS2362');
}, 60_000);
