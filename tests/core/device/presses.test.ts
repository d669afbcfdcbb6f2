/**
 * Presses told apart. How long a hold is, and how quick a double press, is common practice without a
 * published source; what is tried here is that noise and haste never make more presses than there were.
 */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  AT_REST,
  type Happening,
  type PressManner,
  type RecognisedPress,
  recognise,
} from '../../../src/device/presses';

/** A finger: when it goes down, and for how long it stays, ms. */
interface Finger {
  readonly downMs: number;
  readonly ms: number;
}

const happenings = (fingers: readonly Finger[]): Happening[] =>
  fingers.flatMap(({ downMs, ms }): Happening[] => [
    { kind: 'down', ms: downMs },
    { kind: 'up', ms: downMs + ms },
  ]);

const LATER_MS = 5000;

/** All that is told of some happenings, a while after the last. */
function tellAll(
  happened: readonly Happening[],
  wanted: readonly PressManner[],
): readonly RecognisedPress[] {
  const last = happened.at(-1)?.ms ?? 0;
  let pressed = AT_REST;
  return [...happened, { kind: 'time' as const, ms: last + LATER_MS }].flatMap((happening) => {
    const recognised = recognise(pressed, happening, new Set(wanted));
    pressed = recognised.pressed;
    return recognised.told;
  });
}

const tell = (fingers: readonly Finger[], wanted: readonly PressManner[]) =>
  tellAll(happenings(fingers), wanted);

const brief = (told: readonly RecognisedPress[]) =>
  told.map(({ manner, downMs, held }) => `${manner}${held ? ' held' : ''} ${downMs}`);

const anyWanted = fc.uniqueArray(fc.constantFrom<PressManner>('press', 'hold', 'double'), {
  minLength: 1,
});

/** Fingers one after the other; gaps and lengths of every kind, bounces too. */
const anyFingers = fc
  .array(fc.tuple(fc.integer({ min: 1, max: 1500 }), fc.integer({ min: 1, max: 1500 })), {
    maxLength: 8,
  })
  .map((pairs) => {
    let ms = 0;
    return pairs.map(([gap, length]): Finger => {
      const downMs = ms + gap;
      ms = downMs + length;
      return { downMs, ms: length };
    });
  });

/** As any finger does it on purpose: down for 90 to 600 ms, and 400 ms or more apart. */
const deliberate = fc
  .array(fc.tuple(fc.integer({ min: 400, max: 900 }), fc.integer({ min: 90, max: 600 })), {
    minLength: 1,
    maxLength: 6,
  })
  .map((pairs) => {
    let ms = 0;
    return pairs.map(([gap, length]): Finger => {
      const downMs = ms + gap;
      ms = downMs + length;
      return { downMs, ms: length };
    });
  });

describe('a control that only presses are wanted of', () => {
  test('tells a press as it goes down, and once more when it is held', () => {
    expect(brief(tell([{ downMs: 100, ms: 120 }], ['press']))).toEqual(['press 100']);
    expect(brief(tell([{ downMs: 100, ms: 699 }], ['press']))).toEqual(['press 100']);
    expect(brief(tell([{ downMs: 100, ms: 701 }], ['press']))).toEqual([
      'press 100',
      'press held 100',
    ]);
  });

  test('tells two taps within 80 ms once', () => {
    const two = [
      { downMs: 0, ms: 30 },
      { downMs: 79, ms: 30 },
    ];
    expect(brief(tell(two, ['press']))).toEqual(['press 0']);
    expect(brief(tell(two, ['press', 'hold', 'double']))).toEqual(['press 0']);
  });

  test('knows a device that sends its presses whole, from the second on', () => {
    const sent = [
      { downMs: 0, ms: 8 },
      { downMs: 900, ms: 8 },
      { downMs: 1800, ms: 120 },
      { downMs: 2700, ms: 120 },
    ];
    expect(tell(sent, ['press']).map((told) => told.brief)).toEqual([false, true, true, false]);
  });

  test('tells every deliberate press, and none besides', () => {
    fc.assert(
      fc.property(deliberate, (fingers) => {
        expect(brief(tell(fingers, ['press']))).toEqual(
          fingers.map(({ downMs }) => `press ${downMs}`),
        );
      }),
    );
  });
});

