/** Whether the app is open in another window of the same browser. */

const NAME = 'lapstrip-window';

/**
 * Whether another window is open; from now on this one counts as open too. Where the browser
 * doesn't say, assumes it is alone. Call once; never rejects.
 */
export async function isOpenElsewhere(): Promise<boolean> {
  const { locks } = navigator;
  if (!locks) return false;
  try {
    const { held = [] } = await locks.query();
    // Shared by all windows and never released: the browser does that when the window goes.
    void locks.request(NAME, { mode: 'shared' }, () => new Promise(() => undefined));
    return held.some(({ name }) => name === NAME);
  } catch {
    return false;
  }
}
