/** The words where a part of the screen couldn't be drawn. */

export const words = {
  brokenPlace: (place: string) => `${place} cannot be shown.`,
  broken: {
    strip: 'The strip cannot be shown.',
    sheet: 'This sheet cannot be shown.',
    whole: 'Lapstrip cannot be shown.',
  },
  close: 'Close',
  failed: 'Lapstrip has made an error',
  mayHaveStopped: 'Something in it may stand still until it is loaded again.',
  stays: 'What you entered stays as it is.',
  again: 'Try again',
  without: 'Go on without it',
  save: 'Save everything as a file',
  saved: 'Everything was saved.',
  notSaved: 'It could not be saved.',
  anewHint:
    'Or Lapstrip starts anew, with nothing in it. What is stored now stays on this device, and Sortie leads back to it.',
  anew: 'Start anew beside it',
  anewSure: 'Yes, start anew',
  notAnew: 'This device does not let Lapstrip start anew.',
} as const;
