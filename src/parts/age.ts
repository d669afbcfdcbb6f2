/** How long ago something was, in words. */

const MINUTE_MS = 60_000;

/** `just now`, `6 min ago`, `2 h ago`, `3 days ago`. A clock that was set back counts as just now. */
export function ago(ms: number): string {
  const minutes = Math.floor(ms / MINUTE_MS);
  if (minutes < 1) return 'just now';
  if (minutes < 120) return `${minutes} min ago`;
  const hours = Math.floor(minutes / 60);
  return hours < 48 ? `${hours} h ago` : `${Math.floor(hours / 24)} days ago`;
}

/** The same as an age: `just now`, `6 min old`. */
export function old(ms: number): string {
  return ago(ms).replace('ago', 'old');
}
