/** The geometry of the envelope drawing: arms in metres, masses in the unit they are shown in. */

import type { Balance } from '../../core';

/** The drawing's size and edges, in its own units, and where an arm and a mass stand in it. */
export interface PlotFrame {
  readonly width: number;
  readonly height: number;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  readonly x: (armM: number) => number;
  readonly y: (mass: number) => number;
  /** Round values to label the edges with. */
  readonly arms: readonly number[];
  readonly masses: readonly number[];
  readonly armDecimals: number;
}

const WIDTH = 380;
const HEIGHT = 300;
const EDGES = { left: 72, right: WIDTH - 24, top: 12, bottom: HEIGHT - 36 };

/** Margin beyond the outermost point, as a share of the whole. */
const MARGIN = 0.08;

/** The largest of 1, 2 and 5 times a power of ten that fits into a length at least this often. */
function roundStep(length: number, least: number): number {
  const power = 10 ** Math.floor(Math.log10(length / least));
  return [5, 2, 1].map((times) => times * power).find((step) => length / step >= least) ?? power;
}

function roundValues(from: number, to: number, step: number): number[] {
  const first = Math.ceil(from / step);
  return Array.from({ length: Math.floor(to / step) - first + 1 }, (_, i) => (first + i) * step);
}

function reach(values: readonly number[]): readonly [number, number] {
  const least = Math.min(...values);
  const most = Math.max(...values);
  const room = (most - least || 1) * MARGIN;
  return [least - room, most + room];
}

/** A frame that contains all these points. There is at least one. */
export function frameOf(points: readonly Balance[]): PlotFrame {
  const [fromM, toM] = reach(points.map(([armM]) => armM));
  const [least, most] = reach(points.map(([, mass]) => mass));
  const { left, right, top, bottom } = EDGES;
  const armStep = roundStep(toM - fromM, 2.5);
  return {
    ...EDGES,
    width: WIDTH,
    height: HEIGHT,
    x: (armM) => left + ((armM - fromM) / (toM - fromM)) * (right - left),
    y: (mass) => bottom - ((mass - least) / (most - least)) * (bottom - top),
    arms: roundValues(fromM, toM, armStep),
    masses: roundValues(least, most, roundStep(most - least, 3)),
    armDecimals: Math.max(0, -Math.floor(Math.log10(armStep))),
  };
}
