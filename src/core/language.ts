/** The language of a document's texts, and their translations. */

/** What a document says about its languages. */
export interface InLanguages {
  /** The language of its texts, a BCP 47 tag; English if absent. */
  readonly language?: string | undefined;
  /**
   * For each other language, the texts as they stand in the document, each with its translation.
   */
  readonly translations?: Readonly<Record<string, Readonly<Record<string, string>>>> | undefined;
}

/** The language of a document's texts, as a BCP 47 tag; English if it names none. */
export const languageOf = ({ language = 'en' }: Pick<InLanguages, 'language'>): string => language;

/** A tag without its region: `de` from `de-AT`. */
export const primarySubtag = (tag: string): string => tag.split('-')[0] ?? tag;

/** A text and its language, a BCP 47 tag. */
export interface InLanguage {
  readonly text: string;
  readonly language: string;
}

/**
 * A text of a document in a language, whatever the region; as it stands if the document doesn't
 * have it in that language. Translations are looked up by the text, not its place, so that a
 * changed text never shows the translation of an earlier one.
 */
export function textIn(document: InLanguages, text: string, language: string): InLanguage {
  const written = languageOf(document);
  const wanted = primarySubtag(language);
  if (primarySubtag(written) === wanted) return { text, language: written };
  for (const [tag, texts] of Object.entries(document.translations ?? {})) {
    const found = Object.hasOwn(texts, text) ? texts[text] : undefined;
    if (primarySubtag(tag) === wanted && found !== undefined) return { text: found, language: tag };
  }
  return { text, language: written };
}
