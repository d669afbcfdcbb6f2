/**
 * What a stretch is called whose taxiway has no letter, as on many maps: the word said on the radio.
 */
export const NO_LETTER = 'taxiway';
