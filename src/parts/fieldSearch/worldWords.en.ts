/** The words of the world's fields in the search. */

export const words = {
  offer: (fields: string, megabytes: string, date: string) =>
    `${fields} real fields, as OurAirports had them on ${date}. They are fetched once, ${megabytes}\u00a0MB, and are then here without a network.`,
  caution: 'Not for navigation.',
  fetch: (megabytes: string) => `Fetch ${megabytes}\u00a0MB`,
  fetching: 'Fetching the fields of the world',
  unavailable: 'The fields could not be fetched. Is there a network?',
  damaged: 'What came was damaged and is not used.',
  again: 'Try again',
  from: (date: string) => `OurAirports, ${date}, ODbL\u00a01.0. Not for navigation.`,
  notKept: 'This device did not store them: they are fetched again next time.',
  newer: (date: string) => `There is a newer set, of ${date}.`,
  hint: 'Type a code, a name or a town.',
  none: 'None of them has such a code, name or town.',
  others: 'Heliports and seaplane bases too',
  refused: (code: string) => `${code} could not be taken. Try again.`,
  at: (town: string, country: string) => (town === '' ? country : `${town}, ${country}`),
} as const;
