import { expect, test } from 'vitest';
import {
  isReadAloud,
  isReleasing,
  mayDoNow,
  mayGoOnFrom,
  type Offers,
  offers,
  putOffBefore,
  wantsHold,
} from '../../../src/core/day/offers';
import { rowsOf } from '../../../src/core/day/steps';
import type { SortieEvent } from '../../../src/core/sortie/entry';
import { foldSortie } from '../../../src/core/sortie/fold';
import {
  interruptedAt,
  mayInterrupt,
  wasGlance,
  wasMoreThanLook,
} from '../../../src/core/sortie/interruption';
import { togetherWith } from '../../../src/core/sortie/together';
import { LIST, OPEN, OPEN_LIST, RUN, tick, written } from '../sortie/recorder';
import { brief, documentsAt, moment, TABLES } from './moments';

const HARROW = documentsAt('XHAR');
const { procedure } = HARROW;

/** Where the pilot is after these events, on runway 28, and what is offered there. */
const after = (...events: readonly SortieEvent[]) => on('28', ...events);

/** The same on a runway, or before one is chosen. */
function on(end: string | null, ...events: readonly SortieEvent[]) {
  const sortie = foldSortie(written(...events));
  const { run, list, stamps } = sortie;
  const isUp = stamps.some(({ what }) => what === 'airborne');
  const chosen = end === null ? null : ({ end, purpose: isUp ? 'landing' : 'take-off' } as const);
  const { steps, purpose } = brief(
    moment('28010KT', { chosen }, { run, list, stamps }),
    HARROW,
    TABLES,
  );
  if (steps === null) throw new Error('no procedure');
  return { steps, sortie, purpose, offered: offers(steps, sortie) };
}

/** Every step of these phases, done as they stand; `ends` leaves the last of them. */
function doneUntil(isLast: (row: ReturnType<typeof rowsOf>[number]) => boolean): SortieEvent[] {
  const events: SortieEvent[] = [OPEN];
  for (let i = 0; i < 300; i++) {
    const { steps } = after(...events);
    const { position } = steps.walk;
    if (position.kind !== 'step' || isLast(position.row)) return events;
    events.push(tick('done', position.row.step.id, { saw: {} }));
  }
  return events;
}

/** A whole sortie in which everything that is offered is done: what was done by then, and what is offered there. */
function* flown() {
  const events: SortieEvent[] = [OPEN];
  for (let i = 0; i < 300; i++) {
    const { offered } = after(...events);
    yield { events: [...events], offered };
    const { main } = offered;
    if (main.what === 'tick') events.push(tick('done', main.row.step.id, { saw: {} }));
    else if (main.what === 'stamp') events.push({ kind: 'stamp', what: main.moment });
    else return;
  }
}

const FLOWN = [...flown()];

/** What was done by the first place where something is offered. */
function flownUntil(isThere: (offered: Offers) => boolean): readonly SortieEvent[] {
  const there = FLOWN.find(({ offered }) => isThere(offered));
  if (there === undefined) throw new Error('it never came to that');
  return there.events;
}

const toBarrier = doneUntil(({ step }) => step.kind === 'barrier');
const toRelease = doneUntil(() => false);

test('the first step can be ticked, put off and said not to be possible; there is nothing to undo', () => {
  const { offered, steps } = after();
  const { position } = steps.walk;
  const row = position.kind === 'step' ? position.row : null;
  expect(row).not.toBeNull();
  expect(offered).toMatchObject({ main: { what: 'tick', row }, putOff: row, cannot: row });
  expect(offered).toMatchObject({ undo: null, interrupt: false, stop: false, goAround: false });
  expect(offered.again).toEqual([]);
});

test('once something was done it can be undone, and the pilot may be called away', () => {
  const first = procedure?.phases[0]?.steps[0]?.id ?? '';
  const { offered, sortie } = after(OPEN, tick('done', first));
  expect(offered.undo).toBe(sortie.run?.last?.id);
  expect(offered.undo).not.toBeNull();
  expect(offered.interrupt).toBe(true);
});

test('a barrier cannot be put off', () => {
  const { offered } = after(...toBarrier);
  expect(offered.main).toMatchObject({ what: 'tick', row: { step: { kind: 'barrier' } } });
  expect(offered.putOff).toBeNull();
  expect(offered.cannot).not.toBeNull();
});

