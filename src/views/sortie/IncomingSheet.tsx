/** What came from elsewhere, by a file or a link: what it would add, before anything is kept. */

import type { JSX } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { aircraft } from '../../board/documents';
import { langOf, shownText } from '../../board/language';
import { openLog } from '../../board/log';
import { recall } from '../../board/memory';
import {
  type AgainstOwn,
  type Incoming,
  keepIncoming,
  lookAt,
  mergeIncoming,
} from '../../board/sharing';
import { languageOf } from '../../core';
import { Key } from '../../parts/key/Key';
import { marked } from '../../parts/marked';
import { Sheet } from '../../parts/sheet/Sheet';
import styles from './Bring.module.css';
import { words as documentWords } from './documentWords.en';
import { words } from './incomingWords.en';

interface IncomingSheetProps {
  /** A file, or what follows `#` in a link. */
  readonly from: File | string;
  readonly onClose: () => void;
}

/** The sheet of what came. */
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

function IncomingDocument({ incoming }: { incoming: Extract<Incoming, { kind: 'document' }> }) {
  const [isAdded, setAdded] = useState(false);
  const { document, against, steps } = incoming;
  const { name } = document.content;
  const about = shownText(document.content, document.content.about);
  const lang = 'phases' in document.content ? langOf(languageOf(document.content)) : undefined;
  const kind = words.kinds[document.kind] ?? '';
  const flown = 'phases' in document.content ? document.content.aircraft : null;
  const isMissing = flown !== null && !aircraft.value.some(({ code }) => code === flown);
  return (
    <>
      <h3 class={styles.name}>{marked(lang, (itself) => words.document(kind, itself), name)}</h3>
      <p lang={about.lang}>{about.text}</p>
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

/** So many steps are named of each kind of difference. */
const NAMED = 12;

interface ListedProps {
  readonly title: string;
  readonly lines: readonly string[];
  /** What `lang` has to say of the lines. */
  readonly lang: string | undefined;
}

function Listed({ title, lines, lang }: ListedProps) {
  if (lines.length === 0) return null;
  return (
    <>
      <h4>{title}</h4>
      <ul class={styles.differences}>
        {lines.slice(0, NAMED).map((line, index) => (
          <li key={index} lang={lang}>
            {line}
          </li>
        ))}
        {lines.length > NAMED && <li>{words.andMore(lines.length - NAMED)}</li>}
      </ul>
    </>
  );
}

function Against({ against, lang }: { against: AgainstOwn; lang: string | undefined }) {
  if (against.kind === 'same') return <p>{words.same}</p>;
  if (against.kind === 'new') return <p>{words.fresh}</p>;
  const { name, steps, parts } = against;
  const lineOf = ({ item, response }: { item: string; response: string }) =>
    words.step(item, response);
  const others = parts.filter((part) => steps === null || (part !== 'phases' && part !== 'lists'));
  return (
    <>
      <p>{marked(lang, words.other, name)}</p>
      {steps !== null && (
        <>
          <Listed
            title={words.added(steps.added.length)}
            lines={steps.added.map(lineOf)}
            lang={lang}
          />
          <Listed
            title={words.removed(steps.removed.length)}
            lines={steps.removed.map(lineOf)}
            lang={lang}
          />
          <Listed
            title={words.changed(steps.changed.length)}
            lang={lang}
            lines={steps.changed.map(({ before, after }) =>
              words.became(lineOf(before), lineOf(after)),
            )}
          />
          {steps.moved > 0 && <p>{words.moved(steps.moved)}</p>}
          <Listed title={words.lists(steps.lists.length)} lines={steps.lists} lang={lang} />
        </>
      )}
      {others.length > 0 && (
        <p>{words.parts(others.map((part) => words.partNames[part] ?? part).join(', '))}</p>
      )}
    </>
  );
}

function IncomingRecord({ incoming }: { incoming: Extract<Incoming, { kind: 'record' }> }) {
  const [said, setSaid] = useState<string | null>(null);
  const { record, sorties, leftOut } = incoming;
  const merge = () => {
    setSaid(words.merging);
    mergeIncoming(record).then(
      (merged) => {
        const { entries, documents } = merged;
        setSaid(
          entries + documents === 0
            ? words.mergedNothing
            : words.merged(merged.sorties, entries, documents),
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
