/** All documents there are, with the procedures, which come after the first answer. */

import { catalogue, type ListedAircraft, type ListedProcedure } from 'virtual:lapstrip-catalogue';
import { procedures } from 'virtual:lapstrip-procedures';
import { computed } from '@preact/signals';
import { primarySubtag } from '../core';
import { type Listed, own } from './documents';

/** The procedures that come with the app. */
export { procedures };

/** All there are to choose from: what comes with the app, then what the pilot brought. */
export const all = computed((): readonly Listed[] => [...catalogue, ...procedures, ...own.value]);

/** The procedures an aircraft can be flown with; the pilot's own come last. */
export const proceduresFor = (aircraftCode: string): readonly ListedProcedure[] =>
  all.value
    .filter((listed) => listed.kind === 'procedure')
    .filter((procedure) => procedure.aircraft === aircraftCode);

/** Names of procedures by the language they are in; where several are in one, the last. */
export const byLanguage = (listed: readonly ListedProcedure[]): ListedAircraft['procedures'] =>
  Object.fromEntries(listed.map(({ language, hash }) => [primarySubtag(language), hash]));
