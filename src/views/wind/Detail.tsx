/** What stands under the answer: the dial, every end, the winds entered. Loaded when the answer stands. */

import type { JSX } from 'preact';
import { answered } from './answered';
import { Ends } from './Ends';
import { History } from './History';

export { DialPanel } from './DialPanel';

/** Every end against the limits, and the winds entered so far. */
export function EndsAndWinds(): JSX.Element {
  return (
    <>
      <Ends answered={answered.value} />
      <History />
    </>
  );
}
