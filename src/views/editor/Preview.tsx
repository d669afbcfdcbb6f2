/** The step as Steps would show it under today's facts. */

import type { JSX } from 'preact';
import { day } from '../../board/board';
import { callLang } from '../../board/language';
import { holds, type Procedure, type Step } from '../../core';
import { QuotedPassage } from '../../parts/quoted/Quoted';
import { conditionSaid } from '../../parts/stepText';
import styles from './Editor.module.css';
import { Filled } from './StepList';
import { withOptions, writtenLang } from './said';
import { words } from './words';

interface PreviewProps {
  readonly step: Step;
  readonly options: Procedure['options'];
}

/** What would be read, and whether it would be asked for. */
export function Preview({ step, options }: PreviewProps): JSX.Element {
  const { when } = step;
  const applies = when === undefined ? true : holds(when, day.steps()?.facts ?? {});
  const said = applies === null ? words.notKnown : applies ? words.applies : words.notToday;
  return (
    <section class={styles.preview} aria-label={words.today}>
      <p class={styles.small}>{words.today}</p>
      <p class={styles.due} lang={writtenLang()}>
        <b>
          <Filled text={step.item} />
        </b>{' '}
        <Filled text={step.response} />
      </p>
      {step.note !== undefined && (
        <QuotedPassage lang={writtenLang()}>
          <Filled text={step.note} />
        </QuotedPassage>
      )}
      {step.call !== undefined && (
        <p lang={callLang()}>
          <Filled text={step.call} />
        </p>
      )}
      <p class={styles.small}>
        {said}
        {when !== undefined &&
          withOptions(options, (named) => ` (${words.when(conditionSaid(when, named))})`).drawn}
      </p>
    </section>
  );
}
