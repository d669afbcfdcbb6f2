import { expect, test } from 'vitest';
import { linksTo } from '../../../../src/exchange/link';
import { openPage } from '../page';

const { begin, draft, hashOf, sortie } = await openPage();
const { all } = await import('../../../../src/board/documents/documents');
const { takePasted } = await import('../../../../src/board/documents/pasted');
const { keptCodes } = await import('../../../../src/device/codes');
const places = await import('../../../../src/board/places');

const APP = 'https://example.org/kneeboard/';

async function linksOf(code: string) {
  const document = await all.value.find((one) => one.code === code)?.load();
  if (document === undefined) throw new Error(`there is no ${code}`);
  return linksTo(APP, document, hashOf(code));
}

/** Pastes a text into the About sheet, at Steps. */
function paste(text: string) {
  begin();
  places.place.value = 'steps';
  places.sheet.value = { kind: 'about' };
  return takePasted(text);
}

test('a link in a message shows its document over what was open, and adds nothing', async () => {
  const { link } = await linksOf('XLIN');
  expect(paste(`Have a look: ${link}, it is short.`)).toBe(true);
  const from = link.slice(link.indexOf('#'));
  expect(places.sheet.value).toEqual({ kind: 'incoming', from, over: { kind: 'about' } });
  expect(places.place.value).toBe('steps');
  expect(sortie.value.inputs.field).toBeNull();
});

test('a message with every code of a document gathers all but the last, which is shown', async () => {
  const { codes } = await linksOf('sleet-usual');
  const texts = codes.map(({ before, digits }) => before + digits);
  expect(texts.length).toBeGreaterThan(1);
  expect(paste(texts.join('\n'))).toBe(true);
  const digits = codes.map((one, index) => (index < codes.length - 1 ? one.digits : null));
  expect(keptCodes()).toMatchObject({ of: codes.length, digits });
  const last = texts.at(-1) ?? '';
  const from = last.slice(last.indexOf('#'));
  expect(places.sheet.value).toMatchObject({ kind: 'incoming', from });
});

test('a piece of a map is shown over what was open, and adds nothing', () => {
  const map = '{"version":0.6,"elements":[]}';
  expect(paste(map)).toBe(true);
  expect(places.sheet.value).toEqual({ kind: 'map', from: map, over: { kind: 'about' } });
  expect(sortie.value.inputs.field).toBeNull();
});

test('a link to Wind goes there, and its wind is in use', () => {
  expect(paste(`${APP}#/wind?report=27012KT`)).toBe(true);
  expect(places.place.value).toBe('wind');
  expect(places.sheet.value).toBeNull();
  expect(sortie.value.winds.map(({ text }) => text)).toEqual(['27012KT']);
});

test('a link to Wind with a text that is no wind leaves it in the entry, to be corrected', () => {
  expect(paste(`${APP}#/wind?report=27O12KX`)).toBe(true);
  expect(sortie.value.winds).toEqual([]);
  expect(draft.value).toBe('27O12KX');
});

test.each([
  ['nothing', ''],
  ['plain words', 'Bring the charts, please.'],
  ['a plain report, which belongs into Wind', '27012KT'],
  ['a number', '01234567'],
  ['another link', 'https://example.org/#/steps'],
  ['an empty link to Wind', `${APP}#/wind?report=`],
])('%s is not ours, and changes nothing', (_, text) => {
  expect(paste(text)).toBe(false);
  expect(places.place.value).toBe('steps');
  expect(places.sheet.value).toEqual({ kind: 'about' });
  expect([sortie.value.winds, draft.value]).toEqual([[], '']);
});
