/** The words of what brings documents in. */

export const words = {
  hint: 'A field, an aircraft or a procedure as a JSON file, a whole log, or an aerodrome saved from OpenStreetMap. You can drop the file on the window too. It stays on this device.',
  choose: 'Look at a file',
  paste: 'Paste a link or code',
  lookAtPasted: 'Look at it',
  nothingPasted: 'There is no Lapstrip link or code in it.',
} as const;
