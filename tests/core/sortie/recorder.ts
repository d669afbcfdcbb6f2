/** Writes entries as a window of the app does, and lists of them as several windows may have left them. */

import fc from 'fast-check';
import type { Entry, Id, SortieEvent } from '../../../src/core/sortie/entry';

/** When the invented sorties begin: the device's clock, and the sortie's own years before it. */
export const WALL_MS = Date.UTC(2026, 10, 20, 9, 0, 0);
export const SORTIE_MS = Date.UTC(1987, 3, 5, 18, 50, 0);

/** The run that the invented sorties fly, and the list they open. */
export const RUN = 'run-of-steps';
export const LIST = 'run-of-list';

/** Opens the run, as the first tick does. */
export const OPEN = {
  kind: 'open',
  run: RUN,
  procedure: 'hash-p',
  list: null,
} as const satisfies SortieEvent;

/** Opens the list for a take-off that was stopped. */
export const OPEN_LIST = {
  kind: 'open',
  run: LIST,
  procedure: 'hash-p',
  list: 'rejected-takeoff',
} as const satisfies SortieEvent;

/** Opens another list, over the run or over the list that is open. */
export const OTHER_LIST = 'run-of-other-list';
export const OPEN_OTHER_LIST = {
  kind: 'open',
  run: OTHER_LIST,
  procedure: 'hash-p',
  list: 'engine-fire-ground',
} as const satisfies SortieEvent;

/** A tick of a step in the run. */
export const tick = (
  kind: 'done' | 'held' | 'cannot',
  step: string,
  more: Partial<Extract<SortieEvent, { kind: 'done' | 'held' | 'cannot' }>> = {},
): SortieEvent => ({ kind, run: RUN, pass: 1, step, saw: {}, ...more });

/** An entry as it stands in the list; every second one second later. */
export function entry(event: SortieEvent, seq: number, id: Id = `id-${seq}`): Entry {
  const at = { wallMs: WALL_MS + seq * 1000, sortieMs: SORTIE_MS + seq * 1000 };
  return { ...event, id, seq, sortie: 'sortie-one', at };
}

/** Events in the order they happened, in one window. */
export const written = (...events: readonly SortieEvent[]): Entry[] =>
  events.map((event, index) => entry(event, index + 1));

/** What a later version of the app may write: of a kind that is not known here. */
export const fromLater = (seq: number, id: Id = `later-${seq}`): Entry =>
  ({ ...entry({ kind: 'undo', target: 'id-1' }, seq, id), kind: 'torn off' }) as unknown as Entry;

const anyStep = fc.constantFrom('brakes', 'flaps', 'trim', 'brief');
const anySaw = fc.constantFrom({}, { runway: '28' }, { runway: '01' }, { wet: true });

/** Anything that can happen but an undo. */
export const anyEvent: fc.Arbitrary<SortieEvent> = fc.oneof(
  {
    weight: 6,
    arbitrary: fc.record({
      kind: fc.constantFrom('done', 'held', 'cannot'),
      run: fc.constantFrom(RUN, RUN, LIST),
      pass: fc.integer({ min: 1, max: 2 }),
      step: anyStep,
      saw: anySaw,
    }),
  },
  fc
    .record(
      {
        callsign: fc.constantFrom('Gannet 1', 'Gannet 2'),
        surface: fc.constantFrom('dry', 'wet'),
        chosen: fc.constantFrom(null, { end: '28', purpose: 'take-off' } as const),
        ownCrosswindKt: fc.constantFrom(null, 12),
      },
      { requiredKeys: [] },
    )
    .map((inputs): SortieEvent => ({ kind: 'set', inputs })),
  fc.constantFrom<SortieEvent>(
    { kind: 'wind', text: '27012KT', north: 'true' },
    { kind: 'wind', text: '30008', north: 'magnetic' },
    { kind: 'clock', sortieMs: SORTIE_MS, rate: 0 },
    { kind: 'clock', sortieMs: SORTIE_MS + 60_000, rate: 1 },
    { kind: 'stamp', what: 'brakes released' },
    { kind: 'stamp', what: 'stopping' },
    { kind: 'stamp', what: 'airborne' },
    { kind: 'interrupted', run: RUN },
    { kind: 'resumed', run: RUN },
    { kind: 'sealed', documents: { field: 'hash-f' }, figures: {} },
    OPEN_LIST,
    OPEN_OTHER_LIST,
    { kind: 'close', run: LIST, leadsTo: 'return' },
    { kind: 'close', run: OTHER_LIST, leadsTo: 'return' },
    { kind: 'close', run: OTHER_LIST, leadsTo: 'end' },
    { kind: 'passed', run: RUN, pass: 1, step: 'trim', saw: { wet: false } },
    { kind: 'passed', run: LIST, pass: 1, step: 'trim', saw: { wet: true } },
    { kind: 'reopen', run: RUN, passes: { roll: 2, climb: 2, recovery: 2 } },
    { kind: 'reopen', run: RUN, passes: { taxi: 3 } },
    { kind: 'begun', run: RUN, phase: 'recovery' },
    { kind: 'begun', run: RUN, phase: 'line-up' },
    { kind: 'stamp', what: 'landed' },
    { kind: 'close', run: LIST, leadsTo: { phase: 'taxi', reopen: ['taxi', 'line-up', 'roll'] } },
    { kind: 'close', run: RUN, leadsTo: 'return' },
    { kind: 'close', run: RUN, leadsTo: 'end' },
  ),
);

/**
 * A list as it may have come about: what happened, some of it undone, some undos undone, some of it
 * numbered the same because two windows did not know of each other, some of it not known here.
 */
export const anyRecord: fc.Arbitrary<Entry[]> = fc
  .array(
    fc.oneof(
      { weight: 5, arbitrary: anyEvent },
      { weight: 2, arbitrary: fc.nat({ max: 30 }).map((back) => ({ back })) },
      { weight: 1, arbitrary: fc.constant('later' as const) },
    ),
    { maxLength: 25 },
  )
  .chain((happened) =>
    fc
      .array(fc.boolean(), { minLength: happened.length, maxLength: happened.length })
      .map((same) => {
        const list: Entry[] = [entry(OPEN, 1, 'opening')];
        for (const [index, one] of happened.entries()) {
          const last = list.at(-1)?.seq ?? 0;
          const id = String(index);
          if (one === 'later') list.push(fromLater(last + 1, id));
          else if ('kind' in one) list.push(entry(one, same[index] ? last : last + 1, id));
          else {
            // An undo knows what it takes back, so that its number is always higher.
            const target = list.at(-1 - (one.back % list.length))?.id ?? '';
            list.push(entry({ kind: 'undo', target }, last + 1, id));
          }
        }
        return list;
      }),
  );
