/** What keeps a procedure that is being written from being kept, told by the step it stands in. */

import type { Key } from '../fault';
import { type TextFault, textFault } from '../plainText';
import { type ProcedureFault, procedureFaults } from './faults';
import { listPart, type PartId, partsOf } from './parts';
import type { Procedure, StepId } from './procedure';

/** What can be wrong: of the whole, or of what was typed. */
export type EditFaultCode =
  | ProcedureFault
  | TextFault
  /** Nothing is written where something must be. */
  | 'text-missing'
  | 'text-too-long'
  | 'number-out-of-range'
  | 'too-many-steps';

/** Where, and what. */
export interface EditFault {
  /** Null where it is no step's. */
  readonly step: StepId | null;
  readonly part: PartId | null;
  /** The property, such as `response`. */
  readonly name: string;
  readonly code: EditFaultCode;
}

/** As procedure.schema.ts has them. A property finds what it refuses and this does not. */
const LONGEST_SHORT = 80;
const LONGEST_TEXT = 600;
const MOST_STEPS = 80;
const LONGEST_WAIT_S = 3600;
const HIGHEST_GATE_FT = 60_000;

/** Everything that keeps it from being kept; empty where it passes the schema. */
export function editFaults(procedure: Procedure): readonly EditFault[] {
  const whole: EditFault[] = shortText(procedure.name).map((code) => ({
    step: null,
    part: null,
    name: 'name',
    code,
  }));
  const titles = procedure.lists.flatMap(({ id, title }) =>
    shortText(title).map(
      (code): EditFault => ({
        step: null,
        part: listPart(id),
        name: 'title',
        code,
      }),
    ),
  );
  const typed = partsOf(procedure).flatMap(typedFaults);
  return [...whole, ...titles, ...typed, ...togetherFaults(procedure)];
}

type Part = ReturnType<typeof partsOf>[number];

function typedFaults({ part, steps }: Part): EditFault[] {
  const tooMany: EditFault[] =
    steps.length > MOST_STEPS ? [{ step: null, part, name: 'steps', code: 'too-many-steps' }] : [];
  return [
    ...tooMany,
    ...steps.flatMap(({ id, item, response, note, call, expectS, gateFt }) => {
      const found: readonly (readonly [string, EditFaultCode[]])[] = [
        ['item', shortText(item)],
        ['response', shortText(response)],
        ['note', longText(note)],
        ['call', longText(call)],
        ['expectS', numberUpTo(expectS, LONGEST_WAIT_S)],
        ['gateFt', numberUpTo(gateFt, HIGHEST_GATE_FT)],
      ];
      return found.flatMap(([name, codes]) =>
        codes.map((code): EditFault => ({ step: id, part, name, code })),
      );
    }),
  ];
}

function shortText(text: string): EditFaultCode[] {
  const { length } = text.trim();
  if (length === 0) return ['text-missing'];
  if (length > LONGEST_SHORT) return ['text-too-long'];
  return misleading(text);
}

const longText = (text = ''): EditFaultCode[] =>
  text.trim().length > LONGEST_TEXT ? ['text-too-long'] : misleading(text);

function misleading(text: string): EditFaultCode[] {
  const fault = textFault(text);
  return fault === null ? [] : [fault];
}

const numberUpTo = (value = 0, most: number): EditFaultCode[] =>
  value >= 0 && value <= most ? [] : ['number-out-of-range'];

function togetherFaults(procedure: Procedure): EditFault[] {
  return procedureFaults(procedure).map(({ path, code }) => {
    const placed = stepAt(procedure, path);
    return { step: null, part: null, ...placed, name: String(path.at(-1)), code };
  });
}

/** The step that a path such as `phases.0.steps.3.item` leads to. */
function stepAt(
  { phases, lists }: Procedure,
  [kind, index, , at]: readonly Key[],
): Pick<EditFault, 'step' | 'part'> | null {
  const list = kind === 'lists' ? lists[Number(index)] : undefined;
  const phase = kind === 'phases' ? phases[Number(index)] : undefined;
  const [one] = partsOf({ phases: phase ? [phase] : [], lists: list ? [list] : [] });
  return one === undefined
    ? null
    : { part: one.part, step: at === undefined ? null : (one.steps[Number(at)]?.id ?? null) };
}
