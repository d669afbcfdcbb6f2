/** Keeping what a map gave: whole or not at all, and with the name of whose data it is. */

import { expect, test } from 'vitest';
import { demoField } from '../../documents/demo';
import { openPage } from '../page';

await openPage();
const { keepMapField, planTargets } = await import('../../../../src/board/documents/mapField');
const { listedFields } = await import('../../../../src/board/documents/documents');

const harrow = demoField('XHAR');
/** What a map might give for Harrow Sound, under another code. */
const mapped = { ...harrow, code: 'XMAP', name: 'On the map' };

test('the plan is offered to the field that lies there, and carries whose it is', async () => {
  const targets = await planTargets(mapped);
  const [here, elsewhere] = ['XHAR', 'XMAR'].map((code) =>
    targets.find((target) => target.code === code),
  );
  expect(elsewhere).toBeUndefined();
  expect(here?.field?.about).toContain('© OpenStreetMap contributors, ODbL 1.0');
  expect(here?.field?.about.startsWith(harrow.about)).toBe(true);
});

test('a field that does not hold together is not kept, and its faults are told', async () => {
  const before = listedFields.value.length;
  const [runway] = mapped.runways;
  if (runway === undefined) throw new Error('no runway');
  const [one] = runway.ends;
  const { listed, problems } = await keepMapField({
    ...mapped,
    runways: [{ ...runway, ends: [one, one] }],
  });
  expect(listed).toBeNull();
  expect(problems?.length).toBeGreaterThan(0);
  expect(listedFields.value).toHaveLength(before);
});

test('a field that does is listed as one of the pilot’s own', async () => {
  const { listed } = await keepMapField(mapped);
  expect(listed?.code).toBe('XMAP');
  expect(listedFields.value).toContain(listed);
});
