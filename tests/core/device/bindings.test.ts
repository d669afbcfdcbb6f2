/** What controls do is kept on the device: whatever stands in its store, only bindings come out. */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  ACTIONS,
  actionOf,
  type Binding,
  conflictOf,
  controlsOf,
  readBindings,
  wantedOf,
} from '../../../src/device/bindings';
import { MANNERS } from '../../../src/device/presses';

const binding = fc.record({
  control: fc.constantFrom(
    'key:PageDown',
    'key:KeyB',
    'media:nexttrack',
    'pad:b3:0:Some stick (Vendor: 1)',
    'pad:a1-:1:Some stick',
  ),
  manner: fc.constantFrom(...MANNERS),
  action: fc.constantFrom(...ACTIONS),
});

const anyBindings = fc.uniqueArray(binding, { selector: (one) => JSON.stringify(one) });

describe('bindings that were stored', () => {
  test('come back as they were', () => {
    fc.assert(
      fc.property(anyBindings, (all) => {
        expect(readBindings(JSON.parse(JSON.stringify(all)))).toEqual(all);
      }),
    );
  });

  test('come back in the midst of anything else, and nothing else does', () => {
    fc.assert(
      fc.property(anyBindings, fc.array(fc.jsonValue(), { maxLength: 20 }), (all, junk) => {
        expect(readBindings([...junk, ...all])).toEqual(all);
      }),
    );
  });

  test.each([
    null,
    'keys',
    { control: 'key:KeyA' },
    [{ control: 'key:KeyA', manner: 'press', action: 'constructor' }],
    [{ control: 'mouse:1', manner: 'press', action: 'done' }],
    [{ control: 'key:KeyA', manner: 'wobble', action: 'done' }],
    [{ control: `key:${'A'.repeat(41)}`, manner: 'press', action: 'done' }],
  ])('%j is none', (stored) => {
    expect(readBindings(stored)).toEqual([]);
  });
});

describe('a control', () => {
  const done: Binding = { control: 'key:KeyD', manner: 'press', action: 'done' };
  const back: Binding = { control: 'key:KeyD', manner: 'press', action: 'back' };
  const held: Binding = { control: 'key:KeyD', manner: 'hold', action: 'back' };

  test('that two things claim does neither, and both say so', () => {
    expect(actionOf('key:KeyD', 'press', [done, back])).toBeNull();
    expect(conflictOf(done, [done, back])).toEqual({ kind: 'shared', with: ['back'] });
    expect(conflictOf(back, [done, back])).toEqual({ kind: 'shared', with: ['done'] });
  });

  test('whose hold does something else cannot tick a critical step, and says so', () => {
    expect(actionOf('key:KeyD', 'press', [done, held])).toBe('done');
    expect(conflictOf(done, [done, held])).toEqual({ kind: 'cannot-hold', with: ['back'] });
    expect(conflictOf(held, [done, held])).toBeNull();
    expect([...wantedOf('key:KeyD', [done, held])]).toEqual(['press', 'hold']);
  });

  test('is taken apart into what it is called by', () => {
    expect(controlsOf('pad:a2-:1:Stick: left')).toEqual({
      kind: 'pad',
      pad: 'Stick: left',
      copy: 1,
      part: 'axis',
      number: 2,
      way: '-',
    });
    expect(controlsOf('key:PageDown')).toEqual({ kind: 'key', name: 'PageDown' });
  });
});
