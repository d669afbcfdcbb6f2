import fc from 'fast-check';
import { beforeAll, expect, test } from 'vitest';
import sleet from '../../../airfields-demo/aircraft/sleet.json?raw';
import { readDocument } from '../../../src/core/readDocument.schema';
import {
  progressOn,
  secondsAt,
  stretchBetween,
  turnRadiusM,
  turnsOf,
} from '../../../src/core/taxi/pace';
import type { RouteCorner, RouteMark } from '../../../src/core/taxi/route';
import { findRouteIn } from '../../../src/core/taxi/routeIn';
import { findRouteOut } from '../../../src/core/taxi/routeOut';
import { neededWidthM, wheelClearanceM } from '../../../src/core/taxi/rules';
import { toldIn } from '../../../src/core/taxi/told';
import { speak } from '../../../src/parts/catalogues';
import { turnWords } from '../../../src/parts/pace.en';
import { tellRoute } from '../../../src/views/taxi/route.en';
import { demoFields } from '../documents/demo';
import { drawn, FREE, node, stretch, telling } from './drawn';

beforeAll(() => speak('en'));

const { document } = readDocument(sleet);
if (document?.kind !== 'aircraft') throw new Error('the jet is not read');
const JET = document.content;
const HARROW = demoFields.find(({ code }) => code === 'XHAR');
if (HARROW === undefined) throw new Error('no such field');
const WAY = findRouteOut({ field: HARROW, from: 's6', end: '28', rules: FREE }).route;
if (WAY === null) throw new Error('no way');

const mark = (atM: number): RouteMark => ({
  node: `n${atM}`,
  atM,
  kind: 'junction',
  name: null,
  between: ['A', 'A'],
});

test('a stretch of 410 m in 47 s is 17 kt, and a thumb half a second off at both ends makes 16.6 to 17.3', () => {
  // 1 kt = 1852 m / 3600 s exactly: 410 / 47 = 8.7234 m/s; 410 / 48; 410 / 46.
  const stretch = stretchBetween(mark(0), mark(410), 47);
  expect(stretch?.groundKt).toBeCloseTo(16.957, 3);
  expect(stretch?.leastKt).toBeCloseTo(16.604, 3);
  expect(stretch?.mostKt).toBeCloseTo(17.326, 3);
});

test('a stretch shorter than two thumbs has no greatest speed, and one without time has none at all', () => {
  expect(stretchBetween(mark(0), mark(10), 1)?.mostKt).toBeNull();
  expect(stretchBetween(mark(0), mark(10), 0)).toBeNull();
  expect(stretchBetween(mark(10), mark(10), 5)).toBeNull();
});

test('whatever a thumb does within half a second at both ends, the true speed lies between least and most', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 5, max: 3000, noNaN: true }),
      fc.double({ min: 1.5, max: 600, noNaN: true }),
      fc.double({ min: -0.5, max: 0.5, noNaN: true }),
      fc.double({ min: -0.5, max: 0.5, noNaN: true }),
      (distanceM, trueS, first, second) => {
        const measuredS = trueS + second - first;
        const stretch = stretchBetween(mark(0), mark(distanceM), measuredS);
        if (stretch === null) return;
        const trueKt = (distanceM / trueS) * (3600 / 1852);
        expect(stretch.leastKt).toBeLessThanOrEqual(trueKt * (1 + 1e-12));
        if (stretch.mostKt !== null) {
          expect(stretch.mostKt).toBeGreaterThanOrEqual(trueKt * (1 - 1e-12));
        }
      },
    ),
  );
});

test('1852 m at 18 kt take 200 s', () => {
  expect(secondsAt(1852, 18)).toBeCloseTo(200, 9);
});

test('progress follows the points passed, in order, and passes over what is not on the way', () => {
  const passed = ['s6', 'ab', 'nowhere', 'B1', 'ab'].map((node, i) => ({ node, ms: 30_000 * i }));
  const at = progressOn(WAY, passed);
  expect(at.stretches.map(({ from, to }) => [from.node, to.node])).toEqual([
    ['s6', 'ab'],
    ['ab', 'B1'],
  ]);
  expect(at.last?.node).toBe('B1');
  expect(at.next?.node).toBe('K1');
  expect(at.goneM + at.leftM).toBeCloseTo(WAY.lengthM, 9);
  expect(at.sinceMs).toBe(0);
});

test('before anything is passed the watch is started where the way begins', () => {
  expect(progressOn(WAY, [])).toMatchObject({ last: null, next: { node: 's6' }, goneM: 0 });
  expect(progressOn(WAY, [{ node: 'K2', ms: 5 }]).next).toBeNull();
});

const corner = (more: Partial<RouteCorner>): RouteCorner => ({
  node: 'c',
  atM: 0,
  turnDeg: 90,
  stretchM: 1000,
  widthM: 23,
  onto: 'K',
  ...more,
});

