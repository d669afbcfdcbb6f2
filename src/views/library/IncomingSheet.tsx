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
  putOver,
} from '../../board/documents/sharing';
import { langOf, shownText } from '../../board/language';
import { openLog } from '../../board/record/log';
import { recall } from '../../board/steps/memory';
import { languageOf, shownPlainly } from '../../core';
import type { DamagedEntry } from '../../exchange/recordFile';
import { Key } from '../../parts/key/Key';
import { Keys } from '../../parts/key/Keys';
import { marked } from '../../parts/marked';
import { Problems } from '../../parts/problem/Problems';
import { QuotedPassage, quoted } from '../../parts/quoted/Quoted';
import { Sheet } from '../../parts/sheet/Sheet';
import styles from './Bring.module.css';
import { DifferencesSaid, NAMED } from './DifferencesSaid';
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
            <Problems of={incoming.problems} />
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
  const [done, setDone] = useState<'added' | 'over' | null>(null);
  const { document, against, steps } = incoming;
  const { name } = document.content;
  const about = shownText(document.content, document.content.about);
  const lang = 'phases' in document.content ? langOf(languageOf(document.content)) : undefined;
  const kind = words.kinds[document.kind] ?? '';
  const flown = 'phases' in document.content ? document.content.aircraft : null;
  // A procedure of one's own never takes the place of the app's: it has a name of its own.
  const mayBeOver = against.kind === 'other' && (against.isOwn || document.kind !== 'procedure');
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
      {against.kind !== 'same' && done === null && (
        <Keys>
          {against.kind !== 'earlier' && (
            <Key
              look={mayBeOver ? 'plain' : 'pick'}
              onPress={() => {
                setDone('added');
                void keepIncoming(document);
              }}
            >
              {mayBeOver ? words.beside : words.add}
            </Key>
          )}
          {(mayBeOver || against.kind === 'earlier') && (
            <Key
              onPress={() => {
                setDone('over');
                void putOver(document, against.kind === 'other' ? against.listed : null);
              }}
            >
              {against.kind === 'earlier'
                ? words.newest
                : against.isOwn
                  ? words.overMine
                  : words.overDemo}
            </Key>
          )}
        </Keys>
      )}
      <p role="status">
        {done === 'added' && marked(lang, words.wasAdded, name)}
        {done === 'over' && marked(lang, words.wasPutOver, name)}
      </p>
    </>
  );
}

function Against({ against, lang }: { against: AgainstOwn; lang: string | undefined }) {
  if (against.kind === 'same') return <p>{words.same}</p>;
  if (against.kind === 'new') return <p>{words.fresh}</p>;
  if (against.kind === 'earlier') return <p>{words.earlier}</p>;
  const { listed, isOwn, age, differences } = against;
  return (
    <>
      <p>
        {marked(lang, isOwn ? words.other : words.otherOfApp, listed.name)}{' '}
        {age !== null && `${words.ages[age]} `}
        {words.differs}
      </p>
      <DifferencesSaid of={differences} lang={lang} />
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
