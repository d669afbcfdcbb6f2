import { beforeAll, expect, test } from 'vitest';
import { exitsOf } from '../../../src/core/taxi/exits';
import { findRouteIn } from '../../../src/core/taxi/routeIn';
import { findRouteOut } from '../../../src/core/taxi/routeOut';
import { stretchId, type TaxiRules } from '../../../src/core/taxi/rules';
import { toldIn, toldOut } from '../../../src/core/taxi/told';
import { speak } from '../../../src/parts/catalogues';
import { tellRoute } from '../../../src/views/taxi/route.en';
import { demoFields } from '../documents/demo';
import { drawn, FREE, type Laid, node, stretch, telling } from './drawn';

beforeAll(() => speak('en'));

const HARROW = demoFields.find(({ code }) => code === 'XHAR');
if (HARROW === undefined) throw new Error('no such field');

test('at Harrow Sound the way to 28 crosses 01/19, and is told so that nobody hears a clearance', () => {
  const { route, entry } = findRouteOut({ field: HARROW, from: 's6', end: '28', rules: FREE });
  if (route === null || entry === null) throw new Error('no way');
  expect(route.legs.map(({ name }) => name)).toEqual(['apron', 'B', 'K']);
  expect(route.crossings).toMatchObject([{ runway: '01/19', hold: 'B1', leg: 1 }]);
  const controlled = tellRoute(toldOut(telling(HARROW, route), entry), true);
  expect(controlled).toBe(
    'The apron, Bravo, at Bravo one runway zero one one nine ahead, hold until told to cross, then Kilo, at Kilo two hold short runway two eight.',
  );
  expect(tellRoute(toldOut(telling(HARROW, route), entry), false)).toContain(
    'runway zero one one nine ahead, hold, look both ways, say that you cross',
  );
});

test('no way of any demo field is worded like a clearance', () => {
  for (const field of demoFields) {
    for (const stand of field.taxi.nodes.filter(({ kind }) => kind === 'stand')) {
      for (const { designator } of field.runways.flatMap(({ ends }) => ends)) {
        const { route, entry } = findRouteOut({
          field,
          from: stand.id,
          end: designator,
          rules: FREE,
        });
        if (entry === null) continue;
        for (const controlled of [true, false]) {
          const text = tellRoute(toldOut(telling(field, route), entry), controlled);
          expect(text).not.toMatch(/clear|safe|^cross|, cross /i);
          expect(text).toContain('hold short runway');
        }
      }
    }
  }
});

/** A taxiway A from a stand across 09/27 to a second runway, 18/36, drawn three ways. */
const across = (middle: 'said' | 'seen' | 'point') =>
  drawn(
    [
      node('S', 500, -200, 'stand', { name: 'Stand 1' }),
      node('h', 500, -60, 'hold', { name: 'A1' }),
      node('m', 500, 0, 'runway'),
      node('g', 500, 60),
      node('t', 500, 200, 'hold', { name: 'A2', ends: ['18'] }),
    ],
    [
      stretch('A', 'S', 'h'),
      ...(middle === 'point'
        ? [stretch('A', 'h', 'm'), stretch('A', 'm', 'g')]
        : [stretch('A', 'h', 'g', middle === 'said' ? { crosses: '27/09' } : {})]),
      stretch('A', 'g', 't'),
    ],
    [
      { ends: ['09', '27'], from: [0, 0], headingDeg: 90, lengthM: 1000 },
      { ends: ['18', '36'], from: [600, 800], headingDeg: 180, lengthM: 600 },
    ],
  );

test.each(['said', 'seen', 'point'] as const)(
  'a runway is crossed whether the plan says so, lies so, or has a point on it: %s',
  (middle) => {
    const { route } = findRouteOut({ field: across(middle), from: 'S', end: '18', rules: FREE });
    expect(route?.crossings).toHaveLength(1);
    expect(route?.crossings[0]).toMatchObject({ runway: '09/27', hold: 'h', headingTrueDeg: 0 });
    // From the stand 140 m to the holding point, and 60 m to the centreline.
    expect(route?.crossings[0]?.atM).toBeCloseTo(200, 0);
  },
);

/** The way from a stand south of 09/27 to one north of it, straight along taxiway A at `xM`. */
function straightOver(xM: number, second: readonly Laid[] = []) {
  const field = drawn(
    [
      node('S', xM, -200, 'stand', { name: 'Stand 1' }),
      node('h', xM, -60, 'hold', { name: 'A1' }),
      ...(xM <= 1000 ? [node('m', xM, 0, 'runway')] : [node('m', xM, -30)]),
      node('T', xM, 400, 'stand', { name: 'Stand 2' }),
    ],
    [stretch('A', 'S', 'h'), stretch('A', 'h', 'm'), stretch('A', 'm', 'T')],
    [{ ends: ['09', '27'], from: [0, 0], headingDeg: 90, lengthM: 1000 }, ...second],
  );
  const asked = { field, end: null, landingM: null, to: 'T', from: 'S', rules: FREE };
  return findRouteIn(asked).route?.crossings.map(({ runway, hold }) => [runway, hold]);
}

