/** What the plan shows where: words, numbers, north. */

import { describe, expect, test } from 'vitest';
import type { Field } from '../../../src/core';
import { stripsOf } from '../../../src/core/taxi/taxi';
import { busyPixels, freeCorner, solidPixels } from '../../../src/parts/plan/corners';
import { groundAt, groundOf } from '../../../src/parts/plan/ground';
import { boxAround, type LabelBox, placeWords } from '../../../src/parts/plan/labels';
import type { PlanProps } from '../../../src/parts/plan/Plan';
import {
  fitted,
  matrix,
  moved,
  type Sight,
  type Size,
  shift,
  toGround,
  toPixel,
} from '../../../src/parts/plan/projection';
import { numberBoxes } from '../../../src/parts/plan/Strips';
import { signsOf, wordsOf } from '../../../src/parts/plan/wanted';
import { demoField } from '../documents/demo';
import { bigField } from '../taxi/bigField';

const TABLET: Size = { width: 820, height: 560 };
/** What a phone of 360 by 640 leaves for the plan. */
const PHONE: Size = { width: 360, height: 236 };

const propsOf = (field: Field, using: string | null = null): PlanProps => ({
  strips: stripsOf(field),
  nodes: field.taxi.nodes,
  edges: field.taxi.edges,
  isClosed: () => false,
  using,
  route: [],
  goneM: 0,
  crossings: [],
  hotSpots: [],
  from: null,
  to: null,
  picked: null,
  onPick: () => undefined,
  closer: 0,
  upDeg: null,
  windFromDeg: null,
  words: {
    label: '',
    north: 'N',
    ahead: (runway) => runway,
    hold: (name) => name,
    whole: '',
  },
});

const wholeOf = ({ strips, nodes }: PlanProps, size: Size): Sight =>
  fitted(
    [...strips.flatMap(({ ends }) => ends.map(({ at }) => at)), ...nodes.map(groundAt)],
    0,
    size,
    34,
  );

/** The words of a plan at a sight, with the boxes they must keep off. */
function shown(props: PlanProps, sight: Sight, size: Size) {
  const view = { sight, size };
  const ground = groundOf(props.nodes, props.edges, props.isClosed);
  const signs = signsOf(props.edges, ground.byId, props.route);
  const numbers = numberBoxes(props.strips, view);
  const lines = solidPixels(props, view).map((at) => boxAround(at, 14, 14));
  const words = placeWords(wordsOf(props, ground, signs, view), size, numbers, lines);
  return { words, numbers };
}

const box = ({ x, y, width, height }: LabelBox): LabelBox => boxAround({ x, y }, width, height);
const overlaps = (a: LabelBox, b: LabelBox) =>
  a.x < b.x + b.width && b.x < a.x + a.width && a.y < b.y + b.height && b.y < a.y + a.height;

const { field: big, lines } = bigField();

/** From the whole field to a few stands. */
const SIGHTS = [1, 1.7, 3, 6, 12];

describe('on a plan of 500 taxiway lines and 130 stands', () => {
  const props = propsOf(big, '27');
  const sightAt = (growth: number) => {
    const middle = { x: TABLET.width / 2, y: TABLET.height / 2 };
    return moved(wholeOf(props, TABLET), TABLET, middle, middle, growth);
  };

  test('the field is as large as it says', () => {
    expect(lines).toBe(500);
    expect(big.taxi.nodes.filter(({ kind }) => kind === 'stand')).toHaveLength(130);
  });

  test.each(SIGHTS)('%s times as close, no word lies on another or on a number', (growth) => {
    const { words, numbers } = shown(props, sightAt(growth), TABLET);
    expect(words.length).toBeGreaterThan(10);
    const boxes = [...words.map(box), ...numbers.filter(({ x, y }) => x > 0 && y > 0)];
    boxes.forEach((one, index) => {
      for (const other of boxes.slice(index + 1)) expect(overlaps(one, other)).toBe(false);
    });
  });

  test('the whole field shows letters and holding points, and no stand', () => {
    const { words } = shown(props, sightAt(1), TABLET);
    const stands = new Set(
      big.taxi.nodes.filter(({ kind }) => kind === 'stand').map(({ id }) => id),
    );
    expect(words.filter(({ key }) => stands.has(key))).toEqual([]);
    expect(words.filter(({ kind }) => kind === 'sign').length).toBeGreaterThan(20);
  });

  test('a closer look shows stands', () => {
    const { words } = shown(props, sightAt(6), TABLET);
    expect(words.filter(({ key }) => /^s\d+$/.test(key)).length).toBeGreaterThan(10);
  });

  test('a start of the route that is a stand is named however far off', () => {
    const { words } = shown({ ...props, from: 's40' }, sightAt(1), TABLET);
    expect(words.filter(({ kind }) => kind === 'place').map(({ text }) => text)).toEqual([
      'Stand 40',
    ]);
  });

  test('holding points of the end in use are named before the others', () => {
    const named = (using: string | null) =>
      shown(propsOf(big, using), sightAt(1), TABLET).words.filter(({ key }) =>
        key.startsWith('h0-'),
      ).length;
    expect(named('27')).toBeGreaterThanOrEqual(named(null));
  });
});

