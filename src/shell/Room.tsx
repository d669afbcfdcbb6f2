/** The rooms behind the places, in one sheet: Sortie, Library, Device, About. */

import type { FunctionComponent, JSX } from 'preact';
import { openSheet, ROOMS, type RoomName } from '../board/places';
import { Sheet } from '../parts/sheet/Sheet';
import { AboutRoom } from '../views/about/AboutRoom';
import { DeviceRoom } from '../views/device/DeviceRoom';
import { LibraryRoom } from '../views/library/LibraryRoom';
import { SortieRoom } from '../views/sortie/SortieRoom';
import styles from './Room.module.css';
import { words } from './roomWords';

const rooms: Record<RoomName, FunctionComponent<{ onClose: () => void }>> = {
  sortie: SortieRoom,
  library: LibraryRoom,
  device: DeviceRoom,
  about: AboutRoom,
};

interface RoomProps {
  readonly name: RoomName;
  readonly onClose: () => void;
}

/**
 * A room, with the tabs that lead to the others. It stays one sheet, so that the focus stays on the
 * tab and a single Close leads back to the place.
 */
export function Room({ name, onClose }: RoomProps): JSX.Element {
  const Inside = rooms[name];
  return (
    <Sheet
      title={words.titles[name]}
      close={words.close}
      size="page"
      tabs={<Tabs of={name} />}
      page={name}
      onClose={onClose}
    >
      <Inside onClose={onClose} />
    </Sheet>
  );
}

function Tabs({ of }: { readonly of: RoomName }) {
  return (
    <nav class={styles.tabs} aria-label={words.tabsLabel}>
      {ROOMS.map((name) => (
        <button
          key={name}
          type="button"
          class={`${styles.tab} ${name === of ? styles.here : ''}`}
          aria-current={name === of ? 'page' : undefined}
          onClick={() => openSheet({ kind: name })}
        >
          {words.tabs[name]}
        </button>
      ))}
    </nav>
  );
}
