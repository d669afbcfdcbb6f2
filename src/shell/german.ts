/** The German words that the first answer needs and the way to all others. */

import { catalogues, setFurtherWords } from '../parts/catalogues';

const first = import.meta.glob<object>(
  ['/{shell,views/wind,parts/cautions,parts/later}/words.de.ts', '/parts/{age,format}.de.ts'],
  { eager: true },
);

/** Lays twins of catalogues over those that have arrived, and over those that will. */
export function layOver(twins: Readonly<Record<string, object>>): void {
  const layOn: (catalogue: (typeof catalogues)[number]) => void = ([name, take]) => {
    const twin = twins[`/${name}.de.ts`];
    if (twin !== undefined) take(twin);
  };
  catalogues.forEach(layOn);
  const list = catalogues.push;
  catalogues.push = (...arrived) => {
    arrived.forEach(layOn);
    return list.apply(catalogues, arrived);
  };
}

/** Makes the page speak German; call once, before the first frame. */
export function speakGerman(): void {
  document.documentElement.lang = 'de';
  layOver(first);
  let fetched: Promise<void> | undefined;
  setFurtherWords(() => {
    fetched ??= import('./germanFurther').then(({ further }) => layOver(further));
    return fetched;
  });
}
