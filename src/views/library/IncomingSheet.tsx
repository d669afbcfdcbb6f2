/** What came from elsewhere, by file or link: what it would add, before anything is stored. */

import type { JSX } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { type Incoming, type InRecord, lookAt, mergeIncoming } from '../../board/documents/sharing';
import { openLog } from '../../board/record/log';
import { recall } from '../../board/steps/memory';
import { shownPlainly } from '../../core';
import type { DamagedEntry } from '../../exchange/recordFile';
import { Key } from '../../parts/key/Key';
import { marked } from '../../parts/marked';
import { Problems } from '../../parts/problem/Problems';
import { Sheet } from '../../parts/sheet/Sheet';
import styles from './Bring.module.css';
import { NAMED } from './DifferencesSaid';
import { Against, contentLang, IncomingDocument } from './IncomingDocument';
import { IncomingLesson } from './IncomingLesson';
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
        {incoming?.kind === 'lesson' && <IncomingLesson incoming={incoming} />}
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

/** The documents of a log that are not here yet, each with what it would change. */
function Documents({ documents }: { documents: readonly InRecord[] }) {
  return (
    <>
      {documents.slice(0, NAMED).map(({ kind, content, against }, index) => (
        <section key={index}>
          <h3 class={styles.name}>
            {marked(
              contentLang(content),
              (itself) => words.document(words.kinds[kind] ?? '', itself),
              content.name,
            )}
          </h3>
          <Against against={against} lang={contentLang(content)} />
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
