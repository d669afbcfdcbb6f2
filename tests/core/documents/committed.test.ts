/** What is written by a tool and committed must be what the tool writes. */

import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { aircraftSchema } from '../../../src/core/aircraft/aircraft.schema';
import { fieldSchema } from '../../../src/core/airfield/field.schema';
import { conditionSchema, procedureSchema } from '../../../src/core/procedure/procedure.schema';
import { linksTo } from '../../../src/exchange/link';
import { fieldFiles } from '../../../tools/demo/fields.mjs';
import { schemaText } from '../../../tools/schemas.mjs';
import { demoTexts } from './demo';

const committed = (kind: string): string =>
  readFileSync(new URL(`../../../public/schemas/${kind}.schema.json`, import.meta.url), 'utf8');

describe('the JSON Schemas in public/schemas are up to date (node tools/schemas.mjs writes them)', () => {
  test('airfield', () => {
    expect(committed('field')).toBe(schemaText('field', fieldSchema));
  });

  test('aircraft', () => {
    expect(committed('aircraft')).toBe(schemaText('aircraft', aircraftSchema));
  });

  test('procedure', () => {
    const definitions = { condition: conditionSchema };
    expect(committed('procedure')).toBe(schemaText('procedure', procedureSchema, definitions));
  });
});

test('the demo airfields are what their layouts give (node tools/demo/fields.mjs writes them)', () => {
  expect(Object.fromEntries(demoTexts('fields'))).toEqual(Object.fromEntries(fieldFiles()));
});

describe('the demo documents are small enough to send as a link', () => {
  const minified = (text: string) => JSON.stringify(JSON.parse(text)).length;

  test.each([...demoTexts('fields')])('%s is below 8 KB', (_, text) => {
    expect(minified(text)).toBeLessThan(8 * 1024);
  });

  // RFC 9110, section 4.1: whatever handles an address should take at least 8000 octets.
  test.each([...demoTexts('procedures')])(
    '%s makes a link of at most 8000 letters',
    async (_, text) => {
      const { link } = await linksTo('https://example.org/', JSON.parse(text), '0123456789abcdef');
      expect(link.length).toBeLessThan(8000);
    },
  );
});
