import { expect, test } from 'vitest';
import { noParachuteOf } from '../../../src/core/day/parachute';
import { isOffStand, standOf } from '../../../src/core/day/route';
import { rowsOf, stopNow } from '../../../src/core/day/steps';
import { dueCallKind } from '../../../src/core/radio/dueCall';
import type { SortieEvent } from '../../../src/core/sortie/entry';
import { FRESH_INPUTS } from '../../../src/core/sortie/entry';
import { foldSortie } from '../../../src/core/sortie/fold';
import { withWind } from '../../../src/core/sortie/withWind';
import type { RouteMark } from '../../../src/core/taxi/route';
import { demoField } from '../documents/demo';
import { entry, LIST, OPEN, OPEN_LIST, RUN, tick, written } from '../sortie/recorder';
import { brief, documentsAt, flown, moment, sortieAt, stamped, TABLES } from './moments';

/** A step of the Sleet's procedure that asks for the parachute before the roll. */
const { aircraft, procedure } = documentsAt('XHAR');
const CHUTE = procedure?.phases
  .filter(({ phase }) => phase === 'ramp' || phase === 'taxi' || phase === 'line-up')
  .flatMap(({ steps }) => steps)
  .find(({ when }) => JSON.stringify(when ?? null).includes('chute'));

const counted = (inputs: Partial<typeof FRESH_INPUTS>, ...events: readonly SortieEvent[]) =>
  noParachuteOf({
    aircraft,
    procedure,
    run: foldSortie(written(OPEN, ...events)).run,
    inputs: { ...FRESH_INPUTS, ...inputs },
  });

test('the parachute counts while it is fitted and nothing was said against it', () => {
  expect(counted({})).toBeNull();
  expect(counted({ noParachute: true })).toBe('own');
  expect(counted({ options: { chute: false } })).toBe('not-fitted');
  // Whoever has none fitted need not be told that the pilot does not want it either.
  expect(counted({ options: { chute: false }, noParachute: true })).toBe('not-fitted');
});

test('said not to be possible before the roll, it does not count; done after all, it does', () => {
  const step = CHUTE?.id ?? '';
  expect(step).not.toBe('');
  expect(counted({}, tick('cannot', step))).toBe('cannot');
  expect(counted({}, tick('cannot', step), tick('done', step))).toBeNull();
  expect(counted({}, tick('held', step))).toBeNull();
});

test('what was said in an earlier pass counts until the step is reached again', () => {
  const step = CHUTE?.id ?? '';
  const reopen: SortieEvent = {
    kind: 'reopen',
    run: RUN,
    passes: { ramp: 2, taxi: 2, 'line-up': 2 },
  };
  expect(counted({}, tick('cannot', step), reopen)).toBe('cannot');
  expect(counted({}, tick('cannot', step), reopen, tick('done', step, { pass: 2 }))).toBeNull();
});

const CLOSED_LIST: SortieEvent = {
  kind: 'close',
  run: LIST,
  leadsTo: { phase: 'taxi', reopen: ['taxi', 'line-up', 'roll'] },
};

/** A step of the list for a rejected take-off that builds on the packed parachute. */
const PULLED =
  procedure?.lists
    .find(({ id }) => id === 'rejected-takeoff')
    ?.steps.find(({ needs }) => needs === CHUTE?.id)?.id ?? '';

/** Packed on the ramp, and pulled when the take-off was rejected. */
const REJECTED: readonly SortieEvent[] = [
  tick('done', CHUTE?.id ?? ''),
  OPEN_LIST,
  tick('done', PULLED, { run: LIST }),
  CLOSED_LIST,
];

test('pulled when a take-off was rejected, it does not count until it is packed again', () => {
  expect(PULLED).not.toBe('');
  const [packed, ...rejected] = REJECTED;
  if (packed === undefined) throw new Error('nothing packed');
  expect(counted({}, packed)).toBeNull();
  expect(counted({}, packed, ...rejected)).toBe('used');
  expect(counted({}, packed, ...rejected, tick('done', CHUTE?.id ?? ''))).toBeNull();
  // Taken back, it was never pulled.
  const undone: SortieEvent = { kind: 'undo', target: 'id-4' };
  expect(counted({}, packed, ...rejected, undone)).toBeNull();
});

