/**
 * Lays an airfield out along one of its runways, so that a demo field's coordinates, headings,
 * lengths and taxiways agree because they come from the same few figures.
 */

import geodesic from 'geographiclib-geodesic';

const WGS84 = geodesic.Geodesic.WGS84;
const RADIANS_PER_DEGREE = Math.PI / 180;

/** Six decimals of a degree are about a tenth of a metre. */
const rounded = (deg) => Math.round(deg * 1e6) / 1e6;

/**
 * A drawing board: `s` runs along the runway from one end, `t` to its right, metres. The reference
 * point is at `s` = `middleM`, `t` = 0.
 */
export function board({ latDeg, lonDeg, bearingDeg, middleM }) {
  const alongEast = Math.sin(bearingDeg * RADIANS_PER_DEGREE);
  const alongNorth = Math.cos(bearingDeg * RADIANS_PER_DEGREE);

  /** Metres east and north of the reference point. */
  const xy = (s, t) => ({
    xM: Math.round((s - middleM) * alongEast + t * alongNorth),
    yM: Math.round((s - middleM) * alongNorth - t * alongEast),
  });

  const place = (s, t) => {
    const distanceM = Math.hypot(s - middleM, t);
    const azimuthDeg = bearingDeg + Math.atan2(t, s - middleM) / RADIANS_PER_DEGREE;
    const { lat2, lon2 } = WGS84.Direct(latDeg, lonDeg, azimuthDeg, distanceM);
    return { latDeg: rounded(lat2), lonDeg: rounded(lon2) };
  };

  const node = (id, kind, s, t, more = {}) => ({ id, ...xy(s, t), kind, ...more });
  return {
    place,
    junction: (id, s, t) => node(id, 'junction', s, t),
    stand: (id, s, t, name) => node(id, 'stand', s, t, { name }),
    hotSpot: (name, s, t, about) => ({ ...xy(s, t), name, about }),
    hold: (id, s, t, ...ends) => node(id, 'hold', s, t, { name: id, ...(ends.length && { ends }) }),
    /** A point on a runway; without `ends` it is an exit only. */
    runway: (id, s, t, ...ends) => node(id, 'runway', s, t, ends.length ? { ends } : {}),
  };
}

/** One end of a runway; distances not given equal its TORA. */
export function end(
  designator,
  at,
  elevationFt,
  { tora, toda = tora, asda = tora, lda = tora, displaced = 0, cables = [], closed },
) {
  return {
    designator,
    at,
    elevationFt,
    ...(displaced > 0 && { displacedM: displaced }),
    toraM: tora,
    todaM: toda,
    asdaM: asda,
    ldaM: lda,
    cablesM: cables,
    ...(closed && { closed }),
  };
}

/** A chain of taxiway edges with one name through these points. */
export const taxiway = (name, ids, more = {}) => chain(name, 'taxiway', ids, more);

export const apron = (...ids) => chain('apron', 'apron', ids, {});

/** A row of stands along a lane: stand `s1` on the lane's point `p1`, and so on. */
export function row(b, numbers, { s, step, lane, stand }) {
  const places = numbers.map((number, index) => ({ number, s: s + step * index }));
  return {
    nodes: [
      ...places.map(({ number, s: at }) => b.junction(`p${number}`, at, lane)),
      ...places.map(({ number, s: at }) => b.stand(`s${number}`, at, stand, `Stand ${number}`)),
    ],
    edges: [
      ...numbers.flatMap((number) => apron(`s${number}`, `p${number}`)),
      ...apron(...numbers.map((number) => `p${number}`)),
    ],
  };
}

/** A runway through its points in order; `crosses` names the runway crossed after a point. */
export const alongRunway = (name, ids, crosses = {}) =>
  ids
    .slice(1)
    .flatMap((to, index) =>
      chain(name, 'runway', [ids[index], to], crosses[to] ? { crosses: crosses[to] } : {}),
    );

function chain(name, on, ids, more) {
  return ids.slice(1).map((to, index) => ({ from: ids[index], to, name, on, ...more }));
}
