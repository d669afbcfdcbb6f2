/**
 * Names that mean something to JavaScript itself. No option or station may have one: choices are
 * stored under these names, and stored values that contain one are refused.
 */
const RESERVED: ReadonlySet<string> = new Set(['__proto__', 'constructor', 'prototype']);

/** Whether a name must not be a property of anything stored or sent. */
export const isReservedName = (name: string): boolean => RESERVED.has(name);