test('a fresh one that another list checks is packed, whatever was pulled before', () => {
  const again = 'run-of-another-list';
  const fresh = procedure?.lists
    .find(({ id }) => id === 'another-try')
    ?.steps.find(({ needs }) => needs === CHUTE?.id)?.id;
  const opened = { ...OPEN_LIST, run: again, list: 'another-try' } as const;
  const packed: readonly SortieEvent[] = [opened, tick('done', fresh ?? '', { run: again })];
  expect(counted({}, ...REJECTED, opened)).toBe('used');
  expect(counted({}, ...REJECTED, ...packed)).toBeNull();
  // Pulled once more, it is used once more.
  const pulled: readonly SortieEvent[] = [
    { ...OPEN_LIST, run: 'run-later' },
    tick('done', PULLED, { run: 'run-later' }),
  ];
  expect(counted({}, ...REJECTED, ...packed, ...pulled)).toBe('used');
});

test('dropped after landing, it does not count for another take-off until it is packed again', () => {
  const dropped = procedure?.phases
    .find(({ phase }) => phase === 'after')
    ?.steps.find(({ when }) => JSON.stringify(when ?? null).includes('chute'))?.id;
  expect(dropped).toBeDefined();
  const packed = tick('done', CHUTE?.id ?? '');
  expect(counted({}, packed, tick('done', dropped ?? ''))).toBe('used');
  expect(counted({}, packed, tick('done', dropped ?? ''), packed)).toBeNull();
});

test('its step is due again, the last speed to stop from is that without it, and it stops', () => {
  const after = (...events: readonly SortieEvent[]) => {
    const { run, stamps } = foldSortie(written(OPEN, ...events));
    return brief(moment('28010KT', {}, { run, stamps }), documentsAt('XHAR'), TABLES);
  };
  const [before, used] = [after(tick('done', CHUTE?.id ?? '')), after(...REJECTED)];
  const rowIn = ({ steps }: typeof used) =>
    steps && rowsOf(steps.walk).find(({ step }) => step.id === CHUTE?.id)?.state.kind;
  expect([rowIn(before), rowIn(used)]).toEqual(['done', 'again']);
  const stopKt = ({ today }: typeof used) =>
    today?.takeoff.planned.because === null && today.takeoff.planned.figures.lastStopKt.value;
  const bare = before.today?.takeoff.planned;
  expect(stopKt(used)).toBe(bare?.because === null && bare.figures.lastStopBareKt.value);
  expect(stopKt(used)).toBeLessThan(Number(stopKt(before)));
  const codes = used.verdict.cautions.map(({ code }) => code);
  expect(codes).toContain('parachute-used');
});

test('to stop, the hook is named where a cable lies, and nowhere else', () => {
  const to = (code: string, end: string) => {
    const documents = documentsAt(code);
    const chosen = { end, purpose: 'take-off' } as const;
    const { steps } = brief(moment('28010KT', { chosen }), documents, TABLES);
    if (documents.aircraft === null) throw new Error('no aircraft');
    return stopNow(documents.aircraft, steps);
  };
  expect(to('XHAR', '28')).toEqual({
    items: ['throttle idle', 'chute', 'brakes full'],
    notThere: [],
  });
  expect(to('XKEL', '33').items).toEqual(['throttle idle', 'chute', 'brakes full', 'hook']);
});

test('an aircraft without a parachute has none that could not count', () => {
  const tourer = flown('tussock');
  const inputs = { ...FRESH_INPUTS, noParachute: true };
  expect(noParachuteOf({ ...tourer, run: null, inputs })).toBeNull();
});

const way = (goneM: number, leftM: number, next: boolean) => {
  const mark: RouteMark = { node: 'n', name: 'N', atM: 0, kind: 'junction', between: ['A', 'A'] };
  return { last: goneM > 0 ? mark : null, next: next ? mark : null, goneM, leftM };
};

const OUT = { purpose: 'take-off', phase: null } as const;

test('lined up in the steps, the call is for the take-off, though no point was passed on the plan', () => {
  const due = (what: readonly Parameters<typeof stamped>[0][]) =>
    dueCallKind({
      purpose: 'take-off',
      phase: 'line-up',
      stamps: what.map((one) => stamped(one)),
      progress: way(0, 900, true),
      crosses: true,
    });
  expect(due([])).toBe('line-up');
  // Another try, after a stop.
  expect(due(['brakes released', 'stopping'])).toBe('line-up');
});

