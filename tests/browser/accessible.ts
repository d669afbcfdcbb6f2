/** Runs axe-core over the page: WCAG 2.2 A and AA, enhanced contrast (AAA 1.4.6) and its best practices. */

import axe from 'axe-core';
import type { Page } from 'playwright-core';
import { THEMES, type Theme, wear } from './themes';

const TAGS = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];

const EVERYTHING = {
  runOnly: { type: 'tag' as const, values: TAGS },
  // The paper themes promise 7:1; axe has the rule but skips it by default.
  rules: { 'color-contrast-enhanced': { enabled: true } },
};

/** What themes change: colours and, by night, the size of letters and so of keys. */
const LOOKS = {
  runOnly: {
    type: 'rule' as const,
    values: ['color-contrast', 'color-contrast-enhanced', 'target-size'],
  },
};

/**
 * axe's objections to the page as it stands, in the themes given; one line each: theme, rule,
 * place, reason. Tests expect an empty list.
 */
export async function objections(page: Page, themes: readonly Theme[] = THEMES): Promise<string[]> {
  const found: string[] = [];
  for (const theme of themes) {
    await wear(page, theme);
    const objected = await ask(page, theme === 'day' ? EVERYTHING : LOOKS);
    found.push(...objected.map((objection) => `by ${theme}: ${objection}`));
  }
  await wear(page, 'day');
  return found;
}

async function ask(page: Page, about: typeof EVERYTHING | typeof LOOKS): Promise<string[]> {
  const isThere = await page.evaluate(() => 'axe' in window);
  if (!isThere) await page.evaluate(axe.source);
  const { violations } = await page.evaluate(
    (options) => (window as unknown as { axe: typeof axe }).axe.run(options),
    // Leave out results without objections: reporting them takes as long as checking.
    { ...about, resultTypes: ['violations' as const] },
  );
  return violations.flatMap(({ id, nodes }) =>
    nodes.map(
      (node) =>
        `${id}: ${node.target.join(' ')}: ${node.html.slice(0, 300)}: ${node.failureSummary ?? ''}`,
    ),
  );
}
