/** What came from elsewhere, by file or link: what it would add, before anything is stored. */

import type { JSX } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { listedAircraft } from '../../board/documents/documents';
import {
  type AgainstOwn,
  type Incoming,
  type InRecord,
  keepIncoming,
  lookAt,
  mergeIncoming,
} from '../../board/documents/sharing';
import { langOf, shownText } from '../../board/language';
import { openLog } from '../../board/record/log';
import { recall } from '../../board/steps/memory';
import {
  languageOf,
  type OptionDifference,
  type ProcedureOption,
  type Step,
  shownPlainly,
} from '../../core';
import { aspectsThatDiffer, type StepAspect } from '../../exchange/differences';
import type { DamagedEntry } from '../../exchange/recordFile';
import { Key } from '../../parts/key/Key';
import { marked } from '../../parts/marked';
import { phaseWords } from '../../parts/procedure';
import { QuotedPassage, quoted } from '../../parts/quoted/Quoted';
import { Sheet } from '../../parts/sheet/Sheet';
import { conditionSaid, textWritten } from '../../parts/stepText';
import { stepWords } from '../../parts/stepTextWords';
import styles from './Bring.module.css';
import { words as documentWords } from './documentWords';
import { words } from './incomingWords';

interface IncomingSheetProps {
  /** A file, or what follows `#` in a link. */
  readonly from: File | string;
  readonly onClose: () => void;
}

/** The sheet for what came in. */
export function IncomingSheet({ from, onClose }: IncomingSheetProps): JSX.Element {
  const [incoming, setIncoming] = useState<Incoming | null>(null);
  useEffect(() => {
    void lookAt(from).then(setIncoming);
  }, [from]);
  return (
    <Sheet title={words.title} close={words.close} onClose={onClose}>
      <div class={styles.incoming}>
        {incoming === null && <p role="status">{words.looking}</p>}
        {incoming?.kind === 'refused' && (
          <>
            <p class={styles.refused}>{words.refused}</p>
            <ul>
              {incoming.problems.map(({ at, what }) => (
                <li key={at + what}>{documentWords.problem(at, what)}</li>
              ))}
            </ul>
          </>
        )}
        {incoming?.kind === 'damaged' && (
          <>
            <p class={styles.refused}>{words.refused}</p>
            <p>{damageSaid(incoming.entry)}</p>
          </>
        )}
        {incoming?.kind === 'part' && (
          <>
            <p class={styles.name}>{words.part(incoming.part, incoming.of)}</p>
            <p>{words.missing(incoming.missing.join(', '))}</p>
          </>
        )}
        {incoming?.kind === 'document' && <IncomingDocument incoming={incoming} />}
        {incoming?.kind === 'record' && <IncomingRecord incoming={incoming} />}
      </div>
    </Sheet>
  );
}

/** How much of an entry's content is shown, characters. */
const SHOWN = 60;

/** Which entry of a log is unusable, and why. */
function damageSaid({ number, kind, misfit }: DamagedEntry): string {
  const shown = (text: string) => shownPlainly(text, SHOWN);
  const which = words.entry(number, shown(kind));
  if (misfit === null) return words.noEntry(which);
  const at = shown(misfit.at);
  if (at === '') return words.noEntry(which);
  return misfit.value === undefined
    ? words.entryLacks(which, at)
    : words.entryHolds(which, at, shown(JSON.stringify(misfit.value)));
}

