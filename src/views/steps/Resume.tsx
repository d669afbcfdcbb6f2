/** After an interruption: what was done last and how long ago, with the way on and one step back. */

import type { ComponentChildren, JSX } from 'preact';
import { sortie } from '../../board/board';
import { wallMs } from '../../board/flight/time';
import { stepsLang } from '../../board/language';
import { resume } from '../../board/steps/interruption';
import { goBack } from '../../board/steps/stepping';
import { handledAs, type StepRow, type Walk } from '../../core';
import { ago } from '../../parts/ago';
import { Key } from '../../parts/key/Key';
import { marked } from '../../parts/marked';
import { liveText } from './liveText';
import styles from './Resume.module.css';
import { words } from './words';

/** When a step was handled, ms of the device's clock. */
const doneMs = ({ state }: StepRow) => ('tick' in state ? state.tick.at.wallMs : wallMs.value);

/** The steps, or, while they are interrupted, the way back into them. */
export function Resume({
  walk,
  children,
}: {
  walk: Walk;
  children: ComponentChildren;
}): JSX.Element {
  const run = sortie.value.list ?? sortie.value.run;
  const left = run?.interruptedAt ?? null;
  if (left === null) return <>{children}</>;
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
        <Key
          moving
          onPress={() => {
            resume();
            goBack();
          }}
        >
          {words.oneBack}
        </Key>
        <Key moving look="pick" onPress={resume}>
          {words.goOn}
        </Key>
      </div>
    </div>
  );
}
