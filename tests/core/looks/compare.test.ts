/**
 * What a comparison of looks notices, on a picture drawn here: a key, a state and a few lines of words
 * in the smallest letters of the app. The app itself is tried with `npm run looks -- --faults`.
 */

import { describe, expect, test } from 'vitest';
import { coarse, compare, halved } from '../../../tools/looks/compare.mjs';

type Colour = readonly [red: number, green: number, blue: number];

interface Picture {
  readonly width: number;
  readonly height: number;
  readonly data: Uint8ClampedArray;
}

interface Theme {
  readonly paper: Colour;
  readonly ink: Colour;
  readonly state: Colour;
  readonly otherState: Colour;
}

/** From src/style/tokens.css: paper, ink, and two states. By night a state is an outline, or dimmer. */
const THEMES: Readonly<Record<string, Theme>> = {
  day: {
    paper: [245, 241, 230],
    ink: [23, 20, 15],
    state: [26, 63, 176],
    otherState: [156, 31, 11],
  },
  dusk: {
    paper: [23, 25, 28],
    ink: [239, 233, 218],
    state: [169, 193, 255],
    otherState: [255, 150, 129],
  },
  night: { paper: [0, 0, 0], ink: [255, 67, 38], state: [255, 67, 38], otherState: [217, 58, 32] },
};

const WIDTH = 240;
const HEIGHT = 160;

interface Shown {
  readonly keyTop: number;
  readonly letters: number;
  readonly lines: number;
  readonly stateChanged: boolean;
}

const USUAL: Shown = { keyTop: 110, letters: 9, lines: 3, stateChanged: false };

/** A screenshot of a key, a state and lines of words, px. */
function screenshot({ paper, ink, state, otherState }: Theme, shown: Partial<Shown> = {}): Picture {
  const { keyTop, letters, lines, stateChanged } = { ...USUAL, ...shown };
  const data = new Uint8ClampedArray(WIDTH * HEIGHT * 4).fill(255);
  const fill = (left: number, top: number, width: number, height: number, colour: Colour) => {
    for (let y = top; y < top + height; y++) {
      for (let x = left; x < left + width; x++) data.set(colour, (y * WIDTH + x) * 4);
    }
  };
  fill(0, 0, WIDTH, HEIGHT, paper);
  fill(150, 20, 60, 30, stateChanged ? otherState : state);
  // A key is a frame of 3 px.
  fill(20, keyTop, 100, 36, ink);
  fill(23, keyTop + 3, 94, 30, paper);
  for (let line = 0; line < lines; line++) {
    // Each letter: a stem 2 px wide and 11 px high, and a bar. The last word of the last line is shorter.
    for (let letter = 0; letter < (line === lines - 1 ? letters : 9); letter++) {
      fill(20 + letter * 9, 20 + line * 22, 2, 11, ink);
      fill(20 + letter * 9, 25 + line * 22, 6, 2, ink);
    }
  }
  return { width: WIDTH, height: HEIGHT, data };
}

/** The same laid half a pixel aside, as another machine may smooth it. */
function smoothed({ width, height, data }: Picture): Picture {
  const aside = data.map((value, index) =>
    index % (width * 4) < 4 ? value : (value + (data[index - 4] ?? value)) / 2,
  );
  return { width, height, data: aside };
}

const kept = (theme: Theme) => coarse(halved(screenshot(theme)));
const share = (theme: Theme, present: Picture) => compare(kept(theme), halved(present)).share;

describe.each(Object.entries(THEMES))('by %s', (_name, theme) => {
  test('the same screen taken again is the same', () => {
    expect(share(theme, screenshot(theme))).toBe(0);
  });

  test('letters that are smoothed otherwise are the same', () => {
    const twice = smoothed(screenshot(theme));
    expect(twice.data).not.toEqual(screenshot(theme).data);
    expect(share(theme, twice)).toBe(0);
  });

  test.each([
    ['a key 8 px lower', { keyTop: 118 }],
    ['a word that lost its last letter', { letters: 8 }],
    ['a state in another colour', { stateChanged: true }],
    ['a line of text that is missing', { lines: 2 }],
  ] as const)('%s is noticed', (_fault, shown) => {
    expect(share(theme, screenshot(theme, shown))).toBeGreaterThan(0);
  });
});

test('what changed is told by its place and by the share of the picture it covers', () => {
  const day = THEMES.day as Theme;
  const present = halved(screenshot(day, { stateChanged: true }));
  const { patches, share: changed } = compare(kept(day), present);
  // The state is 60 by 30 px of 240 by 160; patches reach beyond it by less than their side.
  expect(changed).toBeGreaterThanOrEqual((60 * 30) / (240 * 160));
  expect(changed).toBeLessThan((92 * 62) / (240 * 160));
  for (const { left, top } of patches) {
    expect(left).toBeGreaterThan((150 - 16) / 2 - 1);
    expect(left).toBeLessThan(210 / 2);
    expect(top).toBeLessThan(50 / 2);
  }
});

test('a picture of another size is different in all of it', () => {
  const day = THEMES.day as Theme;
  const { width, height } = halved(screenshot(day));
  const smaller = { width: width / 2, height, data: new Uint8ClampedArray(width * height * 2) };
  expect(compare(kept(day), smaller).share).toBe(1);
});
