/** The demo documents as they are committed: as text, and parsed by their schemas. */

import { readdirSync, readFileSync } from 'node:fs';
import * as v from 'valibot';
import { aircraftSchema } from '../../../src/core/aircraft/aircraft.schema';
import type { Field } from '../../../src/core/airfield/field';
import { fieldSchema } from '../../../src/core/airfield/field.schema';
import type { Procedure, Step } from '../../../src/core/procedure/procedure';
import { procedureSchema } from '../../../src/core/procedure/procedure.schema';

/** The text of each document in a folder of the demo, by its file's name. */
export function demoTexts(folder: 'fields' | 'aircraft' | 'procedures'): Map<string, string> {
  const url = new URL(`../../../airfields-demo/${folder}/`, import.meta.url);
  return new Map(
    readdirSync(url)
      .filter((name) => name.endsWith('.json'))
      .map((name) => [name, readFileSync(new URL(name, url), 'utf8')]),
  );
}

const parsed = <S extends v.GenericSchema>(
  folder: Parameters<typeof demoTexts>[0],
  schema: S,
): v.InferOutput<S>[] =>
  [...demoTexts(folder).values()].map((text) => v.parse(schema, JSON.parse(text)));

export const demoFields = parsed('fields', fieldSchema);
export const demoAircraft = parsed('aircraft', aircraftSchema);
export const demoProcedures = parsed('procedures', procedureSchema);

/** A demo field by its code. */
export function demoField(code: string): Field {
  const field = demoFields.find((one) => one.code === code);
  if (field === undefined) throw new Error(`there is no demo field ${code}`);
  return field;
}

/** Every step of a procedure's phases and lists. */
export const allSteps = ({ phases, lists }: Procedure): Step[] =>
  [...phases, ...lists].flatMap(({ steps }) => steps);

/** The steps of one phase; none where the procedure leaves it out. */
export const stepsOf = ({ phases }: Procedure, phase: string): Step[] =>
  phases.flatMap((one) => (one.phase === phase ? one.steps : []));
