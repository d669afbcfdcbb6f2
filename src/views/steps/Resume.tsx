/**
 * After an interruption: what was done last and how long ago, with the keys to go on and to go one
 * step back.
 */

import type { JSX } from 'preact';
import { wallMs } from '../../board/flight/time';
import { stepsLang } from '../../board/language';
import { resume } from '../../board/steps/interruption';
import { canGoBack, goBack } from '../../board/steps/stepping';
import { type Entry, handledAs, type StepRow, type Walk } from '../../core';
import { ago } from '../../parts/ago';
import { Key } from '../../parts/key/Key';
import { marked } from '../../parts/marked';
import { liveText } from './liveText';
import styles from './Resume.module.css';
import { words } from './words';

/** When a step was handled, ms of the device's clock. */
const doneMs = ({ state }: StepRow) => ('tick' in state ? state.tick.at.wallMs : wallMs.value);

interface ResumeProps {
  readonly walk: Walk;
  /** When the pilot was called away. */
  readonly left: Entry['at'];
}

/** The way back into the steps. */
export function Resume({ walk, left }: ResumeProps): JSX.Element {
  const { lastHandled, position } = walk;
  const named = (item: string, response: string) => `${liveText(item)}, ${liveText(response)}`;
  return (
    <div class={styles.resume} role="alert">
      <p class={styles.left}>{words.left(ago(wallMs.value - left.wallMs))}</p>
      <p class={styles.last}>
        {lastHandled === null
          ? words.nothingYet
          : marked(
              stepsLang(),
              (item) =>
                words.last[handledAs(lastHandled)](item, ago(wallMs.value - doneMs(lastHandled))),
              named(lastHandled.step.item, lastHandled.step.response),
            )}
      </p>
      {position.kind === 'step' && (
        <p class={styles.due}>
          {marked(
            stepsLang(),
            words.spokenDue,
            liveText(position.row.step.item),
            liveText(position.row.step.response),
          )}
        </p>
      )}
      <div class={styles.keys}>
        <Key moving disabled={!canGoBack()} onPress={goBack}>
          {words.oneBack}
        </Key>
        <Key moving look="pick" onPress={resume}>
          {words.goOn}
        </Key>
      </div>
    </div>
  );
}
