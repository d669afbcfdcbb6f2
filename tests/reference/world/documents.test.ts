/** Every field of the world's set as a document: it passes the schema and says what the set says. */

import { beforeAll, expect, test } from 'vitest';
import { checkDocument } from '../../../src/core/readDocument.schema';
import { worldDocument } from '../../../src/core/world/worldDocument';
import { type WorldFile, worldFile } from '../../../tools/world/file';

let file: WorldFile;

beforeAll(async () => {
  file = await worldFile();
});

const documents = () =>
  file.fields.map((field) => ({ field, document: worldDocument(field, file.header.date) }));

test('passes the schema, every one', () => {
  const refused = documents().flatMap(({ document }) => {
    const { problems } = checkDocument(document);
    return problems === null ? [] : [{ code: document.code, problems }];
  });
  expect(refused).toEqual([]);
}, 120_000);

test('has no runway longer than the set says, nor, where that is doubtful, than lies between its ends', () => {
  for (const { field, document } of documents()) {
    for (const [index, { ends }] of document.runways.entries()) {
      const runway = field.runways[index];
      const statedM = (runway?.lengthFt ?? 0) * 0.3048;
      for (const end of ends) {
        expect(end.toraM).toBeLessThanOrEqual(statedM);
        expect(end.ldaM + end.displacedM).toBe(end.toraM);
        if (!runway?.doubts.includes('length')) expect(end.toraM).toBeGreaterThan(statedM - 1);
      }
    }
  }
});
