/** Every field of the world's set as a document: it passes the schema and says what the set says. */

import { beforeAll, expect, test } from 'vitest';
import { checkDocument } from '../../../src/core/readDocument.schema';
import { takenOn } from '../../../src/core/world/notice';
import { worldDocument } from '../../../src/core/world/worldDocument';
import { type WorldFile, worldFile } from '../../../tools/world/file';

let file: WorldFile;
let documents: readonly ReturnType<typeof worldDocument>[];

beforeAll(async () => {
  file = await worldFile();
  documents = file.fields.map((field) => worldDocument(field, file.header.date));
});

test('passes the schema, every one', () => {
  const refused = documents.flatMap((document) => {
    const { problems } = checkDocument(document);
    return problems === null ? [] : [{ code: document.code, problems }];
  });
  expect(refused).toEqual([]);
}, 120_000);

/** Every runway, as the set has it and as the document does. */
const runways = () =>
  documents.flatMap((document, index) =>
    document.runways.map((runway, place) => {
      const source = file.fields[index]?.runways[place];
      if (source === undefined) throw new Error(`${document.code} has a runway too many`);
      return { runway, source };
    }),
  );

test('has no runway longer than the set says, nor, where that is doubtful, than lies between its ends', () => {
  const wrong = runways().filter(({ runway, source }) => {
    const statedM = source.lengthFt * 0.3048;
    return runway.ends.some(
      ({ toraM, todaM, asdaM, ldaM, displacedM = 0 }) =>
        toraM > statedM ||
        todaM !== toraM ||
        asdaM !== toraM ||
        ldaM + displacedM !== toraM ||
        (!source.doubts.includes('length') && toraM <= statedM - 1),
    );
  });
  expect(wrong).toEqual([]);
});

test('leaves out what the set doesn’t say, and guesses nothing', () => {
  const all = runways();
  const without = (leftOut: (of: (typeof all)[number]['runway']) => boolean) =>
    all.filter(({ runway }) => leftOut(runway)).length;
  const { unknown } = file.table;
  expect(without(({ surface }) => surface === 'unknown')).toBe(unknown.surface);
  expect(without(({ edgeLights }) => edgeLights === undefined)).toBe(unknown.lights);
  expect(without(({ edgeLights }) => edgeLights === false)).toBe(0);
  expect(without(({ widthM }) => widthM === undefined)).toBe(unknown.width);
  expect(without(({ declared }) => declared === false)).toBe(all.length);
  const ends = all.flatMap(({ runway }) => runway.ends);
  expect(ends.filter(({ elevationFt }) => elevationFt === undefined)).toHaveLength(
    unknown.endElevation,
  );
});

test('carries every doubt', () => {
  const lost = runways().filter(
    ({ runway, source }) => JSON.stringify(runway.doubts ?? []) !== JSON.stringify(source.doubts),
  );
  expect(lost).toEqual([]);
});

test('says whose it is, on what terms, of which day, and what it is not for', () => {
  for (const document of documents) {
    expect(takenOn(document)).toBe(file.header.date);
    expect(document.about).toMatch(/OurAirports.*ODbL 1\.0.*Not for navigation\./);
  }
  expect(takenOn({ about: 'Drawn from OurAirports, 2026-02-16' })).toBeNull();
});
