/** What Lighthouse's mobile preset says of the served build, as a host with our headers serves it. */

import lighthouse from 'lighthouse';
import { chromium } from 'playwright-core';
import { findChromium, QUIET_FLAGS } from '../../tools/chromium.mjs';
import { DIST, Host } from '../browser/server';
import type { Row, Rows } from './row';

const CATEGORIES = ['performance', 'accessibility', 'best-practices', 'seo'] as const;

/** Where Chromium listens for Lighthouse; one bench runs at a time. */
const DEBUGGED_AT = 9333;

/** The rows of the table that Lighthouse scores: its default configuration is the mobile preset. */
export const rows: Rows = async () => {
  // From the root of a host, where a robots.txt is looked for.
  const host = new Host(DIST, 'localhost', '/');
  await host.start();
  const browser = await chromium.launch({
    executablePath: findChromium(),
    args: [...QUIET_FLAGS, `--remote-debugging-port=${DEBUGGED_AT}`],
  });
  try {
    const run = await lighthouse(host.url, {
      port: DEBUGGED_AT,
      onlyCategories: [...CATEGORIES],
      logLevel: 'error',
    });
    const categories = run?.lhr.categories ?? {};
    const audits = run?.lhr.audits ?? {};
    return CATEGORIES.map((name): Row => {
      const category = categories[name];
      const score = category?.score ?? null;
      const short = (category?.auditRefs ?? [])
        .filter(({ id, weight }) => weight > 0 && (audits[id]?.score ?? 1) < 1)
        .map(({ id }) => `${id} ${audits[id]?.displayValue ?? ''}`.trim());
      return {
        what: `Lighthouse ${run?.lhr.lighthouseVersion ?? ''}, mobile: ${name}`,
        measured: score === null ? null : score * 100,
        unit: '',
        budget: { atLeast: 100 },
        note: short.join(', '),
      };
    });
  } finally {
    await browser.close();
    await host.stop();
  }
};
