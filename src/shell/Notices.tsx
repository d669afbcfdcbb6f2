/**
 * What must be said over every place: a better end, what can be undone, what isn't stored, what is
 * new.
 */

import type { JSX } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { day, keeping, unread } from '../board/board';
import { stopsOverhead } from '../board/flight/cautions';
import { onRoll, openPlace, openSheet, place, typing } from '../board/places';
import { undoable, undoChange } from '../board/record/adding';
import { useEnd } from '../board/record/choices';
import { failure, failureTold } from '../device/failures';
import { againstLimit, wholeNumber } from '../parts/format';
import { Key } from '../parts/key/Key';
import { KeysTold } from '../views/keys/Told';
import styles from './Notices.module.css';
import { words } from './noticeWords';
import { update } from './update';

/** How long a change can be taken back, and how long the meaning of a new wind stays, ms. */
const SAID_FOR_MS = 12_000;

/** The notices: one line and one key each. */
export function Notices(): JSX.Element {
  const change = undoable.value;
  useEffect(() => {
    if (change === null) return;
    const timer = setTimeout(() => {
      undoable.value = null;
    }, SAID_FOR_MS);
    return () => clearTimeout(timer);
  }, [change]);
  const { using, ranked } = day.wind();
  const best = ranked?.best?.designator ?? null;
  const onWind = place.value === 'wind' || typing.value;
  return (
    <>
      <KeysTold />
      <div class={styles.notices} role="status">
        <NotKept />
        <Unread />
        <Failed />
        {using !== null && best !== null && using !== best && !onWind && !stopsOverhead.value && (
          <Notice
            text={words.usingOther(using, best)}
            action={words.use(best)}
            onPress={() => useEnd(best)}
          />
        )}
        <NewWind using={using !== null && using === best && !onWind ? using : null} />
        {change !== null && (
          <Notice text={words.undoable[change.what]} action={words.undo} onPress={undoChange} />
        )}
        {update.value !== null && (
          <Notice
            text={[words.update, ...update.value.news].join(' ')}
            action={words.takeUpdate}
            onPress={update.value.take}
          />
        )}
      </div>
    </>
  );
}

/** That what is entered may be lost, and why: once understood, Device goes on saying it. */
function NotKept(): JSX.Element | null {
  const [understood, setUnderstood] = useState<string | null>(null);
  const said = { forgotten: words.forgets, late: words.late, newer: words.newer };
  const is = keeping.value;
  if (is === 'kept' || is === 'opening' || is === understood) return null;
  // It passes by itself.
  if (is === 'late') return <p class={styles.notice}>{said.late}</p>;
  return <Notice text={said[is]} action={words.understood} onPress={() => setUnderstood(is)} />;
}

/** What of the record isn't used here: said once, and again only if there is more of it. */
function Unread(): JSX.Element {
  const [known, setKnown] = useState({ damaged: 0, newer: 0 });
  const { damaged, newer } = unread.value;
  return (
    <>
      {damaged > known.damaged && (
        <Notice
          text={words.damaged(damaged)}
          action={words.understood}
          onPress={() => setKnown((before) => ({ ...before, damaged }))}
        />
      )}
      {newer > known.newer && (
        <Notice
          text={words.ofNewer(newer)}
          action={words.understood}
          onPress={() => setKnown((before) => ({ ...before, newer }))}
        />
      )}
    </>
  );
}

/** An uncaught error: said once, and not on the roll. */
function Failed(): JSX.Element | null {
  if (failure.value !== 'untold' || onRoll.value) return null;
  return (
    <Notice
      text={words.failed}
      action={words.whatToDo}
      onPress={() => {
        failureTold();
        openSheet({ kind: 'failed' });
      }}
    />
  );
}

/**
 * A wind set over another place leaves the end in use alone: this says for a while what it means
 * there.
 */
function NewWind({ using }: { using: string | null }): JSX.Element | null {
  const entered = day.enteredWind();
  const [known, setKnown] = useState(entered?.id);
  useEffect(() => {
    // Where it was set in Wind, the pilot saw the answer.
    const forMs = place.peek() === 'wind' ? 0 : SAID_FOR_MS;
    const timer = setTimeout(() => setKnown(entered?.id), forMs);
    return () => clearTimeout(timer);
  }, [entered]);
  const isSeen = place.value === 'wind';
  useEffect(() => {
    if (isSeen) setKnown(entered?.id);
  }, [isSeen]);
  const end = day.wind().ranked?.best;
  const limitKt = day.settled().crosswindLimit.value;
  if (using === null || entered?.id === known || end == null || limitKt === null) return null;
  const { headwindKt, crosswindWorstKt } = end;
  return (
    <Notice
      text={words.newWind(
        using,
        headwindKt === null ? null : Math.round(headwindKt),
        againstLimit(crosswindWorstKt ?? 0, limitKt),
        wholeNumber(limitKt),
      )}
      action={words.look}
      onPress={() => openPlace('wind')}
    />
  );
}

function Notice({ text, action, onPress }: { text: string; action: string; onPress: () => void }) {
  return (
    <div class={styles.notice}>
      <span>{text}</span>
      <Key onPress={onPress}>{action}</Key>
    </div>
  );
}
