import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { catalogue } from 'virtual:lapstrip-catalogue';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { documentHash } from '../../../src/exchange/hash';
import { readCatalogue } from '../../../tools/catalogue';

describe('the documents that come with the app', () => {
  test.each(catalogue)('$kind $code is named by what it holds', async (listed) => {
    const document = await listed.load();
    expect(document).toMatchObject({
      lapstrip: listed.kind,
      code: listed.code,
      name: listed.name,
    });
    expect(documentHash(document)).toBe(listed.hash);
  });

  test('have a procedure in English and one in German for every aircraft', () => {
    const aircraft = catalogue.filter((listed) => listed.kind === 'aircraft');
    const procedures = catalogue.filter((listed) => listed.kind === 'procedure');
    expect(aircraft.length).toBeGreaterThan(0);
    for (const { code } of aircraft) {
      const ofIt = procedures.filter((procedure) => procedure.aircraft === code);
      expect(ofIt.map(({ language }) => language).sort()).toEqual(['de', 'en']);
    }
  });
});

describe('a document that the app could not use', () => {
  let folder = '';

  beforeEach(() => {
    folder = mkdtempSync(join(tmpdir(), 'lapstrip-catalogue-'));
    for (const kind of ['fields', 'aircraft', 'procedures']) mkdirSync(join(folder, kind));
  });
  afterEach(() => rmSync(folder, { recursive: true }));

  const procedure = {
    lapstrip: 'procedure',
    version: 1,
    code: 'planted',
    name: 'Planted',
    aircraft: 'none',
    about: '',
    phases: [],
    lists: [],
  };
  const plant = (name: string, text: string) => writeFileSync(join(folder, name), text);

  test('stops the build with its file when it is not JSON', () => {
    plant('procedures/torn.json', '{"lapstrip": "proc');
    expect(() => readCatalogue(folder)).toThrow(/procedures\/torn\.json: is not JSON/);
  });

  test('stops the build with its file and the place in it when its shape is wrong', () => {
    const step = { id: 'one', kind: 'shout', item: 'Lamp', response: 'on' };
    const wrong = { ...procedure, phases: [{ phase: 'ramp', steps: [step] }] };
    plant('procedures/wrong.json', JSON.stringify(wrong));
    expect(() => readCatalogue(folder)).toThrow(
      /procedures\/wrong\.json: at phases\.0\.steps\.0\.kind: .*"shout"/,
    );
  });

  test('stops the build when its code is taken', () => {
    plant('procedures/a.json', JSON.stringify(procedure));
    plant('procedures/b.json', JSON.stringify(procedure));
    expect(() => readCatalogue(folder)).toThrow(/procedures\/[ab]\.json: code planted is taken/);
  });
});
