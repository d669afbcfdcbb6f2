/** The words for how old something is. */

export const words = {
  now: 'just now',
  unknown: 'age unknown',
  minutes: (minutes: number): string => `${minutes} min old`,
  hours: (hours: number): string => `${hours} h old`,
  days: (days: number): string => `${days} days old`,
};