test.each([
  ['nowhere yet', null, false, 'taxi'],
  ['on the stand', way(0, 900, true), true, 'taxi'],
  ['off the stand, a runway ahead', { ...way(900, 0, false), goneM: 0 }, true, 'crossing'],
  ['on the way, a runway ahead', way(300, 600, true), true, 'crossing'],
  ['on the way, no runway ahead', way(600, 300, true), false, 'line-up'],
  ['at the end of the way', way(900, 0, false), false, 'line-up'],
  ['at the limit, a runway beyond', way(900, 0, false), true, 'crossing'],
])('%s, the call for that is due', (_, progress, crosses, kind) => {
  expect(dueCallKind({ ...OUT, stamps: [], progress, crosses })).toBe(kind);
});

test('from the roll on the call is the departure, not what was called on the ground', () => {
  const due = (what: 'brakes released' | 'airborne') =>
    dueCallKind({ ...OUT, stamps: [stamped(what)], progress: null, crosses: true });
  expect([due('brakes released'), due('airborne')]).toEqual(['departure', 'departure']);
});

test('after a rejected take-off the runway is vacated first, and then the way goes on', () => {
  const due = (progress: Parameters<typeof dueCallKind>[0]['progress'], crosses = true) =>
    dueCallKind({ ...OUT, stamps: [stamped('stopping')], progress, crosses });
  expect(due(null)).toBe('vacated');
  expect(due(way(0, 900, true))).toBe('vacated');
  expect(due(way(300, 600, true))).toBe('crossing');
  expect(due(way(600, 300, true), false)).toBe('line-up');
});

test('for a landing one calls inbound, and once landed that the runway is vacated', () => {
  const due = (...stamps: Parameters<typeof stamped>) =>
    dueCallKind({
      purpose: 'landing',
      phase: null,
      stamps: stamps.map((what) => stamped(what)),
      progress: null,
      crosses: true,
    });
  expect(due('airborne')).toBe('inbound');
  expect(due('landed')).toBe('vacated');
});

test('the stand is the one that is named, or the only one there is', () => {
  const field = demoField('XHAR');
  const stands = field.taxi.nodes.filter(({ kind }) => kind === 'stand');
  expect(stands.length).toBeGreaterThan(1);
  expect(standOf(field, stands[1]?.id ?? null)).toBe(stands[1]?.id);
  expect(standOf(field, null)).toBeNull();
  expect(standOf(field, 'not there')).toBeNull();
  const one = {
    ...field,
    taxi: {
      ...field.taxi,
      nodes: field.taxi.nodes.filter((n) => n === stands[0] || n.kind !== 'stand'),
    },
  };
  expect(standOf(one, null)).toBe(stands[0]?.id);
  expect(standOf(null, 'a')).toBeNull();
});

test('stopped on the runway or landed, the aircraft stands on no stand', () => {
  expect(isOffStand([])).toBe(false);
  expect(isOffStand([stamped('brakes released')])).toBe(false);
  expect(isOffStand([stamped('brakes released'), stamped('stopping')])).toBe(true);
  expect(isOffStand([stamped('airborne'), stamped('landed')])).toBe(true);
  expect(isOffStand([stamped('landed'), stamped('on chocks')])).toBe(false);
});

test('a typed wind gives the sortie that setting it gives', () => {
  const before = written({ kind: 'wind', text: '27012KT', north: 'true' });
  const set = foldSortie([...before, entry({ kind: 'wind', text: '09020', north: 'magnetic' }, 2)]);
  const typed = withWind(foldSortie(before), { text: '09020', north: 'magnetic' });
  const texts = ({ winds }: typeof set) => winds.map(({ text, north }) => [text, north]);
  expect(texts(typed)).toEqual(texts(set));
  const { winds: _a, lastAt: _b, ...others } = typed;
  const { winds: _c, lastAt: _d, ...othersSet } = set;
  expect(others).toEqual(othersSet);
  expect(sortieAt(moment('27012')).winds).toHaveLength(1);
});
