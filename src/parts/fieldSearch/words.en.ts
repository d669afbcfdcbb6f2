/** The words of the search for a field. */

export const words = {
  label: 'Search for a field',
  hint: 'code, name or town',
  found: (fields: number) => (fields === 1 ? 'One field' : `${fields} fields`),
  none: 'No field has such a code, name or town.',
  more: (fields: number) => `Show ${fields} more`,
  details: (longest: string, elevation: string) => `runway ${longest} · elevation ${elevation}`,
  feet: (feet: string) => `${feet}\u00a0ft`,
  nearest: (code: string) => `Nearest to ${code}`,
  away: (nm: string) => `${nm}\u00a0NM`,
  marks: { own: 'yours', received: 'not used yet', world: 'world', demo: 'demo' },
  world: 'Fields of the world',
  demo: 'The demo’s',
} as const;
