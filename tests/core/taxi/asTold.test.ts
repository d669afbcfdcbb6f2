/** Routes as a controller gives them, on the demo's Harrow Sound and Marram Haven. */

import fc from 'fast-check';
import { expect, test } from 'vitest';
import { layAsTold, type ToldQuestion } from '../../../src/core/taxi/asTold';
import { readInstruction } from '../../../src/core/taxi/instruction';
import { mendedTexts } from '../../../src/core/taxi/mended';
import { stretchId } from '../../../src/core/taxi/rules';
import { demoField } from '../documents/demo';
import { FREE } from './drawn';

const HARROW = demoField('XHAR');
const MARRAM = demoField('XMAR');

const OUT: ToldQuestion = {
  ...{ field: MARRAM, from: 's4', end: '23R', to: null },
  ...{ purpose: 'take-off', likelyExit: null, rules: FREE },
};
const told = (text: string, more: Partial<ToldQuestion> = {}) =>
  layAsTold(text, { ...OUT, ...more });

const names = (text: string) =>
  readInstruction(text, MARRAM).items.map((item) => ('name' in item ? item.name : item.code));

test.each([
  ['A E B', ['A', 'E', 'B']],
  ['aeb', ['A', 'E', 'B']],
  ['taxi via Alfa, Echo and Bravo', ['A', 'E', 'B']],
  ['Alpha Echo, holding point Bravo two', ['A', 'E', 'B2']],
  ['A, E, B, hold B 2', ['A', 'E', 'B', 'B2']],
])('%s is read as it is said', (text, expected) => {
  expect(names(text)).toEqual(expected);
  expect(readInstruction(text, MARRAM).unread).toEqual([]);
});

test.each([
  ['hold short 19', HARROW, { code: 'hold-short', runway: '01/19' }],
  ['hold short of runway one niner', HARROW, { code: 'hold-short', runway: '01/19' }],
  ['cross runway 1', HARROW, { code: 'cross', runway: '01/19' }],
  ['hold short two three left', MARRAM, { code: 'hold-short', runway: '05R/23L' }],
  ['hold short 05R/23L', MARRAM, { code: 'hold-short', runway: '05R/23L' }],
  ['backtrack 23R', MARRAM, { code: 'backtrack', runway: '05L/23R' }],
  ['runway 23 right', MARRAM, { code: 'runway', end: '23R' }],
])('%s names a runway', (text, field, item) => {
  expect(readInstruction(text, field).items).toMatchObject([item]);
});

test.each([
  // A meets D, E, L, M, N and Q; four are offered.
  ['A J', { code: 'no-name', said: 'J', suggestions: ['D', 'E', 'L', 'M'] }],
  ['A E B hold short 19', { code: 'no-runway', said: '19', suggestions: ['05L/23R', '05R/23L'] }],
  // Both of the parallel runways are 23.
  ['A hold short 23', { code: 'no-runway', said: '23', suggestions: ['05L/23R', '05R/23L'] }],
  ['A stand 99', { code: 'no-name', said: '99' }],
])('%s: what isn’t there is named, with what may have been meant', (text, problem) => {
  const { problems, route } = told(text);
  expect(problems).toMatchObject([problem]);
  expect(route).toBeNull();
});

test('the route as told is followed, though another is shorter, and its stand joins it unsaid', () => {
  // D lies 780 m before E on A, and as far on B, by the demo's generator.
  const [short, long] = [told('A E B'), told('A D B')];
  expect([short.problems, long.problems]).toEqual([[], []]);
  expect(short.route?.legs.map(({ name }) => name)).toEqual(['apron', 'M', 'A', 'E', 'B']);
  expect(long.route?.legs.map(({ name }) => name)).toEqual(['apron', 'M', 'A', 'D', 'B']);
  expect([short.byTheWay, long.byTheWay]).toEqual([['M'], ['M']]);
  // From am on A: 240 m to E and 540 m to D. D's way is 300 m more on A, and 780 m more on B.
  const more = (long.route?.lengthM ?? 0) - (short.route?.lengthM ?? 0);
  expect(Math.abs(more - 1080)).toBeLessThan(5);
  expect(long.entry).toMatchObject({ hold: 'B2', end: '23R', rollsFromM: 0 });
  expect(long.route?.crossings).toMatchObject([{ runway: '05R/23L', hold: 'D1', told: false }]);
});

test('“B K H, hold short 19” at Harrow Sound', () => {
  const asked = { field: HARROW, from: 's6', end: '28' };
  const { problems } = told('B K H, hold short 19', asked);
  // Harrow has no H: it is named, and what meets K is offered.
  expect(problems).toMatchObject([{ code: 'no-name', said: 'H' }]);
  const { route, entry, problems: none } = told('B K, hold short 19', asked);
  expect(none).toEqual([]);
  expect(route?.crossings).toMatchObject([{ runway: '01/19', hold: 'B1', told: false }]);
  expect(entry).toMatchObject({ end: '28' });
});

test('a limit before the end is where the route ends, and the runway beyond is what comes next', () => {
  const { route, entry, problems } = told('A E, hold short 23L');
  expect(problems).toEqual([]);
  expect([route?.nodes.at(-1), entry]).toEqual(['E1', null]);
  expect(route?.crossings).toMatchObject([{ runway: '05R/23L', hold: 'E1', told: false }]);
  // 90 m from the holding point to the centreline, by the demo's generator.
  const [beyond] = route?.crossings ?? [];
  expect(Math.abs((beyond?.atM ?? 0) - (route?.lengthM ?? 0) - 90)).toBeLessThan(2);
  expect(told('A, holding point E1').route?.nodes.at(-1)).toBe('E1');
});

