/** What keeps a procedure document of the right shape from being used. */

import type { Fault, FaultKey } from '../fault';
import { repeats } from '../fault';
import { isReservedName } from '../reservedName';
import { optionsIn } from './condition';
import { isLiveName, piecesOf } from './facts';
import { PHASES } from './phases';
import type { ProcedureShape, StepShape } from './procedure.schema';

/** What can be wrong with a procedure. */
export type ProcedureFault =
  | 'phase-twice'
  /** A phase stands before one that is flown earlier. */
  | 'phase-out-of-order'
  | 'list-twice'
  | 'option-twice'
  /** An option has a name reserved by JavaScript. */
  | 'name-reserved'
  /** A condition asks for an option the procedure doesn't define. */
  | 'option-unknown'
  /** Two steps have one id, so that ticking one would tick the other. */
  | 'step-twice'
  /** A name in braces that is no live number, or an unmatched brace. */
  | 'live-name-unknown'
  /** A gate without the speed or the height it is passed by, or with both. */
  | 'gate-without-speed'
  | 'gate-twice'
  /** A speed or a height on a step that is no gate. */
  | 'speed-without-gate'
  /** A duration on a step that doesn't wait. */
  | 'time-without-wait'
  /** The words of a call on a step that isn't said. */
  | 'call-without-say'
  /** A barrier on the roll or in the climb, where nobody can wait. */
  | 'barrier-in-motion'
  /** A barrier in a list, where it holds nothing back. */
  | 'barrier-in-list'
  /** A barrier with nothing before it. */
  | 'barrier-first'
  /** Tied to brake release outside the roll. */
  | 'tied-off-roll'
  /** Due again until a phase that is past when the step is reached. */
  | 'until-before'
  /**
   * In a list, built on a step that no phase has; or in a phase, where nothing is built on another.
   */
  | 'needs-unknown'
  | 'needs-in-phase';

interface PlacedStep {
  readonly step: StepShape;
  readonly path: readonly [FaultKey, ...FaultKey[]];
  /** Null in a list. */
  readonly phase: (typeof PHASES)[number] | null;
}

/** Every step of the phases and lists, with its path. */
function placedSteps({ phases, lists }: ProcedureShape): PlacedStep[] {
  return [
    ...phases.flatMap(({ phase, steps }, index) =>
      steps.map((step, at): PlacedStep => ({ step, phase, path: ['phases', index, 'steps', at] })),
    ),
    ...lists.flatMap(({ steps }, index) =>
      steps.map(
        (step, at): PlacedStep => ({ step, phase: null, path: ['lists', index, 'steps', at] }),
      ),
    ),
  ];
}

/** Whether every brace in a text encloses the name of a live number. */
const isLiveText = (text: string): boolean =>
  piecesOf(text).every((piece) =>
    typeof piece === 'string' ? !/[{}]/.test(piece) : isLiveName(piece.live),
  );

const TEXTS = ['item', 'response', 'note', 'call'] as const;

function* faultsOfKind({ step, path }: PlacedStep): Generator<Fault<ProcedureFault>> {
  const { kind, gate, gateFt } = step;
  if (kind === 'gate' && gate === undefined && gateFt === undefined)
    yield { path: [...path, 'gate'], code: 'gate-without-speed' };
  if (kind === 'gate' && gate !== undefined && gateFt !== undefined)
    yield { path: [...path, 'gateFt'], code: 'gate-twice' };
  for (const part of ['gate', 'gateFt'] as const)
    if (kind !== 'gate' && step[part] !== undefined)
      yield { path: [...path, part], code: 'speed-without-gate' };
  if (kind !== 'wait' && step.expectS !== undefined)
    yield { path: [...path, 'expectS'], code: 'time-without-wait' };
  if (kind !== 'say' && step.call !== undefined)
    yield { path: [...path, 'call'], code: 'call-without-say' };
}

function* faultsOfPlace({ step, path, phase }: PlacedStep): Generator<Fault<ProcedureFault>> {
  const isBarrier = step.kind === 'barrier';
  if (isBarrier && phase === null) yield { path: [...path, 'kind'], code: 'barrier-in-list' };
  if (isBarrier && (phase === 'roll' || phase === 'climb'))
    yield { path: [...path, 'kind'], code: 'barrier-in-motion' };
  if (step.tiedTo !== undefined && phase !== 'roll')
    yield { path: [...path, 'tiedTo'], code: 'tied-off-roll' };
  if (step.until !== undefined && phase !== null)
    if (PHASES.indexOf(step.until) < PHASES.indexOf(phase))
      yield { path: [...path, 'until'], code: 'until-before' };
  if (step.needs !== undefined && phase !== null)
    yield { path: [...path, 'needs'], code: 'needs-in-phase' };
}

function* faultsOfNames(
  { step, path, phase }: PlacedStep,
  inPhases: ReadonlySet<string>,
  options: ReadonlySet<string>,
): Generator<Fault<ProcedureFault>> {
  for (const part of TEXTS)
    if (!isLiveText(step[part] ?? '')) yield { path: [...path, part], code: 'live-name-unknown' };
  const asked = step.when === undefined ? [] : optionsIn(step.when);
  if (asked.some((option) => !options.has(option)))
    yield { path: [...path, 'when'], code: 'option-unknown' };
  if (phase === null && step.needs !== undefined && !inPhases.has(step.needs))
    yield { path: [...path, 'needs'], code: 'needs-unknown' };
}

function* faultsOfOrder({
  phases,
  lists,
  options = [],
}: ProcedureShape): Generator<Fault<ProcedureFault>> {
  for (const index of repeats(phases.map(({ phase }) => phase)))
    yield { path: ['phases', index, 'phase'], code: 'phase-twice' };
  for (const index of repeats(lists.map(({ id }) => id)))
    yield { path: ['lists', index, 'id'], code: 'list-twice' };
  for (const index of repeats(options.map(({ id }) => id)))
    yield { path: ['options', index, 'id'], code: 'option-twice' };
  for (const [index, { id }] of options.entries())
    if (isReservedName(id)) yield { path: ['options', index, 'id'], code: 'name-reserved' };
  const order = phases.map(({ phase }) => PHASES.indexOf(phase));
  for (const [index, place] of order.entries())
    if (place < (order[index - 1] ?? place))
      yield { path: ['phases', index, 'phase'], code: 'phase-out-of-order' };
}

/** Everything that keeps the procedure from being used; empty if it holds together. */
export function procedureFaults(procedure: ProcedureShape): Fault<ProcedureFault>[] {
  const steps = placedSteps(procedure);
  const repeated = new Set(repeats(steps.map(({ step }) => step.id)));
  const inPhases = new Set(steps.flatMap(({ step, phase }) => (phase === null ? [] : [step.id])));
  const options = new Set(procedure.options?.map(({ id }) => id));
  const [first] = steps;
  return [
    ...faultsOfOrder(procedure),
    ...(first?.step.kind === 'barrier' && first.phase !== null
      ? [{ path: [...first.path, 'kind'], code: 'barrier-first' } as const]
      : []),
    ...steps.flatMap((placed, index): Fault<ProcedureFault>[] => [
      ...(repeated.has(index)
        ? [{ path: [...placed.path, 'id'], code: 'step-twice' } as const]
        : []),
      ...faultsOfKind(placed),
      ...faultsOfPlace(placed),
      ...faultsOfNames(placed, inPhases, options),
    ]),
  ];
}
