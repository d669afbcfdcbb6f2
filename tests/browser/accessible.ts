/** Runs axe-core over the page: WCAG 2.2 A and AA, enhanced contrast (AAA 1.4.6) and its best practices. */

import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from 'playwright-core';

const TAGS = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];

/** What axe objects to, one line each: the rule, where, and why. An empty list is what tests want. */
export async function objections(page: Page): Promise<string[]> {
  const axe = new AxeBuilder({ page })
    .options({
      runOnly: { type: 'tag', values: TAGS },
      // The paper themes promise 7:1; axe has the rule but leaves it out unless told.
      rules: { 'color-contrast-enhanced': { enabled: true } },
    })
    // One page without frames from elsewhere: no second window is needed to add the results up.
    .setLegacyMode(true);
  const { violations } = await axe.analyze();
  return violations.flatMap(({ id, nodes }) =>
    nodes.map((node) => `${id}: ${node.target.join(' ')}: ${node.failureSummary ?? ''}`),
  );
}
