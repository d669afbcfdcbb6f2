/**
 * A field as large as the largest real ones, invented: two runways, 500 taxiway lines of four
 * stretches each, 130 stands.
 */

import type { Field } from '../../../src/core/airfield/field';
import type { TaxiEdge, TaxiNode } from '../../../src/core/taxi/graph';
import { drawn, node, stretch } from './drawn';

/** Long taxiways between the runways, and the ways that join them. */
const ROWS = 10;
const COLUMNS = 26;

/** How far apart they lie, metres. */
const ROW_M = 130;
const COLUMN_M = 130;

/** Each line turns three times on its way. */
const PIECES = 4;

/** How far a turn lies off the straight line, metres. */
const OFF_M = 6;

const STANDS = 130;

const SOUTH = { ends: ['09', '27'], from: [0, 0], headingDeg: 90, lengthM: 3400 } as const;
const NORTH_M = (ROWS + 1) * ROW_M + 60;
const NORTH = { ends: ['10', '28'], from: [0, NORTH_M], headingDeg: 90, lengthM: 3400 } as const;

const LETTERS = [...'ABCDEFGHJKLMNPQRSTUVWYZ'];

/** How many taxiway lines the field has. */
export interface BigField {
  readonly field: Field;
  readonly lines: number;
}

export function bigField(): BigField {
  const nodes: TaxiNode[] = [];
  const edges: TaxiEdge[] = [];
  let lines = 0;
  const put = (one: TaxiNode) => {
    nodes.push(one);
    return one;
  };
  const line = (name: string, from: TaxiNode, to: TaxiNode) => {
    lines += 1;
    const [east, north] = [to.xM - from.xM, to.yM - from.yM];
    const lengthM = Math.hypot(east, north);
    let before = from;
    for (let piece = 1; piece <= PIECES; piece++) {
      const share = piece / PIECES;
      const offM = piece === PIECES ? 0 : OFF_M * Math.sin(Math.PI * share);
      const next =
        piece === PIECES
          ? to
          : put(
              node(
                `l${lines}-${piece}`,
                from.xM + share * east - (offM * north) / lengthM,
                from.yM + share * north + (offM * east) / lengthM,
              ),
            );
      edges.push(stretch(name, before.id, next.id));
      before = next;
    }
  };
  const grid = Array.from({ length: ROWS }, (_, row) =>
    Array.from({ length: COLUMNS }, (_, column) =>
      put(node(`g${row}-${column}`, 60 + column * COLUMN_M, 160 + row * ROW_M)),
    ),
  );
  grid.forEach((row, rowNumber) => {
    row.forEach((at, column) => {
      const [right, up] = [row[column + 1], grid[rowNumber + 1]?.[column]];
      if (right) line(LETTERS[rowNumber] ?? 'Z', at, right);
      if (up) line(`${LETTERS[10 + (column % 12)]}${1 + Math.floor(column / 12)}`, at, up);
    });
  });
  const entry = (row: number, column: number, runwayM: number, ends: readonly [string, string]) => {
    const at = grid[row]?.[column];
    if (at === undefined || lines >= 500) return;
    const name = `${LETTERS[row]}${column + 1}`;
    const side = Math.sign(at.yM - runwayM);
    const hold = put(
      node(`h${row}-${column}`, at.xM, runwayM + side * 90, 'hold', {
        name,
        ends: column < COLUMNS / 2 ? [ends[0]] : [ends[1]],
      }),
    );
    line(name, at, hold);
    const on = put(node(`r${row}-${column}`, at.xM, runwayM, 'runway', { ends: hold.ends }));
    edges.push(stretch(name, hold.id, on.id));
  };
  for (let column = 0; column < COLUMNS; column += 2) {
    entry(0, column, 0, ['09', '27']);
    entry(ROWS - 1, column, NORTH_M, ['10', '28']);
  }
  for (let number = 1; number <= STANDS; number++) {
    const [row, side] = [3 + 2 * (number % 2), number % 4 < 2 ? 1 : -1];
    const column = Math.floor(((number - 1) * (COLUMNS - 1)) / STANDS);
    const at = grid[row]?.[column];
    if (at === undefined) continue;
    const stand = put(
      node(`s${number}`, at.xM + (number % 5) * 24, at.yM + side * 45, 'stand', {
        name: `Stand ${number}`,
      }),
    );
    edges.push({ ...stretch('apron', at.id, stand.id), on: 'apron' });
  }
  return { field: drawn(nodes, edges, [SOUTH, NORTH]), lines };
}
