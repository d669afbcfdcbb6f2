/**
 * What the keypad's keys do to the text: any form of wind in about as few taps as it has
 * characters.
 */

/** Everything a key can be. */
export type PadKey =
  | '0'
  | '1'
  | '2'
  | '3'
  | '4'
  | '5'
  | '6'
  | '7'
  | '8'
  | '9'
  | 'G'
  | 'V'
  | 'VRB'
  | 'P'
  | '/'
  | 'space'
  | 'unit'
  | 'calm'
  | 'erase'
  | 'clear';

/** Rows of five, from the top. */
export const ROWS: readonly (readonly PadKey[])[] = [
  ['7', '8', '9', 'G', 'erase'],
  ['4', '5', '6', 'V', 'clear'],
  ['1', '2', '3', 'VRB', 'calm'],
  ['space', '0', '/', 'P', 'unit'],
];

/** Tapped again, the unit key cycles to the next. */
export const UNITS: readonly string[] = ['KT', 'MPS', 'KMH'];

const UNIT_AT_END = /(KT|MPS|KMH)$/;

export function press(text: string, key: PadKey): string {
  // Nothing continues a calm: what is typed next is another wind.
  if (text === 'CALM' && key !== 'erase')
    return key === 'space' || key === 'unit' ? text : press('', key);
  switch (key) {
    case 'erase':
      return eraseLast(text);
    case 'clear':
      return '';
    case 'calm':
      return 'CALM';
    case 'unit':
      return withUnit(text);
    case 'space':
      return text === '' || text.endsWith(' ') ? text : `${text} `;
    default:
      // What follows a unit is a new group, such as the swing: no need to type the space.
      return UNIT_AT_END.test(text) ? `${text} ${key}` : text + key;
  }
}

/** A unit, or a key that inserted several letters, is deleted in one go. */
function eraseLast(text: string): string {
  return text.replace(/(KT|MPS|KMH|VRB|CALM| |.)$/, '');
}

function withUnit(text: string): string {
  const unit = UNIT_AT_END.exec(text)?.[1];
  if (unit === undefined) return text === '' ? text : `${text.trimEnd()}KT`;
  const next = UNITS[(UNITS.indexOf(unit) + 1) % UNITS.length] ?? 'KT';
  return text.slice(0, -unit.length) + next;
}
