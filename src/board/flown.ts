/** The procedure that is flown. */

import { computed } from '@preact/signals';
import type { Procedure } from '../core';
import { record, sortie } from './board';
import { documentOf } from './documents';
import { chosenProcedure } from './procedures';

/** The procedure: a sortie that is being flown keeps to the one it was begun with. */
export const procedure = computed(() =>
  documentOf<Procedure>(record, sortie.value.run?.procedure ?? chosenProcedure.value),
);
