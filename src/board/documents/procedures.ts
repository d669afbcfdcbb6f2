/** The procedures, and which of them is flown next. */

import type { ListedProcedure } from 'virtual:lapstrip-catalogue';
import { type Hash, primarySubtag } from '../../core';
import { pageLanguage } from '../../device/pageLanguage';
import { all, received } from './documents';

/** The procedures an aircraft can be flown with; the pilot's own come last. */
export const proceduresFor = (aircraftCode: string): readonly ListedProcedure[] =>
  all.value
    .filter((listed) => listed.kind === 'procedure')
    .filter((procedure) => procedure.aircraft === aircraftCode);

/**
 * The procedure an aircraft is flown with unless another is chosen: one in the language of the
 * page, else in English, else any; within a language, the pilot's own before the app's. What came
 * from elsewhere counts only once the pilot has chosen it.
 */
export function usualFor(aircraftCode: string): Hash | null {
  const offered = proceduresFor(aircraftCode).filter(({ hash }) => !received.value.has(hash));
  const inLanguage = (tag: string) =>
    offered.findLast(({ language }) => primarySubtag(language) === tag);
  return (inLanguage(pageLanguage()) ?? inLanguage('en') ?? offered.at(-1))?.hash ?? null;
}
