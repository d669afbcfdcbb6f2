/** The one entry for a wind: typed on our keypad, on the device's keyboard, or pasted. */

import { computed } from '@preact/signals';
import type { ComponentChildren, JSX } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import { day, draft, typed } from '../../../board/board';
import { typing } from '../../../board/places';
import {
  closeKeypad,
  cut,
  dropDraft,
  erased,
  MOST_HELD,
  takeText,
  turnNorth,
  typeWind,
} from '../../../board/wind/windEntry';
import { Key } from '../../../parts/key/Key';
import { meaning, problemText } from '../afterAnswer';
import { words } from '../words';
import { caret, letters } from './caret';
import styles from './Entry.module.css';

/** What the entry shows: what is typed, or else the wind in use. */
const text = computed(() => (erased.value ? '' : draft.value || (day.enteredWind()?.text ?? '')));

const report = computed(() => typed.read().report);

/**
 * The entry, with what was understood in words under it. A letter typed redraws only what follows
 * from it.
 */
export function WindEntry(): JSX.Element {
  const area = useRef<HTMLTextAreaElement>(null);
  const openedByTap = useRef(false);
  const [byHand, setByHand] = useState(false);

  // Opened by a key elsewhere, it takes what the device's keyboard types.
  useEffect(() => {
    if (typing.value) area.current?.focus({ preventScroll: true });
  }, [typing.value]);

  // If letters are wanted, focus it again: only then does the device's keyboard come up.
  useEffect(() => {
    if (!typing.value) return;
    area.current?.blur();
    area.current?.focus({ preventScroll: true });
  }, [letters.value]);

  const take = (pasted: string) => {
    setByHand(false);
    if (takeText(pasted)) typing.value = false;
  };
  const paste = async () => {
    try {
      take(await navigator.clipboard.readText());
    } catch {
      // Not allowed, or missing: pasting into the box itself still works.
      setByHand(true);
      typing.value = true;
      area.current?.focus();
    }
  };

  return (
    <div class={`${styles.entry} ${typing.value ? '' : styles.resting}`}>
      <div class={styles.row}>
        <div class={styles.box}>
          <Marks />
          <textarea
            ref={area}
            class={styles.text}
            rows={1}
            value={text}
            maxLength={MOST_HELD}
            aria-label={words.entry}
            placeholder={words.entryHint}
            spellcheck={false}
            autocomplete="off"
            autocapitalize="characters"
            // The device's own keyboard would cover the answer; it comes on request.
            inputMode={letters.value ? 'text' : 'none'}
            onPointerDown={(event) => {
              const area = event.currentTarget;
              openedByTap.current = document.activeElement !== area;
              // A touch on a selection would only keep it selected.
              if (!openedByTap.current)
                area.setSelectionRange(area.selectionEnd, area.selectionEnd);
            }}
            // Focusing the entry with Tab doesn't open the keypad over the place: typing does.
            onFocus={(event) => {
              // A tap shows what was tapped on; selecting everything would lose its place.
              if (draft.value === '' && !openedByTap.current) event.currentTarget.select();
            }}
            onClick={(event) => {
              typing.value = true;
              noteCaret(event.currentTarget);
              // What is typed next starts a new wind.
              if (draft.value === '' && openedByTap.current) event.currentTarget.select();
              openedByTap.current = false;
            }}
            onKeyUp={(event) => noteCaret(event.currentTarget)}
            onScroll={(event) => {
              // The mirror shows the same lines.
              const mirror = event.currentTarget.previousElementSibling;
              if (mirror !== null) mirror.scrollTop = event.currentTarget.scrollTop;
            }}
            onInput={(event) => {
              typing.value = true;
              typeWind(event.currentTarget.value);
            }}
            onBlur={(event) => {
              openedByTap.current = false;
              // A long report is read from its beginning.
              event.currentTarget.scrollTop = 0;
              caret.value = null;
            }}
            onPaste={(event) => {
              event.preventDefault();
              take(event.clipboardData?.getData('text/plain') ?? '');
            }}
            onKeyDown={(event) => {
              if (event.key === 'Enter' && !event.shiftKey) {
                event.preventDefault();
                closeKeypad();
                event.currentTarget.blur();
              }
              if (event.key === 'Escape') {
                dropDraft();
                typing.value = false;
                event.currentTarget.blur();
              }
            }}
          />
        </div>
        <Key className={styles.side} onPress={paste}>
          {words.paste}
        </Key>
        <NorthKey />
      </div>
      <Understood byHand={byHand} />
      <meaning.Later />
    </div>
  );
}

