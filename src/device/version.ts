/** Which version of the app this page is. */

declare const __LAPSTRIP_VERSION__: string;

/** As in CHANGELOG.md and package.json, inserted by the build. */
export const VERSION = __LAPSTRIP_VERSION__;
