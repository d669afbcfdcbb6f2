/** The words for making a lesson. */

export const words = {
  title: 'Make a lesson',
  close: 'Close',
  what: 'What goes in',
  whatHint: 'Proposed: what is flown today. The student sees each before keeping any.',
  others: (number: number) => (number === 1 ? 'One more of yours' : `${number} more of yours`),
  kinds: { field: 'Fields', aircraft: 'Aircraft', procedure: 'Procedures' },
  called: 'What it is called',
  name: 'Name of the lesson',
  note: 'Your note to the student',
  make: (documents: number) =>
    documents === 1 ? 'Make it, with one document' : `Make it, with ${documents} documents`,
  print: 'Print it',
  nothing: 'Choose at least one document.',
  noName: 'Give it a name.',
  failed: 'It is not available right now.',
  ways: 'The ways to give it away',
} as const;
