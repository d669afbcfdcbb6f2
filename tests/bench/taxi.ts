/** Routing over the largest field a document may hold: 10 000 stretches. */

import { alg, Graph } from '@dagrejs/graphlib';
import { taxiGraph } from '../../src/core/taxi/graph';
import { findRouteOut } from '../../src/core/taxi/routeOut';
import { weightsOf } from '../../src/core/taxi/rules';
import { searchFrom } from '../../src/core/taxi/search';
import { drawn, FREE, node, stretch } from '../core/taxi/drawn';
import { quantile, type Rows } from './row';

/** A grid of these columns and rows, with diagonals to make up 10 000 stretches. */
const COLUMNS = 80;
const ROWS = 43;

const name = (column: number, row: number) => `n${column}-${row}`;

function grid() {
  const nodes = [];
  const edges = [];
  for (let row = 0; row < ROWS; row++) {
    for (let column = 0; column < COLUMNS; column++) {
      const [x, y] = [column * 40 + (row % 3) * 3, -100 - row * 40 - (column % 5) * 2];
      const isHold = column === COLUMNS - 1 && row === 0;
      nodes.push(
        node(name(column, row), x, y, isHold ? 'hold' : 'junction', isHold ? { ends: ['27'] } : {}),
      );
      const to = [
        [column + 1, row],
        [column, row + 1],
        [column + 1, row + 1],
      ];
      for (const [c = 0, r = 0] of to) {
        if (c < COLUMNS && r < ROWS && edges.length < 10_000) {
          edges.push(stretch(`T${row % 20}`, name(column, row), name(c, r)));
        }
      }
    }
  }
  return drawn(nodes, edges);
}

export const rows: Rows = () => {
  const field = grid();
  const starts = Array.from({ length: 200 }, (_, i) => name((i * 7) % 30, ROWS - 3 - (i % 9)));
  const samples = starts.map((from, round) => {
    const start = performance.now();
    const { route } = findRouteOut({ field, from, end: '27', rules: FREE });
    const spent = performance.now() - start;
    if (route === null) throw new Error('no way over the grid');
    // Skip the first rounds, which aren't warm yet.
    return round < 20 ? null : spent;
  });
  const graph = taxiGraph(field);
  const weights = weightsOf(graph, FREE);
  const theirs = new Graph({ directed: false });
  field.taxi.edges.forEach(({ from, to }, index) => {
    theirs.setEdge(from, to, graph.lengthM[index]);
  });
  const median = (work: () => unknown, rounds: number) => {
    const spent = Array.from({ length: rounds }, () => {
      const start = performance.now();
      work();
      return performance.now() - start;
    });
    return quantile(spent, 0.5);
  };
  const weightOf = (edge: { v: string; w: string }) => Number(theirs.edge(edge.v, edge.w));
  const ours = median(() => searchFrom(graph, 0, weights), 60);
  const other = median(
    () => alg.dijkstra(theirs, name(0, 0), weightOf, (v) => theirs.nodeEdges(v) ?? []),
    5,
  );
  return [
    {
      what: 'the way over a field of 10 000 stretches, with its alternatives, median',
      measured: quantile(
        samples.filter((sample) => sample !== null),
        0.5,
      ),
      unit: 'ms',
      budget: { atMost: 5 },
    },
    {
      what: 'all shortest ways from a point, against @dagrejs/graphlib',
      measured: ours === null || other === null ? null : other / ours,
      unit: 'times as fast',
      budget: { atLeast: 2 },
      note: `${ours?.toFixed(2)} ms and ${other?.toFixed(1)} ms`,
    },
  ];
};
