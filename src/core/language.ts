/** The language that a document's texts are in, and the same texts in others. */

/** What a document says of the languages of its texts. */
export interface InLanguages {
  /** The language that they are in, a BCP 47 tag; English where it says none. */
  readonly language?: string | undefined;
  /** By another language, the texts as they stand in the document, each with the same in that language. */
  readonly translations?: Readonly<Record<string, Readonly<Record<string, string>>>> | undefined;
}

/** The language of its texts, as a BCP 47 tag; English where it says none. */
export const languageOf = ({ language = 'en' }: Pick<InLanguages, 'language'>): string => language;

/** A tag without its region: `de` of `de-AT`. */
export const primarySubtag = (tag: string): string => tag.split('-')[0] ?? tag;

/** A text with the language that it is in, a BCP 47 tag. */
export interface InLanguage {
  readonly text: string;
  readonly language: string;
}

/**
 * A text of a document in a language, whatever the region; as it stands there where the document
 * does not have it in that language. A translation goes with the text and not with its place, so
 * that a text that was changed is never shown with the translation of what stood there before.
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
