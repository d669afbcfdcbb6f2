/** The path of a Chromium; throws with one line on how to get one. */
export function findChromium(): string;

/** Talk to no one but the page, run as root, and lay letters out as wide as on a screen. */
export const QUIET_FLAGS: string[];
