/** All calls, with what must be read back, and room for the pilot's own words. */

import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import { day } from '../../board/board';
import { departTowards, taxiParts, wordCall } from '../../board/flight/taxi';
import { callLang } from '../../board/language';
import type { Call, Readback } from '../../core';
import { callTitles, compass, readbackWords } from '../../parts/calls';
import { Key } from '../../parts/key/Key';
import { joined, marked, worded } from '../../parts/marked';
import { PLACEHOLDERS, sayCall } from '../../parts/radio/calls';
import { sayReadback } from '../../parts/radio/readback';
import { Sheet } from '../../parts/sheet/Sheet';
import styles from './Sheets.module.css';
import { words } from './words';

export function CallSheet({ onClose }: { onClose: () => void }): JSX.Element {
  const towards = day.inputs().departTo;
  return (
    <Sheet title={words.calls} close={words.close} size="page" onClose={onClose}>
      <section class={styles.part}>
        <h3>{words.direction}</h3>
        <div class={styles.choices}>
          {taxiParts.value?.COMPASS.map((point) => (
            <Key
              key={point}
              pressed={towards === point}
              onPress={() => departTowards(towards === point ? null : point)}
            >
              {compass[point]}
            </Key>
          ))}
        </div>
        {day.inputs().callsign.trim() === '' && <p>{words.callsign}</p>}
      </section>
      {day.calls().map((call) => (
        <One key={call.kind} call={call} />
      ))}
    </Sheet>
  );
}

/** A station goes by its name as said on the radio. */
const stationWords = ({ name, mhz }: NonNullable<Call['station']>) =>
  marked(callLang(), (said) => words.to(said, mhz), name);

const toReadBack = (back: Readback) =>
  worded(callLang(), readbackWords[back.code], sayReadback(back));

function One({ call }: { call: Call }) {
  const own = day.inputs().ownCalls[call.kind];
  const [writing, setWriting] = useState(false);
  return (
    <section class={styles.part}>
      <h3>{callTitles[call.kind]}</h3>
      {call.station !== null && <p class={styles.station}>{stationWords(call.station)}</p>}
      <p class={styles.text} lang={callLang()}>
        {sayCall(call, own)}
      </p>
      {call.readback.length > 0 && (
        <p>
          <b>{words.readBack}: </b>
          {joined('; ', call.readback.map(toReadBack)).drawn}
        </p>
      )}
      {writing ? (
        <label class={styles.own}>
          <span>{words.ownFor(callTitles[call.kind])}</span>
          <textarea
            rows={3}
            lang={callLang()}
            maxLength={400}
            value={own ?? sayCall(call)}
            onChange={(event) => wordCall(call.kind, event.currentTarget.value.trim() || null)}
          />
          <small>{words.placeholders(PLACEHOLDERS.map((name) => `{${name}}`).join(' '))}</small>
        </label>
      ) : (
        <Key onPress={() => setWriting(true)}>{words.ownWords}</Key>
      )}
      {own !== undefined && (
        <Key
          onPress={() => {
            wordCall(call.kind, null);
            setWriting(false);
          }}
        >
          {words.usualWords}
        </Key>
      )}
    </section>
  );
}
