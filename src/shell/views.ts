/**
 * The views of the places, the sheets and the notices: Wind at once, the others after the first
 * answer.
 */

import type { ComponentType } from 'preact';
import type { PlaceName } from '../board/places';
import { later, laterSheet } from '../parts/later/Later';
import { loadWindDetail } from '../views/wind/afterAnswer';
import { WindPlace } from '../views/wind/Wind';

const notices = later(() => import('./Notices').then(({ Notices }) => Notices), 'asked');
/** The strip's key to the lists; nobody has a procedure before the first answer. */
export const wrongKey = later(() => import('./WrongKey').then(({ WrongKey }) => WrongKey), 'asked');
/** Over every place: what speaks against the runway; nobody has one before the first answer. */
export const verdictLine = later(
  () => import('./VerdictLine').then(({ VerdictLine }) => VerdictLine),
  'asked',
);
/** Under the strip, what is under way in the steps. */
export const underWay = later(() => import('./UnderWay').then(({ UnderWay }) => UnderWay), 'asked');
const taxi = later(() => import('../views/taxi/Taxi').then(({ Taxi }) => Taxi));
const steps = later(() => import('../views/steps/Steps').then(({ Steps }) => Steps));
const numbers = later(() => import('../views/numbers/Numbers').then(({ Numbers }) => Numbers));
const log = later(() => import('../views/log/Log').then(({ Log }) => Log));
/** Replaces a part that couldn't be drawn. */
export const broken = later(() => import('./Broken').then(({ Broken }) => Broken));
const sheets = laterSheet(() => import('./Sheets').then(({ Sheets }) => Sheets));

export const views: Record<PlaceName, ComponentType> = {
  wind: WindPlace,
  taxi: taxi.Later,
  steps: steps.Later,
  numbers: numbers.Later,
  log: log.Later,
};

export const LaterNotices = notices.Later;
export const LaterSheets = sheets.Later;

/** Loads the views that weren't needed yet. */
export function loadViews(): void {
  loadWindDetail();
  for (const view of [
    notices,
    wrongKey,
    verdictLine,
    underWay,
    steps,
    taxi,
    numbers,
    log,
    sheets,
    broken,
  ])
    view.preload();
}
