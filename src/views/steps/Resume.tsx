/**
 * After an interruption: what was done last and how long ago, with the keys to go on and to go one
 * step back.
 */

import type { JSX } from 'preact';
import { grownOld } from '../../board/flight/aged';
import { wallMs } from '../../board/flight/time';
import { stepsLang } from '../../board/language';
import { openTyping } from '../../board/places';
import { resume } from '../../board/steps/interruption';
import { canGoBack, goBack } from '../../board/steps/stepping';
import { type Entry, handledAs, type StepRow, type Walk } from '../../core';
import { ageText } from '../../parts/age';
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
  const old = grownOld();
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
      {old.map(({ what, ageMs }) => (
        <p key={what} class={styles.aged}>
          {words.aged[what](ageText(ageMs))}
        </p>
      ))}
      <div class={`${styles.keys} ${old.length > 0 ? styles.three : ''}`}>
        <Key moving disabled={!canGoBack()} onPress={goBack}>
          {words.oneBack}
        </Key>
        {old.length > 0 && (
          <Key moving onPress={openTyping}>
            {words.newWind}
          </Key>
        )}
        <Key moving look="pick" onPress={resume}>
          {words.goOn}
        </Key>
      </div>
    </div>
  );
}
