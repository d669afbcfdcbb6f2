/**
 * A file that is refused says where, what stands there and what would be allowed, in both
 * languages. The sentences were written first, by hand.
 */

import { describe, expect, test } from 'vitest';
import { readDocument } from '../../../src/core/readDocument.schema';
import { boundedJson } from '../../../src/exchange/boundedJson';
import { jsonFault, linesOf } from '../../../src/exchange/jsonFault';
import { words as german } from '../../../src/parts/problem/words.de';
import { words as english } from '../../../src/parts/problem/words.en';
import { demoTexts } from './demo';

const FIELD = demoTexts('fields').get('XHAR.json') ?? '';
const AIRCRAFT = demoTexts('aircraft').get('sleet.json') ?? '';
const PROCEDURE = demoTexts('procedures').get('sleet-usual.json') ?? '';

/** What the pilot is told of a file, in both languages; it must be refused. */
function told(text: string): { en: string[]; de: string[] } {
  const parsed = boundedJson(text);
  const fault = parsed.problem === 'not-json' ? jsonFault(text) : null;
  if (fault !== null) {
    const { code, line, column } = fault;
    const problem = { at: '', what: code, line, column };
    return { en: [english.problem(problem)], de: [german.problem(problem)] };
  }
  const { problems } = readDocument(text);
  if (problems === null) return expect.unreachable('it was accepted');
  const lines = linesOf(
    text,
    problems.map(({ at }) => at),
  );
  const placed = problems.map((problem, index) => ({
    ...problem,
    line: lines[index] ?? undefined,
  }));
  return { en: placed.map(english.problem), de: placed.map(german.problem) };
}

/** A document with what stands at `path` replaced, or taken out where `value` is undefined. */
function changed(text: string, path: string, value: unknown): string {
  const document = JSON.parse(text) as Record<string, unknown>;
  const keys = path.split('.');
  const last = keys.pop() ?? '';
  let inside = document;
  for (const key of keys) inside = inside[key] as Record<string, unknown>;
  if (value === undefined) delete inside[last];
  else inside[last] = value;
  return JSON.stringify(document, null, 2);
}

/** The line on which a name stands the first time, counted without the reader. */
const lineOf = (text: string, name: string) =>
  text.slice(0, text.indexOf(`"${name}":`)).split('\n').length;

describe('what is of the wrong shape says what would be allowed', () => {
  test.each([
    [
      FIELD,
      'runways.0.surface',
      'ice',
      'surface',
      'it must be "asphalt", "concrete", "grass"',
      ', not "ice"',
    ],
    [FIELD, 'version', 7, 'version', 'it must be 1', ', not 7'],
    [FIELD, 'name', null, 'name', 'it must be a text in quotation marks, not null', ''],
    [FIELD, 'taxi', 'none', 'taxi', 'it must be a group, in { }', ''],
    [FIELD, 'radio', {}, 'radio', 'it must be a list, in [ ]', ''],
    [FIELD, 'runways.0.widthM', '30', 'widthM', 'it must be a number, not "30"', ''],
    [FIELD, 'place.latDeg', 91, 'latDeg', 'it must be at most 90, not 91', ''],
    [FIELD, 'place.latDeg', -91, 'latDeg', 'it must be at least -90, not -91', ''],
    [FIELD, 'code', 'har', 'code', 'the code of a field is written in capitals', ', not "har"'],
    [FIELD, 'runways', [], 'runways', 'there must be at least 1', ''],
    [FIELD, 'name', 'x'.repeat(81), 'name', 'it must have no more than 80 characters', 'xxx'],
    [PROCEDURE, 'language', 'deutsch', 'language', 'a language is written "de"', ', not "deutsch"'],
    [PROCEDURE, 'lists.0.then', 'home', 'then', 'it must be "return"', ', not "home"'],
    [PROCEDURE, 'lists.0.then', { kind: 'return' }, 'then', 'it must be "return"', ''],
  ])('%#: %s', (text, path, value, name, sentence, end) => {
    const file = changed(text, path, value);
    const { en, de } = told(file);
    expect(en[0]).toContain(`${path}: ${sentence}`);
    expect(en[0]).toContain(end);
    expect(de).toHaveLength(en.length);
    expect(de[0]).not.toContain('it must');
    if (path.split('.').length < 3 && name !== 'latDeg') return;
    expect(en[0]).toMatch(/^Line \d+, /);
  });

  test('a name that is missing, and one that is not known, each with its line', () => {
    const missing = told(changed(FIELD, 'name', undefined));
    expect(missing.en).toEqual(['Line 1, name: it is missing']);
    expect(missing.de).toEqual(['Zeile 1, name: Das fehlt']);
    const file = changed(FIELD, 'surprise', 'yes');
    expect(told(file).en).toEqual([
      `Line ${lineOf(file, 'surprise')}, surprise: nothing of that name belongs there`,
    ]);
  });
});

describe('figures that disagree are told', () => {
  test.each([
    [FIELD, 'runways.0.ends.1.todaM', 1399, 'TODA, 1399 m, is less than TORA, 1400 m'],
    [AIRCRAFT, 'taxi.maxKt', 10, '10 is less than the'],
    [AIRCRAFT, 'limits.crosswindKt.wet', 25, 'the limit is 25 kt, higher than the 24 kt'],
    [
      AIRCRAFT,
      'load.stations.2.choices.1.kg',
      401,
      '401 kg is more than the 400 kg the station carries',
    ],
    [AIRCRAFT, 'climb.flapsUpByKt', 286, '286 kt lies above the limit of'],
  ])('%#: %s', (text, path, value, sentence) => {
    const { en, de } = told(changed(text, path, value));
    expect(en.join()).toContain(`${path}: ${sentence}`);
    expect(de.join()).toContain(String(value));
  });
});

test('what is no JSON says where by line and character, and what to do', () => {
  const file = FIELD.replace(/"version": 1,/, '"version": 1');
  const line = lineOf(file, 'version');
  const { en, de } = told(file);
  expect(en).toEqual([`Line ${line}, character 15: a comma is missing here`]);
  expect(de).toEqual([`Zeile ${line}, Zeichen 15: Hier fehlt ein Komma`]);
});
