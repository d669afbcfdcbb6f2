/** Library: what the pilot has to choose from, to edit and to give away, and how more comes in. */

import type { ListedProcedure } from 'virtual:lapstrip-catalogue';
import type { ComponentChildren, JSX } from 'preact';
import { day } from '../../board/board';
import {
  all,
  type Listed,
  listedAircraft,
  listedFields,
  own,
} from '../../board/documents/documents';
import { chosenProcedure } from '../../board/documents/inUse';
import { langOf, languageName, nameLang } from '../../board/language';
import { openSheet, sheet } from '../../board/places';
import type { Hash } from '../../core';
import { Key } from '../../parts/key/Key';
import { Keys } from '../../parts/key/Keys';
import { marked, markedText, seenAndSaid } from '../../parts/marked';
import { SheetPart, SheetParts } from '../../parts/sheet/SheetPart';
import { Bring } from './Bring';
import styles from './Library.module.css';
import { words } from './words';

/** The room. */
export function LibraryRoom(): JSX.Element {
  const { field, aircraft } = day.inputs();
  const procedures = all.value.filter((listed) => listed.kind === 'procedure');
  return (
    <SheetParts>
      <SheetPart title={words.more}>
        <Bring />
        <Keys>
          <Key onPress={() => openSheet({ kind: 'drawing', of: null, over: sheet.value })}>
            {words.drawField}
          </Key>
        </Keys>
      </SheetPart>
      <SheetPart title={words.fields}>
        <ul>
          {listedFields.value.map((listed) => (
            <Row key={listed.hash} of={listed} today={listed.hash === field}>
              <b class={styles.code}>{listed.code}</b> {listed.name}
            </Row>
          ))}
        </ul>
      </SheetPart>
      <SheetPart title={words.aircraft}>
        <ul>
          {listedAircraft.value.map((listed) => (
            <Row key={listed.hash} of={listed} today={listed.hash === aircraft}>
              {listed.name}
            </Row>
          ))}
        </ul>
      </SheetPart>
      <SheetPart title={words.procedures}>
        <ul>
          {procedures.map((listed) => (
            <Row key={listed.hash} of={listed} today={listed.hash === chosenProcedure.value}>
              {markedText(nameLang(listed), listed.name)}
            </Row>
          ))}
        </ul>
      </SheetPart>
    </SheetParts>
  );
}

interface RowProps {
  readonly of: Listed;
  /** It is flown today. */
  readonly today: boolean;
  readonly children: ComponentChildren;
}

/** A document: its name, what there is to know of it, and what can be done with it. */
function Row({ of, today, children }: RowProps) {
  const { hash, kind } = of;
  const name = kind === 'field' ? of.code : of.name;
  const doing = (does: Does) =>
    seenAndSaid(words.does[does], marked(nameLang(of), words.doesTo[does], name));
  const notes = [
    ...(of.kind === 'procedure' ? [forWhat(of)] : []),
    ...(own.value.some((one) => one.hash === hash) ? [words.own] : []),
    ...(today ? [words.today] : []),
  ];
  return (
    <li class={styles.row}>
      <div class={styles.named}>
        <p class={styles.name}>{children}</p>
        {notes.length > 0 && <p class={styles.notes}>{notes.join(' · ')}</p>}
      </div>
      <Keys>
        {kind !== 'aircraft' && <Key onPress={() => edit(of)}>{doing('edit')}</Key>}
        <Key onPress={() => openSheet({ kind: 'share', hash, over: sheet.value })}>
          {doing('share')}
        </Key>
        {kind === 'procedure' && (
          <Key onPress={() => openSheet({ kind: 'print', hash, over: sheet.value })}>
            {doing('print')}
          </Key>
        )}
      </Keys>
    </li>
  );
}

type Does = keyof typeof words.does;

const edit = ({ kind, hash }: { readonly kind: Listed['kind']; readonly hash: Hash }) =>
  openSheet(
    kind === 'field'
      ? { kind: 'drawing', of: hash, over: sheet.value }
      : { kind: 'editor', hash, over: sheet.value },
  );

/** The aircraft a procedure is for, by name or else by code, and its language if not the page's. */
function forWhat({ aircraft, language }: ListedProcedure): string {
  const name = listedAircraft.value.find(({ code }) => code === aircraft)?.name ?? aircraft;
  const lang = langOf(language);
  return words.forAircraft(name, lang === undefined ? null : languageName(lang));
}
