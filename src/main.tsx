/** Starts the app: preferences, record, clock, then the first frame. */

import './style/tokens.css';
import './style/fonts.css';
import './style/base.css';
import { effect } from '@preact/signals';
import { render } from 'preact';
import { begin } from './board/begin';
import { wind } from './board/board';
import { interruptWhenLeft } from './board/interruption';
import { followAddress } from './board/places';
import { startClock } from './board/time';
import { applyPreferences } from './device/preferences';
import { watchPointers } from './parts/key/deliberate';
import { App } from './shell/App';

applyPreferences();
startClock();
followAddress();
watchPointers();
interruptWhenLeft();

const page = document.getElementById('app');
if (page !== null) {
  // Nothing is shown before the record is read: a wrong place for a moment would be worse than none.
  begin().finally(() => render(<App />, page));
}

// What can wait is loaded when the first answer stands, or when the pilot takes the time to read.
const stop = effect(() => {
  if (wind.value.ranked !== null) queueMicrotask(start);
});
const timer = setTimeout(start, 6000);
let started = false;
function start(): void {
  if (started) return;
  started = true;
  clearTimeout(timer);
  stop();
  void import('./shell/loadRest').then(({ loadRest }) => loadRest());
}
