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
import { Hint } from '../../parts/field/Labelled';
import { Pick } from '../../parts/field/Pick';
import { Key } from '../../parts/key/Key';
import { Keys } from '../../parts/key/Keys';
import { words } from './voiceWords';

/** Reading aloud. */
export function VoicePart(): JSX.Element {
  if (!canSpeak()) return <Hint>{words.noSpeech}</Hint>;
  const { on, gates, rate } = voicing.value;
  return (
    <>
      <Keys>
        <Key pressed={on} onPress={() => setVoicing({ on: !on })}>
          {words.readAloud}
        </Key>
        <Key pressed={on && gates} disabled={!on} onPress={() => setVoicing({ gates: !gates })}>
          {words.gates}
        </Key>
      </Keys>
      {on && gates && <Hint>{words.gatesHint}</Hint>}
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
  if (chosen === null) return <Hint>{words.noVoice}</Hint>;
  return (
    <>
      <Pick
        name={words.voice}
        options={voices.map(({ uri, name, lang, local }) => ({
          value: uri,
          name: words.voiceName(name, lang, local),
        }))}
        chosen={chosen.uri}
        onChoose={(voice) => setVoicing({ voice })}
      />
      {!chosen.local && (
        <Hint>{voices.some(({ local }) => local) ? words.voiceNotLocal : words.noLocalVoice}</Hint>
      )}
      <Keys>
        <Key onPress={() => sayNow(words.sample)}>{words.hearIt}</Key>
      </Keys>
      {speechRefused.value && <Hint>{words.refused}</Hint>}
    </>
  );
}

/** Tones and vibration: one key turns both off. */
export function SoundPart(): JSX.Element {
  return (
    <>
      <Keys>
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
      </Keys>
      <Hint>
        {canSound() ? words.soundsHint : words.noSound}{' '}
        {canVibrate() ? words.vibrates : words.noVibration}
      </Hint>
    </>
  );
}

/** The way to keys and sticks. */
export function KeysPart(): JSX.Element {
  return (
    <>
      <Hint>{words.keysHint(bindings.value.length)}</Hint>
      <Keys>
        <Key onPress={() => openSheet({ kind: 'keys', over: sheet.value })}>{words.openKeys}</Key>
      </Keys>
    </>
  );
}
