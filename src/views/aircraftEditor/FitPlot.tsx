/** Book against computed, figure by figure: on the line they agree, between the outer two within 3 %. */

import type { JSX } from 'preact';
import { type BookFigure, type Compared, WELL_WITHIN } from '../../core';
import { wholeNumber } from '../../parts/format';
import styles from './AircraftEditor.module.css';
import { onAxis, unitOf } from './said';
import { words } from './words';

interface FitPlotProps {
  readonly figures: readonly Compared[];
}

/** Lengths in one plot, rates of climb in another. */
export function FitPlot({ figures }: FitPlotProps): JSX.Element {
  const isClimb = ({ name }: Compared) => name === 'climbFtMin';
  return (
    <div class={styles.plots}>
      <Plot figures={figures.filter((one) => !isClimb(one))} />
      <Plot figures={figures.filter(isClimb)} />
    </div>
  );
}

const SIZE = 320;
const EDGES = { left: 56, right: SIZE - 14, top: 12, bottom: SIZE - 44 };

/** The steps that axes are labelled at. */
const STEPS = [1, 2, 5];

/** A round step that divides a reach into two to five. */
function stepFor(reach: number): number {
  const power = 10 ** Math.floor(Math.log10(reach / 2));
  return (
    [...STEPS]
      .reverse()
      .map((times) => times * power)
      .find((step) => reach / step >= 2) ?? power
  );
}

interface Point {
  readonly row: number;
  readonly name: BookFigure;
  readonly book: number;
  readonly found: number;
  readonly isNear: boolean;
}

function Plot({ figures }: FitPlotProps) {
  const points = figures.flatMap(({ row, name, book, found }): readonly Point[] =>
    found === null
      ? []
      : [
          {
            row,
            name,
            book: onAxis(name, book),
            found: onAxis(name, found),
            isNear: Math.abs(found / book - 1) <= WELL_WITHIN,
          },
        ],
  );
  const [first] = points;
  if (first === undefined) return null;
  const most = 1.05 * Math.max(...points.flatMap(({ book, found }) => [book, found]), 1);
  const least = 0.9 * Math.min(...points.flatMap(({ book, found }) => [book, found]), most);
  const { left, right, top, bottom } = EDGES;
  const x = (value: number) => left + ((value - least) / (most - least)) * (right - left);
  const y = (value: number) => bottom - ((value - least) / (most - least)) * (bottom - top);
  const step = stepFor(most - least);
  const ticks = Array.from(
    { length: Math.floor(most / step) - Math.ceil(least / step) + 1 },
    (_, at) => (Math.ceil(least / step) + at) * step,
  );
  const unit = unitOf(first.name);
  const names = [...new Set(points.map(({ name }) => name))];
  const line = (share: number, look: string | undefined) => {
    const [from, to] = share < 1 ? [least / share, most] : [least, most / share];
    return <line class={look} x1={x(from)} y1={y(from * share)} x2={x(to)} y2={y(to * share)} />;
  };
  return (
    <figure class={styles.plotted}>
      <svg
        class={styles.plot}
        viewBox={`0 0 ${SIZE} ${SIZE}`}
        role="img"
        aria-label={words.plotLabel(points.length, points.filter(({ isNear }) => isNear).length)}
      >
        {ticks.map((at) => (
          <g key={at}>
            <line class={styles.grid} x1={x(at)} x2={x(at)} y1={top} y2={bottom} />
            <line class={styles.grid} x1={left} x2={right} y1={y(at)} y2={y(at)} />
            <text class={styles.tick} x={x(at)} y={bottom + 17} text-anchor="middle">
              {wholeNumber(at)}
            </text>
            <text class={styles.tick} x={left - 6} y={y(at) + 5} text-anchor="end">
              {wholeNumber(at)}
            </text>
          </g>
        ))}
        {line(1, styles.agrees)}
        {line(1 - WELL_WITHIN, styles.bound)}
        {line(1 + WELL_WITHIN, styles.bound)}
        {points.map((point) => (
          <PointMark
            key={`${point.row} ${point.name}`}
            of={point}
            x={x(point.book)}
            y={y(point.found)}
          />
        ))}
        <text class={styles.tick} x={(left + right) / 2} y={SIZE - 6} text-anchor="middle">
          {words.bookAxis(unit)}
        </text>
        <text class={styles.tick} x={left + 6} y={top + 14}>
          {words.foundAxis(unit)}
        </text>
      </svg>
      <figcaption class={styles.marks}>
        {names.map((name) => (
          <span key={name}>
            <svg class={styles.mark} viewBox="-9 -9 18 18" aria-hidden="true">
              <Mark of={name} />
            </svg>
            {words.marks[name]}
          </span>
        ))}
        <span>{words.band}</span>
      </figcaption>
    </figure>
  );
}

interface PointMarkProps {
  readonly of: Point;
  readonly x: number;
  readonly y: number;
}

/** Out of bounds it is filled, and has the number of its row. */
const PointMark = ({ of, x, y }: PointMarkProps) => (
  <g class={of.isNear ? styles.pointNear : styles.pointOff} transform={`translate(${x} ${y})`}>
    <Mark of={of.name} />
    {!of.isNear && (
      <text class={styles.tick} x="10" y="5">
        {of.row + 1}
      </text>
    )}
  </g>
);

/** A shape for each figure: distinct without colour. */
function Mark({ of }: { readonly of: BookFigure }) {
  switch (of) {
    case 'runM':
    case 'climbFtMin':
      return <circle r="5" />;
    case 'to50ftM':
      return <rect x="-5" y="-5" width="10" height="10" />;
    case 'landingRunM':
      return <polygon points="0,-6 6,5 -6,5" />;
    case 'landingM':
      return <polygon points="0,-7 7,0 0,7 -7,0" />;
  }
}
