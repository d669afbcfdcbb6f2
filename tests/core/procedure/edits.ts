/** Changes that a pilot might make to a procedure, of all kinds and at any place, for properties. */

import * as fc from 'fast-check';
import { CONDITION_FACTS } from '../../../src/core/procedure/conditionFacts';
import type { ListChange, ProcedureEdit, StepChange } from '../../../src/core/procedure/edit';
import type { PartId } from '../../../src/core/procedure/parts';
import { PHASES } from '../../../src/core/procedure/phases';
import type { AbnormalList, Procedure, Step } from '../../../src/core/procedure/procedure';

const step = (id: string, item: string, more: Partial<Step> = {}): Step => ({
  id,
  kind: 'do',
  item,
  response: 'set',
  ...more,
});

/** An invented procedure with steps in most phases, and with two lists. */
export const WRITTEN: Procedure = {
  lapstrip: 'procedure',
  version: 1,
  code: 'invented',
  name: 'Invented',
  aircraft: 'invented',
  about: 'Not flown.',
  options: [{ id: 'hook', name: 'Hook', fitted: true }],
  phases: [
    {
      phase: 'ramp',
      steps: [
        step('pins', 'Pins', { critical: true }),
        step('lamps', 'Lamps', { when: { fact: 'night' } }),
        step('hook-up', 'Hook', { when: { option: 'hook' } }),
        step('brief', 'Brief', { kind: 'say', call: 'Runway {runway}', until: 'line-up' }),
      ],
    },
    {
      phase: 'taxi',
      steps: [
        step('flaps', 'Flaps'),
        step('oil', 'Oil', { kind: 'wait', expectS: 20 }),
        step('stop-bar', 'Before the runway', { kind: 'barrier' }),
      ],
    },
    { phase: 'roll', steps: [step('lever', 'Lever', { tiedTo: 'brakes released' })] },
    { phase: 'climb', steps: [step('gear', 'Gear', { kind: 'gate', gate: 'gearKt' })] },
    { phase: 'after', steps: [step('pins-in', 'Pins in')] },
  ],
  lists: [
    {
      id: 'gear-unsafe',
      title: 'Gear unsafe',
      steps: [step('speed', 'Speed'), step('lever-again', 'Lever', { needs: 'gear' })],
      // biome-ignore lint/suspicious/noThenProperty: an object under this name never makes a promise; only a function would.
      then: 'return',
    },
    {
      id: 'go-around',
      title: 'Go-around',
      steps: [step('power', 'Power')],
      // biome-ignore lint/suspicious/noThenProperty: an object under this name never makes a promise; only a function would.
      then: { phase: 'climb', reopen: ['climb', 'recovery'] },
    },
  ],
};

/** The parts of {@link WRITTEN} with all phases. */
export const PARTS: readonly PartId[] = [...PHASES, 'list/gear-unsafe', 'list/go-around'];

const words = fc.constantFrom(
  'Flaps',
  'take-off, 15°',
  '{rotateKt} kt',
  'by {noSuchName}',
  'half {',
  ' ',
  '',
  'x'.repeat(81),
);

const place = fc.record({ part: fc.constantFrom(...PARTS), index: fc.nat(5) });

const condition = fc.oneof(
  fc.constantFrom(...CONDITION_FACTS).map((fact) => ({ fact })),
  fc.nat(60).map((windAboveKt) => ({ windAboveKt })),
  fc.constantFrom('hook', 'no-such-option').map((option) => ({ option })),
  fc.constantFrom(...CONDITION_FACTS).map((fact) => ({ all: [{ not: { fact } }] })),
);

/** A change of a step: any of its words, its kind, its condition and what belongs to the kind. */
export const stepChange: fc.Arbitrary<StepChange> = fc.oneof(
  fc.record({ item: words }),
  fc.record({ response: words }),
  fc.record({ note: fc.option(words, { nil: undefined }) }),
  fc.record({ call: fc.option(words, { nil: undefined }) }),
  fc.record({ kind: fc.constantFrom('do', 'check', 'wait', 'say', 'gate', 'note', 'barrier') }),
  fc.record({ critical: fc.constantFrom(true, undefined) }),
  fc.record({ when: fc.option(condition, { nil: undefined }) }),
  fc.record({ expectS: fc.constantFrom(0, 30, 3601, undefined) }),
  fc.record({ gate: fc.constantFrom('rotateKt', 'gearKt', undefined) }),
  fc.record({ gateFt: fc.constantFrom(300, 60_001, undefined) }),
  fc.record({ until: fc.constantFrom('ramp', 'line-up', undefined) }),
);

const phases = fc.uniqueArray(fc.constantFrom(...PHASES), { maxLength: 3 });

/** A change of a list: its title, where it is looked for first, where it leads. */
export const listChange: fc.Arbitrary<ListChange> = fc.oneof(
  fc.record({ title: words }),
  fc.record({ group: fc.constantFrom('emergency', 'malfunction', undefined) }),
  fc.record({ phases: fc.option(phases, { nil: undefined }) }),
  fc
    .oneof(
      fc.constantFrom('return' as const, 'end' as const),
      fc.record({ phase: fc.constantFrom(...PHASES), reopen: phases }),
    )
    .map((leads): ListChange => Object.fromEntries([['then', leads]])),
);

/** A change of any kind. Ids of steps and lists that are there, of steps that were added, and of none. */
export function anyEdit(procedure: Procedure): fc.Arbitrary<ProcedureEdit> {
  const there = [...procedure.phases, ...procedure.lists].flatMap(({ steps }) =>
    steps.map(({ id }) => id),
  );
  const added = fc.nat(6).map((number) => `own-${number}`);
  const id = fc.oneof({ weight: 4, arbitrary: fc.constantFrom(...there) }, added);
  const listId = fc.constantFrom('gear-unsafe', 'go-around', 'own-list');
  return fc.oneof(
    fc.record({
      kind: fc.constant('insert' as const),
      step: fc.record({ id: added, item: words }).map(({ id: name, item }) => step(name, item)),
      at: place,
    }),
    fc.record({ kind: fc.constant('remove' as const), id }),
    fc.record({ kind: fc.constant('move' as const), id, to: place }),
    fc.record({ kind: fc.constant('duplicate' as const), id, as: added }),
    fc.record({ kind: fc.constant('change' as const), id, to: stepChange }),
    fc.record({ kind: fc.constant('rename' as const), name: words }),
    fc.record({ kind: fc.constant('for' as const), aircraft: fc.constantFrom('one', 'two') }),
    fc.record({
      kind: fc.constant('change-list' as const),
      id: fc.constantFrom('gear-unsafe', 'go-around', 'no-such'),
      to: listChange,
    }),
    fc.record({
      kind: fc.constant('add-list' as const),
      list: fc.record({ id: listId, title: words, first: added }).map(
        ({ id: of, title, first }): AbnormalList => ({
          ...{ id: of, title, steps: [step(first, 'Power')] },
          // biome-ignore lint/suspicious/noThenProperty: an object under this name never makes a promise; only a function would.
          then: 'return',
        }),
      ),
    }),
    fc.record({ kind: fc.constant('remove-list' as const), id: listId }),
    fc.constant({ kind: 'replace' as const, by: procedure }),
  );
}
