/** The words for a part that is not there yet. */

export const words = {
  loading: 'Loading',
  failed: 'This part could not be loaded.',
  retry: 'Try again',
  close: 'Close',
} as const;
