/** Text that comes from elsewhere: shared, in a link, or several reports in one paste. */

import { describe, expect, test } from './harness';
import { EVENING, entry, key, read } from './pilot';
import { aboveAnswer, answer, beginAt, card, paste, said, WITH_CLIPBOARD } from './weather';

const METAR = 'METAR XHAR 051850Z 27012G20KT 9999 FEW020 08/04 Q1011';
const query = (values: Record<string, string>) => `?${new URLSearchParams(values)}`;

describe('text in the address', () => {
  test.for([
    ['shared as text', query({ text: METAR })],
    ['shared with a title', query({ title: 'Harrow Sound', text: METAR })],
    ['shared as a title alone', query({ title: METAR, text: '' })],
    ['in a link', `#/wind?report=${encodeURIComponent(METAR)}`],
  ] as const)('%s is in use, and the address is cleared', async ([, path], { open }) => {
    const page = await open('tablet', { at: EVENING, path });
    await beginAt(page, 'XHAR');
    await expect.poll(() => entry(page).inputValue()).toBe(METAR);
    await expect
      .poll(() => said(page))
      .toContain('From 270° true (284° magnetic) at 12, gusting 20');
    await expect.poll(() => key(page, 'Use 28').first().isVisible()).toBe(true);
    const address = new URL(page.url());
    expect(address.search).toBe('');
    expect(address.hash).toBe('#/wind');
    // A reload does not take it a second time.
    await page.reload();
    await expect.poll(() => entry(page).inputValue()).toBe(METAR);
    expect(await page.getByRole('region', { name: 'Winds entered' }).count()).toBe(0);
  });

  test('that holds no wind stands in the entry, to be mended', async ({ open }) => {
    const page = await open('tablet', {
      at: EVENING,
      path: query({ text: 'see you at the pond' }),
    });
    await beginAt(page, 'XHAR');
    await expect.poll(() => entry(page).inputValue()).toBe('see you at the pond');
    await expect.poll(() => said(page)).toContain('No wind could be read in this.');
  });
});

describe('several reports in one paste', () => {
  const old = 'METAR XHAR 051750Z 01018KT 9999 FEW020 08/04 Q1011';
  const elsewhere = 'METAR XMAR 051855Z 24014KT 9999 FEW020 14/12 Q1009';
  const newest = 'METAR XHAR 051850Z 27012KT 9999 FEW020 08/04 Q1011';

  test('are answered from the newest for the field, as the first paste and later', async ({
    open,
  }) => {
    const page = await open('tablet', { at: EVENING, ...WITH_CLIPBOARD });
    await beginAt(page, 'XHAR');
    for (let time = 0; time < 2; time++) {
      await paste(page, `${old}=\n${elsewhere}=\n${newest}=`);
      await expect.poll(() => said(page)).toContain('From 270° true');
      await expect.poll(() => read(card(page))).toContain(`Also XMAR: ${elsewhere.slice(0, 30)}`);
      await expect.poll(() => read(card(page))).toContain(`Also XHAR: ${old.slice(0, 30)}`);
      // What was read before anything could choose from it isn't a wind that was entered.
      expect(
        await page.getByRole('region', { name: 'Winds entered' }).getByText('01018KT').count(),
      ).toBe(0);
    }
    await card(page)
      .locator('div', { hasText: 'Also XMAR' })
      .getByRole('button', { name: 'Take it' })
      .first()
      .click();
    await expect.poll(() => entry(page).inputValue()).toBe(`${elsewhere}=`);
    await expect.poll(() => said(page)).toContain('From 240° true');
    // The one left is offered in its turn.
    await expect.poll(() => read(card(page))).toContain(`Also XHAR: ${newest.slice(0, 30)}`);
    await expect
      .poll(() => aboveAnswer(page))
      .toContain('The report is for XMAR; the field is XHAR.');
    await expect.poll(() => answer(page).isVisible()).toBe(true);
  });

  test('a thousand of them: the beginning is read, and it is said', async ({ open }) => {
    const page = await open('tablet', { at: EVENING, ...WITH_CLIPBOARD });
    await beginAt(page, 'XHAR');
    const others = Array.from({ length: 1000 }, () => `${elsewhere}=`);
    await paste(page, [`${newest}=`, ...others].join('\n'));
    await expect.poll(() => said(page)).toContain('From 270° true');
    await expect
      .poll(() => said(page))
      .toContain('The text is very long; only its beginning was read.');
    await expect.poll(() => entry(page).inputValue()).toBe(`${newest}=`);
    // Alike ones are offered once.
    await expect.poll(() => key(page, 'Take it').count()).toBe(1);
  });
});
