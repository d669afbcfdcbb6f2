/** The words of About: what Lapstrip is, and the cautions. */

export const words = {
  what: 'A kneeboard for pilots who fly simulators: the wind in, the runway out, the numbers and the steps at hand, also without a network.',
  cautionsTitle: 'Cautions',
  dataTitle: 'Where numbers come from',
  data: [
    'Magnetic variation: IGRF-12 until 2015, then the World Magnetic Models up to 2030, worked out here.',
    'Sun: suncalc, after Meeus, Astronomical Algorithms.',
    'Choosing a runway: FAA JO 7110.65, 3-5-1; ICAO Doc 8168; wind components after FAA-H-8083-25.',
    'Fields of the world, where fetched: OurAirports (ourairports.com/data), Open Database License 1.0; what is taken from them stays under it. Old in places and with errors, for simulators only: not for navigation.',
    'Every number that is underlined with dots opens its inputs, its formula and its source.',
  ],
  keptTitle: 'What is kept',
  kept: 'Everything stays on this device: no account, no server, nothing is sent.',
  version: (version: string) => `Version ${version}`,
  licence:
    'MIT licence. Typefaces: Atkinson Hyperlegible Next and Mono, SIL Open Font License 1.1.',
  licences: 'All licences',
} as const;
