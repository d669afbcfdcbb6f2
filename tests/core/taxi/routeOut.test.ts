import { expect, test } from 'vitest';
import { routeKey } from '../../../src/core/taxi/alternatives';
import { findRouteIn } from '../../../src/core/taxi/routeIn';
import { findRouteOut, taxiDistances } from '../../../src/core/taxi/routeOut';
import { stretchId } from '../../../src/core/taxi/rules';
import { drawn, FREE, node, stretch } from './drawn';

/*
 * Drawn by hand, metres; distances below are added up from the drawing.
 *
 *   y=0    r09 ================ rX ================ r27     runway 09/27, from 0 to 1000
 *           |                   |                    |
 *   y=-60  H9                  HX                   H27     holding points
 *           |                   |                    |
 *   y=-100  a ----- b --------- c ------- d -------- e      A
 *                   |                     |
 *   y=-200          p ------------------- q                 B
 *                   |
 *   y=-250          S
 */
const NODES = [
  node('r09', 5, 0, 'runway', { ends: ['09'] }),
  node('rX', 500, 0, 'runway'),
  node('r27', 995, 0, 'runway', { ends: ['27'] }),
  node('H9', 5, -60, 'hold', { name: 'A1', ends: ['09'] }),
  node('HX', 500, -60, 'hold', { name: 'A2', ends: ['09', '27'] }),
  node('H27', 995, -60, 'hold', { name: 'A3', ends: ['27'] }),
  node('a', 5, -100),
  node('b', 205, -100),
  node('c', 500, -100),
  node('d', 795, -100),
  node('e', 995, -100),
  node('p', 205, -200),
  node('q', 795, -200),
  node('S', 205, -250, 'stand', { name: 'Stand 1' }),
];
const EDGES = [
  stretch('A', 'r09', 'H9'),
  stretch('A', 'H9', 'a'),
  stretch('A', 'a', 'b'),
  stretch('A', 'b', 'c'),
  stretch('A', 'c', 'd'),
  stretch('A', 'd', 'e'),
  stretch('A', 'e', 'H27'),
  stretch('A', 'H27', 'r27'),
  stretch('C', 'rX', 'HX'),
  stretch('C', 'HX', 'c'),
  stretch('B', 'b', 'p'),
  stretch('B', 'p', 'q'),
  stretch('B', 'q', 'd'),
  stretch('apron', 'S', 'p', { on: 'apron' }),
  stretch('09/27', 'r09', 'rX', { on: 'runway' }),
  stretch('09/27', 'rX', 'r27', { on: 'runway' }),
];
const FIELD = drawn(NODES, EDGES);
const ask = (more: Partial<Parameters<typeof findRouteOut>[0]>) =>
  findRouteOut({ field: FIELD, from: 'S', end: '27', rules: FREE, ...more });

test('the way to a holding point is as long as its stretches on the drawing', () => {
  // S-p 50, p-b 100, b-c 295, c-d 295, d-e 200, e-H27 40. By q it is 50 + 590 + 100 + 200 + 40, the same.
  expect(ask({}).route?.lengthM).toBeCloseTo(980, 9);
  // S-p 50, p-b 100, b-a 200, a-H9 40.
  expect(ask({ end: '09' }).route?.lengthM).toBeCloseTo(390, 9);
  expect(ask({ end: '09' }).route?.nodes).toEqual(['S', 'p', 'b', 'a', 'H9']);
});

test('of two ways of one length the other is offered, and can be taken', () => {
  const way = ask({});
  expect(way.alternatives.map(({ lengthM }) => Math.round(lengthM))).toEqual([980]);
  const [other] = way.alternatives;
  if (other === undefined) throw new Error('no other way');
  const taken = ask({ via: routeKey(other) });
  expect(taken.route?.nodes).toEqual(other.nodes);
  expect(taken.alternatives.map(({ nodes }) => nodes)).toEqual([way.route?.nodes]);
});

test('a way that is more than a tenth longer is not offered', () => {
  // From p to c: by b 395, by q 590 + 100 + 295.
  expect(ask({ end: '09' }).alternatives).toEqual([]);
});

test('a closed stretch is gone round, and where nothing is left that is said', () => {
  const around = ask({ rules: { ...FREE, closed: [stretchId({ from: 'b', to: 'c' })] } });
  expect(around.route?.nodes).toEqual(['S', 'p', 'q', 'd', 'e', 'H27']);
  const closed = [stretchId({ from: 'd', to: 'e' }), stretchId({ from: 'HX', to: 'c' })];
  // H9 still leads on to the runway: it is held at, and backtracked from where A meets it, 5 m on.
  const back = ask({ rules: { ...FREE, closed } });
  expect(back).toMatchObject({ route: { runwayM: 0 }, entry: { hold: 'H9', rollsFromM: 0 } });
  expect(back.entry?.backtrackM).toBeCloseTo(995, 0);
  const cut = ask({ rules: { ...FREE, closed: [stretchId({ from: 'S', to: 'p' })] } });
  expect(cut).toMatchObject({ route: null, fault: { code: 'closed', stretches: ['S~p'] } });
});

test('a runway is rolled along only where there is no other way', () => {
  // From r09 the runway would be 990 m to r27; by the taxiway it is 60+40+200+295+295+200+40.
  expect(ask({ from: 'r09' }).route).toMatchObject({ runwayM: 0 });
  expect(ask({ from: 'r09' }).route?.lengthM).toBeCloseTo(1130, 9);
});

