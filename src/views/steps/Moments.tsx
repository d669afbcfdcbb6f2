/** The moments of a sortie: brakes released, landed, a list at its end, the sortie at its end. */

import type { JSX } from 'preact';
import { wind } from '../../board/board';
import { ladder } from '../../board/flight/today';
import { stepsLang } from '../../board/language';
import { openPlace } from '../../board/places';
import {
  canGoBack,
  closeList,
  endSortie,
  flyAgain,
  goAround,
  goBack,
  stamp,
} from '../../board/steps/stepping';
import type { AbnormalList, StepRow } from '../../core';
import { whole } from '../../parts/format';
import { Key } from '../../parts/key/Key';
import { TickKey } from '../../parts/key/TickKey';
import { Rungs } from './Ladder';
import { liveText } from './liveText';
import styles from './Moments.module.css';
import { words } from './words';

function BackKey() {
  return (
    <Key moving disabled={!canGoBack()} onPress={goBack}>
      {words.back}
    </Key>
  );
}

/** Lined up: the ladder to come, what goes with the brakes, and the key. */
export function Release({ tied }: { tied: readonly StepRow[] }): JSX.Element {
  const lightUpS = ladder.value?.lightUpS ?? null;
  return (
    <div class={styles.moment}>
      <Rungs />
      {lightUpS !== null && lightUpS > 0 && (
        <p class={styles.tied}>{words.lightUp(whole(lightUpS))}</p>
      )}
      {wind.value.using === null && (
        <div class={styles.warning}>
          <span>{words.noEnd}</span>
          <Key onPress={() => openPlace('wind')}>{words.toWind}</Key>
        </div>
      )}
      {tied.length > 0 && (
        <p class={styles.tied}>
          {words.tied}:{' '}
          {tied.map(({ step }) => (
            <b key={step.id} lang={stepsLang()}>
              {liveText(step.item)}, {liveText(step.response)}
            </b>
          ))}
        </p>
      )}
      <div class={styles.keys}>
        <BackKey />
        <TickKey
          refusals={words.refused}
          look="pick"
          moving
          step="brakes released"
          onPress={() => stamp('brakes released', tied)}
        >
          {words.released}
        </TickKey>
      </div>
    </div>
  );
}

/** Down, or off again: landed, a touch-and-go, or another approach. */
export function Touchdown(): JSX.Element {
  return (
    <div class={styles.moment}>
      <p class={styles.big}>{words.landed}</p>
      <p class={styles.note}>{words.landedNote}</p>
      <div class={`${styles.keys} ${styles.four}`}>
        <BackKey />
        <Key moving onPress={goAround}>
          {words.goAround}
        </Key>
        <TickKey
          refusals={words.refused}
          moving
          step="landed"
          onPress={() => flyAgain('touch-and-go')}
        >
          {words.touchAndGo}
        </TickKey>
        <TickKey
          refusals={words.refused}
          look="pick"
          moving
          step="landed"
          onPress={() => stamp('landed')}
        >
          {words.landed}
        </TickKey>
      </div>
    </div>
  );
}

/** An abnormal list is complete: where it leads. */
export function ListEnd({ list }: { list: AbnormalList }): JSX.Element {
  return (
    <div class={styles.moment}>
      <p class={styles.big}>{words.listEnd}</p>
      <div class={styles.keys}>
        <BackKey />
        <TickKey
          refusals={words.refused}
          look="pick"
          moving
          step="list end"
          onPress={() => closeList(list.then)}
        >
          {leadsWords(list.then)}
        </TickKey>
      </div>
    </div>
  );
}

function leadsWords(then: AbnormalList['then']): string {
  if (then === 'return') return words.listReturns;
  if (then === 'end') return words.endKey;
  const name = words.phase[then.phase];
  return then.reopen.includes(then.phase) ? words.listLeads(name) : words.listLeadsOn(name);
}

/** Everything is handled. */
export function SortieEnd(): JSX.Element {
  return (
    <div class={styles.moment}>
      <p class={styles.big}>{words.end}</p>
      <p class={styles.note}>{words.endNote}</p>
      <div class={`${styles.keys} ${styles.three}`}>
        <BackKey />
        <Key moving onPress={() => flyAgain('take-off')}>
          {words.takeOffAgain}
        </Key>
        <TickKey refusals={words.refused} look="pick" moving step="end" onPress={endSortie}>
          {words.endKey}
        </TickKey>
      </div>
    </div>
  );
}
