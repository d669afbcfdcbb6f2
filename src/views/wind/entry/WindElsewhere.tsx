/** The wind of the field before, which doesn't count here unless it is taken over. */

import type { JSX } from 'preact';
import { day } from '../../../board/board';
import { fieldCode } from '../../../board/documents/inUse';
import { wallMs } from '../../../board/flight/time';
import { takeOver } from '../../../board/wind/windEntry';
import { type EnteredWind, readEnteredWind, type WindReport } from '../../../core';
import { ago } from '../../../parts/ago';
import { Key } from '../../../parts/key/Key';
import { readWindShort } from '../../../parts/live/live';
import { words } from '../report/words';
import styles from './WindElsewhere.module.css';

/** Whose it is, how old, and the key that uses it here; nothing once a wind was entered here. */
export function WindElsewhere(): JSX.Element | null {
  const wind = day.windElsewhere();
  const said = wind === null ? null : saidOf(wind);
  if (wind === null || said === null) return null;
  return (
    <div class={styles.elsewhere}>
      <p>{said}</p>
      <Key onPress={() => takeOver(wind)}>{words.elsewhere.take}</Key>
    </div>
  );
}

function saidOf(entered: EnteredWind): string | null {
  const { report } = readEnteredWind(entered);
  if (report?.wind == null) return null;
  const { station, issued } = report;
  const wind = readWindShort(report.wind);
  const age = ago(wallMs.value - entered.at.wallMs);
  if (station !== null) {
    return words.elsewhere.report(station, issued === null ? age : timeOfIssue(issued), wind);
  }
  return words.elsewhere.typed(entered.field && fieldCode(entered.field), age, wind);
}

/** As the report has it: `051830Z`. */
const timeOfIssue = ({ day, hour, minute }: NonNullable<WindReport['issued']>): string =>
  `${[day, hour, minute].map((part) => String(part).padStart(2, '0')).join('')}Z`;
