/** Choosing a field of the world: what is found in the set, and what becomes of one that is chosen. */

import type { ListedField } from 'virtual:lapstrip-catalogue';
import { worldFile } from 'virtual:lapstrip-world';
import { computed, signal } from '@preact/signals';
import {
  type Field,
  loadDocumentCheck,
  M_PER_FT,
  mayBeOne,
  type Place,
  type WorldKind,
} from '../../core';
import { pageLanguage } from '../../device/pageLanguage';
import { documentHash } from '../../exchange/hash';
import { record } from '../board';
import { hold, listedFields, visited } from './documents';
import { M_PER_NM } from './nearbyFields';
import { listedField } from './ownDocuments';
import { fetchWorld, lookForWorld, type WorldSet, worldState } from './worldSet';

/** A field of the world as a list shows it. */
export interface WorldRow {
  readonly code: string;
  readonly name: string;
  /** In the language of the page. */
  readonly country: string;
  readonly town: string;
  readonly longestM: number;
  readonly elevationFt: number;
  /** How far it is from where that was asked; null where it wasn't. */
  readonly awayNm: number | null;
  /** Its index in the set. */
  readonly index: number;
}

/** Whether heliports and seaplane bases are listed too. */
export const otherKinds = signal(false);

const kinds = computed(
  (): ReadonlySet<WorldKind> =>
    new Set<WorldKind>(
      otherKinds.value ? ['aerodrome', 'heliport', 'seaplane base'] : ['aerodrome'],
    ),
);

const setOf = (): WorldSet | null =>
  worldState.value.kind === 'ready' ? worldState.value.set : null;

/** More than this isn't read. */
const MOST_FOUND = 40;

/** The fields of the set that match what was typed, best first; none before the set is there. */
export function worldRows(typed: string): readonly WorldRow[] {
  const set = setOf();
  if (set === null) return [];
  const found = set.find(typed, { kinds: kinds.value, most: MOST_FOUND });
  return found.flatMap((index) => rowOf(set, index, null));
}

/** The fields of the set nearest to a place, without the one that lies there; nearest first. */
export function worldNear(to: Place, code: string, most: number): readonly WorldRow[] {
  const set = setOf();
  if (set === null) return [];
  const near = set.reader.nearestFields(set.world, to, { kinds: kinds.value, most: most + 1 });
  return near
    .flatMap(({ index, awayM }) => rowOf(set, index, awayM / M_PER_NM))
    .filter((row) => row.code !== code)
    .slice(0, most);
}

/** A row; none for a field that is listed already, as the pilot's own or as one chosen here. */
function rowOf({ world }: WorldSet, index: number, awayNm: number | null): readonly WorldRow[] {
  const field = world.fieldAt(index);
  if (
    field === null ||
    listedFields.value.some((listed) => mayBeOne(listed, field) && listed.code === field.code)
  )
    return [];
  const { code, name, town, place } = field;
  const country = countryName(field.country);
  const longestM = Math.floor((world.longestFt[index] ?? 0) * M_PER_FT);
  return [{ code, name, country, town, longestM, elevationFt: place.elevationFt, awayNm, index }];
}

const countries = new Map<string, string>();

/** A country by its two letters, in the language of the page. */
function countryName(code: string): string {
  const known = countries.get(code);
  if (known !== undefined) return known;
  let name = code;
  try {
    name = new Intl.DisplayNames([pageLanguage()], { type: 'region' }).of(code) ?? code;
  } catch {
    // No two letters: shown as they are.
  }
  countries.set(code, name);
  return name;
}

/** A field of the set as a document that passed its schema; null if there is none. Never rejects. */
async function documentAt(index: number): Promise<Field | null> {
  const set = setOf();
  const field = set?.world.fieldAt(index) ?? null;
  if (set === null || field === null) return null;
  try {
    const check = await loadDocumentCheck();
    const { document } = check(set.reader.worldDocument(field, set.world.date));
    return document?.kind === 'field' ? document.content : null;
  } catch {
    return null;
  }
}

/** The code of the field that was chosen last and couldn't be used. */
const refused = signal<string | null>(null);

/** Makes a field of the set a document of this device; null if that can't be done. Never rejects. */
export async function takeWorldField(index: number): Promise<ListedField | null> {
  const content = await documentAt(index);
  refused.value = content === null ? (setOf()?.world.codes[index] ?? null) : null;
  if (content === null) return null;
  const hash = documentHash(content);
  hold(hash, content);
  const listed = listedField(hash, content);
  visited.value = [...visited.value.filter(({ code }) => code !== listed.code), listed];
  // It is flown even if it can't be stored, as everything is.
  await record.keepDocument({ hash, kind: 'field', content, own: false }).catch(() => undefined);
  return listed;
}

/** How many fields around a place are looked at for one that may be it. */
const MOST_LIKE = 4;

/** The fields of the set that may be this one, as listed; none if the set isn't here. Never rejects. */
export async function worldFieldsLike(field: Field): Promise<readonly ListedField[]> {
  await lookForWorld();
  const set = setOf();
  if (set === null) return [];
  const near = set.reader.nearestFields(set.world, field.place, {
    kinds: new Set<WorldKind>(['aerodrome']),
    most: MOST_LIKE,
  });
  const documents = await Promise.all(near.map(({ index }) => documentAt(index)));
  return documents.flatMap((document) =>
    document !== null && mayBeOne(document, field)
      ? [listedField(documentHash(document), document)]
      : [],
  );
}

/** The world's fields as a search shows them. */
export const world = {
  file: worldFile,
  state: () => worldState.value,
  rows: worldRows,
  near: worldNear,
  hasOthers: () => otherKinds.value,
  listOthers: (listed: boolean) => {
    otherKinds.value = listed;
  },
  look: lookForWorld,
  fetch: fetchWorld,
  take: takeWorldField,
  refused: () => refused.value,
} as const;