test('a crossing that was told is known as told', () => {
  expect(told('A E B, cross 23L').route?.crossings).toMatchObject([
    { runway: '05R/23L', told: true },
  ]);
});

test('to backtrack, the runway is entered at a holding point that is not its end’s', () => {
  const { entry, problems } = told('A D B C, backtrack 23R');
  expect(problems).toEqual([]);
  expect(entry).toMatchObject({ hold: 'C1', end: '23R', rollsFromM: 0 });
  // C meets the runway 400 m from 05L's end.
  expect(Math.abs((entry?.backtrackM ?? 0) - 2000)).toBeLessThan(5);
});

test.each([
  ['A B', { code: 'not-joined', one: 'A', other: 'B', by: ['E'] }],
  ['A E', { code: 'ends-short', last: 'E', end: '23R', by: ['B'] }],
  ['A E B, hold short 23L, cross 05L', { code: 'not-met', what: 'cross', runway: '05L/23R' }],
  ['A E B, runway 05L', { code: 'other-end', said: '05L', end: '23R' }],
  // F is one-way, from the runway to B.
  ['A E B F', { code: 'ends-short', last: 'F', end: '23R', by: ['B'] }],
  ['', { code: 'nothing-said' }],
])('%s: what does not fit the plan is named', (text, problem) => {
  expect(told(text)).toMatchObject({ route: null, problems: [problem] });
});

test.each([
  ['A J', ['A D', 'A E', 'A L', 'A M']],
  ['A B', ['A E B']],
  ['Alfa, Bravo, hold short 23L', ['A E B, hold short 05R/23L']],
  ['A E, cross 23L', ['A E B, cross 05R/23L']],
  ['A E B, hold short 23', ['A E B, hold short 05L/23R', 'A E B, hold short 05R/23L']],
])('%s is mended by a name that is there, or by what lies between', (text, mended) => {
  expect(mendedTexts(text, told(text))).toEqual(mended);
});

test('a closed stretch on the route as told is named, and so is a taxiway that is too narrow', () => {
  const closed = [stretchId({ from: 'bf', to: 'bh' })];
  expect(told('A E B', { rules: { ...FREE, closed } }).problems).toEqual([
    { code: 'closed', name: 'B' },
  ]);
  expect(told('A E B', { rules: { closed: [], neededWidthM: 30 } }).problems).toMatchObject([
    { code: 'too-narrow' },
  ]);
});

test('from a point on the way, what lies behind is not gone back to', () => {
  const { route, problems } = told('A E B', { from: 'be' });
  expect(problems).toEqual([]);
  expect(route?.legs.map(({ name }) => name)).toEqual(['B']);
});

test('after a landing the route begins at the exit that was said, and ends at the stand', () => {
  const back = { from: null, end: '05L', to: 's4', purpose: 'landing', likelyExit: 'rF' } as const;
  const { route, exit, problems } = told('H B E A M', back);
  expect(problems).toEqual([]);
  expect([exit, route?.nodes.at(-1)]).toEqual(['rH', 's4']);
  expect(route?.legs.map(({ name }) => name)).toEqual(['H', 'B', 'E', 'A', 'M', 'apron']);
  const other = told('F B E A, stand 11', back);
  expect([other.exit, other.route?.nodes.at(-1), other.byTheWay]).toEqual(['rF', 's11', ['Q']]);
});

test('where a landing is only likely to leave the runway, a name before that exit is not left out', () => {
  const back = { from: null, end: '05L', to: 's4', purpose: 'landing', likelyExit: 'rF' } as const;
  expect(told('F B E', back).route?.legs.map(({ name }) => name)).toEqual([
    ...['F', 'B', 'E', 'A', 'M', 'apron'],
  ]);
  expect(told('A F B E', back)).toMatchObject({ route: null, problems: [{ code: 'not-joined' }] });
});

test('whatever is typed, there is a route or what keeps it from being one, and no name is left out', () => {
  const word = fc.constantFrom(
    ...['A', 'B', 'C', 'D', 'E', 'F', 'G', 'H', 'M', 'E1', 'Bravo', 'two', 'hold', 'short', '23L'],
    ...['cross', 'backtrack', 'runway', '05L', 'stand', '4', 'via', ',', '/'],
  );
  const typed = fc.oneof(
    fc.array(word, { maxLength: 7 }).map((words) => words.join(' ')),
    fc.string({ maxLength: 30 }),
  );
  fc.assert(
    fc.property(typed, fc.boolean(), (text, landing) => {
      const back = {
        from: null,
        end: '05L',
        to: 's4',
        purpose: 'landing',
        likelyExit: 'rF',
      } as const;
      const { route, items, problems } = told(text, landing ? back : {});
      if (route === null) expect(problems).not.toEqual([]);
      else expect(problems).toEqual([]);
      const legs = route?.legs.map(({ name }) => name) ?? [];
      let at = 0;
      for (const item of route === null ? [] : items) {
        if (item.code !== 'taxiway') continue;
        at = legs.indexOf(item.name, at);
        expect(at, `${text}: ${legs.join(' ')}`).toBeGreaterThanOrEqual(0);
      }
    }),
    { numRuns: 300 },
  );
});
