/**
 * Voice and sounds: what is read aloud and by which voice, tones and vibration, and the way to keys
 * and sticks.
 */

import type { JSX } from 'preact';
import { RATES, sayNow, setVoicing, voicing } from '../../board/hands/voice';
import { openSheet, sheet } from '../../board/places';
import { feedbackOn, tell } from '../../board/steps/feedback';
import { bindings } from '../../device/bindings';
import { pageLanguage } from '../../device/pageLanguage';
import { canSound } from '../../device/sounds';
import { canSpeak, speechRefused, voiceFor, voicesIn } from '../../device/speech';
import { canVibrate } from '../../device/vibration';
import { Choice } from '../../parts/choice/Choice';
import { Key } from '../../parts/key/Key';
import styles from './SortieSheet.module.css';
import { words } from './voiceWords';

/** Reading aloud. */
export function VoicePart(): JSX.Element {
  if (!canSpeak()) return <p class={styles.hint}>{words.noSpeech}</p>;
  const { on, gates, rate } = voicing.value;
  return (
    <>
      <div class={styles.keys}>
        <Key pressed={on} onPress={() => setVoicing({ on: !on })}>
          {words.readAloud}
        </Key>
        <Key pressed={on && gates} disabled={!on} onPress={() => setVoicing({ gates: !gates })}>
          {words.gates}
        </Key>
      </div>
      {on && gates && <p class={styles.hint}>{words.gatesHint}</p>}
      <Choice
        label={words.rate}
        options={RATES.map((one) => ({ value: String(one), name: words.rates[one] }))}
        chosen={String(rate)}
        onChoose={(one) => setVoicing({ rate: Number(one) })}
      />
      <Voices />
    </>
  );
}

function Voices() {
  const voices = voicesIn(pageLanguage());
  const chosen = voiceFor(voicing.value.voice, voices);
  if (chosen === null) return <p class={styles.hint}>{words.noVoice}</p>;
  return (
    <>
      <label class={styles.label}>
        {words.voice}
        <select
          class={styles.input}
          value={chosen.uri}
          onChange={(event) => setVoicing({ voice: event.currentTarget.value })}
        >
          {voices.map(({ uri, name, lang, local }) => (
            <option key={uri} value={uri}>
              {words.voiceName(name, lang, local)}
            </option>
          ))}
        </select>
      </label>
      {!chosen.local && (
        <p class={styles.hint}>
          {voices.some(({ local }) => local) ? words.voiceNotLocal : words.noLocalVoice}
        </p>
      )}
      <div class={styles.keys}>
        <Key onPress={() => sayNow(words.sample)}>{words.hearIt}</Key>
      </div>
      {speechRefused.value && <p class={styles.hint}>{words.refused}</p>}
    </>
  );
}

/** Tones and vibration: one key turns both off. */
export function SoundPart(): JSX.Element {
  return (
    <>
      <div class={styles.keys}>
        <Key
          pressed={feedbackOn.value}
          onPress={() => {
            feedbackOn.value = !feedbackOn.value;
          }}
        >
          {words.sounds}
        </Key>
        <Key onPress={() => tell('done')}>{words.hear.done}</Key>
        <Key onPress={() => tell('held')}>{words.hear.held}</Key>
        <Key onPress={() => tell('barrier')}>{words.hear.barrier}</Key>
      </div>
      <p class={styles.hint}>
        {canSound() ? words.soundsHint : words.noSound}{' '}
        {canVibrate() ? words.vibrates : words.noVibration}
      </p>
    </>
  );
}

/** The way to keys and sticks. */
export function KeysPart(): JSX.Element {
  return (
    <>
      <p class={styles.hint}>{words.keysHint(bindings.value.length)}</p>
      <div class={styles.keys}>
        <Key onPress={() => openSheet({ kind: 'keys', over: sheet.value })}>{words.openKeys}</Key>
      </div>
    </>
  );
}
