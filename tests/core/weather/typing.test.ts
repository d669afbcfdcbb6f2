import { describe, expect, test } from 'vitest';
import { readWind } from '../../../src/core/weather/readWind';
import { codesOf, piecesOf, windOf } from './winds';

/** What the pilot sees after each key, from the first on: the wind, and `…` where it is unfinished. */
function walk(text: string): string[] {
  const seen: string[] = [];
  for (let typed = 1; typed <= text.length; typed++) {
    const report = readWind(text.slice(0, typed));
    expect(codesOf(report).filter((code) => code !== 'incomplete')).toEqual([]);
    expect(report.spans.map(({ kind }) => kind)).not.toContain('unread');
    const line = windOf(text.slice(0, typed)) + (codesOf(report).length > 0 ? ' …' : '');
    if (line !== seen.at(-1)) seen.push(line);
  }
  return seen;
}

describe('while a wind is typed, no key brings a wrong wind or a complaint', () => {
  test.each([
    [
      '27012G20KT 240V300',
      [
        'none …',
        '270/12',
        '270/12 …',
        '270/12G20',
        '270/12G20 …',
        '270/12G20',
        '270/12G20 …',
        '270/12G20 240V300',
      ],
    ],
    ['27012 240V300', ['none …', '270/12', '270/12 …', '270/12 240V300']],
    ['240/12', ['none …', '240/12']],
    ['240@12g20', ['none …', '240/12', '240/12 …', '240/12G20']],
    ['240 12 20', ['none …', '240/12', '240/12 …', '240/12G20']],
    ['240/12 gusting 20', ['none …', '240/12', '240/12 …', '240/12G20']],
    ['240 degrees at 12 kt', ['none …', '240/12', '240/12 …', '240/12']],
    ['vrb03kt', ['none …', 'VRB/3', 'VRB/3 …', 'VRB/3']],
    ['calm', ['none …', '0/0']],
    ['00000KT', ['none …', '0/0', '0/0 …', '0/0']],
    ['240P99KT', ['none …', '240/>99', '240/>99 …', '240/>99']],
    // M can only become MPS, so that the wind does not jump with the last key.
    ['05010MPS', ['none …', '50/10', '50/19.4 …', '50/19.4']],
    ['XHAR 011250Z 24012KT', ['none …', '240/12', '240/12 …', '240/12']],
    [
      'METAR XHAR 011250Z AUTO 24012G20KT',
      ['none …', '240/12', '240/12 …', '240/12G20', '240/12G20 …', '240/12G20'],
    ],
  ])('%s', (text, seen) => {
    expect(walk(text)).toEqual(seen);
  });

  test('what is unfinished is marked apart from the wind', () => {
    expect(piecesOf('27012G2')).toEqual(['wind 27012', 'unfinished G2']);
    expect(piecesOf('27012 g')).toEqual(['wind 27012', 'unfinished g']);
    expect(piecesOf('27012G20KT 240V3')).toEqual(['wind 27012G20KT', 'unfinished 240V3']);
    expect(piecesOf('240 at 1')).toEqual(['unfinished 240 at 1']);
    expect(readWind('27012G2').problems).toEqual([{ code: 'incomplete', at: [5, 7] }]);
  });

  test('one digit awaits another only at the end of the text', () => {
    expect(windOf('240/5')).toBe('none');
    expect(windOf('240/5G15')).toBe('240/5G15');
    expect(windOf('240/5 200V280')).toBe('240/5 200V280');
    expect(codesOf(readWind('24012G5 200V280'))).toEqual(['gust-below-mean']);
  });

  test('what can become no wind is not called unfinished', () => {
    for (const text of ['hello', '240/x', 'good day', '24012x']) {
      expect(codesOf(readWind(text))).toEqual(['no-wind']);
    }
  });
});
