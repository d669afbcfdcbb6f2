/** Which version of the app this page is. */

declare const __LAPSTRIP_VERSION__: string;

/** As CHANGELOG.md and package.json say it, put here by the build. */
export const VERSION = __LAPSTRIP_VERSION__;
