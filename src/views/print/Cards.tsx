/** A procedure as printed cards: a table for each phase and list, its heading again on every page. */

import type { JSX } from 'preact';
import type { Facts, Procedure, Step } from '../../core';
import { conditionText, printedLine } from './cardText';
import styles from './Print.module.css';
import { words } from './words.en';

interface CardsProps {
  readonly procedure: Procedure;
  /** Null leaves room to write the numbers. */
  readonly facts: Facts | null;
  /** What stands at the head of every card: field, runway, wind, date. */
  readonly today: readonly string[];
}

/** All cards of a procedure. */
export function Cards({ procedure, facts, today }: CardsProps): JSX.Element {
  const head = [procedure.name, ...today].join(' · ');
  return (
    <>
      {procedure.phases
        .filter(({ steps }) => steps.length > 0)
        .map(({ phase, steps }) => (
          <Card key={phase} title={words.phases[phase] ?? phase} {...{ head, steps, facts }} />
        ))}
      {procedure.lists.map(({ id, title, steps }) => (
        <Card key={id} title={title} wrong {...{ head, steps, facts }} />
      ))}
    </>
  );
}

interface CardProps {
  readonly title: string;
  readonly head: string;
  readonly steps: readonly Step[];
  readonly facts: Facts | null;
  readonly wrong?: boolean;
}

function Card({ title, head, steps, facts, wrong = false }: CardProps) {
  return (
    <table class={`${styles.card} ${wrong ? styles.wrong : ''}`}>
      <thead>
        <tr>
          <th colSpan={3} scope="colgroup">
            <span class={styles.title}>{title}</span>
            <span class={styles.head}>{head}</span>
          </th>
        </tr>
      </thead>
      <tbody>
        {steps.map((step) => (
          <Line key={step.id} step={step} facts={facts} />
        ))}
      </tbody>
    </table>
  );
}

function Line({ step, facts }: { step: Step; facts: Facts | null }) {
  const condition = conditionText(step.when);
  const small = [
    step.note ?? '',
    step.call ?? '',
    step.expectS === undefined ? '' : words.seconds(String(step.expectS)),
  ].filter(Boolean);
  return (
    <tr class={step.kind === 'barrier' ? styles.barrier : ''}>
      <td class={styles.box}>
        <span class={step.critical ? styles.critical : styles.tick} />
      </td>
      <td class={styles.item}>
        {condition !== '' && <i class={styles.when}>{words.when(condition)}</i>}
        <Text text={step.item} facts={facts} />
        {small.map((text) => (
          <small key={text} class={styles.note}>
            <Text text={text} facts={facts} />
          </small>
        ))}
      </td>
      <td class={styles.response}>
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
