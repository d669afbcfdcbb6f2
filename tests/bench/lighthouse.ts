/** Lighthouse's mobile scores for the built app, served with our headers. */

import lighthouse from 'lighthouse';
import { chromium } from 'playwright-core';
import { findChromium, QUIET_FLAGS } from '../../tools/chromium.mjs';
import { DIST, Host } from '../browser/server';
import type { Row, Rows } from './row';

const CATEGORIES = ['performance', 'accessibility', 'best-practices', 'seo'] as const;

/** Chromium's debugging port; one bench runs at a time. */
const DEBUGGED_AT = 9333;

/** Lighthouse's default configuration is its mobile preset. */
export const rows: Rows = async () => {
  // From a host's root, where Lighthouse looks for robots.txt.
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
