/** The headings under which lists are offered. */

import type { AbnormalList } from './procedure';

/** In the order they are offered: what cannot wait comes first. */
export const LIST_GROUPS = ['emergency', 'malfunction', 'go-around'] as const;

/** A heading for lists. */
export type ListGroup = (typeof LIST_GROUPS)[number];

/**
 * The heading a list belongs under. Older procedures don't say: a list without a group stands with
 * the emergencies, where it is looked for first, unless it is the one that "Go around" opens.
 */
export const groupOf = ({ id, group }: Pick<AbnormalList, 'id' | 'group'>): ListGroup =>
  group ?? (id === 'go-around' ? 'go-around' : 'emergency');
