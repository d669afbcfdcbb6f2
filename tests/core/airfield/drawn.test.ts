/** Whatever is drawn can be taken back exactly; what is left passes the schema or says why not. */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type FieldEdit, fieldChanges } from '../../../src/core/airfield/edit';
import { snap } from '../../../src/core/airfield/editSnap';
import type { Field } from '../../../src/core/airfield/field';
import { routeGaps } from '../../../src/core/airfield/routeGaps';
import { documentFaults, readDocument } from '../../../src/core/readDocument.schema';
import { stretchId } from '../../../src/core/taxi/rules';
import {
  beginHistory,
  changed,
  documentNow as drawn,
  type History,
  redone as redo,
  restoredHistory,
  storedHistory as stored,
  undone as undo,
} from '../../../src/core/writing/history';
import { demoField } from '../documents/demo';
import { MIDDLE, STRIP, small } from './drawing';

type FieldDraft = History<Field, FieldEdit>;

const draftOf = (field: Field): FieldDraft => beginHistory(field);
const perform = (draft: FieldDraft, edit: FieldEdit): FieldDraft =>
  changed(fieldChanges, draft, edit, true);
const restored = (draft: ReturnType<typeof stored<Field, FieldEdit>>): FieldDraft =>
  restoredHistory(fieldChanges, draft);

/** What a pilot's hand does: a choice of what, and numbers that say where. */
const gesture = fc.record({
  what: fc.nat(15),
  xM: fc.integer({ min: -700, max: 700 }),
  yM: fc.integer({ min: -400, max: 400 }),
  pick: fc.nat(60),
});

type Gesture = typeof gesture extends fc.Arbitrary<infer G> ? G : never;

const NUMBERS = ['01', '09', '18L', '27', '36'] as const;

/** The edit that a gesture means on the field as it stands. */
function meant(draft: FieldDraft, { what, xM, yM, pick }: Gesture): FieldEdit {
  const field = drawn(draft);
  const { nodes, edges } = field.taxi;
  const node = nodes.length === 0 ? null : (nodes[pick % nodes.length] ?? null);
  const edge = edges.length === 0 ? null : (edges[pick % edges.length] ?? null);
  const id = node?.id ?? 'none';
  const stretch = edge === null ? 'none~none' : stretchId(edge);
  const at = snap(field, { xM, yM }, { from: id });
  const line = {
    by: 'centre' as const,
    centre: MIDDLE,
    bearingTrueDeg: pick * 6,
    lengthM: 400 + Math.abs(xM),
  };
  const edits: readonly FieldEdit[] = [
    { kind: 'laid', from: pick % 4 === 0 ? null : id, at, on: 'taxiway', name: 'B' },
    { kind: 'laid', from: id, at, on: 'apron', name: 'apron' },
    { kind: 'placed', what: 'stand', at },
    { kind: 'placed', what: 'hold', at },
    { kind: 'node', id, set: { at: { xM, yM } } },
    { kind: 'node', id, set: { name: pick % 2 ? `N${pick}` : null } },
    { kind: 'node-removed', id },
    { kind: 'stretch', id: stretch, set: { name: 'D', widthM: pick % 2 ? 15 : null } },
    { kind: 'stretch', id: stretch, set: { onlyFrom: pick % 3 ? (edge?.to ?? null) : null } },
    { kind: 'stretch-removed', id: stretch },
    { kind: 'line', index: pick % 2, line },
    { kind: 'number', index: 0, side: pick % 2 ? 1 : 0, designator: NUMBERS[pick % 5] ?? '09' },
    { kind: 'end', index: 0, side: 0, set: { displacedM: pick * 40 } },
    { kind: 'hot-spot', index: pick % 3, to: { xM, yM, name: 'HS', about: 'look twice' } },
    {
      kind: 'runway-added',
      runway: { line, designator: '18L', widthM: 30, surface: 'grass', edgeLights: false },
    },
    { kind: 'runway-removed', index: pick % 3 },
  ];
  return edits[what] ?? { kind: 'head', set: { name: `Field ${pick}` } };
}

const gestures = fc.array(gesture, { maxLength: 40 });

