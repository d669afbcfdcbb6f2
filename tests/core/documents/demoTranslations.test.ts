/** The demo fields and aircraft in German: every text that a page shows, and nothing that no page shows. */

import { describe, expect, test } from 'vitest';
import type { Aircraft } from '../../../src/core/aircraft/aircraft';
import type { Field } from '../../../src/core/airfield/field';
import { demoAircraft, demoFields } from './demo';

/** Names on the radio, of points and of places are the same on every page. */
const textsOfField = ({ about, runways, taxi }: Field): string[] => [
  about,
  ...runways.flatMap(({ ends }) => ends.flatMap(({ closed }) => closed ?? [])),
  ...(taxi.hotSpots ?? []).map((spot) => spot.about),
];

function textsOfAircraft({ about, taxi, takeoff, load, stop }: Aircraft): string[] {
  const { crew = [], stations = [], presets = [] } = load ?? {};
  return [
    ...[about, taxi.afterBreakaway, taxi.steering, takeoff.rotateTo, ...stop].flatMap(
      (text) => text ?? [],
    ),
    ...[...crew, ...stations, ...presets].map(({ name }) => name),
    ...stations
      .flatMap((one) => (one.kind === 'stores' ? one.choices : []))
      .map(({ name }) => name),
  ];
}

const DOCUMENTS = [
  ...demoFields.map((field) => [field.code, field, textsOfField(field)] as const),
  ...demoAircraft.map((aircraft) => [aircraft.code, aircraft, textsOfAircraft(aircraft)] as const),
];

const numbers = (text: string) => (text.match(/\d+/g) ?? []).sort();

const ENGLISH =
  /\b(the|and|of|to|out|off|on|up|down|both|back|runway|brakes?|flaps|throttles?|full|idle|with)\b/i;

describe.each(DOCUMENTS)('%s', (_, { translations }, texts) => {
  const german = translations?.de ?? {};

  test('has every text in German, and no other', () => {
    expect(Object.keys(german).sort()).toEqual([...new Set(texts)].sort());
  });

  test('gives the same numbers in both', () => {
    const differing = Object.entries(german).filter(
      ([english, text]) => numbers(english).join() !== numbers(text).join(),
    );
    expect(differing).toEqual([]);
  });

  test('has no English word left in the German', () => {
    expect(Object.values(german).filter((text) => ENGLISH.test(text))).toEqual([]);
  });
});
