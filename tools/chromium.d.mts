/** The path of a Chromium; throws with one line saying how to get one. */
export function findChromium(): string;

/** What keeps Chromium from talking to anyone but the page, and what root needs to run it at all. */
export const QUIET_FLAGS: string[];
