import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Entry, SortieEvent } from '../../../src/core/sortie/entry';
import { readRecord, writeRecord } from '../../../src/exchange/recordFile';
import { anyRecord, written } from '../sortie/recorder';

const DOCUMENT = { hash: 'hash-f', kind: 'field', content: { code: 'XTST' }, own: true };
const textOf = (entries: readonly Entry[], largest?: number) =>
  writeRecord({ entries, documents: [DOCUMENT] }, largest).map((pieces) => pieces.join(''));
const one = written({ kind: 'wind', text: '27012KT', north: 'true' });
const [whole = ''] = textOf(one);

test('what is written is read back, whatever happened', () => {
  fc.assert(
    fc.property(anyRecord, (entries) => {
      const [text = ''] = textOf(entries);
      expect(readRecord(text)).toEqual({
        record: { entries, documents: [DOCUMENT] },
        leftOut: 0,
        mended: 0,
        problem: null,
      });
    }),
    { numRuns: 60 },
  );
});

test('a file says what it is and by which version', () => {
  expect(JSON.parse(whole)).toMatchObject({ lapstrip: 'record', version: 1 });
});

test('a file cut at any byte is refused, and never read in part', () => {
  fc.assert(
    fc.property(anyRecord, fc.nat(), (entries, at) => {
      const [text = ''] = textOf(entries);
      const bytes = new TextEncoder().encode(text.trimEnd());
      const cut = new TextDecoder().decode(bytes.slice(0, at % bytes.length));
      expect(readRecord(cut)).toEqual({ record: null, problem: 'not-json' });
    }),
  );
  for (let length = 0; length < whole.trimEnd().length; length++) {
    expect(readRecord(whole.slice(0, length)).problem).toBe('not-json');
  }
});

describe('texts in entries that mislead are mended, and the entries read', () => {
  const readBack = (...entries: readonly Entry[]) => {
    const { record, ...others } = readRecord(textOf(entries).join(''));
    return { entries: record?.entries ?? [], ...others };
  };

  test.each<[string, SortieEvent, object]>([
    ['a note', { kind: 'noted', text: 'runway \u202e82' }, { text: 'runway \ufffd82' }],
    ['a report', { kind: 'wind', text: '27012\u200bKT', north: 'true' }, { text: '27012 KT' }],
    [
      'a callsign',
      { kind: 'set', inputs: { callsign: 'Gannet\n1\u2066' } },
      { inputs: { callsign: 'Gannet 1\ufffd' } },
    ],
    [
      'the wording of a call',
      { kind: 'set', inputs: { ownCalls: { taxi: 'taxi\u00ad to 28' } } },
      { inputs: { ownCalls: { taxi: 'taxi\ufffd to 28' } } },
    ],
    [
      'the names of ends',
      { kind: 'set', inputs: { closedToday: ['28', '1\u202e0'] } },
      { inputs: { closedToday: ['28', '1\ufffd0'] } },
    ],
    [
      'why a step cannot be done',
      { kind: 'cannot', run: 'r', pass: 1, step: 's', saw: {}, why: 'bro\u0301\u0301ken' },
      { why: 'bróken' },
    ],
    [
      'a figure and its name',
      {
        kind: 'sealed',
        documents: {},
        figures: { 'rot\u202eate': { value: '1\u200b', unit: 'k\u2066t' } },
      },
      { figures: { 'rot\ufffdate': { value: '1\ufffd', unit: 'k\ufffdt' } } },
    ],
  ])('%s', (_, event, mended) => {
    const [entry] = written(event);
    const read = readBack(...written(event, { kind: 'noted', text: 'plain' }));
    expect(read).toMatchObject({ problem: null, mended: 1 });
    expect(read.entries[0]).toEqual({ ...entry, ...mended });
  });

  test('an entry of a newer version, too', () => {
    const newer = {
      ...written({ kind: 'noted', text: '' })[0],
      v: 99,
      by: 'x',
      text: { de: 'a\u202eb' },
    };
    const read = readBack(newer as unknown as Entry);
    expect(read.entries).toEqual([{ ...newer, text: { de: 'a\ufffdb' } }]);
  });

  test('a note in several lines and what a pilot writes with care stay as they are', () => {
    const entries = written(
      { kind: 'noted', text: 'Landed long.\nAgain: 1\u00a0400\u00a0m, “wet”' },
      { kind: 'wind', text: 'METAR XHAR 051850Z\n27012KT=', north: 'true' },
      { kind: 'noted', text: 'Höhe gehalten, می\u200cخواهم' },
    );
    expect(readBack(...entries)).toMatchObject({ entries, mended: 0 });
  });
});

test('a long record is several files, each of which is read by itself', () => {
  const entries = written(
    ...Array.from({ length: 40 }, (_, i) => ({
      kind: 'wind' as const,
      text: `270${10 + i}KT`,
      north: 'true' as const,
    })),
  );
  const files = textOf(entries, 1000);
  expect(files.length).toBeGreaterThan(3);
  for (const text of files) expect(text.length).toBeLessThan(1500);
  expect(files.flatMap((text) => readRecord(text).record?.entries ?? [])).toEqual(entries);
});

