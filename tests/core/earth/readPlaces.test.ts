/**
 * Places as they are written. The minutes and seconds are worked out by hand beside each group: 41″
 * is 41/3600°, and 57′ is 0.95°.
 */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { LONGEST_PLACES, readPlaces } from '../../../src/core/earth/readPlaces';

const placesOf = (text: string) =>
  readPlaces(text).places?.map(({ latDeg, lonDeg }) => [latDeg, lonDeg]) ?? readPlaces(text);

const near = (lat: number, lon: number) => [expect.closeTo(lat, 9), expect.closeTo(lon, 9)];

describe('ISO 6709:2008, annex H, gives these strings for these places', () => {
  test.each([
    // Atlantic Ocean, in three precisions.
    ['+00-025/', 0, -25],
    // Eiffel Tower, degrees with decimals.
    ['+48.8577+002.295/', 48.8577, 2.295],
    // Mount Everest, with its height and reference system.
    ['+27.5916+086.5640+8850CRSWGS_84/', 27.5916, 86.564],
    ['+90+000/', 90, 0],
    // New York, degrees and minutes: 40°45′, 74°00′.
    ['+4045-07400/', 40.75, -74],
    // Statue of Liberty, degrees, minutes and seconds: 40°41′21″, 74°02′40″.
    ['+404121-0740240/', 40 + 41 / 60 + 21 / 3600, -(74 + 2 / 60 + 40 / 3600)],
  ])('%s', (text, lat, lon) => {
    expect(placesOf(text)).toEqual([near(lat, lon)]);
  });
});

describe('as ICAO prints them', () => {
  test.each([
    // PANS-ATM (Doc 4444), appendix 2, item 15, significant points: its own two examples.
    ['46N078W', 46, -78],
    ['4620N07805W', 46 + 20 / 60, -(78 + 5 / 60)],
    // PANS-AIM (Doc 10066), appendix 1: aerodrome and threshold coordinates to 1″ and 1/100″, in the
    // form `DDMMSS.ssN DDDMMSS.ssE` that AIPs print in AD 2.2 and AD 2.12.
    ['523541N 0043606E', 52 + 35 / 60 + 41 / 3600, 4 + 36 / 60 + 6 / 3600],
    ['523541.27N\n0043606.10E', 52 + 35 / 60 + 41.27 / 3600, 4 + 36 / 60 + 6.1 / 3600],
    ['N523541 E0043606', 52 + 35 / 60 + 41 / 3600, 4 + 36 / 60 + 6 / 3600],
    ['523541S0043606W', -(52 + 35 / 60 + 41 / 3600), -(4 + 36 / 60 + 6 / 3600)],
    // Annex 4, 2.6: charts in degrees and minutes.
    ['N5235.688 E00436.1', 52 + 35.688 / 60, 4 + 36.1 / 60],
    ["N52°35.688' E004°36.100'", 52 + 35.688 / 60, 4 + 36.1 / 60],
    ['N52 35.688, E004 36.1', 52 + 35.688 / 60, 4 + 36.1 / 60],
  ])('%s', (text, lat, lon) => {
    expect(placesOf(text)).toEqual([near(lat, lon)]);
  });
});

// RFC 5870, 6.1: its first example.
test('a geo URI', () => {
  expect(placesOf('geo:13.4125,103.8667')).toEqual([near(13.4125, 103.8667)]);
  expect(placesOf('geo:48.198634,16.371648;crs=wgs84;u=40')).toEqual([near(48.198634, 16.371648)]);
});

/** 52°35′41″ and 4°36′06″. */
const [LAT, LON] = [52 + 35 / 60 + 41 / 3600, 4 + 36 / 60 + 6 / 3600];

describe('as people write and paste them: common practice, no published source', () => {
  test.each([
    '52°35\'41"N 4°36\'6"E',
    '52° 35′ 41″ N, 004° 36′ 06″ E',
    "52º35'41''N 4º36'06''E",
    '52°35’41”N 4°36’06”E',
    '4°36\'06"E 52°35\'41"N',
    '52 35 41 N / 4 36 06 E',
    '52 35 41 4 36 06',
    '52 35 41, 4 36 6',
    '52:35:41 4:36:06',
    '52-35-41N 004-36-06E',
    '52d35m41s N 4d36m06s E',
    '52°35\'41" 4°36\'06"',
    'Lat: 52°35\'41" Lon: 4°36\'06"',
    'lon 4 36 06 lat 52 35 41',
    'THR 09 523541N 0043606E',
    '(523541N, 0043606E)',
    '52°35\'41" Nord, 4°36\'06" Ost',
    '52°35\'41"N - 4°36\'06"E',
    '+523541 +0043606',
  ])('%s', (text) => {
    expect(placesOf(text)).toEqual([near(LAT, LON)]);
  });

  test.each([
    ['52.5948, 4.6017', 52.5948, 4.6017],
    ['52.5948 4.6017', 52.5948, 4.6017],
    ['52.5948,4.6017', 52.5948, 4.6017],
    ['52,5948 4,6017', 52.5948, 4.6017],
    ['52,5948, 4,6017', 52.5948, 4.6017],
    ['52,5948; 4,6017', 52.5948, 4.6017],
    ['52,5948 N 4,6017 W', 52.5948, -4.6017],
    ["N52°35,688' W004°36,1'", 52 + 35.688 / 60, -(4 + 36.1 / 60)],
    ['−33.9461, 151.1772', -33.9461, 151.1772],
    ['-33.9461 151.1772', -33.9461, 151.1772],
    ['62.95 -10.55', 62.95, -10.55],
    ['62 57, -10 33', 62.95, -10.55],
    ['-62 57 -10 33', -62.95, -10.55],
    ['0,5 S 0,25 E', -0.5, 0.25],
    ['-0 30, 0 15', -0.5, 0.25],
    ['52 N, 179 59 59.9 E', 52, 179 + 59 / 60 + 59.9 / 3600],
  ])('%s', (text, lat, lon) => {
    expect(placesOf(text)).toEqual([near(lat, lon)]);
  });

  test.each([
    '52.59, 4.60; 52.61, 4.62',
    '52.59, 4.60\n52.61, 4.62',
    '52.59 4.60\n52.61 4.62',
    'RWY 09 N52.59 E4.60 RWY 27 N52.61 E4.62',
    '52,59° 4,60° 52,61° 4,62°',
  ])('two at once: %s', (text) => {
    expect(placesOf(text)).toEqual([near(52.59, 4.6), near(52.61, 4.62)]);
  });
});

