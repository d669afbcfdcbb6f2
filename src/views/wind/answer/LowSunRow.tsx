/** The row of the answer that warns of a low sun ahead. */

import type { JSX } from 'preact';
import { ask } from '../../../board/places';
import type { LowSun } from '../../../core';
import { Asked } from '../../../parts/asked/Asked';
import { timeOfDay } from '../../../parts/format';
import { words } from '../runways/words';
import { words as windWords } from '../words';
import { Row } from './Row';

/** Where the sun stands off the nose, until or from when, and how high. */
export function LowSunRow({ sun }: { sun: Exclude<LowSun, { kind: 'none' }> }): JSX.Element {
  const side = words.sunSide(sun.relativeDeg);
  const name =
    sun.kind === 'now'
      ? words.lowSun(side, timeOfDay(sun.until.getTime()))
      : words.lowSunLater(side, timeOfDay(sun.from.getTime()));
  return (
    <Row name={name}>
      <Asked hint={windWords.ask} onAsk={() => ask(name, { sun })}>
        {words.sunHigh(sun.altitudeDeg)}
      </Asked>
    </Row>
  );
}
