/** The words for how long ago something was. */

export const words = {
  now: 'just now',
  unknown: 'at an unknown time',
  minutes: (minutes: number): string => `${minutes} min ago`,
  hours: (hours: number): string => `${hours} h ago`,
  days: (days: number): string => `${days} days ago`,
};
