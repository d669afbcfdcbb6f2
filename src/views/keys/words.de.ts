/** The words of Keys and sticks, in German. */

import type { Action } from '../../device/bindings';
import type { PressManner } from '../../device/presses';
import type { Translated } from '../../parts/translated';
import type { words as english } from './words.en';

const action: Record<Action, string> = {
  done: 'Erledigt',
  back: 'Zurück',
  'hold-back': 'Später',
  repeat: 'Wiederholen',
  'next-place': 'Nächste Ansicht',
  'big-card': 'Großbild',
  stopwatch: 'Stoppuhr-Punkt',
  'brakes-released': 'Bremsen los',
  stopping: 'Abbruch',
  airborne: 'In der Luft',
};

const actionNote: Record<Action, string> = {
  done: 'Der fällige Schritt, oder es geht weiter. Für einen kritischen Schritt halten.',
  back: 'Nimmt das zuletzt Erledigte zurück.',
  'hold-back': 'Schiebt den Schritt auf; vor der Piste ist er wieder fällig.',
  repeat: 'Liest vor, was fällig ist.',
  'next-place': 'Wind, Rollen, Schritte, Werte, Flugbuch und wieder von vorn.',
  'big-card': 'Ein Schritt füllt den Bildschirm, und zurück.',
  stopwatch: 'Der nächste Punkt unter „Rollen“ ist passiert.',
  'brakes-released': 'Der Startlauf beginnt.',
  stopping: 'Im Startlauf: die Liste für den Startabbruch.',
  airborne: 'Im Startlauf: vom Boden weg.',
};

const manner: Record<PressManner, string> = {
  press: 'gedrückt',
  hold: 'gehalten',
  double: 'zweimal gedrückt',
};

const keyNames: Record<string, string> = {
  ' ': 'Leertaste',
  Space: 'Leertaste',
  Enter: 'Eingabe',
  Backspace: 'Rücktaste',
  Insert: 'Einfg',
  Delete: 'Entf',
  Home: 'Pos 1',
  End: 'Ende',
  ArrowLeft: 'Pfeil links',
  ArrowRight: 'Pfeil rechts',
  ArrowUp: 'Pfeil auf',
  ArrowDown: 'Pfeil ab',
  PageUp: 'Bild auf',
  PageDown: 'Bild ab',
  Period: 'Punkt',
  Comma: 'Komma',
  NumpadEnter: 'Eingabe, Ziffernblock',
  NumpadAdd: 'Plus, Ziffernblock',
  NumpadSubtract: 'Minus, Ziffernblock',
  NumpadMultiply: 'Mal, Ziffernblock',
  NumpadDivide: 'Geteilt, Ziffernblock',
  NumpadDecimal: 'Komma, Ziffernblock',
  MediaPlayPause: 'Wiedergabe oder Pause',
  MediaStop: 'Stopp',
  MediaTrackNext: 'Nächster Titel',
  MediaTrackPrevious: 'Voriger Titel',
  AudioVolumeUp: 'Lauter',
  AudioVolumeDown: 'Leiser',
  AudioVolumeMute: 'Stumm',
};

const mediaNames: Record<string, string> = {
  play: 'Wiedergabe oder Pause',
  nexttrack: 'Nächster Titel',
  previoustrack: 'Voriger Titel',
  stop: 'Stopp',
};

const list = (names: readonly string[]) => names.map((name) => `„${name}“`).join(', ');

export const words: Translated<typeof english> = {
  title: 'Tasten und Sticks',
  close: 'Schließen',
  about:
    'Alles, was eine Taste sendet oder ein Gamecontroller ist, kann Lapstrip bedienen: Tastatur, Blätterpedal, Presenter, Stick, Schubhebel. Was hier gelernt wird, bleibt auf diesem Gerät. Es tut, was der Bildschirm in diesem Augenblick tun könnte, mit derselben Vorsicht: nichts in der halben Sekunde nach einer Änderung, nichts beim Schreiben und nichts, solange ein Blatt offen ist.',
  action,
  actionNote,
  manner,
  actions: 'Was sie tun',
  learn: 'Anlernen',
  learnFor: (name) => `Eine Taste anlernen für: ${name}`,
  press: 'Drücken, was benutzt werden soll: einmal, zweimal schnell oder lange.',
  cancel: 'Verwerfen',
  none: 'noch nichts',
  remove: (control, name) => `Entfernen: ${control}, für ${name}`,
  takeAway: 'Entfernen',
  bound: (control, how) => `${control}, ${how}`,
  shared: (others) => `Tut nichts: Es steht auch für ${list(others)}. Eines davon entfernen.`,
  cannotHold: (others) =>
    `Kann keinen kritischen Schritt abhaken: Gehalten steht es für ${list(others)}.`,
  forget: 'Alle vergessen',

  devices: 'Was jedes Gerät sendet',
  keyboard: 'Tastatur, Pedale, Presenter',
  nothingYet: 'Noch nichts: eine Taste drücken.',
  down: 'gesendet',
  otherKeys: 'Tab und Esc bleiben, was sie sind.',
  mediaHint:
    'Medientasten kommen in den meisten Browsern als Tasten an. Manche behalten sie und reichen sie nur an eine Seite weiter, die Ton abspielt.',
  mediaMissing: 'Dieser Browser behält Medientasten, die nicht als Tasten gesendet werden.',
  noPad:
    'Kein Controller zu sehen. Einen anschließen und einen Knopf daran drücken: Bis dahin verbergen Browser ihn.',
  padMissing: 'Dieser Browser kennt keine Gamecontroller. Tasten gehen.',
  padRefused: 'Dieser Browser lässt die Seite keine Gamecontroller sehen. Tasten gehen.',
  padHint:
    'Er wird gehört, solange Lapstrip auf dem Bildschirm ist, auch wenn ein anderes Programm die Tastatur hat.',
  pad: (name, copy) => (copy === 0 ? name : `${name}, Nummer ${copy + 1}`),
  buttons: 'Gedrückte Knöpfe',
  noButtons: 'keine',
  axes: 'Achsen',
  axis: (number) => `Achse ${number + 1}`,
  axisReads: (value) => value,

  key: (code) =>
    keyNames[code] ??
    code
      .replace(/^Key(?=[A-Z]$)/, '')
      .replace(/^Digit(?=\d$)/, '')
      .replace(/^Numpad(\d)$/, '$1, Ziffernblock'),
  media: (name) => `${mediaNames[name] ?? name} (Medientaste)`,
  button: (number) => `Knopf ${number + 1}`,
  axisWay: (number, way) => `Achse ${number + 1}, ${way === '+' ? 'auf' : 'ab'}`,
  onPad: (part, pad) => `${part}, ${pad}`,

  outcome: {
    'not-here': (name) => `${name}: nicht auf dem Bildschirm`,
    'not-now': (name) => `${name}: jetzt nicht`,
    'too-soon': (name) => `${name}: zu früh, noch einmal drücken`,
    hold: (name) => `${name}: kritisch, lange drücken`,
    again: (name) => `${name}: kritisch, noch einmal drücken`,
    'not-known': (name) => `${name}: ein Wert dieses Schritts ist nicht bekannt`,
  },

  gates: 'Angesagte Marken sind Zeiten, nicht die Fahrt.',
};
