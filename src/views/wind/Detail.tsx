/** What comes after the first answer: the dial, the weather, every end, the winds entered, what is rare. */

// For all that is drawn: the first that is drawn brings it.
import '../../style/forced.css';
import type { JSX } from 'preact';
import { answered } from '../../board/answered';
import { Ends } from './Ends';
import { History } from './History';
import { ReportCard } from './ReportCard';

export { DialPanel } from './DialPanel';
export { LowSunRow } from './LowSunRow';
export { MeaningAtCaret } from './MeaningAtCaret';
export { NoBest } from './NoBest';
export { ProblemText } from './ProblemText';

/** The weather, every end against the limits, and the winds entered so far. */
export function Below(): JSX.Element {
  return (
    <>
      <Ends answered={answered.value} />
      <ReportCard />
      <History />
    </>
  );
}