test('what was put off and stands before a barrier cannot be put off again', () => {
  const first = procedure?.phases[0]?.steps.find(({ kind }) => kind !== 'note')?.id ?? '';
  const { offered } = after(...toBarrier, tick('held', first));
  expect(offered.main).toMatchObject({ what: 'tick', row: { step: { id: first } } });
  expect(offered.putOff).toBeNull();
});

test('at brake release the moment is stamped with what is tied to it, and nothing is put off', () => {
  const { offered } = after(...toRelease);
  expect(offered.main).toMatchObject({ what: 'stamp', moment: 'brakes released' });
  expect(offered).toMatchObject({ putOff: null, cannot: null, stop: false, interrupt: false });
});

const AWAY: SortieEvent = { kind: 'interrupted', run: RUN };
const RELEASED: SortieEvent = { kind: 'stamp', what: 'brakes released' };

test('a step that was put off names the barrier that it is done before', () => {
  const first = procedure?.phases[0]?.steps.find(({ kind }) => kind !== 'note')?.id ?? '';
  expect(after(...toBarrier).offered.main).toMatchObject({ what: 'tick', barrier: null });
  const { main } = after(...toBarrier, tick('held', first)).offered;
  expect(main).toMatchObject({ what: 'tick', barrier: { kind: 'barrier' } });
});

test('on the roll there is the ladder and nothing else, also for who was away', () => {
  expect(after(...toRelease).offered.rolling).toBe(false);
  for (const away of [[], [AWAY]]) {
    const { offered } = after(...toRelease, RELEASED, ...away);
    expect(offered).toMatchObject({
      rolling: true,
      main: { what: 'stamp', moment: 'airborne' },
      stop: true,
      putOff: null,
      interrupt: false,
    });
    expect(offered.undo).not.toBeNull();
  }
  const flying = after(...toRelease, RELEASED, AWAY, { kind: 'stamp', what: 'airborne' });
  // Whoever stamps is back.
  expect(flying.offered).toMatchObject({ rolling: false, stop: false, main: { what: 'tick' } });
});

test('at the landing one may land, go around, or touch and go; on the approach go around', () => {
  const isLanding = ({ main }: Offers) => main.what === 'stamp' && main.moment === 'landed';
  const landing = flownUntil(isLanding);
  expect(after(...landing).offered).toMatchObject({ goAround: true, again: ['touch-and-go'] });
  expect(after(...landing).offered).toMatchObject({ putOff: null, cannot: null, stop: false });
  const approach = flownUntil(({ goAround }) => goAround);
  expect(after(...approach).offered).toMatchObject({ main: { what: 'tick' }, again: [] });
  expect(after(...approach).offered.interrupt).toBe(false);
  const landed = after(...landing, { kind: 'stamp', what: 'landed' }).offered;
  expect(landed).toMatchObject({ goAround: false, again: ['take-off'] });
});

test('at the end the sortie is ended, or flown once more, or the last step taken back', () => {
  const { offered } = after(...flownUntil(({ main }) => main.what === 'end-sortie'));
  expect(offered).toMatchObject({ main: { what: 'end-sortie' }, again: ['take-off'] });
  expect(offered).toMatchObject({ putOff: null, cannot: null, goAround: false, interrupt: false });
  expect(offered.undo).not.toBeNull();
});

test('at the end of a list the last of its steps can be taken back', () => {
  const first = procedure?.phases[0]?.steps[0]?.id ?? '';
  const list = procedure?.lists.find(({ id }) => id === 'rejected-takeoff');
  const all = (list?.steps ?? []).map(({ id }) => tick('done', id, { run: LIST }));
  const { offered, sortie } = after(OPEN, tick('done', first), OPEN_LIST, ...all);
  expect(offered.main.what).toBe('close-list');
  expect(offered.undo).toBe(sortie.list?.last?.id);
  expect(offered).toMatchObject({ putOff: null, again: [], goAround: false });
});

test('what is due is read aloud, but not to who is away, nor on the roll, where the gates are', () => {
  const first = procedure?.phases[0]?.steps[0]?.id ?? '';
  const read = (...events: SortieEvent[]) => isReadAloud(after(...events).offered);
  expect([read(), read(...toRelease), read(OPEN, tick('done', first))]).toEqual([true, true, true]);
  expect(read(OPEN, tick('done', first), AWAY)).toBe(false);
  expect(read(...toRelease, RELEASED)).toBe(false);
});

