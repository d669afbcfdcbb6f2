/** One network from the lines of a map: points merged, crossings found, loose ends joined. */

/** A point of the network, metres east and north. */
export interface Vertex {
  xM: number;
  yM: number;
}

/** A stretch between two points, by their numbers. */
export interface Link {
  readonly from: number;
  readonly to: number;
  readonly name: string;
  readonly on: 'taxiway' | 'apron';
  readonly oneWay: boolean;
  readonly widthM: number | null;
}

export type Look = Omit<Link, 'from' | 'to'>;

/** Points nearer than this are one, metres. */
const SAME_M = 0.5;

/** A line that ends this near to another was meant to meet it, metres. */
const TOUCH_M = 2;
const LOOSE_M = 5;

const CELL_M = 60;

/** A network being made. */
export class Network {
  readonly vertices: Vertex[] = [];
  links: Link[] = [];
  readonly #near = new Map<string, number[]>();

  /** The point there, a new one if there is none. */
  at(xM: number, yM: number): number {
    const [column, row] = [Math.round(xM / SAME_M), Math.round(yM / SAME_M)];
    for (let c = column - 1; c <= column + 1; c++) {
      for (let r = row - 1; r <= row + 1; r++) {
        for (const index of this.#near.get(`${c} ${r}`) ?? []) {
          const one = this.vertices[index];
          if (one && Math.hypot(one.xM - xM, one.yM - yM) <= SAME_M) return index;
        }
      }
    }
    const index = this.vertices.push({ xM, yM }) - 1;
    const key = `${column} ${row}`;
    this.#near.set(key, [...(this.#near.get(key) ?? []), index]);
    return index;
  }

  /** How many links were ever laid: the same number, the same network. */
  laid = 0;

  lay(from: number, to: number, look: Look): void {
    if (from === to) return;
    this.laid += 1;
    this.links.push({ from, to, ...look });
  }

  vertex(index: number): Vertex {
    return this.vertices[index] ?? { xM: 0, yM: 0 };
  }

  degrees(): Int32Array {
    const degrees = new Int32Array(this.vertices.length);
    for (const { from, to } of this.links) {
      degrees[from] = (degrees[from] ?? 0) + 1;
      degrees[to] = (degrees[to] ?? 0) + 1;
    }
    return degrees;
  }

  /** Joins lines where they cross, where one ends on another, and loose ends nearby. */
  join(): void {
    const degrees = this.degrees();
    const cuts = new Map<number, Set<number>>();
    const cut = (link: number, vertex: number) => {
      const { from, to } = this.links[link] ?? { from: -1, to: -1 };
      if (vertex === from || vertex === to) return;
      cuts.set(link, (cuts.get(link) ?? new Set()).add(vertex));
    };
    const cells = this.#cells();
    const seen = new Set<number>();
    for (const inCell of cells.values()) {
      for (const [place, one] of inCell.entries()) {
        for (const other of inCell.slice(place + 1)) {
          const key = Math.min(one, other) * this.links.length + Math.max(one, other);
          if (seen.has(key)) continue;
          seen.add(key);
          this.#meet(one, other, degrees, cut);
        }
      }
    }
    const before = this.links;
    this.links = [];
    before.forEach((link, index) => {
      const { from, to, ...look } = link;
      const [start, end] = [this.vertex(from), this.vertex(to)];
      const along = (v: number) => {
        const { xM, yM } = this.vertex(v);
        return (xM - start.xM) * (end.xM - start.xM) + (yM - start.yM) * (end.yM - start.yM);
      };
      const stops = [from, ...[...(cuts.get(index) ?? [])].sort((a, b) => along(a) - along(b)), to];
      for (const [place, stop] of stops.slice(1).entries()) {
        this.lay(stops[place] ?? stop, stop, look);
      }
    });
    this.#once();
  }

  /** The link nearest to a point, and how far off it lies; null if there are none within reach. */
  nearest(xM: number, yM: number, reachM: number): { link: number; offM: number } | null {
    let [best, least] = [-1, reachM];
    this.links.forEach(({ from, to }, index) => {
      const [a, b] = [this.vertices[from], this.vertices[to]];
      if (a === undefined || b === undefined) return;
      // Most lie far away, and cost no more than this.
      if (Math.min(a.xM, b.xM) - least > xM || Math.max(a.xM, b.xM) + least < xM) return;
      if (Math.min(a.yM, b.yM) - least > yM || Math.max(a.yM, b.yM) + least < yM) return;
      const { offM } = this.off({ from, to }, xM, yM);
      if (offM <= least) [best, least] = [index, offM];
    });
    return best < 0 ? null : { link: best, offM: least };
  }

