/** What stands under the answer: the dial, the weather, every end, the winds entered. */

import type { JSX } from 'preact';
import { answered } from './answered';
import { Ends } from './Ends';
import { History } from './History';
import { ReportCard } from './ReportCard';

export { DialPanel } from './DialPanel';
export { MeaningAtCaret } from './MeaningAtCaret';

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
