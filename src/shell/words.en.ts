/** The words of the frame: strip, places, notices, caution. */

import type { Undoable } from '../board/adding';
import type { Place } from '../board/places';

const undoable: Record<Undoable['what'], string> = {
  end: 'Another end is in use; steps that depend on it are due again.',
  field: 'Another field was chosen; no end is in use.',
  aircraft: 'Another aircraft was chosen; its steps begin anew.',
  sortie: 'The sortie is ended and in the log.',
  jump: 'What was passed over is held back.',
};

export const words = {
  places: {
    wind: 'Wind',
    taxi: 'Taxi',
    steps: 'Steps',
    numbers: 'Numbers',
    log: 'Log',
  } satisfies Record<Place, string>,
  placesLabel: 'Places',
  strip: {
    using: 'Using',
    landingOn: 'Landing on',
    none: 'none yet',
    wind: 'Wind',
    windAge: (age: string) => `Wind, ${age}`,
    noWind: 'none yet',
    field: 'Field',
    noField: 'choose one',
    paused: 'paused',
    open: {
      end: 'opens Wind',
      wind: 'opens the keypad',
      sortie: 'opens Sortie',
    },
    gust: 'gust',
    above: 'over',
    magnetic: ' mag',
    calm: 'calm',
    variable: 'variable',
  },
  usingOther: (using: string, best: string) => `Using ${using}, best ${best}`,
  use: (end: string) => `Use ${end}`,
  forgets:
    'This device keeps nothing just now: what you enter is forgotten when the window closes.',
  update: 'A new version is ready. The sortie stays as it is.',
  takeUpdate: 'Take it now',
  undoable,
  undo: 'Undo',
  dismiss: 'Close',
  later: {
    loading: 'Loading',
    failed: 'This part could not be loaded.',
    retry: 'Try again',
  },
  caution: {
    title: 'Lapstrip',
    what: 'A kneeboard for pilots who fly simulators: type the wind, use the runway end it names, tick the steps off. Works without a network.',
    understood: 'Understood',
  },
} as const;