test('only before the brakes are released it is said that the gates are times', () => {
  const releasing = (...events: SortieEvent[]) => isReleasing(after(...events).offered);
  expect([releasing(), releasing(...toRelease), releasing(...toRelease, RELEASED)]).toEqual([
    false,
    true,
    false,
  ]);
});

test('only on the roll the take-off may be stopped', () => {
  const rolling = after(...toRelease, { kind: 'stamp', what: 'brakes released' });
  expect(rolling.offered).toMatchObject({
    main: { what: 'stamp', moment: 'airborne' },
    stop: true,
    goAround: false,
  });
  const flying = after(
    ...toRelease,
    { kind: 'stamp', what: 'brakes released' },
    { kind: 'stamp', what: 'airborne' },
  );
  expect(flying.offered.stop).toBe(false);
});

test('after a stop, the phase that the list leads to lies ahead until something of it was done', () => {
  const list = procedure?.lists.find(({ id }) => id === 'rejected-takeoff');
  expect(list?.then).toEqual({ phase: 'after', reopen: [] });
  const all = (list?.steps ?? []).map(({ id }) => tick('done', id, { run: LIST }));
  const rolled: readonly SortieEvent[] = [
    ...flownUntil(({ main }) => main.what === 'stamp' && main.moment === 'brakes released'),
    { kind: 'stamp', what: 'brakes released' },
    tick('done', 'brakes-off'),
    { kind: 'stamp', what: 'stopping' },
  ];
  const ahead = after(...rolled, OPEN_LIST, ...all);
  expect(ahead.offered.main).toMatchObject({ what: 'close-list', back: false });
  const rows = after(...rolled).steps.walk.phases.find(({ phase }) => phase === 'after')?.rows;
  const first = rows?.find(({ state }) => state.kind === 'open')?.step.id ?? '';
  const behind = after(...rolled, tick('done', first), OPEN_LIST, ...all);
  expect(behind.offered.main).toMatchObject({ what: 'close-list', back: true });
});

test('a list that is open is offered no more, and at its end it leads where it says', () => {
  const first = procedure?.phases[0]?.steps[0]?.id ?? '';
  const open = after(OPEN, tick('done', first), OPEN_LIST);
  expect(open.offered.lists).not.toContain('rejected-takeoff');
  expect(open.offered.lists).toContain('engine-fire-ground');
  expect(open.offered.interrupt).toBe(false);
  const list = procedure?.lists.find(({ id }) => id === 'rejected-takeoff');
  const all = (list?.steps ?? []).map(({ id }) => tick('done', id, { run: LIST }));
  const ended = after(OPEN, tick('done', first), OPEN_LIST, ...all);
  expect(ended.offered.main).toEqual({ what: 'close-list', leadsTo: list?.then, back: false });
  // What was stopped may be tried again, and that has a list of its own.
  expect(ended.offered.nextList?.id).toBe('another-try');
  expect(open.offered.nextList).toBeNull();
});

test('interrupted, the pilot takes the steps up again before anything else', () => {
  const first = procedure?.phases[0]?.steps[0]?.id ?? '';
  const { offered, sortie } = after(OPEN, tick('done', first), AWAY);
  expect(offered).toMatchObject({
    main: { what: 'resume', left: sortie.run?.interruptedAt },
    putOff: null,
    cannot: null,
    stop: false,
    interrupt: false,
  });
  expect(offered.undo).not.toBeNull();
});

test('what matters wants to be held, and the end of the sortie where nobody looks at the key', () => {
  const row = rowsOf(after().steps.walk)[0];
  if (row === undefined) throw new Error('no step');
  const asked = (critical: boolean) =>
    ({
      what: 'tick',
      row: { ...row, step: { ...row.step, critical } },
      barrier: null,
      without: null,
    }) as const;
  expect([wantsHold(asked(true), false), wantsHold(asked(true), true)]).toEqual([true, true]);
  expect([wantsHold(asked(false), false), wantsHold(asked(false), true)]).toEqual([false, false]);
  // A number that nobody can supply: only on purpose.
  expect(wantsHold({ ...asked(false), without: 'approachKt' }, false)).toBe(true);
  expect(wantsHold({ what: 'close-list', leadsTo: 'end', back: false }, false)).toBe(false);
  expect(wantsHold({ what: 'close-list', leadsTo: 'end', back: false }, true)).toBe(true);
  expect(wantsHold({ what: 'close-list', leadsTo: 'return', back: false }, true)).toBe(false);
  expect(wantsHold({ what: 'end-sortie' }, false)).toBe(false);
  expect(wantsHold({ what: 'end-sortie' }, true)).toBe(true);
});

