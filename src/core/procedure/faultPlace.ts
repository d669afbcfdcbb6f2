/** Where a fault stands in a procedure being written. */

import type { DocumentFault } from '../fault';
import { listPart, type PartId } from './parts';
import type { Procedure, StepId } from './procedure';

/** A fault, with the step or list in which to correct it. */
export interface PlacedFault {
  /** Null if it isn't a step's. */
  readonly step: StepId | null;
  /** Null if it concerns the whole. */
  readonly part: PartId | null;
  /** The property, such as `response`. */
  readonly name: string;
  readonly code: string;
}

/** The place a path such as `phases.0.steps.3.item` leads to. */
export function placedFault(
  { phases, lists }: Procedure,
  { path, code }: DocumentFault,
): PlacedFault {
  const [kind, index, within, at] = path;
  const phase = kind === 'phases' ? phases[Number(index)] : undefined;
  const list = kind === 'lists' ? lists[Number(index)] : undefined;
  const part = list === undefined ? (phase?.phase ?? null) : listPart(list.id);
  const steps = within === 'steps' ? (phase ?? list)?.steps : undefined;
  const step = steps?.[Number(at)]?.id ?? null;
  const name = String(path[step !== null ? 4 : part !== null ? 2 : 0] ?? '');
  return { step, part, name, code };
}
