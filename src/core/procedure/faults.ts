/** What keeps a procedure document of the right shape from being used. */

import type { Fault, Key } from '../fault';
import { repeats } from '../fault';
import { isLiveName, piecesOf } from './facts';
import { PHASES } from './phases';
import type { ProcedureShape, StepShape } from './procedure.schema';

/** What can be wrong with a procedure. */
export type ProcedureFault =
  | 'phase-twice'
  /** A phase stands before one that is flown earlier. */
  | 'phase-out-of-order'
  | 'list-twice'
  /** Two steps have one id, so that ticking one would tick the other. */
  | 'step-twice'
  /** A name in braces for which there is no live number, or a brace without its other. */
  | 'live-name-unknown'
  /** A gate without the speed it is passed by. */
  | 'gate-without-speed'
  /** A speed on a step that is no gate. */
  | 'speed-without-gate'
  /** How long it takes, on a step that does not wait. */
  | 'time-without-wait';

interface PlacedStep {
  readonly step: StepShape;
  readonly path: readonly [Key, ...Key[]];
}

/** Every step of the phases and of the lists, with the way to it. */
function placedSteps({ phases, lists }: ProcedureShape): PlacedStep[] {
  const groups = { phases, lists };
  return (['phases', 'lists'] as const).flatMap((group) =>
    groups[group].flatMap(({ steps }, index) =>
      steps.map((step, place): PlacedStep => ({ step, path: [group, index, 'steps', place] })),
    ),
  );
}

/** Whether every brace in a text holds the name of a live number. */
const isLiveText = (text: string): boolean =>
  piecesOf(text).every((piece) =>
    typeof piece === 'string' ? !/[{}]/.test(piece) : isLiveName(piece.live),
  );

function* faultsOfStep({ step, path }: PlacedStep): Generator<Fault<ProcedureFault>> {
  for (const part of ['item', 'response', 'note'] as const)
    if (!isLiveText(step[part] ?? '')) yield { path: [...path, part], code: 'live-name-unknown' };
  if (step.kind === 'gate' && step.gate === undefined)
    yield { path: [...path, 'gate'], code: 'gate-without-speed' };
  if (step.kind !== 'gate' && step.gate !== undefined)
    yield { path: [...path, 'gate'], code: 'speed-without-gate' };
  if (step.kind !== 'wait' && step.expectS !== undefined)
    yield { path: [...path, 'expectS'], code: 'time-without-wait' };
}

function* faultsOfOrder({ phases, lists }: ProcedureShape): Generator<Fault<ProcedureFault>> {
  for (const index of repeats(phases.map(({ phase }) => phase)))
    yield { path: ['phases', index, 'phase'], code: 'phase-twice' };
  for (const index of repeats(lists.map(({ id }) => id)))
    yield { path: ['lists', index, 'id'], code: 'list-twice' };
  const order = phases.map(({ phase }) => PHASES.indexOf(phase));
  for (const [index, place] of order.entries())
    if (place < (order[index - 1] ?? place))
      yield { path: ['phases', index, 'phase'], code: 'phase-out-of-order' };
}

/** Everything that keeps the procedure from being used; empty when it holds together. */
export function procedureFaults(procedure: ProcedureShape): Fault<ProcedureFault>[] {
  const steps = placedSteps(procedure);
  const repeated = new Set(repeats(steps.map(({ step }) => step.id)));
  return [
    ...faultsOfOrder(procedure),
    ...steps.flatMap((placed, index): Fault<ProcedureFault>[] => [
      ...(repeated.has(index)
        ? [{ path: [...placed.path, 'id'], code: 'step-twice' } as const]
        : []),
      ...faultsOfStep(placed),
    ]),
  ];
}
