import { expect, test } from 'vitest';
import { openPage } from '../page';

const { add, beginAt, day, load, undoChange, undoable } = await openPage();
await load('XCAI', 'tussock', 'tussock-usual');
const { loadAs, loadFuel, loadStation } = await import('../../../../src/board/flight/load');

const stations = { front: 80 };
const loaded = (fuelKg: number) => ({ fuelKg, stations });
/** The demo's document: 690 kg empty, and a pilot of 85 kg. */
const EMPTY_KG = 690 + 85;
const massKg = () => day.load()?.takeoffMassKg.value;

test('every change is weighed at once, and the usual load until there is one', () => {
  beginAt('XCAI', 'tussock');
  expect(massKg()).toBe(EMPTY_KG + 80 + 80 + 80 + 25);
  loadAs(loaded(60));
  expect(massKg()).toBe(EMPTY_KG + 60 + 80);
  // The demo's document lands with 40 kg of fuel.
  expect(day.load()?.landingMassKg.value).toBe(EMPTY_KG + 40 + 80);
});

test('the same thing changed step by step is taken back in one', () => {
  beginAt('XCAI', 'tussock', { kind: 'set', inputs: { load: loaded(50) } });
  for (const fuelKg of [60, 70, 80]) loadFuel(fuelKg);
  expect(day.inputs().load).toEqual(loaded(80));
  undoChange();
  expect(day.inputs().load).toEqual(loaded(50));
});

test('of two things only the last is taken back', () => {
  beginAt('XCAI', 'tussock', { kind: 'set', inputs: { load: loaded(50) } });
  loadFuel(60);
  loadStation('front', 100);
  loadStation('front', 110);
  expect(day.inputs().load).toEqual({ fuelKg: 60, stations: { front: 110 } });
  undoChange();
  expect(day.inputs().load).toEqual(loaded(60));
});

test('after another change the same thing begins anew', () => {
  beginAt('XCAI', 'tussock', { kind: 'set', inputs: { load: loaded(50) } });
  loadFuel(60);
  undoable.value = { what: 'end', entries: add({ kind: 'set', inputs: { surface: 'wet' } }) };
  loadFuel(70);
  undoChange();
  expect(day.inputs()).toMatchObject({ load: loaded(60), surface: 'wet' });
});
