/** The name of a control, as shown. */

import { type Control, controlsOf } from '../../device/bindings';
import { words } from './words';

/** Browsers add vendor and product numbers to a pad's name. */
const withoutNumbers = (name: string) =>
  name
    .replace(/\(.*?(vendor|standard gamepad).*?\)/gi, '')
    .replace(/^[0-9a-f]{4}-[0-9a-f]{4}-/i, '')
    .trim() || name;

/** A pad, as shown. */
export const padName = (name: string, copy: number): string =>
  words.pad(withoutNumbers(name), copy);

/** A control, as shown. */
export function controlName(control: Control): string {
  const parts = controlsOf(control);
  if (parts.kind !== 'pad') {
    return parts.kind === 'key' ? words.key(parts.name) : words.media(parts.name);
  }
  const part =
    parts.way === null ? words.button(parts.number) : words.axisWay(parts.number, parts.way);
  return words.onPad(part, padName(parts.pad, parts.copy));
}
