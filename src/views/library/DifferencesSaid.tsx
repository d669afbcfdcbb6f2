/** How two documents of one kind differ, line by line; what removes safeguards comes first. */

import type { JSX } from 'preact';
import type { Differences } from '../../board/documents/comparing';
import type { OptionDifference, ProcedureOption, Step } from '../../core';
import { aspectsThatDiffer, type StepAspect } from '../../exchange/differences';
import { phaseWords } from '../../parts/procedure';
import { quoted } from '../../parts/quoted/Quoted';
import { conditionSaid, textWritten } from '../../parts/stepText';
import { stepWords } from '../../parts/stepTextWords';
import styles from './Bring.module.css';
import { factSaid } from './factSaid';
import { words } from './incomingWords';

/** How many lines of each kind of difference are listed. */
export const NAMED = 40;

interface ListedProps {
  readonly title: string;
  readonly lines: readonly string[];
  /** The `lang` of the lines. */
  readonly lang?: string | undefined;
}

function Listed({ title, lines, lang }: ListedProps) {
  if (lines.length === 0) return null;
  return (
    <section>
      <h4 class={styles.kind}>{title}</h4>
      <ul class={styles.differences}>
        {lines.slice(0, NAMED).map((line, index) => (
          <li key={index} lang={lang}>
            {line}
          </li>
        ))}
        {lines.length > NAMED && <li>{words.andMore(lines.length - NAMED)}</li>}
      </ul>
    </section>
  );
}

type Options = readonly ProcedureOption[];

/** An option that differs: whether it is fitted, and its name if that changed. */
function optionLine({ before, after }: OptionDifference): string {
  const fitted = (option: ProcedureOption | null) =>
    option === null ? words.none : option.fitted ? words.yes : words.no;
  const [was = '', is = was] = [before, after].flatMap((option) => option?.name ?? []);
  const name = was === is ? is : words.became(was, is);
  return words.aspect(name, fitted(before), fitted(after));
}

const stepLine = ({ item, response }: Pick<Step, 'item' | 'response'>) =>
  words.step(textWritten(item), textWritten(response));

/** A step, and what decides whether and how it is ticked. */
function lineOf({ item, response, critical, when }: Step, options: Options): string {
  const about = [
    ...(critical ? [stepWords.critical] : []),
    ...(when === undefined ? [] : [stepWords.when(conditionSaid(when, options))]),
  ];
  const line = stepLine({ item, response });
  return about.length === 0 ? line : `${line} (${about.join(', ')})`;
}

function aspectOf(step: Step, name: StepAspect, options: Options): string {
  if (name === 'when') {
    return step.when === undefined ? words.always : conditionSaid(step.when, options);
  }
  if (name === 'critical') return step.critical ? words.yes : words.no;
  if (name === 'kind') return stepWords.kinds[step.kind];
  if (name === 'until') return step.until === undefined ? words.none : phaseWords[step.until];
  const value = step[name];
  return value === undefined ? words.none : quoted(textWritten(String(value)));
}

interface Pair {
  readonly before: Step;
  readonly after: Step;
}

/** A step that differs: how it reads, and each aspect that changed. */
function becameLine({ before, after }: Pair, options: Options): string {
  const [was, is] = [before, after].map(stepLine);
  return [
    was === is ? is : words.became(was ?? '', is ?? ''),
    ...aspectsThatDiffer(before, after).map((name) =>
      words.aspect(
        words.aspects[name],
        aspectOf(before, name, options),
        aspectOf(after, name, options),
      ),
    ),
  ].join('; ');
}

/** What removes safeguards comes first: nobody reads the fortieth line like the first. */
const byWeight = (one: Pair, other: Pair) => weightOf(other) - weightOf(one);
function weightOf({ before, after }: Pair): number {
  if (before.critical && !after.critical) return 2;
  return aspectsThatDiffer(before, after).includes('when') ? 1 : 0;
}

const criticalFirst = (one: Step, other: Step) =>
  Number(other.critical ?? false) - Number(one.critical ?? false);

interface DifferencesProps {
  readonly of: Differences;
  /** The `lang` of the documents' own words. */
  readonly lang: string | undefined;
}

/** The lists of what differs. */
export function DifferencesSaid({
  of: { facts, parts, steps, fitted, options },
  lang,
}: DifferencesProps): JSX.Element {
  const lines = (listed: readonly Step[]) =>
    listed.toSorted(criticalFirst).map((step) => lineOf(step, options));
  return (
    <>
      {steps !== null && (
        <>
          <Listed
            title={words.changed(steps.changed.length)}
            lang={lang}
            lines={steps.changed.toSorted(byWeight).map((pair) => becameLine(pair, options))}
          />
          <Listed
            title={words.removed(steps.removed.length)}
            lines={lines(steps.removed)}
            lang={lang}
          />
          <Listed title={words.added(steps.added.length)} lines={lines(steps.added)} lang={lang} />
          {steps.moved > 0 && <p>{words.moved(steps.moved)}</p>}
          <Listed title={words.lists(steps.lists.length)} lines={steps.lists} lang={lang} />
        </>
      )}
      <Listed title={words.facts(facts.length)} lines={facts.map(factSaid)} />
      {parts.length > 0 && (
        <p>{words.parts(parts.map((part) => words.partNames[part] ?? part).join(', '))}</p>
      )}
      <Listed
        title={words.optionsDiffer(fitted.length)}
        lang={lang}
        lines={fitted.map(optionLine)}
      />
    </>
  );
}