test('a holding point in the middle gives the whole run after rolling back, and what remains from there', () => {
  const { entries, entry } = ask({});
  expect(entry).toMatchObject({ hold: 'H27', rollsFromM: 0, runM: 1000, backtrackM: 0 });
  expect(
    entries.map(({ hold, runM, backtrackM }) => [hold, Math.round(runM), Math.round(backtrackM)]),
  ).toEqual([
    ['H27', 1000, 0],
    ['HX', 1000, 500],
    ['HX', 500, 0],
  ]);
  // S-p 50, p-b 100, b-c 295, c-HX 40.
  const short = ask({ entry: { end: '27', hold: 'HX', intersection: true } });
  expect(short.route?.lengthM).toBeCloseTo(485, 9);
  expect(short.entry?.rollsFromM).toBeCloseTo(500, 0);
});

test('without its own holding point an end is entered by rolling back along the runway, and by no more of it than there must be', () => {
  const nodes = NODES.map((one) => (one.id === 'H27' ? { ...one, ends: [] } : one));
  const way = findRouteOut({ field: drawn(nodes, EDGES), from: 'S', end: '27', rules: FREE });
  expect(way.entry).toMatchObject({ hold: 'HX', rollsFromM: 0 });
  expect(way.entry?.backtrackM).toBeCloseTo(500, 0);
});

test('a one-way stretch is not rolled against', () => {
  const edges = EDGES.map((edge) =>
    edge.from === 'b' && edge.to === 'p' ? { ...edge, oneWay: true } : edge,
  );
  const way = findRouteOut({ field: drawn(NODES, edges), from: 'S', end: '27', rules: FREE });
  expect(way.route?.nodes).toEqual(['S', 'p', 'q', 'd', 'e', 'H27']);
});

test('a taxiway too narrow for the wheels is no way', () => {
  const edges = EDGES.map((edge) => (edge.name === 'B' ? { ...edge, widthM: 7 } : edge));
  const field = drawn(NODES, edges);
  const asked = { field, from: 'S', end: '27' };
  expect(findRouteOut({ ...asked, rules: { closed: [], neededWidthM: 7 } }).route).not.toBeNull();
  expect(findRouteOut({ ...asked, rules: { closed: [], neededWidthM: 7.5 } }).fault).toEqual({
    code: 'too-narrow',
    neededWidthM: 7.5,
  });
});

test('a runway is not held to the width of a taxiway', () => {
  // ICAO Annex 14, vol. I, 3.9, asks it of taxiways. The runway is all that leads away from e here.
  const edges = EDGES.map((edge) => (edge.on === 'runway' ? { ...edge, widthM: 18 } : edge));
  const rules = { closed: [stretchId({ from: 'd', to: 'e' })], neededWidthM: 20 };
  const asked = { field: drawn(NODES, edges), end: null, landingM: null, from: 'e', to: 'S' };
  // From r27 to rX, and off at HX.
  expect(findRouteIn({ ...asked, rules }).route?.runwayM).toBeCloseTo(495, 9);
});

test.each([
  ['no taxi plan', drawn([], []), 'S', '27', { code: 'no-plan' }],
  ['no end in use', FIELD, 'S', null, { code: 'no-end' }],
  ['no stand named', FIELD, null, '27', { code: 'no-start' }],
  [
    'no stand drawn',
    drawn(
      NODES.filter(({ kind }) => kind !== 'stand'),
      [],
    ),
    null,
    '27',
    { code: 'no-stand' },
  ],
  [
    'a point that is not on the plan',
    FIELD,
    'nowhere',
    '27',
    { code: 'start-unknown', node: 'nowhere' },
  ],
  [
    'an end without a holding point',
    drawn(
      NODES.filter(({ kind }) => kind !== 'hold'),
      [],
    ),
    'S',
    '27',
    { code: 'end-without-hold', end: '27' },
  ],
  [
    'a plan in pieces',
    drawn(
      NODES,
      EDGES.filter(({ on }) => on !== 'apron'),
    ),
    'S',
    '27',
    { code: 'in-pieces' },
  ],
  [
    'only a one-way taxiway that leads the other way',
    drawn(
      NODES,
      EDGES.map((edge) =>
        edge.name === 'apron' ? { ...edge, from: 'p', to: 'S', oneWay: true } : edge,
      ),
    ),
    'S',
    '27',
    { code: 'one-way' },
  ],
] as const)('%s is said', (_, field, from, end, fault) => {
  expect(findRouteOut({ field, from, end, rules: FREE })).toMatchObject({ route: null, fault });
});

test('where the aircraft stands at the holding point there is an entry, and nothing to roll', () => {
  expect(ask({ from: 'H27' })).toMatchObject({
    route: null,
    fault: null,
    entry: { hold: 'H27', taxiM: 0 },
  });
});

test('the distance to an end counts to the beginning of its run, rolling back included', () => {
  const distances = taxiDistances(FIELD, 'S', ['09', '27'], FREE);
  expect(distances.get('09')).toBeCloseTo(390 + 60, 6);
  expect(distances.get('27')).toBeCloseTo(980 + 60, 6);
});
