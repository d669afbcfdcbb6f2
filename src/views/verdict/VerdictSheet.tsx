/** Everything that speaks against the runway in use: what stops first, and what would mend it. */

import type { JSX } from 'preact';
import { day, sortie } from '../../board/board';
import { cautions, isOtherWithin, type ShownCaution } from '../../board/flight/cautions';
import { openPlace, openSheet } from '../../board/places';
import { timeOfDay } from '../../parts/format';
import { Key } from '../../parts/key/Key';
import { Sheet } from '../../parts/sheet/Sheet';
import { SheetPart, SheetParts } from '../../parts/sheet/SheetPart';
import { cautionText } from '../../parts/verdict/cautionText';
import { words } from '../../parts/verdict/words';
import styles from './VerdictSheet.module.css';

/** The sheet. */
export function VerdictSheet({ onClose }: { onClose: () => void }): JSX.Element {
  const shown = cautions.value;
  const stopping = shown.filter(({ stops, accepted }) => stops || accepted);
  const others = shown.filter((caution) => !stopping.includes(caution));
  const hasLoad = day.settled().aircraft?.load !== undefined;
  return (
    <Sheet title={words.title(day.verdict().end)} close={words.close} onClose={onClose}>
      <SheetParts>
        {shown.length === 0 && <p>{words.none}</p>}
        {stopping.length > 0 && (
          <SheetPart title={words.stops}>
            <List of={stopping} />
          </SheetPart>
        )}
        {others.length > 0 && (
          <SheetPart title={stopping.length === 0 ? words.toWatch : words.inAWord}>
            <List of={others} />
          </SheetPart>
        )}
        <div class={styles.keys}>
          <Key onPress={() => openPlace('wind')}>{words.openWind}</Key>
          {hasLoad && (
            <Key onPress={() => openSheet({ kind: 'load', over: { kind: 'verdict' } })}>
              {words.openLoad}
            </Key>
          )}
        </div>
      </SheetParts>
    </Sheet>
  );
}

function List({ of }: { of: readonly ShownCaution[] }) {
  return (
    <ul class={styles.list}>
      {of.map((caution) => (
        <li key={`${caution.code} ${caution.limit}`} class={caution.stops ? styles.stops : ''}>
          <b>{cautionText(caution).drawn}</b>
          <span class={styles.mend}>
            {caution.accepted ? acceptedAt(caution) : words.mend(caution.code, isOtherWithin.value)}
          </span>
        </li>
      ))}
    </ul>
  );
}

function acceptedAt({ code }: ShownCaution): string {
  const when = sortie.value.accepted.findLast((one) => one.code === code)?.at.sortieMs;
  return when === undefined ? '' : words.accepted(timeOfDay(when));
}
