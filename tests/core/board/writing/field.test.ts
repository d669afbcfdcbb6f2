import { expect, test } from 'vitest';
import { readDraft } from '../../../../src/record/drafts';
import { MIDDLE, RUNWAY } from '../../airfield/drawing';
import { openPage, pass } from '../page';

const { hashOf } = await openPage({ timers: true });
const drawing = await import('../../../../src/board/writing/field');
const { listedFields: fields } = await import('../../../../src/board/documents/documents');

const { changeField: change, drawnField } = drawing;
const head = (set: { readonly code?: string; readonly name?: string }) =>
  change({ kind: 'head', set });

/** Draws a field anew. */
async function begin() {
  await drawing.openDraft(null);
  drawing.startAnew();
  return drawnField.value;
}

/** A small field that can be saved. */
function draw(code: string): void {
  head({ code });
  head({ name: 'Teasel Flat' });
  change({ kind: 'place', at: MIDDLE });
  change(RUNWAY);
}

test('letters of one text are one change, two texts are two', async () => {
  const empty = await begin();
  for (const name of ['T', 'Te', 'Tea']) head({ name });
  head({ code: 'XTSL' });
  expect(drawnField.value).toMatchObject({ code: 'XTSL', name: 'Tea' });
  drawing.undo();
  expect(drawnField.value).toMatchObject({ code: empty?.code, name: 'Tea' });
  drawing.undo();
  expect(drawnField.value).toEqual(empty);
  drawing.redo();
  expect(drawnField.value?.name).toBe('Tea');
});

test('begun anew is a change too, and undo brings the drawing back', async () => {
  const empty = await begin();
  draw('XTSL');
  drawing.startAnew();
  expect(drawnField.value).toEqual(empty);
  drawing.undo();
  expect(drawnField.value).toMatchObject({ code: 'XTSL', name: 'Teasel Flat' });
  expect(drawnField.value?.runways).toHaveLength(1);
});

test('what keeps a field from being saved is said, and nothing is saved', async () => {
  await begin();
  const count = fields.value.length;
  expect(drawing.drawnFaults.value.length).toBeGreaterThan(0);
  const kept = await drawing.keepField();
  expect(kept.listed).toBeNull();
  expect(kept.problems?.length).toBeGreaterThan(0);
  expect(fields.value).toHaveLength(count);
});

test('a field saved is offered at once, and the next drawing begins empty', async () => {
  await begin();
  draw('XTSL');
  expect(drawing.drawnFaults.value).toEqual([]);
  const { listed } = await drawing.keepField();
  expect(listed).toMatchObject({ kind: 'field', code: 'XTSL', name: 'Teasel Flat' });
  expect(fields.value).toContain(listed);
  await drawing.openDraft(null);
  expect(drawnField.value).toMatchObject({ code: '', runways: [] });
});

test('one drawn on after it was saved is gone on with', async () => {
  await begin();
  draw('XTSM');
  await drawing.keepField();
  head({ name: 'Teasel Flat South' });
  await drawing.openDraft(null);
  expect(drawnField.value).toMatchObject({ code: 'XTSM', name: 'Teasel Flat South' });
});

test('a field corrected and one drawn new keep their drafts apart', async () => {
  await begin();
  head({ name: 'New' });
  await drawing.openDraft(hashOf('XLIN'));
  expect(drawnField.value?.code).toBe('XLIN');
  head({ name: 'Corrected' });
  await drawing.openDraft(null);
  expect(drawnField.value?.name).toBe('New');
  await drawing.openDraft(hashOf('XLIN'));
  expect(drawnField.value).toMatchObject({ code: 'XLIN', name: 'Corrected' });
  drawing.startAnew();
  expect(drawnField.value?.name).not.toBe('Corrected');
  expect(drawnField.value?.code).toBe('XLIN');
});

test('what was drawn is on the device soon', async () => {
  await begin();
  head({ name: 'Teasel Flat' });
  pass(200);
  expect(JSON.stringify(await readDraft(' field/new'))).toContain('Teasel Flat');
});
