import { expect, test } from 'vitest';
import { openPage } from '../page';

const { hashOf } = await openPage({ fresh: true, hooks: false });
const { fieldsFor, markOf } = await import('../../../../src/board/documents/fieldChoice');
const { nearbyFields } = await import('../../../../src/board/documents/nearbyFields');
const { addOwnDocument } = await import('../../../../src/board/documents/ownDocuments');
const { listedBy } = await import('../../../../src/board/documents/documents');

const codes = (typed: string, flown: readonly string[] = []) =>
  fieldsFor(typed, flown).map(({ code }) => code);

const listedField = (code: string) => {
  const listed = listedBy(hashOf(code));
  if (listed?.kind !== 'field') throw new Error(`there is no ${code}`);
  return listed;
};

test('what was flown lately comes first while nothing is typed', () => {
  expect(codes('', [hashOf('XTUM')])[0]).toBe('XTUM');
});

test('a field of one\u2019s own comes before the demo\u2019s that match as well or better', async () => {
  const content = { ...(await listedField('XLIN').load()), code: 'XZZZ', name: 'Harrow Farm' };
  await addOwnDocument({ hash: 'own-farm', kind: 'field', content, own: true });
  expect(codes('harrow')[0]).toBe('XZZZ');
  expect(codes('harrow')).toContain('XHAR');
  expect(codes('')[0]).toBe('XZZZ');
  const [first] = fieldsFor('harrow', []);
  expect(first && markOf(first)).toBe('own');
});

test('the nearest are in order of distance, without the field itself', () => {
  const near = nearbyFields(listedField('XHAR'), 3);
  expect(near).toHaveLength(3);
  expect(near.map(({ field }) => field.code)).not.toContain('XHAR');
  const distances = near.map(({ awayNm }) => awayNm);
  expect(distances).toEqual(distances.toSorted((a, b) => a - b));
});
