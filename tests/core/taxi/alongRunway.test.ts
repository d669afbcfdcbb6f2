/** Routes that need a runway: said, held before, and taken only where nothing else leads there. */

import { beforeAll, expect, test } from 'vitest';
import { findRouteIn } from '../../../src/core/taxi/routeIn';
import { findRouteOut } from '../../../src/core/taxi/routeOut';
import { stretchId } from '../../../src/core/taxi/rules';
import { toldIn, toldOut } from '../../../src/core/taxi/told';
import { speak } from '../../../src/parts/catalogues';
import { tellRoute } from '../../../src/views/taxi/route.en';
import { demoField, demoFields } from '../documents/demo';
import { FREE, telling } from './drawn';

beforeAll(() => speak('en'));

const MARRAM = demoField('XMAR');

test('with B closed at Marram, 23R is entered at C1 and backtracked, once', () => {
  const rules = { ...FREE, closed: [stretchId({ from: 'be', to: 'bf' })] };
  const { route, entry } = findRouteOut({ field: MARRAM, from: 's4', end: '23R', rules });
  if (entry === null) throw new Error('no way');
  // C meets the runway 400 m from 05L, by the demo's generator: 2 000 m from the other end.
  expect(entry).toMatchObject({ hold: 'C1', rollsFromM: 0, runM: 2400 });
  expect(Math.abs(entry.backtrackM - 2000)).toBeLessThan(5);
  expect(route?.runwayM).toBe(0);
  const text = tellRoute(toldOut(telling(MARRAM, route), entry), true);
  expect(text).toContain(
    'at Charlie one hold short runway two three right, then backtrack runway two three right, two thousand metres',
  );
});

test('where a holding point of the end can still be reached, nobody backtracks from another', () => {
  const rules = { ...FREE, closed: [stretchId({ from: 'bh', to: 'b2' })] };
  const { entries } = findRouteOut({ field: MARRAM, from: 's4', end: '23R', rules });
  expect(new Set(entries.map(({ hold }) => hold))).toEqual(new Set(['H1']));
});

test('no route of a demo field lies along a runway without a hold before it and the word backtrack', () => {
  let along = 0;
  for (const field of demoFields) {
    const stand = field.taxi.nodes.find(({ kind }) => kind === 'stand');
    for (const edge of field.taxi.edges) {
      const rules = { ...FREE, closed: [stretchId(edge)] };
      for (const { designator: end } of field.runways.flatMap(({ ends }) => ends)) {
        const { route, entry } = findRouteOut({ field, from: stand?.id ?? '', end, rules });
        if (entry === null || route === null) continue;
        const told = toldOut(telling(field, route), entry);
        const backtrackM = route.runwayM + entry.backtrackM;
        if (backtrackM === 0) continue;
        along += 1;
        expect(tellRoute(told, true)).toContain('backtrack runway');
        if (route.runwayM > 0) {
          const entered = route.crossings.find(({ alongM }) => alongM > 0);
          expect(entered?.alongM).toBeGreaterThan(0);
          expect(tellRoute(told, true)).toContain('hold until told to enter');
          expect(tellRoute(told, false)).toContain('hold, look both ways, say that you enter');
        }
      }
    }
  }
  expect(along).toBeGreaterThan(10);
});

test('a landing beyond the last exit is told to backtrack to it', () => {
  const asked = { field: MARRAM, end: '05L', to: 's4', from: null, rules: FREE };
  const { route, exit } = findRouteIn({ ...asked, landingM: 2390 });
  expect(exit?.backtrackM).toBeGreaterThan(0);
  const text = tellRoute(toldIn(telling(MARRAM, route), 'Stand 4', exit, '05L'), true);
  expect(text).toMatch(/^Backtrack runway zero five left, .* metres, to /);
});