/** A caret between two characters names a group; a selection names none. */
function noteCaret({ selectionStart, selectionEnd }: HTMLTextAreaElement): void {
  if (selectionStart === selectionEnd) caret.value = selectionStart;
}

/** Which north the direction is measured from. */
const north = computed(() => {
  switch (report.value?.north) {
    case 'true':
      return 'given';
    case 'magnetic':
      return typed.read().north;
    default:
      return day.inputs().typedNorth;
  }
});

function NorthKey() {
  const name = north.value === 'magnetic' ? words.magneticNorth : words.trueNorth;
  return (
    <Key
      className={styles.side}
      disabled={north.value === 'given'}
      label={`${name}. ${words.northHint}`}
      onPress={turnNorth}
    >
      {name}
    </Key>
  );
}

/** The same text behind the entry, each piece marked with how it was read. */
function Marks(): JSX.Element {
  const typed = text.value;
  const parts: ComponentChildren[] = [];
  let at = 0;
  for (const span of report.value?.spans ?? []) {
    const [from, to] = span.at;
    if (to > typed.length) break;
    if (from > at) parts.push(typed.slice(at, from));
    parts.push(<span class={styles[span.kind] ?? styles.read}>{typed.slice(from, to)}</span>);
    at = to;
  }
  if (at < typed.length) parts.push(typed.slice(at));
  return (
    <div class={styles.marks} aria-hidden="true">
      {parts}
    </div>
  );
}

/** In words, what was understood; then what can't be used, and why. */
function Understood({ byHand }: { byHand: boolean }) {
  const { fromTrueDeg, fromMagneticDeg, because } = typed.wind();
  const { wind, problems = [], spans = [] } = report.value ?? {};
  const unread = spans.some(({ kind }) => kind === 'unread');
  // Its wind is in use, or stands beside the one in use; only what can't be read is a problem.
  const expects = report.value?.kind === 'forecast' ? typed.expects() : false;
  const shown = expects === false ? problems : problems.filter(({ code }) => code !== 'forecast');
  const forecastWind = typed.windIsForecast() ? typed.wind().wind : null;
  return (
    <div class={styles.understood} aria-live="polite">
      {byHand && <p>{words.pasteByHand}</p>}
      {wind && <p>{words.windWords(wind, fromTrueDeg, fromMagneticDeg)}</p>}
      {expects && (
        <p>
          {forecastWind !== null
            ? words.forecastNow(words.windWords(forecastWind, fromTrueDeg, fromMagneticDeg))
            : typed.windIsForecast()
              ? words.forecastWithout
              : words.forecastBeside}
        </p>
      )}
      {shown.map((problem) => (
        <p key={problem.code} class={problem.code === 'incomplete' ? undefined : styles.problem}>
          {problem.code === 'incomplete' ? (
            words.incomplete
          ) : (
            <problemText.Later problem={problem} />
          )}
        </p>
      ))}
      {cut.value && (
        <p>
          <problemText.Later problem={{ code: 'too-long', at: [0, 0] }} />
        </p>
      )}
      {unread && shown.length === 0 && <p class={styles.problem}>{words.someUnread}</p>}
      {!report.value && because === 'no-limits' && <p>{words.noRanking[because]}</p>}
      {draft.value !== '' && shown.some(({ code }) => code !== 'incomplete') && (
        <button type="button" class={styles.drop} onClick={dropDraft}>
          {words.drop}
        </button>
      )}
    </div>
  );
}
