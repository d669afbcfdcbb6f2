/**
 * Names that mean something to the language itself. No option or station may bear one: what a pilot
 * chooses is kept by these names, and what is kept is refused where it comes with one.
 */
const RESERVED: ReadonlySet<string> = new Set(['__proto__', 'constructor', 'prototype']);

/** Whether a name must not be that of a property in anything that is stored or sent. */
export const isReservedName = (name: string): boolean => RESERVED.has(name);
