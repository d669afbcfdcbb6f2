/** The words of voice and sounds, and of the way to Keys and sticks, in German. */

import type { Translated } from '../../parts/translated';
import type { words as english } from './voiceWords.en';

export const words: Translated<typeof english> = {
  title: 'Stimme und Töne',
  readAloud: 'Vorlesen',
  gates: 'Marken des Starts',
  gatesHint:
    'In Startlauf und Steigflug wird jede Geschwindigkeit angesagt, wenn sie nach dem Lösen der Bremsen zu erwarten ist. Das sind Zeiten, nicht die Fahrt.',
  rate: 'Tempo der Stimme',
  rates: { 0.8: 'Langsam', 1: 'Üblich', 1.25: 'Schnell', 1.5: 'Sehr schnell' },
  voice: 'Stimme',
  voiceName: (name, lang, local) => `${name}, ${lang}${local ? '' : ', braucht ein Netz'}`,
  voiceNotLocal: 'Diese Stimme braucht ein Netz. Die ohne diesen Zusatz brauchen keines.',
  noLocalVoice:
    'Dieses Gerät hat keine eigene Stimme für Deutsch: Ohne Netz wird nichts vorgelesen.',
  noVoice: 'Dieses Gerät hat keine Stimme für Deutsch: Es wird nichts vorgelesen.',
  noSpeech: 'Dieser Browser kann nicht vorlesen.',
  hearIt: 'Anhören',
  sample: 'Piste zwo acht. Wind zwo sieben null Grad eins zwo Knoten in Böen zwo null.',
  refused:
    'Der Browser liest erst nach einer ersten Berührung oder Taste vor: noch einmal versuchen.',
  sounds: 'Töne',
  hear: {
    done: '„Erledigt“ anhören',
    held: '„Später“ anhören',
    barrier: '„Aufrollprüfung“ anhören',
  },
  soundsHint: 'Ein hoher Ton: erledigt. Zwei fallende: später. Drei tiefe: Aufrollprüfung.',
  noSound: 'Dieser Browser gibt keine Töne.',
  vibrates: 'Das Gerät vibriert dazu, wo es einen Motor hat.',
  noVibration: 'Dieses Gerät vibriert nicht.',
  keys: 'Tasten und Sticks',
  keysHint: (count) =>
    count === 0
      ? 'Schritte mit Tastatur, Pedal, Presenter oder Stick abhaken: Noch ist nichts angelernt.'
      : `Auf diesem Gerät angelernt: ${count}.`,
  openKeys: 'Tasten und Sticks',
};
