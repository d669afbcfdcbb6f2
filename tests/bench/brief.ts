/** brief(): the whole card worked out, today's numbers among it, again after another wind. */

import * as v from 'valibot';
import aircraftDocument from '../../airfields-demo/aircraft/sleet.json';
import fieldDocument from '../../airfields-demo/fields/XHAR.json';
import procedureDocument from '../../airfields-demo/procedures/sleet-usual.json';
import { type BriefInputs, brief, FRESH_INPUTS, loadSun, loadVariation } from '../../src/core';
import { aircraftSchema } from '../../src/core/aircraft/aircraft.schema';
import { fieldSchema } from '../../src/core/airfield/field.schema';
import { procedureSchema } from '../../src/core/procedure/procedure.schema';
import { quantile, type Rows } from './row';

const AT = new Date('1987-04-05T18:50:00Z');
const CHANGES = 300;

const moment = (text: string): BriefInputs => ({
  inputs: { ...FRESH_INPUTS, field: 'f', aircraft: 'a', procedure: 'p' },
  wind: { text, north: 'true' },
  run: null,
  list: null,
  stamps: [],
  at: AT,
});

/** Never the same wind twice: direction, speed and gust all move. */
const windAt = (i: number): string => {
  const two = (n: number) => String(n).padStart(2, '0');
  return `${String(((i * 37) % 36) * 10 + 10).padStart(3, '0')}${two(5 + (i % 20))}G${two(20 + (i % 25))}KT`;
};

/** The row of the table on the day. */
export const rows: Rows = async () => {
  const documents = {
    field: v.parse(fieldSchema, fieldDocument),
    aircraft: v.parse(aircraftSchema, aircraftDocument),
    procedure: v.parse(procedureSchema, procedureDocument),
  };
  const tables = { magnetic: await loadVariation(AT), sun: await loadSun() };
  let ranked = 0;
  let worked = 0;
  const timed = (text: string) => {
    const start = performance.now();
    const { wind, today } = brief(moment(text), documents, tables);
    const spent = performance.now() - start;
    if (wind.ranked !== null) ranked += 1;
    if (today?.takeoff.planned.because === null) worked += 1;
    return spent;
  };
  timed('27012G20KT 240V300');
  const changed = Array.from({ length: CHANGES }, (_, i) => timed(windAt(i)));
  return [
    {
      what: 'the day with one wind changed, median',
      measured: quantile(changed, 0.5),
      unit: 'ms',
      budget: { atMost: 2 },
      note: `95th percentile ${quantile(changed, 0.95)?.toFixed(2)} ms; ${ranked} of ${CHANGES + 1} winds ranked, ${worked} with today’s take-off`,
    },
  ];
};
