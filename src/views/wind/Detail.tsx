/**
 * What comes after the first answer: the dial, the weather, every end, the winds entered, and
 * rarities.
 */

// For all that is drawn: the first that is drawn brings it.
import '../../style/forced.css';
import type { JSX } from 'preact';
import { answered } from '../../board/wind/answered';
import { WindHistory } from './entry/History';
import { ReportCard } from './report/ReportCard';
import { Ends } from './runways/Ends';

export { DialPanel } from './answer/DialPanel';
export { LowSunRow } from './answer/LowSunRow';
export { NoBest } from './answer/NoBest';
export { UsingFails } from './answer/UsingFails';
export { MeaningAtCaret } from './entry/MeaningAtCaret';
export { ProblemText } from './entry/ProblemText';

/** The weather, every end against the limits, and the winds entered so far. */
export function Below(): JSX.Element {
  return (
    <>
      <Ends answered={answered.value} />
      <ReportCard />
      <WindHistory />
    </>
  );
}
