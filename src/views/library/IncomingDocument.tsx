/** A document that came: what it is, what it would change, and the keys that keep it. */

import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import { listedAircraft } from '../../board/documents/documents';
import {
  type AgainstOwn,
  keepIncoming,
  type Put,
  putsOf,
  type IncomingDocument as Received,
} from '../../board/documents/sharing';
import { langOf, shownText } from '../../board/language';
import { languageOf } from '../../core';
import { Key } from '../../parts/key/Key';
import { Keys } from '../../parts/key/Keys';
import { marked } from '../../parts/marked';
import { QuotedPassage, quoted } from '../../parts/quoted/Quoted';
import styles from './Bring.module.css';
import { DifferencesSaid } from './DifferencesSaid';
import { words } from './incomingWords';

/** The `lang` of what a document says: those of fields and aircraft are names in any language. */
export const contentLang = (content: Received['document']['content']): string | undefined =>
  'phases' in content ? langOf(languageOf(content)) : undefined;

/** A document by itself. */
export function IncomingDocument({ incoming }: { readonly incoming: Received }): JSX.Element {
  const [done, setDone] = useState<Put | null>(null);
  const { document } = incoming;
  const { name } = document.content;
  const lang = contentLang(document.content);
  const puts = putsOf(incoming);
  return (
    <>
      <h3 class={styles.name}>
        {marked(lang, (itself) => words.document(words.kinds[document.kind] ?? '', itself), name)}
      </h3>
      <Inside incoming={incoming} />
      {puts.length > 0 && done === null && (
        <Keys>
          {puts.map((put) => (
            <Key
              key={put}
              look={puts.length === 1 && put === 'beside' ? 'pick' : 'plain'}
              onPress={() => {
                setDone(put);
                void keepIncoming([incoming, put]);
              }}
            >
              {putSaid(put, incoming)}
            </Key>
          ))}
        </Keys>
      )}
      <p role="status">
        {done === 'beside' && marked(lang, words.wasAdded, name)}
        {done === 'over' && marked(lang, words.wasPutOver, name)}
      </p>
    </>
  );
}

/** What putting it there does. */
export function putSaid(put: Put, incoming: Received): string {
  const { against } = incoming;
  if (put === 'beside') return putsOf(incoming).length > 1 ? words.beside : words.add;
  if (against.kind !== 'other') return words.newest;
  return against.isOwn ? words.overMine : words.overDemo;
}

interface InsideProps {
  readonly incoming: Received;
  /** The codes of the aircraft that came with it. */
  readonly aircraftWithIt?: readonly string[];
}

/** What a document says of itself, and what it would change. */
export function Inside({ incoming, aircraftWithIt = [] }: InsideProps): JSX.Element {
  const { document, against, steps } = incoming;
  const { content } = document;
  const about = shownText(content, content.about);
  const flown = 'phases' in content ? content.aircraft : null;
  const isMissing =
    flown !== null &&
    !aircraftWithIt.includes(flown) &&
    !listedAircraft.value.some(({ code }) => code === flown);
  return (
    <>
      {about.text !== '' && (
        <>
          <p>{words.saysOfItself}</p>
          <QuotedPassage lang={about.lang}>{quoted(about.text)}</QuotedPassage>
        </>
      )}
      {steps !== null && <p>{words.steps(steps)}</p>}
      {isMissing && <p>{words.noAircraft(flown)}</p>}
      <Against against={against} lang={contentLang(content)} />
    </>
  );
}

interface AgainstProps {
  readonly against: AgainstOwn;
  readonly lang: string | undefined;
}

/** What a document that came is beside what is here. */
export function Against({ against, lang }: AgainstProps): JSX.Element {
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
