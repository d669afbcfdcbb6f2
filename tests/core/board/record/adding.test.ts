import { expect, test } from 'vitest';
import { OPENED_MS, openPage, pass } from '../page';

const { add, addTo, begin, day, record, sortie, undoChange, undoable } = await openPage({
  fresh: true,
});

const at = (hour: number, minute: number) => Date.UTC(1987, 3, 5, hour, minute);

test('the first thing done begins a sortie, and the next belongs to it', () => {
  expect(sortie.value.id).toBeNull();
  const [first] = add({ kind: 'set', inputs: { callsign: 'Gannet 1' } });
  const [second] = add({ kind: 'wind', text: '27012KT', north: 'true' });
  expect(first?.sortie).toMatch(/^[0-9a-f]{16,}$/);
  expect(second?.sortie).toBe(first?.sortie);
  expect(sortie.value.id).toBe(first?.sortie);
  expect(record.entries).toEqual([first, second]);
});

test('an entry has both clocks: the sortie’s runs on from where it was set', () => {
  begin({ kind: 'clock', sortieMs: at(18, 50), rate: 1 });
  pass(90_000);
  const [entry] = add({ kind: 'noted', text: 'A bird' });
  expect(entry?.at).toEqual({ wallMs: OPENED_MS + 90_000, sortieMs: at(18, 50) + 90_000 });
});

test('a clock at twice the pace gains as much, and one that stands gains nothing', () => {
  begin({ kind: 'clock', sortieMs: at(18, 50), rate: 2 });
  pass(60_000);
  expect(add({ kind: 'noted', text: 'A' })[0]?.at.sortieMs).toBe(at(18, 52));
  add({ kind: 'clock', sortieMs: at(20, 0), rate: 0 });
  pass(60_000);
  expect(add({ kind: 'noted', text: 'B' })[0]?.at.sortieMs).toBe(at(20, 0));
});

test('a sortie without a clock of its own goes by the device’s', () => {
  begin();
  pass(1234);
  const [entry] = add({ kind: 'noted', text: 'A bird' });
  expect(entry?.at).toEqual({ wallMs: OPENED_MS + 1234, sortieMs: OPENED_MS + 1234 });
});

test('one tap takes a change of several entries back whole, and only once', () => {
  begin();
  add({ kind: 'set', inputs: { callsign: 'Gannet 1', surface: 'wet' } });
  add({ kind: 'wind', text: '27012KT', north: 'true' });
  const before = [day.inputs(), sortie.value.winds];
  const changes = add(
    { kind: 'set', inputs: { typedNorth: 'magnetic', callsign: 'Gannet 2' } },
    { kind: 'wind', text: '30008', north: 'magnetic' },
  );
  undoable.value = { what: 'wind', entries: changes };
  expect(day.inputs().callsign).toBe('Gannet 2');
  undoChange();
  expect([day.inputs(), sortie.value.winds]).toEqual(before);
  expect(undoable.value).toBeNull();
  const count = record.entries.length;
  undoChange();
  expect(record.entries).toHaveLength(count);
});

test('the beginning of the next sortie taken back, the one before is flown on', () => {
  const [first] = begin({ kind: 'set', inputs: { callsign: 'Gannet 1' } });
  const next = addTo('the-sortie-after-it', { kind: 'set', inputs: { callsign: 'Gannet 2' } });
  undoable.value = { what: 'sortie', entries: next };
  expect(sortie.value.id).toBe('the-sortie-after-it');
  undoChange();
  expect(sortie.value.id).toBe(first?.sortie);
  expect(day.inputs().callsign).toBe('Gannet 1');
});
