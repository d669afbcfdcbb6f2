/** Starts the app: preferences, record, clock, then the first frame. */

import './style/tokens.css';
import './style/fonts.css';
import './style/base.css';
import { effect } from '@preact/signals';
import { render } from 'preact';
import { begin } from './board/begin';
import { draft, keeping, sortie, typed, unread } from './board/board';
import { startClock } from './board/flight/time';
import { followAddress, place, sheet, watching } from './board/places';
import { record } from './board/record/sortie';
import { interruptWhenLeft } from './board/steps/interruption';
import { failure, noteFailure, watchForFailures } from './device/failures';
import { language } from './device/language';
import { watchForMissingParts } from './device/missing';
import { applyPreferences } from './device/preferences';
import { speak } from './parts/catalogues';
import { watchPointers } from './parts/key/pointers';
import { App } from './shell/App';
import { drawWhenWritten } from './shell/drawWhenWritten';
import { Replaced } from './shell/Replaced';

watchForFailures();
document.documentElement.lang = language;
applyPreferences();
startClock();
followAddress();
watchPointers();
interruptWhenLeft();
watchForMissingParts();
drawWhenWritten(() => record.settled());

const page = document.getElementById('app');
if (page !== null) {
  // Nothing is shown before the record is read, and the words are those of the page's language: a
  // wrong place for a moment would be worse than none.
  Promise.allSettled([begin().catch(noteFailure), firstWords()]).then(() => {
    // Apart from the app, so that it stands in front of whatever is shown and needs no part of it.
    render(<Replaced />, document.body.appendChild(document.createElement('div')));
    if (!watching) render(<App />, page);
  });
}

/** Words that could not be had are asked for again after so long, ms. */
const ASK_AGAIN_MS = 1000;

async function firstWords(): Promise<void> {
  try {
    await speak(language);
  } catch {
    await new Promise((resolve) => setTimeout(resolve, ASK_AGAIN_MS));
    await firstWords();
  }
}

/** After this long without a key a wind is taken as typed, ms. */
const KEYS_REST_MS = 500;

// What can wait is loaded when the first answer stands and no key is on its way, or when the pilot
// takes the time to read.
let timer = setTimeout(start, watching ? 0 : 6000);
const stop = effect(() => {
  // A wind of another field gives no answer here; that it can be used comes with the rest.
  const isAnswered = typed.wind().ranked !== null || sortie.value.winds.length > 0;
  const isTyping = draft.value !== '';
  // What lies beside Wind may need anything.
  const isElsewhere = place.value !== 'wind' || sheet.value !== null;
  if (!isAnswered && !isElsewhere && !isAmiss()) return;
  clearTimeout(timer);
  timer = setTimeout(start, isTyping ? KEYS_REST_MS : 0);
});
/** What a notice must say, which comes with the rest: that nothing is kept, or not all of it is used, or something failed. */
function isAmiss(): boolean {
  const { damaged, newer } = unread.value;
  const isKept = keeping.value === 'kept' || keeping.value === 'opening';
  return !isKept || damaged + newer > 0 || failure.value !== 'none';
}

function start(): void {
  stop();
  void import('./shell/loadRest').then(({ loadRest }) => loadRest());
}
