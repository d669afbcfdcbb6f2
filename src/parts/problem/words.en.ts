/** What can be wrong with a document from outside, as sentences. */

import type { DocumentProblem, FormProblem, ShapeProblem } from '../../core';
import type { JsonFaultCode } from '../../exchange/jsonFault';
import { filled } from '../filled';

export const faults: Record<string, string> = {
  'too-long': 'The file is larger than any field, aircraft or procedure.',
  'not-json': 'The file is not JSON, or it is cut short.',
  'too-deep': 'Its parts stand in one another deeper than in any file of Lapstrip.',
  'too-many': 'It has more parts than any file of Lapstrip.',
  'too-slow': 'Reading it took too long, and was stopped.',
  'not-ours': 'The file does not say whether it is a field, an aircraft or a procedure.',
  'not-read': 'The file could not be read.',
  'link-cut': 'The link is cut short or damaged. Ask for it again, or for the file.',
  'record-too-large': 'The file is larger than 50 MB, which no log of Lapstrip is.',
  'record-version': 'The log was written by another version of Lapstrip.',
  'record-damaged': 'The log is damaged: something in it is no entry or no document.',
  'text-control': 'the text holds a line break or another control character',
  'text-direction': 'the text holds a character that turns the order of others about',
  'text-invisible': 'the text holds a character that cannot be seen, or nothing that can',
  'text-marks': 'the text holds marks stacked on one letter, or a mark on none',
  'designator-twice': 'two ends have one designator',
  'ends-not-opposite': 'the numbers of the two ends are not opposite',
  'ends-at-one-point': 'both ends lie at one point',
  'toda-below-tora': 'TODA, {0} m, is less than TORA, {1} m',
  'asda-below-tora': 'ASDA, {0} m, is less than TORA, {1} m',
  'threshold-beyond-runway': 'the threshold lies {0} m in, beyond the far end at {1} m',
  'end-unknown': 'the field has no such runway end',
  'runway-unknown': 'the field has no such runway',
  'node-twice': 'two points have one name',
  'node-unknown': 'there is no such point',
  'edge-to-itself': 'a taxiway leads to where it begins',
  'out-of-order': '{0} is less than the {1} that it must reach',
  'limit-grows': 'the limit is {0} kt, higher than the {1} kt on a better surface',
  'gate-above-limit': '{0} kt lies above the limit of {1} kt',
  'gate-without-limit': 'the speed has no limit',
  'reheat-without-engine': 'the engine has no reheat',
  'arm-missing': 'the arm is missing, and other masses have one',
  'envelope-without-arms': 'there is an envelope, but no mass has an arm',
  'envelope-not-simple': 'the edges of the envelope cross, or hold nothing',
  'station-twice': 'two stations have one name',
  'station-unknown': 'there is no such station',
  'choice-twice': 'two choices of the station weigh the same',
  'beyond-station': '{0} kg is more than the {1} kg the station carries',
  'not-a-choice': 'the station cannot carry just that much',
  'preset-not-within': 'the preset is over a limit, or outside the envelope',
  'not-usual': 'it adds up to {0} kg, and the usual mass is {1} kg',
  'landing-fuel-over': '{0} kg is more than the {1} kg the tanks hold',
  'thrust-not-of-engine': 'the thrust is not that of such an engine',
  'thrust-out-of-order': 'the speeds of the thrust do not rise',
  'thrust-too-short': 'the thrust is not given up to the speeds that are flown',
  'stall-above-lift-off': 'it would stall at {0} kt, and lifts off at {1}',
  'approach-not-of-wing':
    'the wing gives an approach speed of {0} kt, the book {1}: more than 3 % apart',
  'rotates-downwards': 'it rotates to less than it stands at',
  'braking-grows': 'the brakes hold better on a worse surface',
  'gear-without-limit': 'gear that comes up has no limit speed',
  'gear-tips': 'it would tip over as it stands',
  'run-not-of-book': 'the physics gives a run of {0} m, the book {1} m: more than 5 % apart',
  'landing-run-not-of-book':
    'the physics gives a landing run of {0} m, the book {1} m: more than 5 % apart',
  'rotates-below-control':
    'it rotates at {0} kt, below {1}, which is 1.05 of its minimum control speed',
  'rotates-below-stall': 'it rotates at {0} kt, below {1}, which is 1.05 of the stall',
  'phase-twice': 'the phase stands there twice',
  'phase-out-of-order': 'the phases are not in the order they are flown',
  'list-twice': 'the list stands there twice',
  'step-twice': 'two steps have one name',
  'live-name-unknown': 'there is no live number of that name',
  'gate-without-speed': 'a gate needs its speed or its height',
  'gate-twice': 'a gate has a speed or a height, and not both',
  'speed-without-gate': 'only a gate has a speed or a height',
  'call-without-say': 'only what is said has a call',
  'fact-unknown': 'there is no fact of that name to ask for',
  'condition-unknown':
    'that is no condition: it asks for a fact, a wind or an option, or joins some',
  'condition-too-deep': 'the conditions stand in one another too deep',
  'name-reserved': 'no option and no station can be stored under this name',
  'option-twice': 'two options have one name',
  'option-unknown': 'the procedure names no such option',
  'barrier-in-motion': 'on the roll and in the climb nobody can wait at a runway check',
  'barrier-in-list': 'a list has no runway check: nothing in it is let through or not',
  'barrier-first': 'nothing stands before the runway check',
  'tied-off-roll': 'only a step of the roll goes with the brakes',
  'until-before': 'it counts until a phase that is past when it is reached',
  'needs-unknown': 'no phase has the step that it builds on',
  'needs-in-phase': 'only a step of a list builds on another',
  'time-without-wait': 'only a wait has a time',
};

