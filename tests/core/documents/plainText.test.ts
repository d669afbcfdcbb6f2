/**
 * Texts that are drawn otherwise than they are written. The characters are those that Unicode names:
 * UAX #9, table 4 (directional formatting characters); UAX #31, section 2.3 (format controls);
 * UTR #36, sections 2.5 and 3; UTS #39, section 5.4 (nonspacing marks; its number from memory).
 */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { plainly, shownPlainly, textFault } from '../../../src/core/plainText';
import { documentFaults, readDocument } from '../../../src/core/readDocument.schema';
import { readReport } from '../../../src/core/weather/readReport';
import { demoTexts } from './demo';

const MISLEADING: readonly (readonly [what: string, text: string, code: string])[] = [
  ['a line break', 'Flaps\nset', 'text-control'],
  ['a line separator', 'Flaps\u2028set', 'text-control'],
  ['a paragraph separator', 'Flaps\u2029set', 'text-control'],
  ['a tab', 'Flaps\tset', 'text-control'],
  ['a null', 'Flaps\0set', 'text-control'],
  ['a bell', 'Flaps\u0007', 'text-control'],
  ['an escape of C1', 'Flaps\u009bset', 'text-control'],
  ['half a character', 'Flaps \ud83d set', 'text-control'],
  ['a private sign', 'Flaps \ue000', 'text-control'],
  ['an override', 'runway \u202e82', 'text-direction'],
  ['an embedding', 'runway \u202b28\u202c', 'text-direction'],
  ['an isolate', 'runway \u206728\u2069', 'text-direction'],
  ['a mark of direction', 'runway 10\u200f-28', 'text-direction'],
  ['the mark of Arabic', 'runway 10\u061c-28', 'text-direction'],
  ['a blank of no width', 'Fl\u200baps', 'text-invisible'],
  ['a joiner between Latin letters', 'Fl\u200daps', 'text-invisible'],
  ['a soft hyphen', 'Fla\u00adps', 'text-invisible'],
  ['a word joiner', 'Fl\u2060aps', 'text-invisible'],
  ['a byte order mark within', 'Fl\ufeffaps', 'text-invisible'],
  ['a tag', 'Flaps\u{e0041}', 'text-invisible'],
  ['a variation selector', 'Flaps\ufe0f', 'text-invisible'],
  ['a Hangul filler alone', '\u3164', 'text-invisible'],
  ['a Braille cell without dots', '\u2800\u2800', 'text-invisible'],
  ['an annotation', 'Flaps\ufff9set\ufffb', 'text-invisible'],
  ['five marks on a letter', 'Fla\u0300\u0301\u0302\u0303\u0304ps', 'text-marks'],
  ['the same mark twice', 'Fla\u0301\u0301ps', 'text-marks'],
  ['a mark on nothing', '\u0338Flaps', 'text-marks'],
];

describe('a text that misleads is refused', () => {
  test.each(MISLEADING)('%s', (_, text, code) => {
    expect(textFault(text)).toBe(code);
  });

  // Written by someone who means no harm: what must pass.
  test.each([
    'Flaps – half (½), 280 kt · “stay”',
    'Höhenruder: frei & leichtgängig',
    'Nước 10 °C',
    'Nu\u031b\u0301o\u031b\u0301c', // Vietnamese, decomposed: two marks on a letter
    'می\u200cخواهم', // Persian, with the joiner that it cannot be written without
    'क्\u200dष', // Devanagari
    'מנוע: כבוי',
    'שָׁלוֹם', // Hebrew with points: three marks on a letter
    'エンジン　始動',
    'Warning \u26a0\ufe0f gear',
    '10\u00a0kt',
    '',
  ])('%j is not', (text) => {
    expect(textFault(text)).toBeNull();
    expect(plainly(text)).toBe(text);
  });
});

describe('a text from elsewhere that is kept all the same', () => {
  test.each(MISLEADING)('says nothing that is not seen: %s', (_, text) => {
    expect(textFault(plainly(text))).toBeNull();
    expect(plainly(text)).not.toBe(text);
  });

  test('has a sign where there was something unseen, and its other characters as they were', () => {
    expect(plainly('runway \u202e82')).toBe('runway \ufffd82');
    expect(plainly('Fl\u200baps half')).toBe('Fl\ufffdaps half');
    expect(plainly('Flaps\tset')).toBe('Flaps set');
    expect(plainly('Fla\u0300\u0301\u0302\u0303\u0304ps')).toBe(
      'Fla\u0300\u0301\u0302\u0303ps'.normalize('NFC'),
    );
    expect(plainly('می\u200cخواهم \u202e')).toBe('می\u200cخواهم \ufffd');
  });

  test('keeps its lines where there may be several, and is one line where not', () => {
    expect(plainly('late\nand long', 'note')).toBe('late\nand long');
    expect(plainly('late\r\nand\u2028long', 'note')).toBe('late\nand\nlong');
    expect(plainly('late\nand long')).toBe('late and long');
  });

  test('is a report that reads the same, where it is one', () => {
    const text = 'METAR\u200bXHAR\r\n27012\u202eG20KT\ufeff240V300';
    const plain = plainly(text, 'report');
    expect(plain).toBe('METAR XHAR\n27012 G20KT 240V300');
    expect(readReport(plain)).toEqual(readReport(plain.replaceAll(' ', '\u200b')));
  });

  test('passes what documents are held to, whatever it was, and is mended once', () => {
    const anyText = fc.oneof(
      fc.string({ unit: 'binary', maxLength: 60 }),
      fc
        .array(
          fc.constantFrom(...MISLEADING.map(([, text]) => text), 'é', ' ', '\u0301', 'क', '\u200d'),
        )
        .map((parts) => parts.join('')),
    );
    fc.assert(
      fc.property(anyText, (text) => {
        const plain = plainly(text, 'note');
        expect(plain.split('\n').map(textFault)).toEqual(plain.split('\n').map(() => null));
        expect(plainly(plain, 'note')).toBe(plain);
        expect(textFault(plainly(text))).toBeNull();
      }),
      { numRuns: 1000 },
    );
  });
});

