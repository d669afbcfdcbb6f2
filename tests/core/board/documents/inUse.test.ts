import { afterAll, expect, test, vi } from 'vitest';
import { openPage, pass } from '../page';

const { add, begin, beginAt, hashOf, record } = await openPage({ fresh: true, timers: true });
const inUse = await import('../../../../src/board/documents/inUse');
const { all, askAgain, hold, received } = await import('../../../../src/board/documents/documents');
const { addOwnDocument } = await import('../../../../src/board/documents/ownDocuments');

// Another file must not find what is left here.
afterAll(() => void vi.resetModules());

const listedAs = (code: string) => {
  const found = all.value.find((one) => one.code === code);
  if (found === undefined) throw new Error(`there is no ${code}`);
  return found;
};

/** Lets what was promised come true, as far as it can. */
const promises = () => new Promise((done) => setImmediate(done));

test('a field is null while it loads, is asked for once, and is there when it has come', async () => {
  const field = { code: 'XLIN' };
  const coming: ((loaded: never) => void)[] = [];
  const promise = new Promise<never>((come) => coming.push(come));
  const asked = vi.spyOn(listedAs('XLIN'), 'load').mockReturnValue(promise);
  begin({ kind: 'set', inputs: { field: hashOf('XLIN') } });
  expect(inUse.field.value).toBeNull();
  add({ kind: 'set', inputs: { surface: 'wet' } });
  expect(inUse.field.value).toBeNull();
  expect(asked).toHaveBeenCalledTimes(1);
  for (const come of coming) come(field as never);
  await promises();
  expect(inUse.field.value).toEqual(field);
});

test('what failed to load is asked for again, and comes once it can', async () => {
  const field = { code: 'XHAR' };
  const asked = vi.spyOn(listedAs('XHAR'), 'load');
  asked.mockRejectedValueOnce(new Error('offline')).mockResolvedValueOnce(field as never);
  begin({ kind: 'set', inputs: { field: hashOf('XHAR') } });
  expect(inUse.field.value).toBeNull();
  await promises();
  expect(inUse.field.value).toBeNull();
  pass(10_000);
  await promises();
  expect(inUse.field.value).toEqual(field);
  expect(asked).toHaveBeenCalledTimes(2);
});

test('a document that the device did not have yet is asked for again', async () => {
  const content = { code: 'XOWN' };
  const kept = { hash: 'hash-of-own-field', kind: 'field', content, own: true } as const;
  vi.spyOn(record, 'documents').mockResolvedValueOnce([]).mockResolvedValueOnce([kept]);
  begin({ kind: 'set', inputs: { field: 'hash-of-own-field' } });
  expect(inUse.field.value).toBeNull();
  await promises();
  askAgain();
  expect(inUse.field.value).toBeNull();
  await promises();
  expect(inUse.field.value).toEqual(content);
});

test('without a field no aircraft is loaded before the first answer stands', async () => {
  const asked = vi.spyOn(listedAs('turnstone'), 'load').mockResolvedValue({} as never);
  inUse.answerStands.value = false;
  begin({ kind: 'set', inputs: { aircraft: hashOf('turnstone') } });
  expect(inUse.aircraft.value).toBeNull();
  expect(asked).not.toHaveBeenCalled();
  inUse.answerStands.value = true;
  expect(inUse.aircraft.value).toBeNull();
  await promises();
  expect(inUse.aircraft.value).toEqual({});
});

test('the procedure is the usual one in the language of the page', () => {
  hold(hashOf('sleet'), { code: 'sleet' });
  beginAt('XLIN', 'sleet');
  expect(inUse.chosenProcedure.value).toBe(hashOf('sleet-usual'));
  document.documentElement.lang = 'de';
  beginAt('XLIN', 'sleet');
  add({ kind: 'set', inputs: { aircraft: null } });
  expect(inUse.chosenProcedure.value).toBeNull();
  add({ kind: 'set', inputs: { aircraft: hashOf('sleet') } });
  expect(inUse.chosenProcedure.value).toBe(hashOf('sleet-usual-de'));
});

test('one from elsewhere is not flown unasked, one of the pilot’s own is', async () => {
  hold(hashOf('sleet'), { code: 'sleet' });
  const one = (hash: string) => ({
    hash,
    kind: 'procedure' as const,
    content: { code: hash, name: hash, aircraft: 'sleet', language: 'en' } as never,
    own: true,
  });
  beginAt('XLIN', 'sleet');
  await addOwnDocument({ ...one('from-elsewhere'), received: true });
  expect(received.value.has('from-elsewhere')).toBe(true);
  expect(inUse.chosenProcedure.value).toBe(hashOf('sleet-usual'));
  await addOwnDocument(one('mine'));
  expect(inUse.chosenProcedure.value).toBe('mine');
});

test('steps begun keep their procedure, whatever is chosen for the next sortie', () => {
  hold('the-first', { code: 'first' });
  hold('the-next', { code: 'next' });
  begin({ kind: 'set', inputs: { procedure: 'the-first' } });
  add({ kind: 'open', run: 'run-one', procedure: 'the-first', list: null });
  add({ kind: 'set', inputs: { procedure: 'the-next' } });
  expect(inUse.chosenProcedure.value).toBe('the-next');
  expect(inUse.procedure.value).toEqual({ code: 'first' });
  add({ kind: 'close', run: 'run-one', leadsTo: 'return' });
  expect(inUse.procedure.value).toEqual({ code: 'next' });
});