const performed = (start: FieldDraft, hands: readonly Gesture[]): FieldDraft =>
  hands.reduce((draft, hand) => perform(draft, meant(draft, hand)), start);

const times = (count: number, step: (draft: FieldDraft) => FieldDraft, draft: FieldDraft) =>
  Array.from({ length: count }).reduce<FieldDraft>(step, draft);

const START = draftOf(small());

test('everything taken back is the field as it was begun, and done again it is the field as drawn', () => {
  fc.assert(
    fc.property(gestures, (hands) => {
      const all = performed(START, hands);
      const back = times(all.steps.length, undo, all);
      expect(drawn(back)).toEqual(small());
      expect(drawn(times(all.steps.length, redo, back))).toEqual(drawn(all));
    }),
  );
});

test('a change taken back leaves what was there before it', () => {
  fc.assert(
    fc.property(gestures, gesture, (hands, last) => {
      const before = performed(START, hands);
      const after = perform(before, meant(before, last));
      fc.pre(after.steps.length > before.steps.length);
      expect(drawn(undo(after))).toEqual(drawn(before));
    }),
  );
});

test('a draft stored and read again is the same draft', () => {
  fc.assert(
    fc.property(gestures, fc.nat(10), (hands, back) => {
      const draft = times(back, undo, performed(START, hands));
      const read = restored(JSON.parse(JSON.stringify(stored(draft))));
      expect(drawn(read)).toEqual(drawn(draft));
      expect(drawn(undo(read))).toEqual(drawn(undo(draft)));
      expect(drawn(redo(read))).toEqual(drawn(redo(draft)));
    }),
  );
});

test('what is drawn passes its schema, or its faults say why not', () => {
  fc.assert(
    fc.property(gestures, (hands) => {
      const field = drawn(performed(START, hands));
      const { problems } = readDocument(JSON.stringify(field));
      expect(documentFaults(field).length === 0).toBe(problems === null);
      expect(() => routeGaps(field)).not.toThrow();
    }),
  );
});

test('no stretch leads from or to a point that is not there, whatever is drawn', () => {
  fc.assert(
    fc.property(gestures, (hands) => {
      const { nodes, edges } = drawn(performed(START, hands)).taxi;
      const known = new Set(nodes.map(({ id }) => id));
      expect(known.size).toBe(nodes.length);
      expect(edges.every(({ from, to }) => known.has(from) && known.has(to) && from !== to)).toBe(
        true,
      );
    }),
  );
});

describe('what is typed letter by letter', () => {
  const typed = ['T', 'Te', 'Tea'].reduce(
    (draft, name) => perform(draft, { kind: 'head', set: { name } }),
    draftOf(STRIP),
  );

  test('is taken back at once', () => {
    expect(typed.steps).toHaveLength(1);
    expect(drawn(undo(typed)).name).toBe('Teasel Flat');
  });

  test('displaces a threshold from where it was, not from where a digit left it', () => {
    const draft = [5, 50, 500, 50].reduce(
      (now, displacedM) => perform(now, { kind: 'end', index: 0, side: 0, set: { displacedM } }),
      draftOf(STRIP),
    );
    expect(drawn(draft).runways[0]?.ends[0]?.ldaM).toBe(950);
  });
});

test('what comes to nothing is no change', () => {
  const { id, xM, yM } = small().taxi.nodes[0] ?? { id: '', xM: 0, yM: 0 };
  expect(perform(START, { kind: 'node', id, set: { at: { xM, yM } } })).toBe(START);
});

test('after more changes than are stored the latest four hundred can still be taken back', () => {
  const many = Array.from({ length: 450 }).reduce<FieldDraft>(
    (draft, _, index) => perform(draft, { kind: 'hot-spot', index: 0, to: hotSpot(index) }),
    draftOf(demoField('XHAR')),
  );
  const read = restored(stored(many));
  expect(read.steps).toHaveLength(400);
  expect(drawn(times(450, undo, read)).taxi.hotSpots?.[0]?.name).toBe('HS 49');
});

const hotSpot = (index: number) => ({ xM: 0, yM: 0, name: `HS ${index}`, about: 'look twice' });
