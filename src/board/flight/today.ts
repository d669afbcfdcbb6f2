import { computed } from '@preact/signals';
import { present } from '../../core';
import { parts } from '../dayParts';

/** The look-up code; null until loaded. */
export const lookUps = computed(() => present(parts.physics.value));