function IncomingDocument({ incoming }: { incoming: Extract<Incoming, { kind: 'document' }> }) {
  const [isAdded, setAdded] = useState(false);
  const { document, against, steps } = incoming;
  const { name } = document.content;
  const about = shownText(document.content, document.content.about);
  const lang = 'phases' in document.content ? langOf(languageOf(document.content)) : undefined;
  const kind = words.kinds[document.kind] ?? '';
  const flown = 'phases' in document.content ? document.content.aircraft : null;
  const isMissing = flown !== null && !listedAircraft.value.some(({ code }) => code === flown);
  return (
    <>
      <h3 class={styles.name}>{marked(lang, (itself) => words.document(kind, itself), name)}</h3>
      {about.text !== '' && (
        <>
          <p>{words.saysOfItself}</p>
          <QuotedPassage lang={about.lang}>{quoted(about.text)}</QuotedPassage>
        </>
      )}
      {steps !== null && <p>{words.steps(steps)}</p>}
      {isMissing && <p>{words.noAircraft(flown)}</p>}
      <Against against={against} lang={lang} />
      {against.kind !== 'same' && !isAdded && (
        <div>
          <Key
            look="pick"
            onPress={() => {
              setAdded(true);
              void keepIncoming(document);
            }}
          >
            {words.add}
          </Key>
        </div>
      )}
      <p role="status">{isAdded && marked(lang, words.wasAdded, name)}</p>
    </>
  );
}

/** How many lines of each kind of difference are listed. */
const NAMED = 40;

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

function Against({ against, lang }: { against: AgainstOwn; lang: string | undefined }) {
  if (against.kind === 'same') return <p>{words.same}</p>;
  if (against.kind === 'new') return <p>{words.fresh}</p>;
  const { name, steps, parts, values, fitted, options } = against;
  const others = parts.filter((part) => steps === null || (part !== 'phases' && part !== 'lists'));
  const lines = (listed: readonly Step[]) =>
    listed.toSorted(criticalFirst).map((step) => lineOf(step, options));
  return (
    <>
      <p>{marked(lang, words.other, name)}</p>
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
      {others.length > 0 && (
        <p>{words.parts(others.map((part) => words.partNames[part] ?? part).join(', '))}</p>
      )}
      <Listed
        title={words.optionsDiffer(fitted.length)}
        lang={lang}
        lines={fitted.map(optionLine)}
      />
      <Listed
        title={words.values(values.length)}
        lines={values.map(({ at, before, after }) =>
          words.aspect(at, before ?? words.none, after ?? words.none),
        )}
      />
    </>
  );
}

/** The documents of a log that are not here yet, each with what it would change. */
function Documents({ documents }: { documents: readonly InRecord[] }) {
  return (
    <>
      {documents.slice(0, NAMED).map(({ kind, content, against }, index) => (
        <section key={index}>
          <h3 class={styles.name}>
            {marked(
              'phases' in content ? langOf(languageOf(content)) : undefined,
              (itself) => words.document(words.kinds[kind] ?? '', itself),
              content.name,
            )}
          </h3>
          <Against
            against={against}
            lang={'phases' in content ? langOf(languageOf(content)) : undefined}
          />
        </section>
      ))}
      {documents.length > NAMED && <p>{words.andMore(documents.length - NAMED)}</p>}
    </>
  );
}

function IncomingRecord({ incoming }: { incoming: Extract<Incoming, { kind: 'record' }> }) {
  const [said, setSaid] = useState<string | null>(null);
  const { record, sorties, documents, leftOut, mended } = incoming;
  const merge = () => {
    setSaid(words.merging);
    mergeIncoming(record).then(
      (merged) => {
        const { entries, documents } = merged;
        const { leftOut } = merged;
        setSaid(
          [
            ...(entries + documents > 0 ? [words.merged(merged.sorties, entries, documents)] : []),
            ...(leftOut > 0 ? [words.keptOut(leftOut)] : []),
          ].join(' ') || words.mergedNothing,
        );
        void openLog().catch(() => undefined);
        void recall(true);
      },
      () => setSaid(words.notMerged),
    );
  };
  return (
    <>
      <p class={styles.name}>
        {words.record(sorties, record.entries.length, record.documents.length)}
      </p>
      <p>{words.recordHint}</p>
      {leftOut > 0 && <p>{words.leftOut(leftOut)}</p>}
      {mended > 0 && <p>{words.mended(mended)}</p>}
      {documents.length > 0 && <p>{words.notUsed}</p>}
      <Documents documents={documents} />
      {said === null && (
        <div>
          <Key look="pick" onPress={merge}>
            {words.merge}
          </Key>
        </div>
      )}
      <p role="status">{said}</p>
    </>
  );
}
