/** Listens for what a person wouldn't see but should never happen. */

import type { BrowserContext, ConsoleMessage } from 'playwright-core';

/**
 * Records in `problems` every console error, every uncaught exception, everything the content
 * policy refused, and every request to anywhere but the app's own host.
 */
export async function watch(
  context: BrowserContext,
  home: string,
  problems: string[],
): Promise<void> {
  const { origin } = new URL(home);
  const noteConsole = (message: ConsoleMessage) => {
    // Most windows of these tests run without the worker, and playwright says so.
    if (message.text().includes('blocked by Playwright')) return;
    if (message.type() === 'error' || message.type() === 'warning') {
      problems.push(`console ${message.type()}: ${message.text()} (${message.location().url})`);
    }
  };
  context.on('console', noteConsole);
  context.on('weberror', (error) => problems.push(`not caught: ${error.error().stack}`));
  context.on('request', (request) => {
    const url = new URL(request.url());
    const own = url.origin === origin || url.protocol === 'blob:' || url.protocol === 'data:';
    if (!own) problems.push(`asked elsewhere: ${request.url()}`);
  });
  await context.exposeFunction('lapstripTestRefused', (what: string) => {
    problems.push(`refused by the content policy: ${what}`);
  });
  await context.addInitScript(() => {
    const report = (window as unknown as { lapstripTestRefused(what: string): void })
      .lapstripTestRefused;
    document.addEventListener('securitypolicyviolation', (event) => {
      report(`${event.effectiveDirective} ${event.blockedURI}`);
    });
  });
}
