/** Runs axe-core over the page: WCAG 2.2 A and AA, enhanced contrast (AAA 1.4.6) and its best practices. */

import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from 'playwright-core';
import { THEMES, wear } from './themes';

const TAGS = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];

const EVERYTHING = {
  runOnly: { type: 'tag' as const, values: TAGS },
  // The paper themes promise 7:1; axe has the rule but leaves it out unless told.
  rules: { 'color-contrast-enhanced': { enabled: true } },
};

/** A theme changes colours and nothing else. */
const COLOURS = {
  runOnly: { type: 'rule' as const, values: ['color-contrast', 'color-contrast-enhanced'] },
};

/**
 * What axe objects to in the page as it stands, in every theme; one line each: the theme, the rule,
 * where, and why. An empty list is what tests want.
 */
export async function objections(page: Page): Promise<string[]> {
  const found: string[] = [];
  for (const theme of THEMES) {
    await wear(page, theme);
    const objected = await ask(page, theme === 'day' ? EVERYTHING : COLOURS);
    found.push(...objected.map((objection) => `by ${theme}: ${objection}`));
  }
  await wear(page, 'day');
  return found;
}

async function ask(page: Page, about: typeof EVERYTHING | typeof COLOURS): Promise<string[]> {
  const axe = new AxeBuilder({ page })
    .options(about)
    // One page without frames from elsewhere: no second window is needed to add the results up.
    .setLegacyMode(true);
  const { violations } = await axe.analyze();
  return violations.flatMap(({ id, nodes }) =>
    nodes.map((node) => `${id}: ${node.target.join(' ')}: ${node.failureSummary ?? ''}`),
  );
}
