/** Printing a procedure: a preview, with today's numbers or room for them. */

import { type JSX, render } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { day, sortieMinute } from '../../board/board';
import { listedBy } from '../../board/documents/documents';
import { nameLang } from '../../board/language';
import type { Hash, Procedure } from '../../core';
import { theme } from '../../device/preferences';
import { Choice } from '../../parts/choice/Choice';
import { direction, utcDate, wholeNumber } from '../../parts/format';
import { Key } from '../../parts/key/Key';
import { marked } from '../../parts/marked';
import { Sheet } from '../../parts/sheet/Sheet';
import { Cards } from './Cards';
import styles from './Print.module.css';
import { words } from './words';

type Filling = 'filled' | 'blank';

/** The sheet for a listed procedure. */
export function PrintSheet({ hash, onClose }: { hash: Hash; onClose: () => void }): JSX.Element {
  const listed = listedBy(hash);
  const [procedure, setProcedure] = useState<Procedure | 'failed' | null>(null);
  const [filling, setFilling] = useState<Filling>('filled');
  useEffect(() => {
    if (listed?.kind !== 'procedure') setProcedure('failed');
    else listed.load().then(setProcedure, () => setProcedure('failed'));
  }, [hash]);
  const brief = day.steps();
  // A whole report would fill the card: steps only ask for the wind.
  const facts = filling === 'blank' || brief === null ? null : { ...brief.facts, wind: windText() };
  const cards =
    procedure === null || procedure === 'failed' ? null : (
      <Cards procedure={procedure} facts={facts} today={filling === 'filled' ? todayText() : []} />
    );
  usePaper(cards);
  return (
    <Sheet
      title={marked(nameLang(listed), words.title, listed?.name ?? '')}
      close={words.close}
      size="page"
      onClose={onClose}
    >
      <p class={styles.hint}>{words.hint}</p>
      <Choice
        label={words.numbers}
        options={[
          { value: 'filled', name: words.filled },
          { value: 'blank', name: words.blank },
        ]}
        chosen={filling}
        onChoose={setFilling}
      />
      <div class={styles.keys}>
        <Key look="pick" disabled={cards === null} onPress={() => print()}>
          {words.print}
        </Key>
      </div>
      {procedure === 'failed' && <p>{words.failed}</p>}
      <details class={styles.preview} open={theme.value !== 'night'}>
        <summary>{words.preview}</summary>
        <div class={styles.paper}>{cards}</div>
      </details>
    </Sheet>
  );
}

/** The wind in use, in short; null where there is none. */
function windText(): string | null {
  const read = day.wind().wind;
  if (day.enteredWind() === null || read === null) return null;
  return [
    read.fromDeg === null ? '' : direction(read.fromDeg),
    wholeNumber(read.speedKt ?? 0),
    read.gustKt === null ? '' : `${words.gust} ${wholeNumber(read.gustKt)}`,
  ]
    .filter(Boolean)
    .join(' ');
}

/** The head of today's cards. */
function todayText(): readonly string[] {
  const { field } = day.settled();
  const { using } = day.wind();
  const said = windText();
  return [
    field === null ? '' : `${field.code} ${field.name}`,
    using === null ? '' : words.runway(using),
    said === null ? '' : words.wind(said),
    utcDate(sortieMinute.value),
  ].filter(Boolean);
}

/**
 * Renders the printout beside the app, where only a printer sees it, as long as the sheet is open.
 */
function usePaper(cards: JSX.Element | null): void {
  const [paper] = useState(() => document.createElement('div'));
  useEffect(() => {
    paper.className = `lapstrip-printed ${styles.page} ${styles.paper}`;
    document.body.append(paper);
    document.documentElement.dataset.paper = '';
    return () => {
      delete document.documentElement.dataset.paper;
      render(null, paper);
      paper.remove();
    };
  }, []);
  useEffect(() => render(cards, paper), [cards]);
}
