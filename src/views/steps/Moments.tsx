/** The moments of a sortie: brakes released, landed, a list at its end, the sortie at its end. */

import type { ComponentChildren, JSX } from 'preact';
import { day } from '../../board/board';
import { stepsLang } from '../../board/language';
import { openPlace } from '../../board/places';
import { doIt, flyAgain, goAround, openList } from '../../board/steps/stepping';
import { type AbnormalList, endsSortie, type Main, type Offers, wantsHold } from '../../core';
import { wholeNumber } from '../../parts/format';
import { Key } from '../../parts/key/Key';
import { TickKey } from '../../parts/key/TickKey';
import { markedText } from '../../parts/marked';
import { BackKey } from './BackKey';
import { LadderRungs } from './Ladder';
import { liveText } from './liveText';
import styles from './Moments.module.css';
import { words } from './words';

/** Lined up: the coming ladder, what goes with the brakes, and the key. */
export function Release({ main }: { main: Extract<Main, { what: 'stamp' }> }): JSX.Element {
  const { tied } = main;
  const lightUpS = day.ladder()?.lightUpS ?? null;
  return (
    <div class={styles.moment}>
      <LadderRungs />
      {lightUpS !== null && lightUpS > 0 && (
        <p class={styles.tied}>{words.lightUp(wholeNumber(lightUpS))}</p>
      )}
      {day.wind().using === null && (
        <div class={styles.warning}>
          <span>{words.noEnd}</span>
          <Key onPress={() => openPlace('wind')}>{words.toWind}</Key>
        </div>
      )}
      {tied.length > 0 && (
        <p class={styles.tied}>
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
          onPress={() => doIt(main)}
        >
          {words.released}
        </TickKey>
      </div>
    </div>
  );
}

/** Down, or off again: landed, a touch-and-go, or another approach. */
export function Touchdown({ now }: { now: Offers }): JSX.Element {
  return (
    <div class={styles.moment}>
      <p class={styles.big}>{words.landed}</p>
      <p class={styles.note}>{words.landedNote}</p>
      <div class={`${styles.keys} ${styles.four}`}>
        <BackKey />
        <Key moving disabled={!now.goAround} onPress={goAround}>
          {words.goAround}
        </Key>
        <TickKey
          refusals={words.refused}
          moving
          step="landed"
          disabled={!now.again.includes('touch-and-go')}
          onPress={() => flyAgain('touch-and-go')}
        >
          {words.touchAndGo}
        </TickKey>
        <TickKey
          refusals={words.refused}
          look="pick"
          moving
          step="landed"
          onPress={() => doIt(now.main)}
        >
          {words.landed}
        </TickKey>
      </div>
    </div>
  );
}

interface ListEndProps {
  readonly main: Extract<Main, { what: 'close-list' }>;
  readonly nextList: AbnormalList | null;
}

/** An abnormal list is complete: where it leads. */
export function ListEnd({ main, nextList }: ListEndProps): JSX.Element {
  return (
    <div class={`${styles.moment} ${endsSortie(main) ? styles.ending : ''}`}>
      <p class={styles.big}>{words.listEnd}</p>
      {endsSortie(main) ? (
        <EndKeys main={main} />
      ) : (
        <div class={styles.keys}>
          {nextList !== null && (
            <Key moving className={styles.over} onPress={() => openList(nextList.id)}>
              {markedText(stepsLang(), nextList.title)}
            </Key>
          )}
          <BackKey />
          <TickKey
            refusals={words.refused}
            look="pick"
            moving
            step="list end"
            onPress={() => doIt(main)}
          >
            {leadsWords(main)}
          </TickKey>
        </div>
      )}
    </div>
  );
}

function leadsWords({ leadsTo, back }: ListEndProps['main']): string {
  if (leadsTo === 'return') return words.listReturns;
  if (leadsTo === 'end') return words.endKey;
  const name = words.phase[leadsTo.phase];
  return back ? words.listLeads(name) : words.listLeadsOn(name);
}

/** Everything is handled. */
export function SortieEnd({ now }: { now: Offers }): JSX.Element {
  return (
    <div class={`${styles.moment} ${styles.ending}`}>
      <p class={styles.big}>{words.end}</p>
      <p class={styles.note}>{words.endNote}</p>
      <EndKeys main={now.main}>
        <Key moving disabled={!now.again.includes('take-off')} onPress={() => flyAgain('take-off')}>
          {words.takeOffAgain}
        </Key>
      </EndKeys>
    </div>
  );
}

/**
 * The keys where the sortie may be ended. Where "Done" stood there is no key: the tap that follows
 * the last step ends nothing.
 */
function EndKeys({ main, children }: { main: Main; children?: ComponentChildren }) {
  return (
    <>
      <div class={styles.end}>
        <TickKey
          refusals={words.refused}
          look="pick"
          moving
          step="end"
          hold={wantsHold(main, false)}
          onPress={() => doIt(main)}
        >
          {words.endKey}
        </TickKey>
      </div>
      <div class={`${styles.keys} ${styles.asDue}`}>
        <BackKey />
        {children}
      </div>
    </>
  );
}
