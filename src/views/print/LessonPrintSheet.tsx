/** Printing a whole lesson: what is in it, its fields and aircraft, its procedures as cards. */

import type { JSX } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { sortieMinute } from '../../board/board';
import { listedBy } from '../../board/documents/documents';
import {
  type Aircraft,
  type Field,
  type Hash,
  type LessonHeader,
  loadPart,
  type Procedure,
} from '../../core';
import { theme } from '../../device/preferences';
import { utcDate } from '../../parts/format';
import { Key } from '../../parts/key/Key';
import { Keys } from '../../parts/key/Keys';
import { quoted } from '../../parts/quoted/Quoted';
import { Sheet } from '../../parts/sheet/Sheet';
import { Cards } from './Cards';
import { AircraftPage, FieldPage } from './DocumentPages';
import { versionSaid } from './heads';
import styles from './Print.module.css';
import { usePaper } from './paper';
import { words } from './words';

interface LessonPrintProps extends LessonHeader {
  readonly documents: readonly Hash[];
  readonly onClose: () => void;
}

/** A document of the lesson, loaded. */
type Loaded =
  | { readonly hash: Hash; readonly kind: 'field'; readonly content: Field }
  | { readonly hash: Hash; readonly kind: 'aircraft'; readonly content: Aircraft }
  | { readonly hash: Hash; readonly kind: 'procedure'; readonly content: Procedure };

async function loaded(hash: Hash): Promise<Loaded> {
  const listed = listedBy(hash);
  switch (listed?.kind) {
    case 'field':
      return { hash, kind: 'field', content: await listed.load() };
    case 'aircraft':
      return { hash, kind: 'aircraft', content: await listed.load() };
    case 'procedure':
      return { hash, kind: 'procedure', content: await listed.load() };
    default:
      throw new Error(`${hash} is not here`);
  }
}

const load = async (hashes: readonly Hash[]) => ({
  documents: await Promise.all(hashes.map(loaded)),
  stripsOf: (await loadPart.taxi()).stripsOf,
});

/** The sheet. */
export function LessonPrintSheet({
  name,
  note,
  documents,
  onClose,
}: LessonPrintProps): JSX.Element {
  const [lesson, setLesson] = useState<Awaited<ReturnType<typeof load>> | 'failed' | null>(null);
  useEffect(() => void load(documents).then(setLesson, () => setLesson('failed')), []);
  const pages =
    lesson === null || lesson === 'failed' ? null : (
      <>
        <section class={styles.document}>
          <h3>{[name, utcDate(sortieMinute.value)].join(' · ')}</h3>
          {note.some((line) => line.trim() !== '') && (
            <>
              <p>{words.noteSays}</p>
              {note.map((line, index) => line.trim() !== '' && <p key={index}>{quoted(line)}</p>)}
            </>
          )}
          <h4>{words.holds}</h4>
          <ul>
            {lesson.documents.map((document) => (
              <li key={document.hash}>{titleOf(document)}</li>
            ))}
          </ul>
        </section>
        {lesson.documents.map((document) => (
          <Pages
            key={document.hash}
            document={document}
            lesson={name}
            flown={flownWith(lesson.documents)}
            stripsOf={lesson.stripsOf}
          />
        ))}
      </>
    );
  usePaper(pages);
  return (
    <Sheet title={words.title(name)} close={words.close} size="page" onClose={onClose}>
      <p class={styles.hint}>{words.lessonHint}</p>
      <Keys>
        <Key look="pick" disabled={pages === null} onPress={() => print()}>
          {words.print}
        </Key>
      </Keys>
      {lesson === 'failed' && <p role="status">{words.failed}</p>}
      <details class={styles.preview} open={theme.value !== 'night'}>
        <summary>{words.lessonPreview}</summary>
        <div class={styles.paper} data-theme="day">
          {pages}
        </div>
      </details>
    </Sheet>
  );
}

interface PagesProps {
  readonly document: Loaded;
  readonly lesson: string;
  /** What it is flown with, where the lesson leaves no choice. */
  readonly flown: readonly string[];
  readonly stripsOf: Awaited<ReturnType<typeof load>>['stripsOf'];
}

function Pages({ document, lesson, flown, stripsOf }: PagesProps) {
  const title = titleOf(document);
  switch (document.kind) {
    case 'field':
      return (
        <FieldPage field={document.content} title={title} strips={stripsOf(document.content)} />
      );
    case 'aircraft':
      return <AircraftPage aircraft={document.content} title={title} />;
    case 'procedure':
      return (
        <section class={styles.document}>
          <Cards
            procedure={document.content}
            facts={null}
            head={[versionSaid(document.hash), lesson, ...flown]}
          />
        </section>
      );
  }
}

/** The one field and the one aircraft of a lesson. */
const flownWith = (documents: readonly Loaded[]): readonly string[] =>
  (['field', 'aircraft'] as const).flatMap((kind) => {
    const [one, other] = documents.filter((document) => document.kind === kind);
    return one === undefined || other !== undefined ? [] : [nameOf(one)];
  });

const nameOf = ({ kind, content }: Loaded): string =>
  kind === 'field' ? `${content.code} ${content.name}` : content.name;

/** Its kind, its name and its version. */
const titleOf = (document: Loaded): string =>
  [words.kinds[document.kind], nameOf(document), versionSaid(document.hash)]
    .filter(Boolean)
    .join(' · ');
