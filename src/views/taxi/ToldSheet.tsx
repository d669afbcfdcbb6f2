/** The route as the controller tells it: tapped as letters or typed, drawn, checked, and used. */

import type { JSX } from 'preact';
import { day, documents } from '../../board/board';
import {
  isComingIn,
  stands,
  takeTold,
  taxiParts,
  toldDraft,
  typeTold,
} from '../../board/flight/taxi';
import { paintedLang } from '../../board/language';
import { type AsTold, LONGEST_TOLD } from '../../core';

import { Key } from '../../parts/key/Key';
import { markedText } from '../../parts/marked';
import { Sheet } from '../../parts/sheet/Sheet';
import { length } from '../../parts/units';
import { FieldPlan } from './FieldPlan';
import { problemWords, wayWords } from './route';
import styles from './Sheets.module.css';
import { words } from './words';

export function ToldSheet({ onClose }: { onClose: () => void }): JSX.Element {
  const text = toldDraft();
  const asTold = text.trim() === '' ? null : (day.layTold()?.(text) ?? null);
  const use = () => {
    takeTold(toldDraft().trim());
    onClose();
  };
  const drop = () => {
    takeTold(null);
    onClose();
  };
  return (
    <Sheet title={words.told.title} close={words.close} size="page" onClose={onClose}>
      <label class={styles.own}>
        <span>{words.told.label}</span>
        <input
          type="text"
          value={text}
          maxLength={LONGEST_TOLD}
          autocapitalize="characters"
          autocomplete="off"
          spellcheck={false}
          lang={paintedLang()}
          onInput={(event) => typeTold(event.currentTarget.value)}
          onKeyDown={(event) => {
            if (event.key === 'Enter' && asTold?.route) use();
          }}
        />
      </label>
      <div class={styles.read} role="status">
        {asTold === null ? words.told.hint(example()) : readWords(asTold)}
      </div>
      <Mended text={text} asTold={asTold} />
      <div class={styles.choices}>
        <Key
          moving
          className={styles.said}
          disabled={text === ''}
          onPress={() => typeTold(withoutLast(toldDraft()))}
        >
          {words.told.takeBack}
        </Key>
        <Key look="pick" moving className={styles.said} disabled={!asTold?.route} onPress={use}>
          {words.told.use}
        </Key>
        {day.inputs().taxiTold !== null && (
          <Key moving className={styles.said} onPress={drop}>
            {words.told.drop}
          </Key>
        )}
      </div>
      <Letters />
      <div class={styles.preview}>
        <FieldPlan
          route={asTold?.route ?? null}
          label={`${words.plan(documents.value.field?.name ?? '')}. ${words.told.title}`}
        />
      </div>
    </Sheet>
  );
}

/** What was understood, or what doesn't fit. */
function readWords(asTold: AsTold): string {
  const { problems, route, byTheWay } = asTold;
  if (route === null) return problems.map(problemWords).join(' ');
  const by = byTheWay.length === 0 ? '' : ` ${words.told.unsaid(byTheWay.join(', '))}`;
  return `${wayWords(route, length(route.lengthM))}${by}`;
}

/** What may have been meant, as keys. */
function Mended({ text, asTold }: { text: string; asTold: AsTold | null }) {
  const parts = taxiParts.value;
  const mended = parts === null || asTold === null ? [] : parts.mendedTexts(text, asTold);
  return mended.length === 0 ? null : (
    <div class={styles.choices}>
      <span class={styles.meant}>{words.told.meant}</span>
      {mended.map((one) => (
        <Key key={one} moving onPress={() => typeTold(one)}>
          {markedText(paintedLang(), one)}
        </Key>
      ))}
    </div>
  );
}

/** A route in the letters of this field. */
function example(): string {
  const { field } = documents.value;
  const parts = taxiParts.value;
  const letters = field === null ? [] : (parts?.taxiwaysOf(field) ?? []).slice(0, 2);
  const end = field?.runways[0]?.ends[0].designator;
  return [letters.join(' '), ...(end === undefined ? [] : [`hold short ${end}`])]
    .filter((part) => part !== '')
    .join(', ');
}

/** The field's own taxiways and runways, and after a landing its stands. */
function Letters() {
  const { field } = documents.value;
  const parts = taxiParts.value;
  if (field === null || parts === null) return null;
  const append = (joint: string, said: string) => {
    const before = toldDraft().trimEnd();
    typeTold(`${before}${before === '' ? '' : joint}${said}`);
  };
  const runways = parts.stripsOf(field).map(({ name }) => name);
  return (
    <>
      <section class={styles.choices} aria-label={words.told.taxiways}>
        {parts.taxiwaysOf(field).map((name) => (
          <Key key={name} moving className={styles.letter} onPress={() => append(' ', name)}>
            {markedText(paintedLang(), name)}
          </Key>
        ))}
      </section>
      <section class={styles.choices} aria-label={words.told.runways}>
        {(['hold short', 'cross', 'backtrack'] as const).map((what) => (
          <Key key={what} moving className={styles.said} onPress={() => append(', ', what)}>
            {words.told.atRunway[what]}
          </Key>
        ))}
        {runways.map((runway) => (
          <Key key={runway} moving className={styles.said} onPress={() => append(' ', runway)}>
            {runway}
          </Key>
        ))}
        {isComingIn() &&
          stands.value.map(({ id, name = id }) => (
            <Key key={id} moving className={styles.said} onPress={() => append(', ', name)}>
              {markedText(paintedLang(), name)}
            </Key>
          ))}
      </section>
    </>
  );
}

/** A text without its last item. */
const withoutLast = (text: string): string =>
  text.replace(/[\s,]*(?:(?:hold short|hold|cross|backtrack|stand|runway)\s+)?[^\s,]+[\s,]*$/i, '');
