/**
 * A document's own words, set off from the app's: what a stranger wrote isn't Lapstrip speaking.
 */

import type { ComponentChildren, JSX } from 'preact';
import styles from './Quoted.module.css';
import { words } from './words';

interface QuotedProps {
  /** The `lang` of it. */
  readonly lang: string | undefined;
  readonly class?: string | undefined;
}

/** A passage, with a rule beside it. */
export function QuotedPassage({
  lang,
  class: more = '',
  children,
}: QuotedProps & { readonly children: ComponentChildren }): JSX.Element {
  return (
    <blockquote class={`${styles.passage} ${more}`} lang={lang}>
      {children}
    </blockquote>
  );
}

/** A few words, or a sentence within a line: in quotation marks. */
export function QuotedWords({
  lang,
  class: more = '',
  text,
}: QuotedProps & { readonly text: string }): JSX.Element {
  return (
    <q class={`${styles.words} ${more}`} lang={lang}>
      {words.quoted(text)}
    </q>
  );
}

/** The same as a part of a sentence. */
export const quoted = (text: string): string => words.quoted(text);
