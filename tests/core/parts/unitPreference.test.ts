/**
 * Every length, mass and pressure on a screen goes through parts/units, so that the pilot's choice of
 * units forgets no place. Names carry their unit (`runM`, `fuelKg`, `qnhHpa`), so a number that is
 * formatted past parts/units, and a unit written out in words, can be found in the text of the modules.
 */

import { expect, test } from 'vitest';

const modules = import.meta.glob<string>(
  ['../../../src/{parts,views,shell,board}/**/*.{ts,tsx}', '!../../../src/parts/{units,digits}.ts'],
  { eager: true, query: '?raw', import: 'default' },
);

/** A unit written behind a number or in a label: "${m} m", "Fuel, kg", "850 to 1085 hPa". */
const WRITTEN_OUT = new RegExp(
  [
    String.raw`(?:\}|\d)(?: |\u00a0|\$\{NO_BREAK_SPACE\})?-?(?:m|kg|hPa|inHg|lb)(?![\w/²³·=-])`,
    String.raw`(?:, |['"\x60])(?:m|kg|hPa|inHg|lb)['"\x60]`,
  ].join('|'),
);

/** The same in letters, in a catalogue of words. */
const IN_LETTERS =
  /\b(?:metres|kilograms|pounds|hectopascals|Metern?|Kilogramm|Pfund|Hektopascal)\b/i;

/** A number of metres, kilograms or hectopascals formatted past parts/units; an arm is none. */
const FORMATTED_PAST = new RegExp(
  [
    String.raw`\b(?:wholeNumber|decimal|asWritten|plainNumber|againstLimit)\((?:[^()]|\([^()]*\))*?(?<!\barm)(?:M|Kg|Hpa|\bkg|metres)\b(?![ (]*[/(])`,
    String.raw`(?:M|Kg|Hpa)\.to(?:Fixed|String)\b`,
  ].join('|'),
);

/** A number put into a sentence without being formatted. */
const PUT_IN = /\$\{[\w.?]*(?:M|Kg|Hpa)\}/;

const isBad = (file: string, line: string): boolean =>
  (/\.tsx?$/.test(file) && WRITTEN_OUT.test(line) && !IS_TYPE.test(line)) ||
  (/\.(?:en|de)\.ts$/.test(file) && (IN_LETTERS.test(line) || PUT_IN.test(line))) ||
  FORMATTED_PAST.test(line);

/** A unit as core names it, handed to parts/units or in a type. */
const IS_TYPE =
  /(?:Figure<|unitFor\(|inShown\(.*|fromShown\(.*|unit=|unit === |unit: |case |Unit = .*\|.*)['"](?:m|kg|hPa|inHg|lb)['"]/;

/**
 * What may: a report's groups are explained in the units they came in, a document's editor writes the
 * document's own, arms of the load sheet are the document's too, speech turns written units into
 * spoken ones, and the choice itself names them.
 */
const ALLOWED: readonly (readonly [file: RegExp, why: string, line?: RegExp])[] = [
  [/views\/wind\/report\/meaningWords/, 'a report’s own units'],
  [/views\/wind\/report\/words/, 'visibility is reported in metres', /isibility|Sicht /],
  [
    /views\/sortie\/words|parts\/verdict\/told/,
    'visibility is reported in metres',
    /isibility|Sicht|const seen/,
  ],
  [/views\/fieldEditor\//, 'a document’s own units'],
  [/views\/aircraftEditor\/figureUnit/, 'the units of a handbook'],
  [/views\/why\/words/, 'a formula in SI', /1 kt|m\/s|15\.24 m|kilometre|Kilometer/],
  [
    /views\/load\/(words|EnvelopePlot)/,
    'arms',
    /arm|Arm|Hebel|NO_BREAK_SPACE\}m|aft of the datum|Bezugsebene/,
  ],
  [/views\/voice\//, 'units as they are said'],
  [
    /parts\/starter\//,
    'a step’s text, turned where it is read',
    /'(?:\{fuelKg\}|(?:new|neu): \{massKg\}) kg'/,
  ],
  [/parts\/problem\/words/, 'a document’s own units', /\{0\} (m|kg)/],
  [/board\/record\/sealing|views\/log\/table/, 'the log and its table keep core’s units'],
  [/views\/\w+\/unitWords/, 'the choice itself'],
  [/views\/taxi\/route\.(en|de)/, 'units as they are said', /unitFor\('m'\)/],
];

const isComment = (line: string) => /^\s*(?:\/?\*|\/\/)/.test(line);

const found = (file: string, text: string): readonly string[] =>
  text
    .split('\n')
    .filter((line) => !isComment(line))
    .filter((line) => isBad(file, line))
    .filter(
      (line) =>
        !ALLOWED.some(
          ([where, , what]) => where.test(file) && (what === undefined || what.test(line)),
        ),
    )
    .map((line) => `${file.replace('../../../', '')}: ${line.trim()}`);

test('the search finds what it looks for', () => {
  const bad = [
    // biome-ignore lint/suspicious/noTemplateCurlyInString: it is code to be found.
    'leftOver: (m: string) => `${m} m left`,',
    // biome-ignore lint/suspicious/noTemplateCurlyInString: it is code to be found.
    'kg: (kg: string) => `${kg}${NO_BREAK_SPACE}kg`,',
    "fuelKg: 'Fuel, kg',",
    "badQnh: '850 to 1085 hPa',",
    'words.way(names, wholeNumber(one.lengthM))',
    'words.loaded(wholeNumber(takeoffMassKg.value))',
    'return decimal(brief.qnhHpa, 0);',
  ];
  for (const line of bad) expect(found('a.en.ts', line)).toHaveLength(1);
  const good = [
    'length(one.lengthM)',
    "elevation: 'Elevation, ft',",
    'wholeNumber(end.headwindKt)',
    'armM !== undefined && <td>{decimal(armM, 2)}</td>',
    'words.litres(wholeNumber(fuelKg / densityKgPerL))',
  ];
  for (const line of good) expect(found('a.en.ts', line)).toEqual([]);
});

test('no length, mass or pressure is written past the pilot’s choice of units', () => {
  expect(Object.keys(modules).length).toBeGreaterThan(300);
  expect(Object.entries(modules).flatMap(([file, text]) => found(file, text))).toEqual([]);
});

test('no exception is left without what it is for', () => {
  for (const [where, why, what] of ALLOWED) {
    const used = Object.entries(modules).some(
      ([file, text]) =>
        where.test(file) &&
        text
          .split('\n')
          .some(
            (line) =>
              !isComment(line) && isBad(file, line) && (what === undefined || what.test(line)),
          ),
    );
    expect([why, String(where), used || /unitWords/.test(String(where))]).toEqual([
      why,
      String(where),
      true,
    ]);
  }
});