  /** Cuts the link nearest to a point there; the vertex, or null if none is within reach. */
  tap(xM: number, yM: number, reachM: number): number | null {
    const nearest = this.nearest(xM, yM, reachM);
    const link = nearest === null ? undefined : this.links[nearest.link];
    if (nearest === null || link === undefined) return null;
    const { from, to, ...look } = link;
    const { share } = this.off(link, xM, yM);
    const [a, b] = [this.vertex(from), this.vertex(to)];
    const on = this.at(a.xM + share * (b.xM - a.xM), a.yM + share * (b.yM - a.yM));
    if (on === from || on === to) return on;
    this.links.splice(nearest.link, 1);
    this.lay(from, on, look);
    this.lay(on, to, look);
    return on;
  }

  /** How far beside a link a point lies, and where along it. */
  off({ from, to }: Pick<Link, 'from' | 'to'>, xM: number, yM: number) {
    const [a, b] = [this.vertex(from), this.vertex(to)];
    const [x, y] = [b.xM - a.xM, b.yM - a.yM];
    const along = ((xM - a.xM) * x + (yM - a.yM) * y) / Math.max(x * x + y * y, 1e-9);
    const share = Math.min(1, Math.max(0, along));
    return { share, offM: Math.hypot(xM - a.xM - share * x, yM - a.yM - share * y) };
  }

  #meet(
    one: number,
    other: number,
    degrees: Int32Array,
    cut: (link: number, vertex: number) => void,
  ): void {
    const [p, q] = [this.links[one], this.links[other]];
    if (!p || !q) return;
    const ends = new Set([p.from, p.to, q.from, q.to]);
    if (ends.size < 4) return;
    for (const [link, target, index] of [
      [p, q, other],
      [q, p, one],
    ] as const) {
      for (const end of [link.from, link.to]) {
        const { xM, yM } = this.vertex(end);
        const { offM, share } = this.off(target, xM, yM);
        if (offM > (degrees[end] === 1 ? LOOSE_M : TOUCH_M)) continue;
        if (share > 0 && share < 1) {
          if (offM > 0 && degrees[end] === 1) cut(index, end);
          else if (offM <= TOUCH_M) cut(index, end);
        } else if (degrees[end] === 1) {
          // End meets end: a short stretch between them.
          cut(index, end);
        }
      }
    }
    const [a, b, c, d] = [p.from, p.to, q.from, q.to].map((v) => this.vertex(v));
    if (!a || !b || !c || !d) return;
    const cross = (b.xM - a.xM) * (d.yM - c.yM) - (b.yM - a.yM) * (d.xM - c.xM);
    if (Math.abs(cross) < 1e-6) return;
    const s = ((c.xM - a.xM) * (d.yM - c.yM) - (c.yM - a.yM) * (d.xM - c.xM)) / cross;
    const t = ((c.xM - a.xM) * (b.yM - a.yM) - (c.yM - a.yM) * (b.xM - a.xM)) / cross;
    if (s <= 0 || s >= 1 || t <= 0 || t >= 1) return;
    const vertex = this.at(a.xM + s * (b.xM - a.xM), a.yM + s * (b.yM - a.yM));
    cut(one, vertex);
    cut(other, vertex);
  }

  #cells(): Map<string, number[]> {
    const cells = new Map<string, number[]>();
    this.links.forEach(({ from, to }, index) => {
      const [a, b] = [this.vertex(from), this.vertex(to)];
      const span = (one: number, two: number) => [
        Math.floor((Math.min(one, two) - LOOSE_M) / CELL_M),
        Math.floor((Math.max(one, two) + LOOSE_M) / CELL_M),
      ];
      const [[left = 0, right = 0], [low = 0, high = 0]] = [span(a.xM, b.xM), span(a.yM, b.yM)];
      for (let column = left; column <= right; column++) {
        for (let row = low; row <= high; row++) {
          const key = `${column} ${row}`;
          const inCell = cells.get(key);
          if (inCell) inCell.push(index);
          else cells.set(key, [index]);
        }
      }
    });
    return cells;
  }

  /** Lines drawn twice count once. */
  #once(): void {
    const seen = new Set<string>();
    this.links = this.links.filter(({ from, to }) => {
      const key = from < to ? `${from} ${to}` : `${to} ${from}`;
      if (seen.has(key)) return false;
      seen.add(key);
      return true;
    });
  }
}
