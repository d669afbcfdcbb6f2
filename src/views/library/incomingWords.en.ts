/** The words for what came from elsewhere, before it is kept. */

const count = (number: number, one: string, more: string) =>
  number === 1 ? `one ${one}` : `${number} ${more}`;

/** The same at the beginning of a sentence. */
const counted = (number: number, one: string, more: string) =>
  number === 1 ? `One ${one}` : `${number} ${more}`;

/** The parts of a document, by the names of its properties. */
const partNames: Readonly<Partial<Record<string, string>>> = {
  name: 'name',
  about: 'what it is',
  language: 'language',
  translations: 'translations',
  place: 'place',
  numbersFrom: 'north of the numbers',
  calmWindEnd: 'runway for light wind',
  preferredEnds: 'preferred runways',
  radio: 'radio',
  runways: 'runways',
  taxi: 'taxiing',
  engine: 'engine',
  masses: 'masses',
  limits: 'limits',
  takeoff: 'take-off',
  climb: 'climb',
  landing: 'landing',
  load: 'loading',
  stop: 'stopping',
  performance: 'performance',
  handbook: 'the handbook’s table',
  madeFrom: 'class it was started from',
  aircraft: 'aircraft',
  options: 'equipment',
  phases: 'phases',
  lists: 'lists',
  edition: 'version',
  basedOn: 'original',
  source: 'where it comes from',
  doubts: 'what is doubtful',
};

export const words = {
  title: 'What came',
  compareTitle: (name: string) => `Compare ${name}`,
  compareWith: 'With',
  compareNone: 'There is no other to compare it with.',
  compareSame: 'They say the same.',
  compareFailed: 'It is not available right now.',
  compareRead: 'Left of the arrow stands the other, right of it this one.',
  versionOf: (name: string, version: string) => `${name}, ${version}`,
  close: 'Close',
  looking: 'Looking at it',
  refused: 'It cannot be used, and nothing was changed:',
  entry: (number: number, kind: string) =>
    `Entry ${number} of the log${kind === '' ? '' : ` (“${kind}”)`}`,
  noEntry: (entry: string) => `${entry} is damaged: nothing that Lapstrip writes looks like it.`,
  entryLacks: (entry: string, at: string) => `${entry} is damaged: “${at}” is missing.`,
  entryHolds: (entry: string, at: string, value: string) =>
    `${entry} is damaged: “${at}” cannot be ${value}.`,
  kinds: {
    field: 'A field',
    aircraft: 'An aircraft',
    procedure: 'A procedure',
  } as Readonly<Record<string, string>>,
  document: (kind: string, name: string) => `${kind}: “${name}”`,
  steps: (steps: number) => `It has ${count(steps, 'step', 'steps')}.`,
  noAircraft: (code: string) => `It is for the aircraft ${code}, which is not here yet.`,
  same: 'You have the very same already.',
  fresh: 'You have none of its name. It would be one more to choose from.',
  earlier: 'You have the very same already, as an earlier version of yours.',
  other: (name: string) => `You have “${name}” under the same code.`,
  otherOfApp: (name: string) => `The demo has “${name}” under the same code.`,
  ages: { newer: 'This one is newer.', older: 'This one is older.' },
  differs: 'The new one differs:',
  added: (steps: number) => `${counted(steps, 'step', 'steps')} more:`,
  removed: (steps: number) => `${counted(steps, 'step', 'steps')} left out:`,
  changed: (steps: number) => `${counted(steps, 'step', 'steps')} said otherwise:`,
  moved: (steps: number) => `${counted(steps, 'step', 'steps')} in another place.`,
  lists: (lists: number) =>
    `${counted(lists, 'list', 'lists')} new, or with another title or another end:`,
  partNames,
  parts: (parts: string) => `More differs in: ${parts}.`,
  step: (item: string, response: string) => `${item} – ${response}`,
  became: (before: string, after: string) => `${before} → ${after}`,
  saysOfItself: 'It says of itself:',
  aspect: (name: string, before: string, after: string) => `${name}: ${before} → ${after}`,
  aspects: {
    critical: 'critical',
    when: 'applies',
    kind: 'kind',
    until: 'due again until',
    tiedTo: 'ticked with',
    needs: 'builds on',
    gate: 'speed it is passed by',
    gateFt: 'height it is passed at, ft',
    expectS: 'time, seconds',
    note: 'note',
    call: 'words of the call',
  },
  yes: 'yes',
  no: 'no',
  none: 'none',
  always: 'always',
  facts: (facts: number) => `${counted(facts, 'difference', 'differences')}:`,
  optionsDiffer: (options: number) => `${counted(options, 'option differs', 'options differ')}:`,
  notUsed: 'These documents would be added. None is used before you choose it in Sortie:',
  andMore: (more: number) => `and ${more} more`,
  add: 'Add it',
  wasAdded: (name: string) =>
    `“${name}” was added. Nothing uses it before you choose it in Sortie.`,
  beside: 'Keep both',
  overMine: 'Replace mine',
  overDemo: 'Replace the demo’s',
  newest: 'Make it the newest of mine',
  wasPutOver: (name: string) =>
    `“${name}” is in the lists from now on. The one before is still in the Library, and a sortie begun keeps what it has.`,
  part: (part: number, of: number) => `Code ${part} of ${of} was read.`,
  missing: (missing: string) =>
    `Still to be read: ${missing}. Read them with the camera as this one.`,
  record: (sorties: number, entries: number, documents: number) =>
    `A log: ${count(sorties, 'sortie', 'sorties')} with ${count(entries, 'entry', 'entries')}${documents === 0 ? '' : `, and ${count(documents, 'document', 'documents')}`}.`,
  recordHint:
    'What is here already stays as it is; what is not is added. Merged twice it adds nothing.',
  leftOut: (documents: number) =>
    `${counted(documents, 'document', 'documents')} in it cannot be used, and would be left out.`,
  mended: (entries: number) =>
    `${counted(entries, 'entry', 'entries')} had characters that cannot be seen or that mislead: they stand as blanks or as “\ufffd”.`,
  merge: 'Merge it',
  merging: 'Writing it',
  merged: (sorties: number, entries: number, documents: number) =>
    `Added: ${count(entries, 'entry', 'entries')} in ${count(sorties, 'sortie', 'sorties')}${documents === 0 ? '' : `, ${count(documents, 'document', 'documents')}`}.`,
  keptOut: (entries: number) =>
    `Left out: ${count(entries, 'entry', 'entries')}, as ${entries === 1 ? 'it belongs' : 'they belong'} to sorties flown on this device, which a log from elsewhere never changes.`,
  mergedNothing: 'All of it was here already.',
  notMerged: 'The device could not keep it. Nothing was changed.',
} as const;
