/** What is one's own: what the version has other than the original, part by part. */

import type { JSX } from 'preact';
import { comparedWith, written } from '../../board/writing';
import {
  type AbnormalList,
  ownDifference,
  type PartDifference,
  type Procedure,
  type Step,
} from '../../core';
import styles from './Editor.module.css';
import { aboutStep } from './StepList';
import { aboutList, partName } from './said';
import { words } from './words.en';

/** The view of differences. */
export function Differences(): JSX.Element {
  const base = comparedWith.value;
  const own = written.value;
  const parts = base === null || own === null ? [] : ownDifference(base, own);
  if (own === null || parts.length === 0) return <p>{words.nothingMine}</p>;
  return (
    <PartDifferences parts={parts} procedure={own} before={words.before} after={words.after} />
  );
}

interface PartDifferencesProps {
  readonly parts: readonly PartDifference[];
  /** Whose lists' titles and options are named. */
  readonly procedure: Procedure;
  /** Whose wording came before, and whose after. */
  readonly before: string;
  readonly after: string;
}

/** Differences, as they are listed. */
export function PartDifferences({
  parts,
  procedure,
  before,
  after,
}: PartDifferencesProps): JSX.Element {
  return (
    <>
      {parts.map((one) => (
        <section key={one.part} class={styles.part}>
          <h3 class={styles.partName}>{partName(one.part, procedure)}</h3>
          <dl class={styles.differences}>
            {one.list !== null && (
              <div>
                <dt class={styles.differs}>{words.listChanged}</dt>
                <dd class={styles.was}>{`${before}: ${fullListOf(one.list.before)}`}</dd>
                <dd class={styles.is}>{`${after}: ${fullListOf(one.list.after)}`}</dd>
              </div>
            )}
            <Kind title={words.added} lines={one.added.map((step) => textOf(step))} />
            <Kind title={words.removedHead} lines={one.removed.map((step) => textOf(step))} />
            <Kind
              title={words.moved}
              lines={one.moved.map(
                ({ step, from }) =>
                  `${step.item}, ${from === one.part ? words.movedHere : words.movedFrom(partName(from, procedure))}`,
              )}
            />
            {one.reworded.map((pair) => (
              <div key={pair.after.id}>
                <dt class={styles.differs}>{`${words.reworded}: ${pair.after.item}`}</dt>
                <dd class={styles.was}>{`${before}: ${fullTextOf(pair.before, procedure)}`}</dd>
                <dd class={styles.is}>{`${after}: ${fullTextOf(pair.after, procedure)}`}</dd>
              </div>
            ))}
          </dl>
        </section>
      ))}
    </>
  );
}

function Kind({ title, lines }: { title: string; lines: readonly string[] }) {
  if (lines.length === 0) return null;
  return (
    <div>
      <dt class={styles.differs}>{title}</dt>
      {lines.map((line) => (
        <dd key={line}>{line}</dd>
      ))}
    </div>
  );
}

const textOf = ({ item, response }: Step) => words.stepText(item, response);

/** All that a step says, so that whatever differs is there to be seen. */
export const fullTextOf = (step: Step, { options }: Procedure): string =>
  [
    words.stepText(step.item, step.response),
    ...(step.note === undefined ? [] : [step.note]),
    ...(step.call === undefined ? [] : [step.call]),
    aboutStep(step, options),
    ...(step.gate === undefined ? [] : [words.live[step.gate]]),
    ...(step.gateFt === undefined ? [] : [`${step.gateFt} ft`]),
    ...(step.until === undefined ? [] : [words.untilSaid(words.phases[step.until])]),
  ].join(' · ');

/** All that a list says beside its steps. */
export const fullListOf = (list: AbnormalList): string =>
  words.stepText(list.title, aboutList(list));