describe('a control whose holds and double presses mean something else', () => {
  const ALL: readonly PressManner[] = ['press', 'hold', 'double'];

  test('tells each of the three, and nothing twice', () => {
    expect(brief(tell([{ downMs: 0, ms: 200 }], ALL))).toEqual(['press 0']);
    expect(brief(tell([{ downMs: 0, ms: 701 }], ALL))).toEqual(['hold held 0']);
    const twice = [
      { downMs: 0, ms: 100 },
      { downMs: 349, ms: 100 },
    ];
    expect(brief(tell(twice, ALL))).toEqual(['double 349']);
    const slowly = [
      { downMs: 0, ms: 100 },
      { downMs: 351, ms: 100 },
    ];
    expect(brief(tell(slowly, ALL))).toEqual(['press 0', 'press 351']);
  });

  test('tells every deliberate press of fingers that keep apart', () => {
    fc.assert(
      fc.property(deliberate, (fingers) => {
        expect(brief(tell(fingers, ALL))).toEqual(fingers.map(({ downMs }) => `press ${downMs}`));
      }),
    );
  });
});

describe('whatever happens to a control', () => {
  test('it tells no more than went down, and a hold only of what stayed down', () => {
    fc.assert(
      fc.property(anyFingers, anyWanted, (fingers, wanted) => {
        const told = tell(fingers, wanted);
        const first = told.filter(
          ({ downMs }, index) => told.findIndex((other) => other.downMs === downMs) === index,
        );
        expect(first.length).toBeLessThanOrEqual(fingers.length);
        for (const { downMs } of told.filter(({ held }) => held)) {
          // Bounces of less than 80 ms are part of one press.
          const end = fingers
            .filter((finger) => finger.downMs >= downMs)
            .reduce((until, { downMs: down, ms }) => {
              const joined = down < Math.max(until + 30, downMs + 80) || down === downMs;
              return joined ? down + ms : until;
            }, downMs);
          expect(end - downMs).toBeGreaterThanOrEqual(700);
        }
      }),
    );
  });

  test('a key that repeats tells what one that does not would', () => {
    fc.assert(
      fc.property(anyFingers, anyWanted, (fingers, wanted) => {
        const repeating = fingers.flatMap(({ downMs, ms }): Happening[] => [
          { kind: 'down', ms: downMs },
          ...Array.from(
            { length: Math.floor((ms - 1) / 33) },
            (_, index): Happening => ({ kind: 'down', ms: downMs + 33 * (index + 1) }),
          ),
          { kind: 'up', ms: downMs + ms },
        ]);
        expect(tellAll(repeating, wanted)).toEqual(tell(fingers, wanted));
      }),
    );
  });

  test('contacts that chatter for less than 30 ms tell what clean ones would', () => {
    fc.assert(
      fc.property(deliberate, anyWanted, fc.integer({ min: 1, max: 9 }), (fingers, wanted, gap) => {
        const chattering = fingers.flatMap(({ downMs, ms }): Happening[] => [
          { kind: 'down', ms: downMs },
          { kind: 'up', ms: downMs + gap },
          { kind: 'down', ms: downMs + 2 * gap },
          { kind: 'up', ms: downMs + ms - 2 * gap },
          { kind: 'down', ms: downMs + ms - gap },
          { kind: 'up', ms: downMs + ms },
        ]);
        expect(brief(tellAll(chattering, wanted))).toEqual(brief(tell(fingers, wanted)));
      }),
    );
  });

  test('asking in between changes nothing', () => {
    fc.assert(
      fc.property(
        anyFingers,
        anyWanted,
        fc.array(fc.integer({ min: 0, max: 20_000 })),
        (fingers, wanted, asked) => {
          const between = [
            ...happenings(fingers),
            ...asked.map((ms): Happening => ({ kind: 'time', ms })),
          ].sort((a, b) => a.ms - b.ms);
          expect(tellAll(between, wanted)).toEqual(tell(fingers, wanted));
        },
      ),
    );
  });

  test('what is lost is not held', () => {
    const lost: Happening[] = [
      { kind: 'down', ms: 0 },
      { kind: 'lost', ms: 300 },
    ];
    expect(brief(tellAll(lost, ['press']))).toEqual(['press 0']);
    expect(brief(tellAll(lost, ['hold']))).toEqual([]);
  });
});
