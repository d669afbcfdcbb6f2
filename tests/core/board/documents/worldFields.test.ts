/** A field of the world: the set fetched and stored; one chosen, mended, and given the plan of a map. */

import { gzipSync } from 'node:zlib';
import { beforeEach, describe, expect, test, vi } from 'vitest';
import { bytesOf, WORLD } from '../../world/invented';
import { openPage } from '../page';

await openPage({ fresh: true, hooks: false });
const { fieldsFor, markOf } = await import('../../../../src/board/documents/fieldChoice');
const { listedBy } = await import('../../../../src/board/documents/documents');
const { addOwnDocument } = await import('../../../../src/board/documents/ownDocuments');
const { planTargets } = await import('../../../../src/board/documents/mapField');
const { world } = await import('../../../../src/board/documents/worldFields');
const { worldState } = await import('../../../../src/board/documents/worldSet');
const { readWorldFile } = await import('../../../../src/record/worldFile');

const packed = gzipSync(bytesOf(WORLD));

/** What the host answers; null if it doesn't. */
let answer: Uint8Array<ArrayBuffer> | null = null;

beforeEach(() => {
  Object.assign(document, { baseURI: 'https://example.org/' });
  vi.stubGlobal('fetch', async () => {
    if (answer === null) throw new TypeError('no network');
    return new Response(answer);
  });
});

const why = () => (worldState.value.kind === 'failed' ? worldState.value.why : null);
const codes = (typed: string) => world.rows(typed).map(({ code }) => code);

describe('the set', () => {
  test('that can’t be fetched leaves nothing, and says why', async () => {
    await world.look();
    expect(worldState.value.kind).toBe('absent');
    await world.fetch();
    expect(why()).toBe('unavailable');
    expect(codes('marlow')).toEqual([]);
  });

  test.each([
    ['cut short', Uint8Array.from(packed.subarray(0, packed.length - 9))],
    ['with a byte changed', Uint8Array.from(packed, (byte, at) => (at === 200 ? byte ^ 1 : byte))],
    ['that is something else', Uint8Array.from(gzipSync('a page'))],
  ])('%s is refused and not stored', async (_, damaged) => {
    answer = damaged;
    await world.fetch();
    expect(why()).toBe('damaged');
    expect(await readWorldFile()).toBeNull();
  });

  test('that comes whole is stored and searched', async () => {
    answer = Uint8Array.from(packed);
    await world.fetch();
    expect(worldState.value).toMatchObject({ kind: 'ready', set: { isKept: true, isOld: false } });
    expect(codes('port marlow')).toEqual(['XAAB']);
    expect(await readWorldFile()).toMatchObject({ packed: answer });
  });

  test('is read from the device by the next page, without a network', async () => {
    vi.resetModules();
    answer = null;
    const { world: next } = await import('../../../../src/board/documents/worldFields');
    await next.look();
    expect(next.rows('port marlow').map(({ code }) => code)).toEqual(['XAAB']);
  });
});

test('heliports are listed only when asked for', () => {
  expect(codes('hospital')).toEqual([]);
  world.listOthers(true);
  expect(codes('hospital')).toEqual(['XCCD']);
  world.listOthers(false);
});

test('the nearest are in order of distance, without the field itself', () => {
  const place = { latDeg: -33.5, lonDeg: -179.999 };
  const near = world.near(place, 'XAAB', 2);
  expect(near.map(({ code }) => code)).not.toContain('XAAB');
  const away = near.map(({ awayNm }) => awayNm ?? 0);
  expect(away).toEqual(away.toSorted((a, b) => a - b));
});

describe('a field that is chosen', () => {
  test('is a document that says where it is from, listed as the world’s and no longer twice', async () => {
    const [row] = world.rows('port marlow');
    const listed = await world.take(row?.index ?? -1);
    expect(listed && markOf(listed)).toBe('world');
    expect(listedBy(listed?.hash ?? '')).toBe(listed);
    const document = await listed?.load();
    expect(document).toMatchObject({ code: 'XAAB', version: 2 });
    expect(document?.about).toContain('Not for navigation');
    expect(codes('port marlow')).toEqual([]);
    expect(fieldsFor('marlow', []).map(({ code }) => code)).toEqual(['XAAB']);
  });

  test('is offered the plan of a map, as any of the set is', async () => {
    const [listed] = fieldsFor('marlow', []);
    const document = await listed?.load();
    if (document === undefined) return expect.unreachable('nothing was listed');
    const [target] = await planTargets({ ...document, code: 'XMAP' });
    expect(target?.code).toBe('XAAB');
    const [row] = world.rows('nordwick');
    expect(row?.code).toBe('RU-10046');
    const [never] = await planTargets({
      ...document,
      code: 'XMAP',
      place: { latDeg: 65.1234, lonDeg: -179.9877, elevationFt: 0 },
      runways: document.runways.slice(0, 1),
    });
    expect(never?.code).toBe('RU-10046');
  });

  test('and mended is the pilot’s own, with what it was made from, and stands in its place', async () => {
    const [listed] = fieldsFor('marlow', []);
    const content = { ...(await listed?.load()), name: 'Marlow Bay, mended' };
    await addOwnDocument({ hash: 'mended', kind: 'field', content, own: true });
    const found = fieldsFor('marlow', []);
    expect(found.map(({ name }) => name)).toEqual(['Marlow Bay, mended']);
    expect(found[0] && markOf(found[0])).toBe('own');
    expect(found[0]?.about).toContain('OurAirports');
    expect(codes('port marlow')).toEqual([]);
  });
});

test('a field that the set doesn’t have is none', async () => {
  expect(await world.take(99)).toBeNull();
});
