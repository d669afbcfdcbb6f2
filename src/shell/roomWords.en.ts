/** The words of the rooms' sheet. */

import type { RoomName } from '../board/places';

export const words = {
  tabs: {
    sortie: 'Sortie',
    library: 'Library',
    device: 'Device',
    about: 'About',
  } satisfies Record<RoomName, string>,
  tabsLabel: 'Sheets',
  titles: {
    sortie: 'Sortie',
    library: 'Library',
    device: 'Device',
    about: 'About Lapstrip',
  } satisfies Record<RoomName, string>,
  close: 'Close',
} as const;
