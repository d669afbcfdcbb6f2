/**
 * What replaces a part of the screen that couldn't be drawn, and what the pilot can do about it.
 */

import type { ComponentChildren, JSX } from 'preact';
import { useState } from 'preact/hooks';
import { keeping } from '../board/board';
import type { PlaceName } from '../board/places';
import { everythingFiles, startAnewBeside } from '../board/record/everything';
import { saveFile } from '../device/files';
import { Key } from '../parts/key/Key';
import { Sheet } from '../parts/sheet/Sheet';
import styles from './Broken.module.css';
import { words } from './brokenWords';
import { words as frame } from './words';

/** A part that can fail on its own. */
export type FailingPart = PlaceName | 'strip' | 'sheet' | 'whole';

interface BrokenProps {
  readonly part: FailingPart;
  /** Tries to draw it again. */
  readonly onAgain: () => void;
  /** Does without it. */
  readonly onWithout: () => void;
}

const titleOf = (part: FailingPart): string =>
  part === 'strip' || part === 'sheet' || part === 'whole'
    ? words.broken[part]
    : words.brokenPlace(frame.places[part]);

/** Replaces a place, or everything. */
export function Broken({ part, ...ways }: BrokenProps): JSX.Element {
  return (
    <section class={styles.broken}>
      <h2 class={styles.title}>{titleOf(part)}</h2>
      <Ways {...ways} />
    </section>
  );
}

/** Replaces a sheet. */
export function BrokenSheet({ onAgain, onWithout }: Omit<BrokenProps, 'part'>): JSX.Element {
  return (
    <Sheet title={titleOf('sheet')} close={words.close} onClose={onWithout}>
      <Ways onAgain={onAgain} onWithout={onWithout} />
    </Sheet>
  );
}

/** After an error outside rendering: something may have stopped, which only a reload restarts. */
export function FailedSheet({ onClose }: { onClose: () => void }): JSX.Element {
  const reload = keeping.value === 'kept' ? frame.replaced.kept : frame.replaced.forgetful;
  return (
    <Sheet title={words.failed} close={words.close} onClose={onClose}>
      <div class={styles.ways}>
        <p>{words.mayHaveStopped}</p>
        <p>{reload.text}</p>
        <Saving>
          <Key onPress={() => location.reload()}>{reload.reload}</Key>
        </Saving>
        <Anew />
      </div>
    </Sheet>
  );
}

function Ways({ onAgain, onWithout }: Omit<BrokenProps, 'part'>) {
  return (
    <div class={styles.ways}>
      <p>{words.stays}</p>
      <Saving>
        <Key onPress={onAgain}>{words.again}</Key>
        <Key look="pick" onPress={onWithout}>
          {words.without}
        </Key>
      </Saving>
      <Anew />
    </div>
  );
}

/** The key that saves everything, after other keys, and how that went. */
function Saving({ children }: { children: ComponentChildren }) {
  const [said, setSaid] = useState('');
  const save = () => {
    everythingFiles().then(
      (files) => {
        for (const file of files) saveFile(file);
        setSaid(words.saved);
      },
      () => setSaid(words.notSaved),
    );
  };
  return (
    <>
      <div class={styles.keys}>
        {children}
        <Key onPress={save}>{words.save}</Key>
      </div>
      <p role="status">{said}</p>
    </>
  );
}

function Anew() {
  const [said, setSaid] = useState('');
  const [isSure, setSure] = useState(false);
  const startAnew = () => {
    if (!isSure) setSure(true);
    else if (!startAnewBeside()) setSaid(words.notAnew);
  };
  return (
    <>
      <p>{words.anewHint}</p>
      <div class={styles.keys}>
        <Key look={isSure ? 'stop' : 'plain'} onPress={startAnew}>
          {isSure ? words.anewSure : words.anew}
        </Key>
      </div>
      <p role="status">{said}</p>
    </>
  );
}
