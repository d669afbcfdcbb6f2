/** Texts of a document in the language of who reads them. */

import { describe, expect, test } from 'vitest';
import { textIn } from '../../src/core/language';

const ENGLISH = {
  translations: {
    de: { 'straight back': 'gleich zurück' },
    'fr-CH': { 'straight back': 'tout de suite en arrière' },
  },
};

describe('a text of a document', () => {
  test('is shown in the language of the page where the document has it', () => {
    expect(textIn(ENGLISH, 'straight back', 'de')).toEqual({
      text: 'gleich zurück',
      language: 'de',
    });
  });

  test('is shown in another country’s form of the language rather than in another language', () => {
    expect(textIn(ENGLISH, 'straight back', 'fr')).toEqual({
      text: 'tout de suite en arrière',
      language: 'fr-CH',
    });
    expect(textIn(ENGLISH, 'straight back', 'de-AT').text).toBe('gleich zurück');
  });

  test('is shown as it stands, and said to be in its own language, where it is not translated', () => {
    expect(textIn(ENGLISH, 'chute', 'de')).toEqual({ text: 'chute', language: 'en' });
    expect(textIn({ language: 'sv' }, 'fort', 'de')).toEqual({ text: 'fort', language: 'sv' });
  });

  test('is never translated on a page in its own language', () => {
    const german = { language: 'de-AT', translations: { de: { Haken: 'Fanghaken' } } };
    expect(textIn(german, 'Haken', 'de')).toEqual({ text: 'Haken', language: 'de-AT' });
  });

  test('that was changed is not shown with the translation of what stood there', () => {
    expect(textIn(ENGLISH, 'straight back to idle', 'de').text).toBe('straight back to idle');
  });

  test('that is named as something every object has is a text like any other', () => {
    expect(textIn(ENGLISH, 'constructor', 'de').text).toBe('constructor');
  });
});
