/** What the device opens the installed app with. */

import { followLaunches } from '../../device/launches';
import { openPlaceIn, sheet } from '../places';
import { takeIncoming } from './incoming';

/** Begins to take files and addresses; call once. Files are looked at before anything is kept. */
export function takeLaunches(): void {
  followLaunches({
    onFile: (from) => {
      sheet.value = { kind: 'incoming', from, over: null };
    },
    onAddress: (address) => {
      if (address.search !== '' || address.hash.includes('?')) takeIncoming(address);
      // The plain address only shows the window again, where it was.
      else if (address.hash !== '') openPlaceIn(address);
    },
  });
}