test('an arc round a right angle on a taxiway 23 m wide keeps its inner wheel and clearance on the pavement', () => {
  // Wheels 6 m apart with 4 m clear leave 11.5 − 3 − 4 = 4.5 m of cutting in, measured square to both
  // centrelines: r − r cos 45° = 4.5, by drawing.
  const radius = turnRadiusM(corner({}), 6);
  expect(radius).toBeCloseTo(4.5 / (1 - Math.SQRT1_2), 9);
});

test('the arc takes no more than half of the shorter stretch, and where a width is not known there is none', () => {
  // Half of 20 m, tangent to both legs of a right angle: r = 10.
  expect(turnRadiusM(corner({ stretchM: 20, widthM: 60 }), 3)).toBeCloseTo(10, 9);
  expect(turnRadiusM(corner({ widthM: null }), 3)).toBeNull();
});

test('a polygon drawn round a circle gives the radius of the circle', () => {
  // A regular polygon of 24 sides about a circle of 100 m: sides 2 r tan 7.5°, corners of 15°.
  const side = 2 * 100 * Math.tan((7.5 * Math.PI) / 180);
  expect(turnRadiusM(corner({ turnDeg: -15, stretchM: side, widthM: 60 }), 3)).toBeCloseTo(100, 9);
});

test('no turn is faster than the straight limit, and a sharp one no faster than the aircraft’s document says', () => {
  for (const field of demoFields) {
    for (const stand of field.taxi.nodes.filter(({ kind }) => kind === 'stand')) {
      for (const { designator } of field.runways.flatMap(({ ends }) => ends)) {
        const { route } = findRouteOut({ field, from: stand.id, end: designator, rules: FREE });
        for (const turn of route === null ? [] : turnsOf(route, JET)) {
          expect(turn.maxKt).toBeLessThanOrEqual(JET.taxi.maxKt);
          if (Math.abs(turn.turnDeg) >= 60) expect(turn.maxKt).toBeLessThanOrEqual(JET.taxi.turnKt);
        }
      }
    }
  }
});

test('a bend of 20° is a turn, and one of 60° is as sharp as the aircraft’s document means', () => {
  // Common practice, no published source. On 60 m of width and long stretches nothing else binds.
  const boundBy = (turnDeg: number) =>
    turnsOf({ ...WAY, corners: [corner({ turnDeg, widthM: 60 })] }, JET).map(
      (turn) => turn.boundBy,
    );
  expect(boundBy(19)).toEqual([]);
  expect(boundBy(20)).toEqual(['limit']);
  expect(boundBy(-59)).toEqual(['limit']);
  expect(boundBy(-60)).toEqual(['sharp']);
  expect(boundBy(60)).toEqual(['sharp']);
});

test('wheels, and what must be clear beside them, make the width that is needed', () => {
  // ICAO Annex 14, vol. I, 3.9.3, value from memory: 1.5 m up to but not including 4.5 m of wheel
  // span, 2.25 m up to but not including 6 m, 4 m from 9 m on.
  expect([3, 4.49, 4.5, 5, 5.99, 6, 10].map(wheelClearanceM)).toEqual([
    1.5, 1.5, 2.25, 2.25, 2.25, 4, 4,
  ]);
  expect(neededWidthM(JET)).toBeCloseTo(2.6 + 3, 9);
  expect(neededWidthM(null)).toBeNull();
});

test('a turn back on itself can’t be made, and is told as such; a hairpin with room can', () => {
  const nodes = [
    node('S', 0, -300, 'stand', { name: 'Stand 1' }),
    node('a', 0, -200),
    node('b', 200, -200),
    node('c', 100, -200),
    node('T', 100, -300, 'stand', { name: 'Stand 2' }),
  ];
  // B overshoots where C leaves it, and comes back: 180° at b.
  const edges = [
    stretch('A', 'S', 'a'),
    stretch('B', 'a', 'b'),
    stretch('B', 'b', 'c'),
    stretch('C', 'c', 'T'),
  ];
  const field = drawn(nodes, edges);
  const asked = { field, end: null, landingM: null, from: 'S', to: 'T', rules: FREE };
  const { route } = findRouteIn(asked);
  if (route === null) throw new Error('no way');
  const turns = turnsOf(route, JET);
  expect(turns.map(({ turnDeg, canBeMade }) => [Math.round(Math.abs(turnDeg)), canBeMade])).toEqual(
    [
      [90, true],
      [180, false],
      [90, true],
    ],
  );
  expect(tellRoute(toldIn(telling(field, route, turns), 'Stand 2', null, null), true)).toMatch(
    /^Alfa, Bravo, a turn of 180 degrees (left|right) onto Bravo, too tight to make, Charlie, stand two\.$/,
  );
  expect(turns.slice(1, 2).map(turnWords).join()).toMatch(
    /180° (left|right) onto B: too tight to make/,
  );
  const corner: RouteCorner = {
    ...{ node: 'n', atM: 0, onto: 'C', widthM: 23 },
    ...{ turnDeg: 150, stretchM: 400 },
  };
  // The arc between the middles of 400 m: 200 m / tan 75° is 54 m.
  expect(turnsOf({ ...route, corners: [corner] }, JET)).toMatchObject([{ canBeMade: true }]);
});