test('going on from a step puts off what waits before it, but no barrier and nothing done', () => {
  const { steps } = after();
  const rows = rowsOf(steps.walk);
  const later = rows.findIndex(({ phase, state }) => phase === 'climb' && state.kind === 'open');
  const row = rows[later];
  if (row === undefined) throw new Error('no step in the climb');
  const put = putOffBefore(steps, row);
  expect(put.length).toBeGreaterThan(5);
  expect(put.some(({ step }) => step.kind === 'barrier')).toBe(false);
  for (const one of put) expect(rows.indexOf(one)).toBeLessThan(later);
  expect(mayGoOnFrom(row)).toBe(true);
  expect(mayDoNow(row, steps.facts)).toBe(false);
});

test('a step that was put off may be done where it stands', () => {
  const first = procedure?.phases[0]?.steps[0]?.id ?? '';
  const { steps } = after(OPEN, tick('held', first));
  const row = rowsOf(steps.walk).find(({ step }) => step.id === first);
  expect(row && [mayDoNow(row, steps.facts), mayGoOnFrom(row)]).toEqual([true, false]);
});

const briefing = doneUntil(({ step }) => step.id === 'briefing');

test('a step whose live number is not known leads to where it is entered, and is not ticked', () => {
  const { offered } = on(null, ...briefing);
  expect(offered.main).toMatchObject({
    what: 'supply',
    row: { step: { id: 'briefing' } },
    unknown: 'runway',
    at: 'wind',
  });
  // It can still be put off, or said not to be possible.
  expect([offered.putOff?.step.id, offered.cannot?.step.id]).toEqual(['briefing', 'briefing']);
  expect(wantsHold(offered.main, true)).toBe(false);
  expect(on('28', ...briefing).offered.main).toMatchObject({ what: 'tick', without: null });
});

test('the runway to land on is asked for before the landing runway and its speeds are ticked', () => {
  const home = flownUntil(({ main }) => main.what === 'tick' && main.row.step.id === 'landing-end');
  const { main } = on(null, ...home).offered;
  expect(main).toMatchObject({ what: 'supply', row: { step: { critical: true } }, at: 'wind' });
});

test('put off without its number, a step is done in place only once that is known', () => {
  const held = [...briefing, tick('held', 'briefing')];
  for (const [end, may] of [
    [null, false],
    ['28', true],
  ] as const) {
    const { steps } = on(end, ...held);
    const row = rowsOf(steps.walk).find(({ step }) => step.id === 'briefing');
    expect(row && mayDoNow(row, steps.facts)).toBe(may);
  }
});

const BEGUN: SortieEvent = { kind: 'begun', run: RUN, phase: 'recovery' };

test('the sortie may be begun at any phase before which something waits', () => {
  expect(after().offered.begin).toEqual(['taxi', 'line-up', 'roll', 'climb', 'recovery', 'after']);
  const begun = after(OPEN, BEGUN);
  expect(begun.offered.begin).toEqual(['after']);
  expect(begun.offered.main).toMatchObject({ what: 'tick', row: { step: { id: 'fuel-home' } } });
  expect(begun.offered.undo).toBe(begun.sortie.run?.last?.id);
  // In the air the runway is one to land on.
  expect(begun.purpose).toBe('landing');
  expect(after(OPEN).purpose).toBe('take-off');
  // What was gone on from may be said not to be flown, too.
  expect(after(...toBarrier, tick('held', 'briefing')).offered.begin[0]).toBe('taxi');
});

test('on the roll, in a list and while away the sortie is begun nowhere else', () => {
  const first = procedure?.phases[0]?.steps[0]?.id ?? '';
  for (const events of [
    [...toRelease, RELEASED],
    [OPEN, tick('done', first), OPEN_LIST],
    [OPEN, tick('done', first), AWAY],
  ]) {
    expect(after(...events).offered.begin).toEqual([]);
  }
});