type Json = { [name: string]: Json } & { [index: number]: Json };

/** A sound document with the value at a path replaced. */
function changed(text: string | undefined, path: readonly string[], value: unknown): string {
  const document: Json = JSON.parse(text ?? 'null');
  let inside = document;
  for (const name of path.slice(0, -1)) inside = inside[name] ?? {};
  Object.assign(inside, { [path.at(-1) ?? '']: value });
  return JSON.stringify(document);
}

const DEMO = {
  field: demoTexts('fields').get('XHAR.json'),
  aircraft: [...demoTexts('aircraft').values()][0],
  procedure: demoTexts('procedures').get('sleet-usual.json'),
};

describe('a document with such a text is refused, and told where', () => {
  test.each([
    ['field', 'name'],
    ['field', 'about'],
    ['field', 'radio.0.name'],
    ['field', 'taxi.edges.0.name'],
    ['field', 'runways.0.ends.0.closed'],
    ['aircraft', 'name'],
    ['aircraft', 'about'],
    ['aircraft', 'stop.0'],
    ['aircraft', 'taxi.steering'],
    ['procedure', 'name'],
    ['procedure', 'about'],
    ['procedure', 'phases.0.steps.1.item'],
    ['procedure', 'phases.0.steps.1.response'],
    ['procedure', 'phases.0.steps.1.note'],
    ['procedure', 'lists.0.title'],
    ['procedure', 'lists.0.steps.0.item'],
  ] as const)('%s: %s', (kind, at) => {
    for (const [, text, code] of MISLEADING) {
      const { problems } = readDocument(changed(DEMO[kind], at.split('.'), text));
      expect(problems).toContainEqual({ at, what: code });
    }
  });

  test('in a translation, also as the text that is translated', () => {
    const put = (texts: object) =>
      readDocument(changed(DEMO.field, ['translations'], { de: texts })).problems;
    expect(put({ Apron: 'Vor\u202efeld' })).toEqual([
      { at: 'translations.de.Apron', what: 'text-direction' },
    ]);
    expect(put({ 'Ap\u202eron': 'Vorfeld' })).toEqual([
      { at: 'translations.de', what: 'text-direction' },
    ]);
  });
});

test('the demo documents are as they were', () => {
  for (const kind of ['fields', 'aircraft', 'procedures'] as const)
    for (const text of demoTexts(kind).values()) expect(readDocument(text).problems).toBeNull();
});

test('what is written in the app is told so while it is written', () => {
  const { document } = readDocument(DEMO.procedure ?? '');
  if (document?.kind !== 'procedure') throw new Error('no procedure');
  const [first, ...others] = document.content.phases;
  if (first === undefined) throw new Error('no phase');
  const [step, ...more] = first.steps;
  if (step === undefined) throw new Error('no step');
  const steps = [{ ...step, response: 'off\u202e' }, ...more];
  const wrong = { ...document.content, phases: [{ ...first, steps }, ...others] };
  expect(documentFaults(wrong)).toEqual([
    { path: ['phases', 0, 'steps', 0, 'response'], code: 'text-direction' },
  ]);
});

test('whatever a refusal quotes of the document can be read, and is short', () => {
  const unseen = /[\p{Cc}\p{Cf}\p{Zl}\p{Zp}\p{Cs}\p{Default_Ignorable_Code_Point}]/u;
  fc.assert(
    fc.property(fc.string({ unit: 'binary', maxLength: 400 }), fc.string(), (name, value) => {
      const text = JSON.stringify({ lapstrip: 'field', [name]: value, version: name });
      for (const { at, what } of readDocument(text).problems ?? []) {
        expect(at).not.toMatch(unseen);
        expect(what).not.toMatch(unseen);
        expect(at.length).toBeLessThan(120);
        expect(what.length).toBeLessThan(220);
      }
    }),
    { numRuns: 40 },
  );
  expect(shownPlainly('a\u202eb\nc', 10)).toBe('a\ufffdb\ufffdc');
  expect(shownPlainly('abcdef', 3)).toBe('abc…');
});
