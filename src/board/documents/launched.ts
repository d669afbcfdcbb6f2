/** What the device opens the app with, and what is dropped on it. */

import { followLaunches } from '../../device/launches';
import { openPlaceIn } from '../places';
import { takeDropped } from './dropped';
import { takeIncoming } from './incoming';
import { openFile } from './opened';

/**
 * Starts taking files and addresses; call once. Files are shown to the pilot before anything is
 * stored.
 */
export function takeLaunches(): void {
  takeDropped();
  followLaunches({
    onFile: (from) => void openFile(from, null),
    onAddress: (address) => {
      if (address.search !== '' || address.hash.includes('?')) takeIncoming(address);
      // The plain address only brings the window back as it was.
      else if (address.hash !== '') openPlaceIn(address);
    },
  });
}
