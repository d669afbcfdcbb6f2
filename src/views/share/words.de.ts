/** The words of Share, in German. */

import type { Translated } from '../../parts/translated';
import type { words as english } from './words.en';

export const words: Translated<typeof english> = {
  title: (name) => `${name} teilen`,
  close: 'Schließen',
  loading: 'Wird gepackt',
  failed: 'Das ist gerade nicht zu bekommen.',
  hint: 'Wer die Datei, den Link oder den Code öffnet, sieht, was hinzukäme, bevor etwas gespeichert wird.',
  file: 'Datei',
  save: 'Als Datei speichern',
  shareFile: 'Datei teilen',
  link: 'Link',
  linkHint: (length) =>
    `Alles davon steht im Link selbst, ${length} Zeichen: Es liegt auf keinem Server.`,
  linkTooLong: (length, most) =>
    `Er hätte ${length} Zeichen. Viele Apps kürzen Links mit mehr als ${most}: Nehmen Sie die Datei oder die Codes.`,
  copy: 'Link kopieren',
  copied: 'Der Link ist kopiert.',
  notCopied: 'Der Browser lässt das Kopieren nicht zu. Hier lässt er sich markieren und kopieren:',
  shareLink: 'Link teilen',
  code: 'QR-Code',
  codeHint: 'Mit der Kamera des anderen Geräts lesen: je heller und größer, desto besser.',
  codesHint: (codes) =>
    `Dafür braucht es ${codes} Codes. Einen nach dem anderen mit der Kamera des anderen Geräts lesen, in beliebiger Reihenfolge.`,
  codePart: (part, of) => `${part} von ${of}`,
  showCode: 'Code zeigen',
  bright: 'Er ist schwarz auf weiß, und hell.',
  brightCodes: (codes) =>
    `${codes} Codes, einer nach dem anderen. Sie sind schwarz auf weiß, und hell.`,
  codeOf: (name, part, of) => `QR-Code ${part} von ${of} für einen Link, der ${name} enthält`,
  tooLarge: 'Für QR-Codes ist das zu groß. In die Datei passt es.',
};
