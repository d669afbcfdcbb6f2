/** The words of the frame: strip, places, caution. */

import type { PlaceName } from '../board/places';

export const words = {
  places: {
    wind: 'Wind',
    taxi: 'Taxi',
    steps: 'Steps',
    numbers: 'Numbers',
    log: 'Log',
  } satisfies Record<PlaceName, string>,
  placesLabel: 'Places',
  strip: {
    using: 'Runway',
    landing: 'Landing',
    on: 'on',
    none: 'none',
    wind: 'Wind',
    windForecast: 'Wind, forecast',
    windAge: (age: string) => `Wind, ${age}`,
    noWind: 'none yet',
    field: 'Field',
    noField: 'choose one',
    paused: 'paused',
    open: {
      end: 'opens Wind',
      wind: 'opens the keypad',
      sortie: 'opens Sortie',
      clock: 'opens the clock',
    },
    gust: 'gust',
    above: 'over',
    magnetic: ' mag',
    calm: 'calm',
    variable: 'variable',
  },
  caution: {
    title: 'Lapstrip',
    what: 'A kneeboard for pilots who fly simulators: type the wind, use the runway it names, tick the steps off. Works without a network.',
    understood: 'Understood',
  },
  replaced: {
    title: 'A part of Lapstrip is missing',
    close: 'Not now',
    why: {
      replaced:
        'Lapstrip has been updated, and the part you asked for belongs to the version before.',
      stuck:
        'It failed to load, and this browser asks for it again only when the page is reloaded.',
    },
    kept: { text: 'The sortie stays as it is.', reload: 'Reload, nothing is lost' },
    forgetful: {
      text: 'This device keeps nothing: what you entered is lost when you reload.',
      reload: 'Reload',
    },
  },
} as const;
