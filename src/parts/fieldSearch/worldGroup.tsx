/** The world's fields in the search: at the head whose they are and how to get them, then what is found. */

import type { JSX } from 'preact';
import { decimal, utcDate, wholeNumber } from '../format';
import { Key } from '../key/Key';
import { Keys } from '../key/Keys';
import { length } from '../units';
import type { FieldGroup, FieldRow } from './FieldSearch';
import styles from './FieldSearch.module.css';
import own from './WorldGroup.module.css';
import { words as searchWords } from './words';
import { words } from './worldWords';

/** A field of the world as it is listed. */
export interface WorldRow {
  readonly code: string;
  readonly name: string;
  readonly town: string;
  readonly country: string;
  readonly longestM: number;
  readonly elevationFt: number;
  readonly awayNm: number | null;
  readonly index: number;
}

/** What the head says and does. */
export interface WorldSource {
  readonly file: { readonly fields: number; readonly bytes: number; readonly date: string };
  readonly state: () =>
    | { readonly kind: 'looking' | 'absent' }
    | { readonly kind: 'fetching'; readonly share: number }
    | { readonly kind: 'failed'; readonly why: 'unavailable' | 'damaged' }
    | {
        readonly kind: 'ready';
        readonly set: {
          readonly world: { readonly date: string };
          readonly isKept: boolean;
          readonly isOld: boolean;
        };
      };
  readonly rows: (typed: string) => readonly WorldRow[];
  readonly hasOthers: () => boolean;
  readonly listOthers: (listed: boolean) => void;
  readonly fetch: () => Promise<void>;
  /** The code of the field that was chosen last and couldn't be used. */
  readonly refused: () => string | null;
}

/** Ten to the sixth: what is fetched is counted as data plans count it. */
const MEGABYTE = 1e6;

const dateOf = (iso: string): string => utcDate(Date.parse(iso));

/** The group, with its head; `onChoose` gets a field's index in the set. */
export function worldGroup(
  source: WorldSource,
  text: string,
  onChoose: (row: WorldRow) => void,
): FieldGroup {
  const rows = source.rows(text).map((row) => worldRow(row, onChoose));
  const isVain = source.state().kind === 'ready' && text.trim() !== '' && rows.length === 0;
  return {
    title: searchWords.world,
    head: <Head source={source} isIdle={text.trim() === ''} isVain={isVain} />,
    rows,
    foot: source.state().kind === 'ready' && <Others source={source} />,
  };
}

/** Lists what is seldom looked for too. */
function Others({ source }: { readonly source: WorldSource }): JSX.Element {
  const isListed = source.hasOthers();
  return (
    <div class={own.foot}>
      <Key pressed={isListed} onPress={() => source.listOthers(!isListed)}>
        {words.others}
      </Key>
    </div>
  );
}

/** A field of the world as a row: where it lies, how long its longest runway is, how high it lies. */
export const worldRow = (row: WorldRow, onChoose: (row: WorldRow) => void): FieldRow => ({
  key: `world ${row.code}`,
  code: row.code,
  name: row.name,
  about: [
    ...(row.awayNm === null ? [] : [searchWords.away(wholeNumber(row.awayNm))]),
    words.at(row.town, row.country),
    searchWords.details(length(row.longestM), searchWords.feet(wholeNumber(row.elevationFt))),
  ].join(' · '),
  onChoose: () => onChoose(row),
});

interface HeadProps {
  readonly source: WorldSource;
  /** Nothing is typed. */
  readonly isIdle: boolean;
  /** Nothing was found for what is typed. */
  readonly isVain: boolean;
}

function Head({ source, isIdle, isVain }: HeadProps): JSX.Element | null {
  const { file } = source;
  const state = source.state();
  const megabytes = decimal(file.bytes / MEGABYTE, 1);
  const fetchKey = (label: string) => (
    <Keys>
      <Key look="pick" onPress={() => void source.fetch()}>
        {label}
      </Key>
    </Keys>
  );
  switch (state.kind) {
    case 'looking':
      return null;
    case 'absent':
      return (
        <>
          <p class={own.said}>
            {words.offer(wholeNumber(file.fields), megabytes, dateOf(file.date))}{' '}
            <b>{words.caution}</b>
          </p>
          {fetchKey(words.fetch(megabytes))}
        </>
      );
    case 'fetching':
      return (
        <>
          <p class={own.said} role="status">
            {words.fetching}
          </p>
          <progress class={own.bar} max={1} value={state.share} aria-label={words.fetching} />
        </>
      );
    case 'failed':
      return (
        <>
          <p class={styles.none} role="alert">
            {words[state.why]}
          </p>
          {fetchKey(words.again)}
        </>
      );
    case 'ready': {
      const { world, isKept, isOld } = state.set;
      const refused = source.refused();
      return (
        <>
          {refused !== null && (
            <p class={styles.none} role="alert">
              {words.refused(refused)}
            </p>
          )}
          <p class={own.said}>
            {words.from(dateOf(world.date))}
            {!isKept && ` ${words.notKept}`}
            {isOld && ` ${words.newer(dateOf(file.date))}`}
            {isIdle && ` ${words.hint}`}
          </p>
          {isVain && <p class={own.said}>{words.none}</p>}
          {isOld && fetchKey(words.fetch(megabytes))}
        </>
      );
    }
  }
}
