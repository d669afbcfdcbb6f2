/** Reworking the whole day, today's numbers included, after each new wind. */

import { computed, signal } from '@preact/signals-core';
import * as v from 'valibot';
import aircraftDocument from '../../airfields-demo/aircraft/sleet.json';
import fieldDocument from '../../airfields-demo/fields/XHAR.json';
import procedureDocument from '../../airfields-demo/procedures/sleet-usual.json';
import {
  day,
  FRESH_INPUTS,
  loadPart,
  loadVariation,
  type Memo,
  NO_SORTIE,
  type Sortie,
  withWind,
} from '../../src/core';
import { aircraftSchema } from '../../src/core/aircraft/aircraft.schema';
import { fieldSchema } from '../../src/core/airfield/field.schema';
import { procedureSchema } from '../../src/core/procedure/procedure.schema';
import { quantile, type Rows } from './row';

const AT = new Date('1987-04-05T18:50:00Z');
const CHANGES = 300;

/** Never the same wind twice: direction, speed and gust all move. */
const windAt = (i: number): string => {
  const two = (n: number) => String(n).padStart(2, '0');
  return `${String(((i * 37) % 36) * 10 + 10).padStart(3, '0')}${two(5 + (i % 20))}G${two(20 + (i % 25))}KT`;
};

/** A memo built on signals, like the app's. */
const memo: Memo = (work, same = Object.is) => {
  let last: { readonly value: ReturnType<typeof work> } | null = null;
  const kept = computed(() => {
    const value = work();
    if (last === null || !same(last.value, value)) last = { value };
    return last.value;
  });
  return () => kept.value;
};

export const rows: Rows = async () => {
  const field = v.parse(fieldSchema, fieldDocument);
  const aircraft = v.parse(aircraftSchema, aircraftDocument);
  const procedure = v.parse(procedureSchema, procedureDocument);
  const [reports, physics, taxi, sun, variation] = await Promise.all([
    loadPart.reports(),
    loadPart.physics(),
    loadPart.taxi(),
    loadPart.sun(),
    loadVariation(AT),
  ]);
  const begun: Sortie = { ...NO_SORTIE, inputs: FRESH_INPUTS };
  const sortie = signal(begun);
  const asked = day(
    {
      sortie: () => sortie.value,
      documents: { field: () => field, aircraft: () => aircraft, procedure: () => procedure },
      fieldCode: () => null,
      minuteMs: () => AT.getTime(),
      secondMs: () => AT.getTime(),
      parts: {
        reports: () => reports,
        physics: () => physics,
        taxi: () => taxi,
        sun: () => sun,
        variation: () => variation,
      },
    },
    memo,
  );
  let ranked = 0;
  let worked = 0;
  const timed = (text: string) => {
    const start = performance.now();
    sortie.value = withWind(begun, { text, north: 'true' });
    const { ranked: ends } = asked.wind();
    const today = asked.today();
    asked.verdict();
    asked.steps();
    const spent = performance.now() - start;
    if (ends !== null) ranked += 1;
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
