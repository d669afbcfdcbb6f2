/** A procedure as printed cards: a table for each phase and list, its heading again on every page. */

import type { ComponentChildren, JSX } from 'preact';
import { callLang, langOf } from '../../board/language';
import { type Facts, languageOf, type Procedure, type Step } from '../../core';
import { lasting } from '../../parts/format';
import { marked } from '../../parts/marked';
import { conditionText, printedLine } from './cardText';
import styles from './Print.module.css';
import { words } from './words';

interface CardsProps {
  readonly procedure: Procedure;
  /** Null leaves room to write the numbers. */
  readonly facts: Facts | null;
  /** What stands at the head of every card: version, field, runway, wind, date. */
  readonly head: readonly string[];
}

export function Cards({ procedure, facts, head: said }: CardsProps): JSX.Element {
  const lang = langOf(languageOf(procedure));
  const head = marked(lang, (name) => [name, ...said.filter(Boolean)].join(' · '), procedure.name);
  return (
    <>
      {procedure.phases
        .filter(({ steps }) => steps.length > 0)
        .map(({ phase, steps }) => (
          <Card
            key={phase}
            title={words.phases[phase] ?? phase}
            {...{ head, steps, facts, lang }}
          />
        ))}
      {procedure.lists.map(({ id, title, steps }) => (
        <Card key={id} title={title} titleLang={lang} wrong {...{ head, steps, facts, lang }} />
      ))}
    </>
  );
}

interface CardProps {
  readonly title: string;
  readonly titleLang?: string | undefined;
  readonly head: ComponentChildren;
  readonly steps: readonly Step[];
  readonly facts: Facts | null;
  /** The `lang` of the steps. */
  readonly lang: string | undefined;
  readonly wrong?: boolean;
}

function Card({ title, titleLang, head, steps, facts, lang, wrong = false }: CardProps) {
  return (
    <table class={`${styles.card} ${wrong ? styles.wrong : ''}`}>
      <thead>
        <tr>
          <th colSpan={3} scope="colgroup">
            <span class={styles.title} lang={titleLang}>
              {title}
            </span>
            <span class={styles.head}>{head}</span>
          </th>
        </tr>
      </thead>
      <tbody>
        {steps.map((step) => (
          <Line key={step.id} step={step} facts={facts} lang={lang} />
        ))}
      </tbody>
    </table>
  );
}

function Line({ step, facts, lang }: Pick<CardProps, 'facts' | 'lang'> & { step: Step }) {
  const condition = conditionText(step.when);
  const small = [
    { text: step.note, lang },
    { text: step.call, lang: callLang() },
    { text: step.expectS === undefined ? undefined : words.expect(lasting(step.expectS)) },
  ];
  return (
    <tr class={step.kind === 'barrier' ? styles.barrier : ''}>
      <td class={styles.box}>
        <span class={step.critical ? styles.critical : styles.tick} />
      </td>
      <td class={styles.item}>
        {condition !== '' && <i class={styles.when}>{words.when(condition)}</i>}
        <span lang={lang}>
          <Text text={step.item} facts={facts} />
        </span>
        {small.map(({ text, lang: ofText }) =>
          text ? (
            <small key={text} class={styles.note} lang={ofText}>
              <Text text={text} facts={facts} />
            </small>
          ) : null,
        )}
      </td>
      <td class={styles.response} lang={lang}>
        <Text text={step.response} facts={facts} />
      </td>
    </tr>
  );
}

function Text({ text, facts }: { text: string; facts: Facts | null }) {
  return (
    <>
      {printedLine(text, facts).map((piece, index) => {
        if (!piece.live) return piece.text;
        return piece.text === null ? (
          <span key={index} class={styles.room} />
        ) : (
          <b key={index}>{piece.text}</b>
        );
      })}
    </>
  );
}
