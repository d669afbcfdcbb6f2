/** The words for what is under way in the steps. */

export const words = {
  list: 'A list is open',
  listAt: (title: string, handled: number, total: number) => `${title}, ${handled} of ${total}`,
  roll: (time: string) => `On the roll, ${time}`,
  interrupted: (ago: string) => `Interrupted ${ago}`,
  opens: { list: 'To the list', roll: 'To the roll', interrupted: 'To the steps' },
} as const;
