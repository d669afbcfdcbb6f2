/** What the device opens the installed app with. */

import { followLaunches } from '../../device/launches';
import { openPlaceIn, sheet } from '../places';
import { takeIncoming } from './incoming';

/**
 * Starts taking files and addresses; call once. Files are shown to the pilot before anything is
 * stored.
 */
export function takeLaunches(): void {
  followLaunches({
    onFile: (from) => {
      sheet.value = { kind: 'incoming', from, over: null };
    },
    onAddress: (address) => {
      if (address.search !== '' || address.hash.includes('?')) takeIncoming(address);
      // The plain address only brings the window back as it was.
      else if (address.hash !== '') openPlaceIn(address);
    },
  });
}
