/** A lesson that came: item by item what it would change, and which of them are kept. */

import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import { flyLesson, mayBeFlown } from '../../board/documents/lesson';
import {
  type AgainstOwn,
  type Incoming,
  type IncomingDocument,
  keepIncoming,
  type Put,
  putsOf,
} from '../../board/documents/sharing';
import { Choice } from '../../parts/choice/Choice';
import { Hint } from '../../parts/field/Labelled';
import { Fold } from '../../parts/fold/Fold';
import { Key } from '../../parts/key/Key';
import { marked } from '../../parts/marked';
import { QuotedPassage, quoted } from '../../parts/quoted/Quoted';
import { contentLang, Inside, putSaid } from './IncomingDocument';
import styles from './IncomingLesson.module.css';
import { words as incomingWords } from './incomingWords';
import { words } from './lessonWords';

type Received = Extract<Incoming, { kind: 'lesson' }>;

/** The lesson. */
export function IncomingLesson({ incoming }: { readonly incoming: Received }): JSX.Element {
  const { name, note, documents } = incoming;
  const [puts, setPuts] = useState(() => documents.map(proposed));
  const [kept, setKept] = useState<number | null>(null);
  const chosen = documents.flatMap((document, index) => {
    const put = puts[index] ?? 'out';
    return put === 'out' ? [] : [[document, put] as const];
  });
  const isNew = documents.some((document) => putsOf(document).length > 0);
  const aircraft = documents.flatMap(({ document }) =>
    document.kind === 'aircraft' ? [document.content.code] : [],
  );
  return (
    <>
      <h3 class={styles.name}>{words.came(name)}</h3>
      {note.length > 0 && (
        <>
          <p>{words.noteSays}</p>
          <QuotedPassage lang={undefined}>
            {note.map((line, index) => (
              <p key={index}>{quoted(line)}</p>
            ))}
          </QuotedPassage>
        </>
      )}
      <ul class={styles.items}>
        {documents.map((document, index) => (
          <Item
            key={document.document.hash}
            incoming={document}
            aircraft={aircraft}
            put={puts[index] ?? 'out'}
            onPut={
              kept === null
                ? (put) => setPuts((now) => now.map((one, at) => (at === index ? put : one)))
                : null
            }
          />
        ))}
      </ul>
      {!isNew && <p>{words.allHere}</p>}
      {isNew && kept === null && (
        <div>
          <Key
            look="pick"
            disabled={chosen.length === 0}
            onPress={() => {
              setKept(chosen.length);
              void keepIncoming(...chosen);
            }}
          >
            {chosen.length === 0 ? words.keepNone : words.keep(chosen.length)}
          </Key>
        </div>
      )}
      <p role="status">{kept !== null && words.kept(kept)}</p>
      {(kept !== null || !isNew) && <Fly documents={documents} />}
    </>
  );
}

/** A newcomer is kept, beside what it differs from; what is here as an older version is left there. */
const proposed = (incoming: IncomingDocument): Put | 'out' =>
  incoming.against.kind === 'earlier' ? 'out' : (putsOf(incoming)[0] ?? 'out');

interface ItemProps {
  readonly incoming: IncomingDocument;
  /** The codes of the lesson's aircraft. */
  readonly aircraft: readonly string[];
  readonly put: Put | 'out';
  /** Null once it is decided. */
  readonly onPut: ((put: Put | 'out') => void) | null;
}

function Item({ incoming, aircraft, put, onPut }: ItemProps) {
  const { document, against } = incoming;
  const { content, kind } = document;
  const puts = putsOf(incoming);
  const edition = 'edition' in content ? content.edition : undefined;
  const called = (name: string) => incomingWords.document(incomingWords.kinds[kind] ?? '', name);
  return (
    <li class={styles.item}>
      <h4 class={styles.name}>{marked(contentLang(content), called, content.name)}</h4>
      <p class={styles.notes}>
        {[
          ...(edition === undefined ? [] : [words.version(edition.number)]),
          words.stands[standing(against)],
        ].join(' · ')}
      </p>
      <Fold quiet title={words.whatChanges}>
        {() => (
          <div class={styles.inside}>
            <Inside incoming={incoming} aircraftWithIt={aircraft} />
          </div>
        )}
      </Fold>
      {puts.length > 0 && onPut !== null && (
        <Choice<Put | 'out'>
          label={called(content.name)}
          options={[
            ...puts.map((one) => ({ value: one, name: putSaid(one, incoming) })),
            { value: 'out', name: words.leaveOut },
          ]}
          chosen={put}
          onChoose={onPut}
        />
      )}
    </li>
  );
}

const standing = (against: AgainstOwn) =>
  against.kind === 'other' ? (against.age ?? 'differs') : against.kind;

/** Sets the sortie to the lesson, if it has one of each. */
function Fly({ documents }: { readonly documents: readonly IncomingDocument[] }) {
  const [isDone, setDone] = useState(false);
  const hashes = documents.map(({ document }) => document.hash);
  if (!isDone && !mayBeFlown(hashes)) return null;
  return (
    <div class={styles.inside}>
      {!isDone && (
        <>
          <div>
            <Key
              onPress={() => {
                setDone(true);
                flyLesson(hashes);
              }}
            >
              {words.fly}
            </Key>
          </div>
          <Hint>{words.flyHint}</Hint>
        </>
      )}
      <p role="status">{isDone && words.flown}</p>
    </div>
  );
}
