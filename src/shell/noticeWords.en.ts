/** The words of the notices. */

import type { Undoable } from '../board/record/adding';

const undoable: Record<Undoable['what'], string> = {
  end: 'Another runway is selected; steps that depend on it are due again.',
  field: 'Another field was chosen; no runway is selected.',
  aircraft: 'Another aircraft was chosen; its steps begin anew.',
  load: 'The load was changed.',
  sortie: 'The sortie is ended and in the log.',
  wind: 'A wind came with a link or from another app, and is in use.',
  'wind elsewhere': 'The wind of the other field is in use here.',
  jump: 'What was passed over is outstanding.',
  route: 'The route changed.',
  begun: 'What lies before is marked as not flown.',
  list: 'The list is closed.',
  'taken up': 'This sortie is taken up again; the other is in the log.',
};

export const words = {
  usingOther: (using: string, best: string) => `Selected ${using}, best ${best}`,
  use: (end: string) => `Use ${end}`,
  newWind: (end: string, aheadKt: number | null, across: string, limit: string) => {
    const along =
      aheadKt === null ? '' : `${aheadKt < 0 ? 'tailwind' : 'headwind'} ${Math.abs(aheadKt)} kt, `;
    return `New wind, ${end} best: ${along}crosswind ${across} of ${limit} kt`;
  },
  look: 'Look',
  forgets:
    'This device keeps nothing just now: what you enter is forgotten when the window closes.',
  late: 'The storage of this device has not answered yet. Carry on: what you enter is kept as soon as it does.',
  newer:
    'A newer version of Lapstrip keeps the record here. It is all there, but this version cannot read it: what you enter now is forgotten when the window closes.',
  damaged: (count: number) =>
    count === 1
      ? 'One entry on this device cannot be read. It is set aside, and goes out with the log’s file.'
      : `${count} entries on this device cannot be read. They are set aside, and go out with the log’s file.`,
  ofNewer: (count: number) =>
    count === 1
      ? 'One entry on this device is of a newer version of Lapstrip: kept, and not used here.'
      : `${count} entries on this device are of a newer version of Lapstrip: kept, and not used here.`,
  failed: 'Lapstrip has made an error. What you entered stays as it is.',
  whatToDo: 'What to do',
  understood: 'Understood',
  update: 'A new version is ready. The sortie stays as it is.',
  takeUpdate: 'Take it now',
  emergencies: 'Emergencies',
  openLists: 'opens what to do when something goes wrong',
  undoable,
  undo: 'Undo',
} as const;
