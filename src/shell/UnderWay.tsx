/**
 * What is under way in the steps, under the strip of every other place: a list for when something is
 * wrong, the roll, an interruption. One tap leads there.
 */

import type { JSX } from 'preact';
import { day, sortie } from '../board/board';
import { wallMs } from '../board/flight/time';
import { stepsLang } from '../board/language';
import { openPlace, place, typing } from '../board/places';
import { stepsShown } from '../board/steps/leavingSteps';
import { underWay } from '../core';
import { ago } from '../parts/ago';
import { stopwatch } from '../parts/format';
import { marked } from '../parts/marked';
import { words } from '../parts/underWayWords';
import styles from './UnderWay.module.css';

/** The key; nothing while the steps themselves are shown. */
export function UnderWay(): JSX.Element | null {
  const now = underWay(sortie.value);
  const inSteps = stepsShown.value || (place.value === 'steps' && !typing.value);
  if (now === null || inSteps) return null;
  return (
    <button type="button" class={styles.underWay} onClick={() => openPlace('steps')}>
      <b>{said(now)}</b>
      <span class={styles.opens}>{words.opens[now.what]}</span>
    </button>
  );
}

function said(now: NonNullable<ReturnType<typeof underWay>>) {
  const goneMs = wallMs.value - now.since.wallMs;
  if (now.what === 'roll') return words.roll(stopwatch(goneMs));
  if (now.what === 'interrupted') return words.interrupted(ago(goneMs));
  const open = day.steps()?.abnormal;
  if (open == null) return words.list;
  const [part] = open.walk.phases;
  return marked(
    stepsLang(),
    (title) => words.listAt(title, part?.handled ?? 0, part?.total ?? 0),
    open.list.title,
  );
}
