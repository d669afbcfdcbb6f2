/** The phases of a sortie, in the order they are flown. */
export const PHASES = ['ramp', 'taxi', 'line-up', 'roll', 'climb', 'recovery', 'after'] as const;
