/** A link as a QR code, ISO/IEC 18004. Loaded with the first code requested. */

import qrcode from 'qrcode-generator';

/** A code: the number of modules per side, and an SVG path of the dark ones. */
export interface QrCode {
  readonly size: number;
  readonly path: string;
}

/** The quiet zone around a code, in modules. ISO/IEC 18004, 5.3.8. */
export const QUIET_ZONE = 4;

/**
 * The code of a text that ends in digits alone, which take less room. Null if no version can hold
 * it: version 40 at the lowest level of correction is the largest there is.
 */
export function qrCodeOf(before: string, digits: string): QrCode | null {
  const code = qrcode(0, 'L');
  try {
    if (before !== '') code.addData(before, 'Byte');
    if (digits !== '') code.addData(digits, 'Numeric');
    code.make();
  } catch {
    return null;
  }
  const size = code.getModuleCount();
  let path = '';
  for (let row = 0; row < size; row++) {
    for (let column = 0; column < size; column++) {
      if (!code.isDark(row, column)) continue;
      let end = column;
      while (end < size && code.isDark(row, end)) end++;
      path += `M${column + QUIET_ZONE} ${row + QUIET_ZONE}h${end - column}v1h${column - end}z`;
      column = end;
    }
  }
  return { size: size + 2 * QUIET_ZONE, path };
}
