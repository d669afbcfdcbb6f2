/** The words of voice and sounds, and of the way to keys and sticks. */

import type { RATES } from '../../board/hands/voice';

export const words = {
  title: 'Voice and sounds',
  readAloud: 'Read aloud',
  gates: 'Gates of take-off',
  gatesHint:
    'On the roll and in the climb each speed is spoken when it is expected after brake release. These are times, not airspeed.',
  rate: 'Pace of the voice',
  rates: { 0.8: 'Slow', 1: 'Usual', 1.25: 'Quick', 1.5: 'Very quick' } satisfies Record<
    (typeof RATES)[number],
    string
  >,
  voice: 'Voice',
  voiceName: (name: string, lang: string, local: boolean) =>
    `${name}, ${lang}${local ? '' : ', needs a network'}`,
  voiceNotLocal: 'This voice needs a network. Those without that remark do not.',
  noLocalVoice:
    'This device has no voice of its own for English: without a network nothing is read aloud.',
  noVoice: 'This device has no voice for English: nothing is read aloud.',
  noSpeech: 'This browser cannot read aloud.',
  hearIt: 'Hear it',
  sample: 'Runway two eight. Wind two seven zero degrees one two knots gusting two zero.',
  refused: 'The browser reads aloud only after a first touch or key: try it once more.',
  sounds: 'Sounds',
  hear: { done: 'Hear “Done”', held: 'Hear “Later”', barrier: 'Hear “Runway check”' },
  soundsHint: 'One high tone: done. Two falling: later. Three low: runway check.',
  noSound: 'This browser makes no sounds.',
  vibrates: 'The device vibrates with them, where it has a motor.',
  noVibration: 'This device does not vibrate.',
  keys: 'Keys and sticks',
  keysHint: (count: number) =>
    count === 0
      ? 'Tick steps with a keyboard, a pedal, a presenter or a stick: nothing is set yet.'
      : `Learned on this device: ${count}.`,
  openKeys: 'Keys and sticks',
} as const;
