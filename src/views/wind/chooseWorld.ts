/** The world's fields among those to choose from: loaded when the pilot first looks for one there. */

import type { ListedField } from 'virtual:lapstrip-catalogue';
import { world } from '../../board/documents/worldFields';
import type { FieldGroup } from '../../parts/fieldSearch/FieldSearch';
import * as part from '../../parts/fieldSearch/worldGroup';

void world.look();

/** What is found there. */
export const worldGroup = (text: string, choose: (field: ListedField) => void): FieldGroup =>
  part.worldGroup(world, text, ({ index }) => void take(index, choose));

async function take(index: number, choose: (field: ListedField) => void): Promise<void> {
  const field = await world.take(index);
  if (field !== null) choose(field);
}