/** What can be wrong with the shape of a document. */
const shapes: Readonly<Record<ShapeProblem | FormProblem, string>> = {
  'shape-missing': 'it is missing',
  'shape-unknown-name': 'nothing of that name belongs there',
  'shape-not-number': 'it must be a number',
  'shape-not-text': 'it must be a text in quotation marks',
  'shape-not-list': 'it must be a list, in [ ]',
  'shape-not-group': 'it must be a group, in { }',
  'shape-not-yes-no': 'it must be true or false',
  'shape-not-one-of': 'it must be {allowed}',
  'shape-too-low': 'it must be at least {allowed}',
  'shape-too-high': 'it must be at most {allowed}',
  'shape-not-whole': 'it must be a whole number',
  'shape-empty': 'it must not be empty',
  'shape-too-long': 'it must have no more than {allowed} characters',
  'shape-too-few': 'there must be at least {allowed}',
  'shape-too-many': 'there must be no more than {allowed}',
  'shape-not-of-form': 'it is not written as it must be',
  'form-point': 'the name of a point has up to 16 letters, digits and hyphens',
  'form-frequency': 'a frequency is written in MHz with a point: "118.705"',
  'form-field-code': 'the code of a field is written in capitals and digits, such as "XHAR"',
  'form-name': 'a short name has lower-case letters, digits and hyphens only: "seat-pins"',
  'form-hash': 'it must be the 16 digits and letters, 0 to 9 and a to f, that name the original',
  'form-designator': 'a runway end is written 01 to 36, with L, C or R for parallels: "09L"',
  'form-language': 'a language is written "de" or "pt-BR"',
  'form-time': 'a time is written "1987-04-05T18:50:00Z"',
  'leads-nowhere':
    'it must be "return" (to the place that was left), "end" (of the sortie), or {"phase": …, "reopen": […]}',
};

/** Why a text is no JSON, told of the place where it stops being it. */
const broken: Readonly<Record<JsonFaultCode, string>> = {
  'json-none': 'this is no JSON; a file of Lapstrip begins with {',
  'json-cut-short': 'the file ends here before its brackets are closed: it is cut short',
  'json-curly-quotes': 'this quotation mark is curly; it must be straight: "',
  'json-single-quotes': 'this quotation mark is single; it must be double: "',
  'json-decimal-comma': 'this is a decimal comma; it must be a point',
  'json-comma-missing': 'a comma is missing here',
  'json-comma-too-many': 'this comma is one too many',
  'json-colon-missing': 'a colon is missing here',
  'json-quote-missing':
    'a text begins here, and its second quotation mark is missing from the line',
  'json-name-bare': 'this name must stand in quotation marks',
  'json-value-missing': 'a value is missing here',
  'json-word': 'this must be true, false, null, a number, or a text in quotation marks',
  'json-number': 'this number must be written like 120, 0.5 or -3',
  'json-comment': 'this is a comment, which JSON does not have; it must go',
  'json-bracket': 'this bracket does not close the one that is open',
  'json-backslash': 'there is a backslash in this text that stands for nothing; write two of them',
  'json-control': 'there is a tab or another control character in this text; it must go',
  'json-after-end': 'the file has ended before this; what follows must go',
  'json-wrong': 'this is no JSON',
};

/** What is wrong: a code with its figures behind it. */
function said(what: string): string {
  const [code = '', ...figures] = what.split(' ');
  const sentence = { ...faults, ...shapes, ...broken }[code];
  return sentence === undefined ? what : filled(sentence, figures);
}

const joined = (values: readonly string[]) =>
  new Intl.ListFormat('en', { type: 'disjunction' }).format(values);

export const words = {
  /** A problem as a sentence: where it is, what must be there, and what stands there instead. */
  problem: ({ at, what, given, allowed = [], line, column }: DocumentProblem): string => {
    const place = [
      ...(line === undefined
        ? []
        : [column === undefined ? `Line ${line}` : `Line ${line}, character ${column}`]),
      ...(at === '' ? [] : [at]),
    ].join(', ');
    const sentence = said(what).replace('{allowed}', joined(allowed));
    const instead = given === undefined ? '' : `, not ${given}`;
    return `${place}${place === '' ? '' : ': '}${sentence}${instead}`;
  },
} as const;
