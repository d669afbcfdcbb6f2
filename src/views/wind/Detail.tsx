/** What stands under the answer: the dial, every end, the winds entered. Loaded when the answer stands. */

import type { JSX } from 'preact';
import type { WindBrief } from '../../core';
import { Ends } from './Ends';
import { History } from './History';

export { DialPanel } from './DialPanel';

/** Every end against the limits, and the winds entered so far. */
export function EndsAndWinds({ answered }: { answered: WindBrief }): JSX.Element {
  return (
    <>
      <Ends answered={answered} />
      <History />
    </>
  );
}