/** Entries that were added in one go have one time. */
const inOneGo = (...events: readonly SortieEvent[]) =>
  written(...events).map((entry) => ({ ...entry, at: { wallMs: 7, sortieMs: 7 } }));

test('one undo of a moment takes back its ticks, its seal and the list it opened', () => {
  const before = written(OPEN, tick('done', 'flaps'));
  const go = inOneGo(
    OPEN,
    tick('done', 'flaps'),
    tick('done', 'brakes'),
    { kind: 'stamp', what: 'brakes released' },
    { kind: 'sealed', documents: {}, figures: {} },
    { kind: 'set', inputs: { purpose: null } },
  ).map((entry) => ({ ...entry, id: `go-${entry.seq}`, seq: entry.seq + 2 }));
  const kinds = togetherWith([...before, ...go], 'go-4').map(({ id }) => id);
  expect(kinds).toEqual(['go-1', 'go-2', 'go-3', 'go-4', 'go-5']);
});

test('one undo of a tick takes back what was passed with it, and no other tick', () => {
  const go = inOneGo(
    { kind: 'passed', run: RUN, pass: 1, step: 'trim', saw: {} },
    tick('done', 'flaps'),
    tick('done', 'brakes'),
  );
  expect(togetherWith(go, 'id-2').map(({ id }) => id)).toEqual(['id-1', 'id-2']);
  expect(togetherWith(go, 'not there')).toEqual([]);
  // At another time, or in another sortie, it was another go.
  const apart = go.map((one) => (one.id === 'id-1' ? { ...one, sortie: 'sortie-two' } : one));
  expect(togetherWith(apart, 'id-2').map(({ id }) => id)).toEqual(['id-2']);
});

test('leaving interrupts only what was begun, is not left already and goes on', () => {
  const sortie = (...events: readonly SortieEvent[]) => foldSortie(written(...events));
  expect(mayInterrupt(sortie())).toBe(false);
  expect(mayInterrupt(sortie(OPEN))).toBe(false);
  expect(mayInterrupt(sortie(OPEN, tick('done', 'flaps')))).toBe(true);
  const left = sortie(OPEN, tick('done', 'flaps'), { kind: 'interrupted', run: RUN });
  expect(mayInterrupt(left)).toBe(false);
  expect(interruptedAt(left)).not.toBeNull();
  const back = sortie(
    OPEN,
    tick('done', 'flaps'),
    { kind: 'interrupted', run: RUN },
    { kind: 'resumed', run: RUN },
  );
  expect(interruptedAt(back)).toBeNull();
  expect(mayInterrupt(back)).toBe(true);
  const ended = sortie(OPEN, tick('done', 'flaps'), { kind: 'close', run: RUN, leadsTo: 'end' });
  expect(mayInterrupt(ended)).toBe(false);
});

test('ten seconds away is more than a glance, and over a minute elsewhere more than a look', () => {
  expect([wasGlance(9_999), wasGlance(10_000)]).toEqual([true, false]);
  expect([wasMoreThanLook(60_000), wasMoreThanLook(60_001)]).toEqual([false, true]);
});

test('outside limits the runway check and brake release wait for the pilot to go on, by a hold', () => {
  const caution = { code: 'crosswind', value: 30, limit: 24 } as const;
  const atCheck = after(
    ...doneUntil(({ step, phase }) => step.kind === 'barrier' && phase !== 'ramp'),
  );
  const asked = offers(atCheck.steps, atCheck.sortie, [caution]);
  expect(asked.main).toEqual({ what: 'go-outside', cautions: [caution] });
  expect(wantsHold(asked.main, false)).toBe(true);
  // On the ramp nobody is held up by a runway that may still be changed.
  const onRamp = after(OPEN);
  expect(offers(onRamp.steps, onRamp.sortie, [caution]).main.what).toBe('tick');
  const released = [...flown()].find(({ offered }) => isReleasing(offered));
  if (released === undefined) throw new Error('no brake release');
  const { steps, sortie } = after(...released.events);
  expect(offers(steps, sortie, [caution]).main.what).toBe('go-outside');
  expect(offers(steps, sortie).main.what).toBe('stamp');
});
