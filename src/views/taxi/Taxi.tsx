/** Taxi: what to say, the plan with the route, the pace, and a stopwatch from point to point. */

import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import { day, documents } from '../../board/board';
import { callLang } from '../../board/language';
import { sayCall } from '../../parts/radio/calls';
import { CallSheet } from './CallSheet';
import { TaxiNumbers } from './Numbers';
import { PlanPanel } from './PlanPanel';
import { RouteSheet } from './RouteSheet';
import styles from './Taxi.module.css';
import { ToldSheet } from './ToldSheet';
import { TaxiWatch } from './Watch';
import { words } from './words';

/** The place Taxi. */
export function Taxi(): JSX.Element {
  const [open, setOpen] = useState<'route' | 'calls' | 'told' | null>(null);
  const brief = day.taxi();
  const close = () => setOpen(null);
  if (brief === null) return <p class={styles.none}>{words.noAircraft}</p>;
  return (
    <div class={styles.taxi}>
      <Say onOpen={() => setOpen('calls')} />
      {documents.value.field === null ? (
        <p class={styles.none}>{words.noField}</p>
      ) : (
        <PlanPanel onRoute={() => setOpen('route')} onTold={() => setOpen('told')} />
      )}
      <TaxiNumbers brief={brief} />
      <TaxiWatch onRoute={() => setOpen('route')} />
      {open === 'route' && <RouteSheet onClose={close} />}
      {open === 'told' && <ToldSheet onClose={close} />}
      {open === 'calls' && <CallSheet onClose={close} />}
    </div>
  );
}

/** The next call, in words; it opens all of them. */
function Say({ onOpen }: { onOpen: () => void }) {
  const call = day.dueCall();
  if (call === null) return null;
  return (
    <button type="button" class={styles.say} onClick={onOpen}>
      <span class={styles.sayOn}>
        <span>
          {call.station === null ? words.noRadio : words.sayOn(call.station.mhz, day.dueCallAt())}
        </span>
        <span class={styles.all}>{words.allCalls}</span>
      </span>
      <span class={styles.said} lang={callLang()}>
        {sayCall(call, day.inputs().ownCalls[call.kind])}
      </span>
    </button>
  );
}
