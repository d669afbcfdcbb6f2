/** The words of what stands under the answer: the dial, every end, the winds entered. */

export const words = {
  head: (value: string) => `head ${value}`,
  tail: (value: string) => `tail ${value}`,
  worstTail: (value: string) => `tail ${value} at worst`,
  acrossBar: (steady: string, worst: string, limit: string) =>
    `across ${steady}/${worst} of ${limit}`,
  acrossBarSpoken: (steady: string, worst: string, limit: string) =>
    `Crosswind ${steady} knots steady, ${worst} at worst, limit ${limit}`,
  endsTitle: 'Every end, best first',
  history: 'Winds entered',
  dial: {
    letters: { n: 'N', e: 'E', s: 'S', w: 'W' },
    noWind: 'Dial: the runways, no wind.',
    calm: 'Dial: calm.',
    wind: (text: string) => `Dial. ${text}.`,
    best: (arcs: string) => `Runway ring: ${arcs}.`,
    arc: (end: string, from: string, to: string) => `${end} best from ${from} to ${to} true`,
    arcNone: (from: string, to: string) => `no end within limits from ${from} to ${to} true`,
    always: (end: string) => `${end} best from every direction`,
    alwaysNone: 'no end within limits from any direction',
  },
} as const;