describe('refused whole, with its reason', () => {
  const envelope = (entries: string, more = '') =>
    `{"lapstrip":"record","version":1,"entries":${entries},"documents":[]${more}}`;
  const entry = JSON.stringify(one[0]);
  const changed = (change: object) => envelope(`[${JSON.stringify({ ...one[0], ...change })}]`);

  test.each([
    ['no JSON', 'see you at the pond', 'not-json'],
    ['nothing', '', 'not-json'],
    ['another document', '{"lapstrip":"field","version":1}', 'not-record'],
    ['null', 'null', 'not-record'],
    ['a later version', whole.replace('"version":1', '"version":2'), 'other-version'],
    ['no version', '{"lapstrip":"record","entries":[],"documents":[]}', 'other-version'],
    ['no entries', '{"lapstrip":"record","version":1}', 'damaged'],
    ['entries that are none', envelope('{"length":1}'), 'damaged'],
    [
      'a name the language reserves',
      envelope(`[${entry.replace('{', '{"__proto__":{"x":1},')}]`),
      'damaged',
    ],
    [
      'another such name, further in',
      envelope(`[${entry.replace('"at":{', '"at":{"constructor":1,')}]`),
      'damaged',
    ],
    [
      'nesting without end',
      envelope(`[${entry.replace(/}$/, `,"x":${'['.repeat(500)}${']'.repeat(500)}}`)}]`),
      'damaged',
    ],
    ['a text without end', changed({ text: 'A'.repeat(30_000) }), 'damaged'],
    ['an entry without a name', changed({ id: '' }), 'damaged'],
    ['a name that is a number', changed({ id: 7 }), 'damaged'],
    ['a number that is none', changed({ seq: 0.5 }), 'damaged'],
    ['a moment that is none', changed({ at: { wallMs: 'noon', sortieMs: 0 } }), 'damaged'],
    ['a moment beyond all calendars', changed({ at: { wallMs: 8e300, sortieMs: 0 } }), 'damaged'],
    ['a correction to such a moment', changed({ kind: 'corrected', sortieMs: 1e300 }), 'damaged'],
    ['a number that nothing can follow', changed({ seq: Number.MAX_SAFE_INTEGER }), 'damaged'],
    ['a number without end', envelope(`[${entry.replace(/}$/, ',"x":1e999}')}]`), 'damaged'],
    ['inputs of the wrong type', changed({ kind: 'set', inputs: { load: {} } }), 'damaged'],
    ['no entry', envelope('[null,1,"x"]'), 'damaged'],
  ])('%s', (_, text, problem) => {
    expect(readRecord(text)).toMatchObject({ record: null, problem });
    expect(({} as { x?: number }).x).toBeUndefined();
  });

  test('a megabyte of brackets', () => {
    expect(readRecord('['.repeat(1_000_000)).record).toBeNull();
    const deep = `${'['.repeat(200_000)}${']'.repeat(200_000)}`;
    expect(readRecord(deep).record).toBeNull();
    expect(readRecord(envelope(`[${deep}]`)).record).toBeNull();
  });
});

describe('a damaged entry is told by its place, and by what in it is amiss', () => {
  const fileOf = (...entries: readonly unknown[]) =>
    JSON.stringify({ lapstrip: 'record', version: 1, entries, documents: [] });
  const high = Number.MAX_SAFE_INTEGER;

  test.each([
    ['a number', { seq: high }, 'wind', { at: 'seq', value: high }],
    [
      'an input',
      { kind: 'set', inputs: { closedToday: {} } },
      'set',
      { at: 'inputs.closedToday', value: {} },
    ],
    [
      'a clock',
      { kind: 'clock', sortieMs: 8e12, rate: 1 },
      'clock',
      { at: 'sortieMs', value: 8e12 },
    ],
    ['a number beyond any', { kind: 'clock', sortieMs: 1e20, rate: 1 }, '', null],
    [
      'what is missing',
      { kind: 'noted', text: undefined },
      'noted',
      { at: 'text', value: undefined },
    ],
    ['a stamp of a newer version', { v: 99, by: 'x', at: 0 }, 'wind', { at: 'at', value: 0 }],
    ['what nothing looks like', 'x', '', null],
  ])('%s', (_, change, kind, misfit) => {
    const damaged = typeof change === 'string' ? change : { ...one[0], ...change };
    expect(readRecord(fileOf(one[0], damaged, damaged))).toEqual({
      record: null,
      problem: 'damaged',
      entry: { number: 2, kind, misfit },
    });
  });
});

test('an entry of a newer version is kept', () => {
  const newer = { ...one[0], v: 99, by: 'there', text: 7 };
  const text = JSON.stringify({ lapstrip: 'record', version: 1, entries: [newer], documents: [] });
  expect(readRecord(text).record?.entries).toEqual([newer]);
});

test('a document that is none is left out, and counted', () => {
  const documents = [DOCUMENT, { ...DOCUMENT, content: null }, 'x'];
  const text = JSON.stringify({ lapstrip: 'record', version: 1, entries: one, documents });
  expect(readRecord(text)).toEqual({
    record: { entries: one, documents: [DOCUMENT] },
    leftOut: 2,
    mended: 0,
    problem: null,
  });
});

test('an entry of a kind that only a later version knows is kept', () => {
  const later = { ...one[0], kind: 'torn off', of: 'pad' };
  const text = `{"lapstrip":"record","version":1,"entries":[${JSON.stringify(later)}],"documents":[]}`;
  expect(readRecord(text).record?.entries).toEqual([later]);
});
