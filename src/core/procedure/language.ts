/** The language that a procedure's texts are in. */

import type { Procedure } from './procedure';

/** The language of its texts, as a BCP 47 tag; English where it says none. */
export const languageOf = ({ language = 'en' }: Pick<Procedure, 'language'>): string => language;

/** A tag without its region: `de` of `de-AT`. */
export const primarySubtag = (tag: string): string => tag.split('-')[0] ?? tag;
