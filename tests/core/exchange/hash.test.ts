import { createHash } from 'node:crypto';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { canonicalJson, documentHash, HASH_LENGTH } from '../../../src/exchange/hash';

const documents = fc.dictionary(fc.string(), fc.jsonValue());

describe('canonical JSON', () => {
  test('follows the worked example of RFC 8785, section 3.2.2 and 3.2.3', () => {
    const given = JSON.parse(String.raw`{
      "numbers": [333333333.33333329, 1E30, 4.50, 2e-3, 0.000000000000000000000000001],
      "string": "\u20ac$\u000F\u000aA'\u0042\u0022\u005c\\\"\/",
      "literals": [null, true, false]
    }`);
    expect(canonicalJson(given)).toBe(
      `{"literals":[null,true,false],"numbers":[333333333.3333333,1e+30,4.5,0.002,1e-27],` +
        String.raw`"string":"€$\u000f\nA'B\"\\\\\"/"}`,
    );
  });

  test('sorts keys by UTF-16 code units, as in RFC 8785, section 3.2.3', () => {
    const keys = ['\u20ac', '\r', '\ufb33', '1', '\u{1f600}', '\u0080', '\u00f6'];
    const written = canonicalJson(Object.fromEntries(keys.map((key) => [key, 0])));
    const order = ['\r', '1', '\u0080', '\u00f6', '\u20ac', '\u{1f600}', '\ufb33'];
    expect(written).toBe(`{${order.map((key) => `${JSON.stringify(key)}:0`).join(',')}}`);
  });

  test('says the same thing as JSON does', () => {
    fc.assert(
      fc.property(fc.jsonValue(), (value) => {
        expect(JSON.parse(canonicalJson(value))).toEqual(JSON.parse(JSON.stringify(value)));
      }),
    );
  });
});

describe('the hash of a document', () => {
  test('is the start of SHA-256: "{}" gives 44136fa355b3678a… (sha256sum of the two bytes)', () => {
    expect(documentHash({})).toBe('44136fa355b3678a');
    expect(HASH_LENGTH).toBe(16);
  });

  test('is the start of what Node’s own SHA-256 gives for the canonical JSON', () => {
    fc.assert(
      fc.property(documents, ({ $schema: _, ...document }) => {
        const whole = createHash('sha256').update(canonicalJson(document), 'utf8').digest('hex');
        expect(documentHash(document)).toBe(whole.slice(0, HASH_LENGTH));
      }),
    );
  });

  test('does not depend on the order in which a document was written', () => {
    fc.assert(
      fc.property(documents, (document) => {
        const turned = Object.fromEntries(Object.entries(document).reverse());
        expect(documentHash(turned)).toBe(documentHash(document));
      }),
    );
  });

  test('changes with any value, but not with the schema that an editor is pointed to', () => {
    const field = { code: 'XHAR', runways: [{ toraM: 2400 }] };
    const longer = { code: 'XHAR', runways: [{ toraM: 2401 }] };
    expect(documentHash(longer)).not.toBe(documentHash(field));
    expect(documentHash({ ...field, $schema: 'anywhere' })).toBe(documentHash(field));
  });
});
