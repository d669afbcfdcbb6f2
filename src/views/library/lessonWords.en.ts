/** The words of lessons. */

/** Where a document that came stands beside what is here. */
const stands = {
  same: 'you have it already',
  new: 'new to you',
  earlier: 'an earlier version of yours',
  newer: 'newer than yours',
  older: 'older than yours',
  differs: 'differs from yours',
};

export const words = {
  came: (name: string) => `A lesson: “${name}”`,
  noteSays: 'The instructor writes:',
  version: (number: number) => `version ${number}`,
  stands,
  whatChanges: 'What it is, and what it would change',
  leaveOut: 'Leave out',
  keep: (number: number) => (number === 1 ? 'Keep one document' : `Keep ${number} documents`),
  keepNone: 'Nothing is chosen to keep',
  allHere: 'You have all of it already.',
  kept: (number: number) =>
    number === 1
      ? 'One document is kept. Nothing uses it before you choose it.'
      : `${number} documents are kept. Nothing uses them before you choose them.`,
  fly: 'Fly it now',
  flyHint: 'That sets field, aircraft and procedure of the sortie.',
  flown: 'The sortie is set to this lesson.',
} as const;
