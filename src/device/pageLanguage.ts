/** The language of the page, read here and nowhere else. */

/** The page's language, as a BCP 47 tag without a region. */
export const pageLanguage = (): string => document.documentElement.lang;
