/** Steps read aloud in another language than that of the page. */

import { describe, expect, test } from 'vitest';
import { saidWind, speechIn } from '../../../src/views/voice/otherLanguage';

describe('a step in German on a page that is not', () => {
  const german = speechIn('de');

  // ICAO Annex 10, vol. II, 5.2.1.4.1.1: every digit is said by itself. Figures that stand apart are
  // read so, in the language of the voice that reads them.
  test('has runways, directions and speeds in digits that stand apart', () => {
    expect(german.runway('28')).toBe('2 8');
    expect(german.runway('05R')).toBe('0 5 rechts');
    expect(german.direction(7)).toBe('0 0 7');
    expect(german.direction(0)).toBe('3 6 0');
    expect(german.digits(165)).toBe('1 6 5');
  });

  test('has its signs in German words', () => {
    expect(german.signs('Start, 15°')).toBe('Start, 15 Grad');
    expect(german.signs('1 800 U/min, Nase zum Wind')).toBe('1800 Umdrehungen, Nase zum Wind');
    expect(german.signs('345–375 kt, Nase 13–17°')).toBe('345 bis 375 Knoten, Nase 13 bis 17 Grad');
    expect(german.signs('über 600 kg')).toBe('über 600 Kilogramm');
    expect(german.signs('60 %, gleich zurück')).toBe('60 Prozent, gleich zurück');
  });

  test('keeps words that only begin like a sign', () => {
    expect(german.signs('2 mähen, 3 ftx')).toBe('2 mähen, 3 ftx');
  });

  test('has its wind in German', () => {
    const wind = { fromDeg: 270, speedKt: 12, gustKt: 20, variable: false };
    expect(saidWind(wind, german)).toBe('2 7 0 Grad 1 2 Knoten in Böen 2 0');
    const light = { ...wind, fromDeg: null, speedKt: 3, gustKt: null };
    expect(saidWind({ ...light, variable: true }, german)).toBe('umlaufend 3 Knoten');
    expect(saidWind(light, german)).toBe('Richtung nicht gemeldet 3 Knoten');
    expect(saidWind({ ...light, speedKt: 0 }, german)).toBe('windstill');
    expect(saidWind({ ...light, speedKt: null }, german)).toBe('nicht bekannt');
  });
});

test('a direction that nobody reported is not called variable', () => {
  const unreported = { fromDeg: null, speedKt: 12, gustKt: null, variable: false };
  expect(saidWind(unreported, speechIn('en'))).toBe('direction not reported 1 2 knots');
  expect(saidWind({ ...unreported, variable: true }, speechIn('en'))).toBe('variable 1 2 knots');
});

test('a step in a language without words of its own is read as it is written', () => {
  const french = speechIn('fr-CA');
  expect(french.signs('plus de 600 kg')).toBe('plus de 600 kg');
  expect(french.runway('05R')).toBe('0 5 R');
  const wind = { fromDeg: 270, speedKt: 12, gustKt: null, variable: false };
  expect(saidWind(wind, french)).toBe('2 7 0 1 2');
});
