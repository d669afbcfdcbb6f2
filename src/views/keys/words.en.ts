/** The words of Keys and sticks. */

import type { Outcome } from '../../board/hands/actions';
import type { Action } from '../../device/bindings';
import type { PressManner } from '../../device/presses';

const action: Record<Action, string> = {
  done: 'Done',
  back: 'Back',
  'hold-back': 'Later',
  repeat: 'Say again',
  'next-place': 'Next place',
  'big-card': 'Big card',
  stopwatch: 'Stopwatch point',
  'brakes-released': 'Brakes released',
  stopping: 'Stopping',
  airborne: 'Airborne',
};

const actionNote: Record<Action, string> = {
  done: 'The step that is due, or going on. A critical step wants it held.',
  back: 'Takes the last thing done back.',
  'hold-back': 'Puts the step off; it is due again before the runway.',
  repeat: 'Reads aloud what is due.',
  'next-place': 'Wind, Taxi, Steps, Numbers, Log, and round again.',
  'big-card': 'One step fills the screen, and back.',
  stopwatch: 'The next point on Taxi is passed.',
  'brakes-released': 'The roll begins.',
  stopping: 'On the roll: the list for a rejected take-off.',
  airborne: 'On the roll: off the ground.',
};

const manner: Record<PressManner, string> = {
  press: 'pressed',
  hold: 'held',
  double: 'pressed twice',
};

const keyNames: Record<string, string> = {
  ' ': 'Space',
  ArrowLeft: 'Arrow left',
  ArrowRight: 'Arrow right',
  ArrowUp: 'Arrow up',
  ArrowDown: 'Arrow down',
  PageUp: 'Page up',
  PageDown: 'Page down',
  Period: 'Full stop',
  MediaPlayPause: 'Play or pause',
  MediaTrackNext: 'Next track',
  MediaTrackPrevious: 'Last track',
  AudioVolumeUp: 'Volume up',
  AudioVolumeDown: 'Volume down',
};

const mediaNames: Record<string, string> = {
  play: 'Play or pause',
  nexttrack: 'Next track',
  previoustrack: 'Last track',
  stop: 'Stop',
};

const list = (names: readonly string[]) => names.join(', ');

export const words = {
  title: 'Keys and sticks',
  close: 'Close',
  about:
    'Whatever sends a key or is a game controller can work Lapstrip: a keyboard, a page pedal, a presenter, a stick, a throttle. What is learned here stays on this device. It does what the screen could do at that moment, with the same care: nothing within half a second of a change, nothing while you type or while a sheet is open.',
  action,
  actionNote,
  manner,
  actions: 'What they do',
  learn: 'Add',
  learnFor: (name: string) => `Add a key for: ${name}`,
  press: 'Press what you want to use: once, twice quickly, or hold it.',
  cancel: 'Cancel',
  none: 'nothing yet',
  remove: (control: string, name: string) => `Take away: ${control}, for ${name}`,
  takeAway: 'Take away',
  bound: (control: string, how: string) => `${control}, ${how}`,
  shared: (others: readonly string[]) =>
    `Does nothing: it is also for ${list(others)}. Take one of them away.`,
  cannotHold: (others: readonly string[]) =>
    `Cannot tick a critical step: held, it is for ${list(others)}.`,
  forget: 'Forget all of them',

  devices: 'What each device sends',
  keyboard: 'Keyboard, pedals, presenters',
  nothingYet: 'Nothing yet: press a key.',
  down: 'sent',
  otherKeys: 'Tab and Escape stay what they are.',
  mediaHint:
    'Media keys come as keys in most browsers. Some keep them, and hand them on only to a page that plays sound.',
  mediaMissing: 'This browser keeps media keys that are not sent as keys.',
  noPad:
    'No controller is seen. Plug one in and press a button of it: browsers hide it until then.',
  padMissing: 'This browser knows no game controllers. Keys work.',
  padRefused: 'This browser does not let the page see game controllers. Keys work.',
  padHint:
    'It is heard while Lapstrip is on the screen, also while another program has the keyboard.',
  pad: (name: string, copy: number) => (copy === 0 ? name : `${name}, number ${copy + 1}`),
  buttons: 'Buttons down',
  noButtons: 'none',
  axes: 'Axes',
  axis: (number: number) => `Axis ${number + 1}`,
  axisReads: (value: string) => value,

  key: (code: string) =>
    keyNames[code] ?? code.replace(/^Key(?=[A-Z]$)/, '').replace(/^Digit(?=\d$)/, ''),
  media: (name: string) => `${mediaNames[name] ?? name} (media)`,
  button: (number: number) => `Button ${number + 1}`,
  axisWay: (number: number, way: '+' | '-') => `Axis ${number + 1}, ${way === '+' ? 'up' : 'down'}`,
  onPad: (part: string, pad: string) => `${part}, ${pad}`,

  outcome: {
    'not-here': (name: string) => `${name}: not on the screen`,
    'not-now': (name: string) => `${name}: not now`,
    'too-soon': (name: string) => `${name}: too soon, press again`,
    hold: (name: string) => `${name}: critical, hold it`,
    again: (name: string) => `${name}: critical, press it again`,
    'not-known': (name: string) => `${name}: a number of this step is not known`,
  } satisfies Record<Exclude<Outcome, 'done'>, (name: string) => string>,

  gates: 'Spoken gates are times, not airspeed.',
} as const;