test('one does not hold for a second runway before the first', () => {
  const second: Laid = { ends: ['08', '26'], from: [0, 150], headingDeg: 90, lengthM: 1000 };
  expect(straightOver(500, [second])).toEqual([
    ['09/27', 'h'],
    ['08/26', null],
  ]);
});

test('a runway is told of once one is told to be on the taxiway that crosses it', () => {
  // The apron ends where A begins, and the first of A leads over 09/27.
  const field = drawn(
    [
      node('S', 500, -200, 'stand', { name: 'Stand 1' }),
      node('a', 500, -100),
      node('T', 500, 200, 'stand', { name: 'Stand 2' }),
    ],
    [stretch('apron', 'S', 'a', { on: 'apron' }), stretch('A', 'a', 'T')],
  );
  const asked = { field, end: null, landingM: null, to: 'T', from: 'S', rules: FREE };
  expect(toldIn(telling(field, findRouteIn(asked).route), 'Stand 2', null, null)).toEqual([
    { code: 'along', name: 'apron', on: 'apron' },
    { code: 'along', name: 'A', on: 'taxiway' },
    { code: 'runway-ahead', runway: '09/27', hold: null, along: false, told: false },
    { code: 'stand', name: 'Stand 2' },
  ]);
});

test('a taxiway that passes beyond the end of a runway crosses none', () => {
  expect(straightOver(900)).toEqual([['09/27', 'h']]);
  expect(straightOver(1200)).toEqual([]);
});

test('points have names where something is named, or one taxiway goes over into another', () => {
  const { route } = findRouteOut({ field: HARROW, from: 's6', end: '28', rules: FREE });
  expect(route?.marks.map(({ name, between }) => name ?? between.join('/'))).toEqual([
    'Stand 6',
    'apron/B',
    'B1',
    'K1',
    'K2',
  ]);
});

test('after landing the first exit beyond the landing is likely, and without one the last is rolled back to', () => {
  // Harrow Sound, 28: F lies 200 m from the end of 28, E 840 m, D 1110 m, A 1388 m, by its generator;
  // no displaced threshold.
  const exits = exitsOf(HARROW, '28', FREE);
  expect(exits.map(({ name, fromThresholdM }) => [name, Math.round(fromThresholdM)])).toEqual([
    ['K', 12],
    ['F', 200],
    ['E', 840],
    ['D', 1110],
    ['A', 1388],
  ]);
  const landing = (landingM: number | null) =>
    findRouteIn({ field: HARROW, end: '28', landingM, to: 's6', from: null, rules: FREE });
  expect(landing(800).exit).toMatchObject({ name: 'E', backtrackM: 0 });
  expect(landing(841).exit).toMatchObject({ name: 'D', backtrackM: 0 });
  expect(landing(1111).exit).toMatchObject({ name: 'A', backtrackM: 0 });
  const past = landing(1395);
  expect(past.exit?.name).toBe('A');
  expect(past.exit?.backtrackM).toBeCloseTo(7, 0);
  expect(landing(800).route?.nodes.at(-1)).toBe('s6');
  expect(landing(null).fault).toEqual({ code: 'no-exit', end: '28' });
});

test('an exit that is closed today is rolled past', () => {
  const exit = (rules: TaxiRules) =>
    findRouteIn({ field: HARROW, end: '28', landingM: 800, to: 's6', from: null, rules }).exit
      ?.name;
  expect(exit(FREE)).toBe('E');
  const leaving = HARROW.taxi.edges.filter(({ name }) => name === 'E').map(stretchId);
  expect(leaving).not.toEqual([]);
  expect(exit({ ...FREE, closed: leaving })).toBe('D');
});

test('a landing that comes to taxi speed just at an exit can leave there', () => {
  const exits = exitsOf(HARROW, '28', FREE);
  for (const { name, fromThresholdM } of exits) {
    const asked = { field: HARROW, end: '28', to: 's6', from: null, rules: FREE };
    expect(findRouteIn({ ...asked, landingM: fromThresholdM }).exit).toMatchObject({
      name,
      backtrackM: 0,
    });
  }
});

test('towards 10 exits are counted from its displaced threshold, and a one-way exit only leaves', () => {
  // 10: displaced by 90 m; E lies 560 m from the end of 10.
  const e = exitsOf(HARROW, '10', FREE).find(({ name }) => name === 'E');
  expect(e?.fromThresholdM).toBeCloseTo(470, 0);
});

test('the way in from where the aircraft is forgets the exit', () => {
  const way = findRouteIn({
    field: HARROW,
    end: '28',
    landingM: 800,
    to: 's6',
    from: 'K1',
    rules: FREE,
  });
  expect(way.exit).toBeNull();
  expect(way.route?.nodes[0]).toBe('K1');
});