describe('refused with the reason', () => {
  test.each([
    ['', { code: 'unread' }],
    ['at the church', { code: 'unread' }],
    ['52.5948 - 4.6017', { code: 'unread' }],
    ['N-52 E4', { code: 'unread' }],
    ['NN52 E4', { code: 'unread' }],
    ['52.5 30 N 4 E', { code: 'unread' }],
    ['1 2 3 4 N 5 E', { code: 'unread' }],
    ['N52 35.688', { code: 'half' }],
    ['52.5948', { code: 'half' }],
    ['52 35 41', { code: 'half' }],
    ['62N 10', { code: 'half' }],
    ['N52.5 N4.6', { code: 'same-axis' }],
    ['91.2 N 4 E', { code: 'out-of-range', axis: 'lat', text: 'N91.2' }],
    ['52 N 180 0 1 E', { code: 'out-of-range', axis: 'lon', text: 'E180 0 1' }],
    ['52.5, -190', { code: 'out-of-range', axis: 'lon', text: '-190' }],
    ['104.6017, 52.5948', { code: 'swapped' }],
    ['52 60 N 4 E', { code: 'sixty', text: 'N52 60' }],
    ['523561N 0043606E', { code: 'sixty', text: 'N523561' }],
    ['523541N 43606E', { code: 'digits', axis: 'lon', text: 'E43606' }],
    ['N52356 E00436', { code: 'digits', axis: 'lat', text: 'N52356' }],
    ['523541 0043606', { code: 'no-letter', text: '523541' }],
    ['52,5948', { code: 'comma' }],
    ['52,4', { code: 'comma' }],
    ['52,5948,4,6017', { code: 'comma' }],
    ['52°35\'41"N 4°36\'06"O', { code: 'letter-o' }],
  ])('%s', (text, problem) => {
    expect(readPlaces(text)).toEqual({ places: null, problem });
  });

  test('a text too long to be looked through', () => {
    expect(readPlaces(`${' '.repeat(LONGEST_PLACES)}52 4`).problem).toEqual({ code: 'unread' });
  });
});

test('any text is read or refused, and what is read lies on the earth', () => {
  const alphabet = fc.constantFrom(...'0123456789.,;:°\'"NSEWO+-/ \nlatlon');
  fc.assert(
    fc.property(fc.oneof(fc.string(), fc.string({ unit: alphabet, maxLength: 40 })), (text) => {
      for (const { latDeg, lonDeg } of readPlaces(text).places ?? []) {
        expect(Math.abs(latDeg)).toBeLessThanOrEqual(90);
        expect(Math.abs(lonDeg)).toBeLessThanOrEqual(180);
      }
    }),
  );
});

test('degrees written out are read back, with letters, signs, points and commas', () => {
  const [lat, lon] = [
    fc.double({ min: -90, max: 90, noNaN: true }),
    fc.double({ min: -180, max: 180, noNaN: true }),
  ];
  fc.assert(
    fc.property(lat, lon, (latDeg, lonDeg) => {
      const [a, b] = [latDeg.toFixed(7), lonDeg.toFixed(7)];
      const lettered = `${latDeg < 0 ? 'S' : 'N'}${a.replace('-', '')} ${lonDeg < 0 ? 'W' : 'E'}${b.replace('-', '')}`;
      for (const text of [
        `${a}, ${b}`,
        `${a.replace('.', ',')} ${b.replace('.', ',')}`,
        lettered,
      ]) {
        // Beyond 90 and nothing before it says that it is a longitude: refused as swapped only there.
        expect(placesOf(text)).toEqual([[expect.closeTo(latDeg, 6), expect.closeTo(lonDeg, 6)]]);
      }
    }),
  );
});
