import { expect, test } from 'vitest';
import { openPage } from '../page';

const { hashOf } = await openPage({ fresh: true, hooks: false });
const library = await import('../../../../src/board/documents/library');
const { addOwnDocument, keptBy } = await import('../../../../src/board/documents/ownDocuments');
const { listedBy } = await import('../../../../src/board/documents/documents');

const listedAs = (code: string) => {
  const listed = listedBy(hashOf(code));
  if (listed === undefined) throw new Error(`there is no ${code}`);
  return listed;
};
const named = (kind: (typeof library.KINDS)[number]) =>
  library.ownRows(kind).map(({ newest }) => [newest.code, newest.name]);

test('a copy of a field has the code it was given, and never one that is another’s', async () => {
  const harrow = listedAs('XHAR');
  expect(await library.copyDocument(harrow, { code: 'xlin', name: 'Copy' })).toBe('code-taken');
  expect(await library.copyDocument(harrow, { code: 'not a code', name: 'Copy' })).not.toBeNull();
  expect(await library.copyDocument(harrow, { code: 'xham', name: ' Copy ' })).toBeNull();
  expect(named('field')).toEqual([['XHAM', 'Copy']]);
});

test('copies of aircraft and procedures get codes of their own by themselves', async () => {
  expect(library.freeCode(listedAs('sleet'))).toBe('sleet-2');
  await library.copyDocument(listedAs('sleet'), { code: '', name: 'Sleet of mine' });
  expect(library.freeCode(listedAs('sleet'))).toBe('sleet-3');
  await library.copyDocument(listedAs('sleet-usual'), { code: '', name: 'Usual, for two' });
  expect(named('aircraft')).toEqual([['sleet-2', 'Sleet of mine']]);
  expect(named('procedure')).toEqual([['sleet-usual-2', 'Usual, for two']]);
});

test('what stands beside says what it could replace, and nothing once it has', async () => {
  const content = { ...(await listedAs('XTUM').load()), name: 'Tumbrel, theirs' };
  await addOwnDocument({ hash: 'came', kind: 'field', content, own: true, received: true });
  const came = () => {
    const document = keptBy('came');
    if (document === undefined) throw new Error('it is not here');
    return document;
  };
  expect(library.standsBeside(came())).toBe('overDemo');
  const mine = { ...content, name: 'Tumbrel, mine' };
  await addOwnDocument({ hash: 'mine', kind: 'field', content: mine, own: true });
  expect(library.standsBeside(came())).toBe('over');
  await library.makeNewest(came());
  expect(library.standsBeside(came())).toBeNull();
  const tumbrel = library.ownRows('field').find(({ newest }) => newest.code === 'XTUM');
  expect(tumbrel?.versions.map(({ hash }) => hash)).toEqual(['mine', 'came']);
});
