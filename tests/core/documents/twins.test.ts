/** A demo procedure and the same in German: step by step the same to do, and no word left in English. */

import { describe, expect, test } from 'vitest';
import { languageOf } from '../../../src/core/language';
import type { Procedure, Step } from '../../../src/core/procedure/procedure';
import { allSteps, demoProcedures } from './demo';

const TWINS = demoProcedures
  .filter((procedure) => languageOf(procedure) === 'en')
  .map((english) => {
    const german = demoProcedures.find(({ code }) => code === `${english.code}-de`);
    if (german === undefined) throw new Error(`${english.code} has no German twin`);
    return [english.code, english, german] as const;
  });

/** Words that are the same in both languages. */
const SAME = new Set([
  'generator',
  'intercom',
  'propeller',
  'transponder',
  'wind',
  'qnh',
  'kt',
  'm',
]);

/** A call is English in every language, also where it is written as a note. */
const CALL_NOTE = '{field} traffic, {callsign}, joining for runway {runway}';

const placeholders = (text = '') => (text.match(/\{\w+\}/g) ?? []).sort();

/** Numbers in a text that are no words, as 15° or 1 200; without the comma or point of a fraction. */
const numbers = (text = '') =>
  (text.replace(/\{\w+\}/g, '').match(/\d[\d ]*(?:[.,]\d+)?/g) ?? []).map((number) =>
    number.trim().replace(',', '.'),
  );

/** A step without its words: for each text, the live numbers and the other numbers in it. */
function skeletonOf({ item, response, note, call, ...rest }: Step) {
  const texts = { item, response, note };
  const held = Object.entries(texts).map(([name, text]) => [
    name,
    text === undefined ? null : { live: placeholders(text), numbers: numbers(text).sort() },
  ]);
  return { ...rest, call, texts: Object.fromEntries(held) };
}

function skeleton({ phases, lists, options, aircraft, version }: Procedure) {
  return {
    ...{ aircraft, version },
    options: options?.map(({ name: _, ...rest }) => rest),
    phases: phases.map(({ phase, steps }) => ({ phase, steps: steps.map(skeletonOf) })),
    lists: lists.map(({ title: _, steps, ...rest }) => ({
      ...rest,
      steps: steps.map(skeletonOf),
    })),
  };
}

/** Every text of a procedure that is translated, by where it stands. */
function textsOf(procedure: Procedure): ReadonlyMap<string, string> {
  const { name, about, options = [], lists } = procedure;
  const texts = new Map([
    ['name', name],
    ['about', about],
    ...options.map((option) => [`option ${option.id}`, option.name] as const),
    ...lists.map(({ id, title }) => [`list ${id}`, title] as const),
  ]);
  for (const { id, item, response, note } of allSteps(procedure)) {
    texts.set(`${id} item`, item);
    texts.set(`${id} response`, response);
    if (note !== undefined) texts.set(`${id} note`, note);
  }
  return texts;
}

/** The words of a text that are not the same in both languages. */
const wordsOf = (text: string) =>
  (text.replace(/\{\w+\}/g, '').match(/\p{L}+/gu) ?? []).filter(
    (word) => !SAME.has(word.toLowerCase()),
  );

describe.each(TWINS)('%s and its German twin', (_, english, german) => {
  test('say which language they are in', () => {
    expect([languageOf(english), languageOf(german)]).toEqual(['en', 'de']);
  });

  test('ask for the same, step by step, under the same conditions, with the same numbers', () => {
    expect(skeleton(german)).toEqual(skeleton(english));
  });

  test('have no text in common but what is the same word in both', () => {
    const texts = textsOf(german);
    const left = [...textsOf(english)].filter(
      ([place, text]) =>
        texts.get(place) === text && text !== CALL_NOTE && wordsOf(text).length > 0,
    );
    expect(left).toEqual([]);
  });

  test('have no English word left in the German', () => {
    const ENGLISH =
      /\b(the|and|of|to|out|off|on|up|down|both|lamps?|runway|brakes?|flaps|gear|throttles?|fuel|lit|set|not|with|field|call)\b/i;
    const left = [...textsOf(german)].filter(
      ([, text]) => text !== CALL_NOTE && ENGLISH.test(text.replace(/\{\w+\}/g, '')),
    );
    expect(left).toEqual([]);
  });

  // They are set as large as they fit, and a longer word makes all letters smaller.
  test('are about as long', () => {
    const germanTexts = textsOf(german);
    const sum = (texts: readonly string[]) => texts.reduce((all, text) => all + text.length, 0);
    const shown = [...textsOf(english)].filter(([place]) => /(item|response)$/.test(place));
    const inGerman = shown.map(([place]) => germanTexts.get(place) ?? '');
    expect(sum(inGerman)).toBeLessThan(1.25 * sum(shown.map(([, text]) => text)));
  });
});
