/** The envelope of the centre of gravity: a polygon over arm and mass. */

/** A centre of gravity: metres aft of the datum, and the mass it is for, kg. */
export type Balance = readonly [armM: number, massKg: number];

/** Corners in order; the last joins the first. */
export type LoadEnvelope = readonly Balance[];

/** A balance this close to an edge lies on it, kg·m: far below what can be weighed. */
const ROUNDING_KGM = 1e-6;

/** Twice the area of a triangle, kg·m, positive if the third point is left of first to second. */
const turn = ([armA, massA]: Balance, [armB, massB]: Balance, [armC, massC]: Balance) =>
  (armB - armA) * (massC - massA) - (massB - massA) * (armC - armA);

/** Edges as pairs of corners. */
const edgesOf = (envelope: LoadEnvelope) =>
  envelope.map((from, index) => [from, envelope[(index + 1) % envelope.length] ?? from] as const);

const isBetween = (value: number, a: number, b: number) =>
  value >= Math.min(a, b) && value <= Math.max(a, b);

/** Whether a balance on the line through two corners lies between them. */
const spans = (from: Balance, to: Balance, [armM, massKg]: Balance) =>
  isBetween(armM, from[0], to[0]) && isBetween(massKg, from[1], to[1]);

const isOnEdge = (from: Balance, to: Balance, [armM, massKg]: Balance) => {
  const off = Math.abs(turn(from, to, [armM, massKg]));
  // A limit merely reached is not passed, whatever the last digit says.
  const armSlack = ROUNDING_KGM / Math.max(1, massKg);
  return (
    off <= ROUNDING_KGM &&
    isBetween(armM, Math.min(from[0], to[0]) - armSlack, Math.max(from[0], to[0]) + armSlack) &&
    isBetween(
      massKg,
      Math.min(from[1], to[1]) - ROUNDING_KGM,
      Math.max(from[1], to[1]) + ROUNDING_KGM,
    )
  );
};

/**
 * Whether a centre of gravity lies inside the envelope or on its edge: a line from it towards the
 * tail then crosses the edges an odd number of times (crossing number of a simple polygon).
 */
export function isInEnvelope(envelope: LoadEnvelope, at: Balance): boolean {
  const edges = edgesOf(envelope);
  if (edges.some(([from, to]) => isOnEdge(from, to, at))) return true;
  const [armM, massKg] = at;
  const crossed = edges.filter(([[armA, massA], [armB, massB]]) => {
    if (massA > massKg === massB > massKg) return false;
    return armM < armA + ((massKg - massA) / (massB - massA)) * (armB - armA);
  });
  return crossed.length % 2 === 1;
}

/** Arms between which a mass lies in the envelope, m; null if heavier or lighter than all of it. */
export function armsAt(envelope: LoadEnvelope, massKg: number): readonly [number, number] | null {
  const arms = edgesOf(envelope).flatMap(([[armA, massA], [armB, massB]]) => {
    if (!isBetween(massKg, massA, massB)) return [];
    if (massA === massB) return [armA, armB];
    return [armA + ((massKg - massA) / (massB - massA)) * (armB - armA)];
  });
  return arms.length === 0 ? null : [Math.min(...arms), Math.max(...arms)];
}

/** Whether two edges share a point. */
function meet([a, b]: readonly [Balance, Balance], [c, d]: readonly [Balance, Balance]): boolean {
  const sides = [turn(a, b, c), turn(a, b, d), turn(c, d, a), turn(c, d, b)] as const;
  const [ofC, ofD, ofA, ofB] = sides;
  if (ofC * ofD < 0 && ofA * ofB < 0) return true;
  return (
    (ofC === 0 && spans(a, b, c)) ||
    (ofD === 0 && spans(a, b, d)) ||
    (ofA === 0 && spans(c, d, a)) ||
    (ofB === 0 && spans(c, d, b))
  );
}

/** Whether the corners go once round an area: edges only meet neighbours, and none turns back. */
export function isSimple(envelope: LoadEnvelope): boolean {
  const edges = edgesOf(envelope);
  const last = edges.length - 1;
  return edges.every((edge, i) => {
    const [from, to] = edge;
    const [, after] = edges[(i + 1) % edges.length] ?? edge;
    const turnsBack = turn(from, to, after) === 0 && !spans(from, after, to);
    const isPoint = from[0] === to[0] && from[1] === to[1];
    if (isPoint || turnsBack) return false;
    return edges.every((other, j) => {
      const apart = j - i;
      return apart < 2 || apart === last || !meet(edge, other);
    });
  });
}
