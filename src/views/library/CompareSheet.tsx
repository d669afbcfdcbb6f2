/** Comparing a document with any other of its kind: an older version, the demo's, or another. */

import type { JSX } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { type Differences, differencesOf } from '../../board/documents/comparing';
import { all, earlier, type Listed, listedBy } from '../../board/documents/documents';
import { keptBy, versionsOf } from '../../board/documents/ownDocuments';
import { nameLang } from '../../board/language';
import type { Hash } from '../../core';
import { Pick } from '../../parts/field/Pick';
import { utcDate } from '../../parts/format';
import { marked } from '../../parts/marked';
import { Sheet } from '../../parts/sheet/Sheet';
import styles from './Bring.module.css';
import { DifferencesSaid } from './DifferencesSaid';
import { words } from './incomingWords';
import { words as libraryWords } from './words';

/** The sheet for a document. */
export function CompareSheet({ hash, onClose }: { hash: Hash; onClose: () => void }): JSX.Element {
  const listed = listedBy(hash);
  const others = listed === undefined ? [] : candidatesFor(listed);
  const [other, setOther] = useState<Hash | null>(others[0]?.hash ?? null);
  const lang = nameLang(listed);
  return (
    <Sheet
      title={marked(lang, words.compareTitle, listed?.name ?? '')}
      close={words.close}
      onClose={onClose}
    >
      <div class={styles.incoming}>
        {other === null && <p>{words.compareNone}</p>}
        {other !== null && listed !== undefined && (
          <>
            <Pick
              name={words.compareWith}
              options={others.map((one) => ({
                value: one.hash,
                name: calledApart(one),
                lang: nameLang(one),
              }))}
              chosen={other}
              onChoose={setOther}
            />
            <p>{words.compareRead}</p>
            <Compared key={other} listed={listed} other={other} lang={lang} />
          </>
        )}
      </div>
    </Sheet>
  );
}

/** All of its kind, the likeliest first: its own versions, those of its code, the others. */
function candidatesFor(listed: Listed): readonly Listed[] {
  const versions = new Set(versionsOf(listed.hash).map(({ hash }) => hash));
  const rank = (one: Listed) => (versions.has(one.hash) ? 0 : one.code === listed.code ? 1 : 2);
  const isShown = ({ kind, hash }: Listed) =>
    kind === listed.kind && hash !== listed.hash && keptBy(hash)?.deletedMs === undefined;
  // The newest of the older versions comes first.
  return [...earlier.value.toReversed(), ...all.value]
    .filter(isShown)
    .sort((a, b) => rank(a) - rank(b));
}

/** A name that tells versions apart. */
function calledApart(listed: Listed): string {
  const { code, kind, name, hash } = listed;
  const called = kind === 'field' ? `${code} ${name}` : name;
  const kept = keptBy(hash);
  if (kept === undefined) return words.versionOf(called, libraryWords.fromDemo);
  const versions = versionsOf(hash);
  const place = versions.findIndex((version) => version.hash === hash) + 1;
  const date = kept.keptMs === undefined ? [] : [utcDate(kept.keptMs)];
  const title = kept.title === undefined ? [] : [libraryWords.titled(kept.title)];
  const number = versions.length > 1 ? [libraryWords.version(place)] : [];
  return [called, ...title, ...number, ...date].join(', ');
}

interface ComparedProps {
  readonly listed: Listed;
  readonly other: Hash;
  readonly lang: string | undefined;
}

function Compared({ listed, other, lang }: ComparedProps) {
  const [found, setFound] = useState<Differences | 'failed' | null>(null);
  useEffect(() => {
    const against = listedBy(other);
    if (against === undefined) setFound('failed');
    else
      Promise.all([against.load(), listed.load()]).then(
        ([before, after]) => setFound(differencesOf(listed.kind, before, after)),
        () => setFound('failed'),
      );
  }, []);
  if (found === null) return null;
  if (found === 'failed') return <p>{words.compareFailed}</p>;
  const { facts, parts, steps, fitted } = found;
  const isSame =
    facts.length + parts.length + fitted.length === 0 &&
    (steps === null ||
      steps.added.length + steps.removed.length + steps.changed.length + steps.moved === 0);
  return isSame ? <p>{words.compareSame}</p> : <DifferencesSaid of={found} lang={lang} />;
}
