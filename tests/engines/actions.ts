/** What fingers and keys do, as W3C WebDriver and WebDriver BiDi both write it. */

import type { Point, Touch } from './engine';

/** One source of input, and what it does one after the other. */
export interface Source {
  readonly type: 'pointer' | 'key';
  readonly id: string;
  readonly parameters?: { readonly pointerType: 'touch' | 'mouse' };
  readonly actions: readonly Readonly<Record<string, string | number>>[];
}

/** A finger that comes down, may slide, stays and leaves: one command, so that the browser keeps its time. */
export function fingerOf(
  { x, y }: Point,
  { ms, slidePx = 0 }: Touch,
  pointerType: 'touch' | 'mouse',
): Source {
  const move = (toX: number) => ({
    type: 'pointerMove',
    duration: 0,
    x: Math.round(toX),
    y: Math.round(y),
  });
  return {
    type: 'pointer',
    id: 'finger',
    parameters: { pointerType },
    actions: [
      move(x),
      { type: 'pointerDown', button: 0 },
      ...(slidePx === 0 ? [] : [move(x + slidePx)]),
      { type: 'pause', duration: ms },
      { type: 'pointerUp', button: 0 },
    ],
  };
}

const CONTROL = '\uE009';

const press = (value: string) => [
  { type: 'keyDown', value },
  { type: 'keyUp', value },
];

/** A text typed at the keyboard. */
export const typingOf = (text: string): Source => ({
  type: 'key',
  id: 'keyboard',
  actions: [...text].flatMap(press),
});

/** A key pressed together with Control. */
export const controlOf = (letter: string): Source => ({
  type: 'key',
  id: 'keyboard',
  actions: [
    { type: 'keyDown', value: CONTROL },
    ...press(letter),
    { type: 'keyUp', value: CONTROL },
  ],
});