describe('north and the wind', () => {
  test.each(['XHAR', 'XMAR', 'XKEL', 'XLIN', 'XCAI', 'XTUM'])(
    'cover no number of %s, on a small phone either',
    (code) => {
      for (const size of [PHONE, { width: 360, height: 300 }, TABLET]) {
        const props = propsOf(demoField(code));
        const view = { sight: wholeOf(props, size), size };
        const numbers = numberBoxes(props.strips, view);
        const corner = freeCorner(busyPixels(props, view), numbers, size);
        expect(numbers.filter((number) => overlaps(number, corner))).toEqual([]);
      }
    },
  );
});

describe('a sight', () => {
  const sight: Sight = { middle: { eastM: 300, northM: -120 }, pxPerM: 0.7, upDeg: 37 };

  test('draws by its matrix where it draws point by point', () => {
    const [a, b, c, d, right, down] = matrix(sight, TABLET);
    const point = { eastM: 812, northM: 455 };
    // Rotated by hand: right = e cos − n sin, up = e sin + n cos, from the middle.
    const [sin, cos] = [Math.sin((37 * Math.PI) / 180), Math.cos((37 * Math.PI) / 180)];
    const [e, n] = [812 - 300, 455 + 120];
    const pixel = { x: 410 + 0.7 * (e * cos - n * sin), y: 280 - 0.7 * (e * sin + n * cos) };
    expect(a * point.eastM + c * point.northM + right).toBeCloseTo(pixel.x, 6);
    expect(b * point.eastM + d * point.northM + down).toBeCloseTo(pixel.y, 6);
    expect(toGround(toPixel(point, sight, TABLET), sight, TABLET).eastM).toBeCloseTo(812, 6);
  });

  test('moved and enlarged, the old drawing lies where the new one will be', () => {
    const to = moved(sight, TABLET, { x: 100, y: 90 }, { x: 160, y: 40 }, 1.4);
    const { x, y, growth } = shift(sight, to, TABLET);
    for (const point of [sight.middle, { eastM: 0, northM: 0 }, { eastM: 900, northM: -800 }]) {
      const [before, after] = [toPixel(point, sight, TABLET), toPixel(point, to, TABLET)];
      expect(410 + growth * (before.x - 410) + x).toBeCloseTo(after.x, 6);
      expect(280 + growth * (before.y - 280) + y).toBeCloseTo(after.y, 6);
    }
  });
});

describe('under keys that cover the top', () => {
  const corner = (eastM: number, northM: number) => ({ eastM, northM });
  const size = { width: 600, height: 400 };
  const yOf = (points: readonly { eastM: number; northM: number }[], covered: number) => {
    const sight = fitted(points, 0, size, 34, covered);
    const ys = points.map((point) => toPixel(point, sight, size).y);
    return { top: Math.min(...ys), bottom: Math.max(...ys), pxPerM: sight.pxPerM };
  };

  test('a plan as wide as the window is drawn below them, and no smaller', () => {
    // 532 px for 1 000 m: its 100 m of height take 53.2 of 332 px.
    const wide = [corner(-500, -50), corner(500, 50)];
    const bare = yOf(wide, 0);
    const under = yOf(wide, 190);
    expect(bare.top).toBeCloseTo(200 - 26.6, 1);
    expect(under.top).toBeCloseTo(190, 1);
    expect(under.pxPerM).toBe(bare.pxPerM);
    expect(yOf(wide, 80)).toEqual(bare);
  });

  test('one as high as the window stays where it is', () => {
    const high = [corner(-50, -500), corner(50, 500)];
    expect(yOf(high, 80)).toEqual(yOf(high, 0));
  });

  test('it never leaves the window at the bottom', () => {
    expect(yOf([corner(-500, -50), corner(500, 50)], 390).bottom).toBeCloseTo(400 - 34, 1);
  });
});
