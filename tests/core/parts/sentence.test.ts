/** Sentences of the page in which texts of another language stand. */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Said } from '../../../src/device/speech';
import { cutSentence, saying } from '../../../src/parts/sentence';

const due = (item: string, response: string) => `Due: ${item}, ${response}.`;

describe('a sentence that is cut up', () => {
  test('has its own words and the places of its texts in order', () => {
    expect(cutSentence(due, 2)).toEqual(['Due: ', 0, ', ', 1, '.']);
  });

  test('may put its texts in another order, leave one out, and say one twice', () => {
    expect(cutSentence((a, b) => `${b} vor ${a}`, 2)).toEqual([1, ' vor ', 0]);
    expect(cutSentence((a) => `${a}`, 2)).toEqual([0]);
    expect(cutSentence((a) => `${a}, ${a}`, 1)).toEqual([0, ', ', 0]);
  });

  test('put together again says the same, whatever its texts', () => {
    const anyText = fc.string({ unit: 'grapheme' });
    fc.assert(
      fc.property(anyText, anyText, anyText, (own, item, response) => {
        fc.pre(!/[\ue000-\uf8ff]/.test(own));
        const sentence = (a: string, b: string) => `${own}${b}${own}${a}`;
        const texts = [item, response];
        const pieces = cutSentence(sentence, 2).map((piece) =>
          typeof piece === 'string' ? piece : texts[piece],
        );
        expect(pieces.join('')).toBe(sentence(item, response));
      }),
    );
  });
});

describe('a sentence that is read aloud', () => {
  const german = (text: string) => [{ text, language: 'de' }];

  test('is said in one go where all of it is in one language', () => {
    const said = saying('de', due, german('Haube'), german('zu'));
    expect(said).toEqual(german('Due: Haube, zu.'));
  });

  test('changes the voice where the language changes, and not for a sign', () => {
    expect(saying('en', due, german('Haube'), german('zu'))).toEqual([
      { text: 'Due: ', language: 'en' },
      { text: 'Haube, zu.', language: 'de' },
    ]);
    expect(
      saying('en', (item, response) => `${item}: ${response}.`, german('Haube'), german('zu')),
    ).toEqual(german('Haube: zu.'));
  });

  test('within another keeps the languages of its parts', () => {
    const call = [{ text: 'ready', language: 'en' }];
    const step = saying('de', (item, words) => `${item}. Sagen: ${words}`, german('Funk'), call);
    expect(saying('de', (all) => `Noch einmal. ${all}`, step)).toEqual([
      { text: 'Noch einmal. Funk. Sagen: ', language: 'de' },
      { text: 'ready', language: 'en' },
    ]);
  });

  test('ends what was said in one voice before the next begins', () => {
    const call = [{ text: 'ready', language: 'fr' }];
    expect(saying('en', (item, words) => `${item}. Say: ${words}`, german('Funk'), call)).toEqual([
      { text: 'Funk. ', language: 'de' },
      { text: 'Say: ', language: 'en' },
      { text: 'ready', language: 'fr' },
    ]);
  });

  test('says every letter once, in order', () => {
    const anySaid = fc.array(
      fc.record({ text: fc.string(), language: fc.constantFrom('de', 'en', 'fr') }),
    );
    fc.assert(
      fc.property(anySaid, anySaid, (item, response) => {
        const textOf = (said: Said) => said.map(({ text }) => text).join('');
        expect(textOf([...saying('en', due, item, response)])).toBe(
          due(textOf(item), textOf(response)),
        );
      }),
    );
  });
});
