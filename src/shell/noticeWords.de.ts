/** The words of the notices, in German. */

import type { Undoable } from '../board/record/adding';
import type { Translated } from '../parts/translated';
import type { words as english } from './noticeWords.en';

const undoable: Record<Undoable['what'], string> = {
  end: 'Andere Piste gewählt; Schritte, die davon abhängen, sind wieder fällig.',
  field: 'Anderer Platz gewählt; noch keine Piste.',
  aircraft: 'Anderes Flugzeug gewählt; seine Schritte beginnen von vorn.',
  load: 'Beladung geändert.',
  sortie: 'Der Flug ist beendet und im Flugbuch.',
  wind: 'Ein Wind kam mit einem Link oder aus einer anderen App und gilt jetzt.',
  'wind elsewhere': 'Der Wind des anderen Platzes gilt jetzt hier.',
  jump: 'Übersprungenes bleibt offen.',
  route: 'Die Route ist geändert.',
  begun: 'Was davor liegt, gilt als nicht geflogen.',
  list: 'Die Liste ist geschlossen.',
  'taken up': 'Dieser Flug ist wieder aufgenommen; der andere ist im Flugbuch.',
};

export const words: Translated<typeof english> = {
  usingOther: (using, best) => `Gewählt ${using}, beste ${best}`,
  use: (end) => `${end} nehmen`,
  newWind: (end, aheadKt, across, limit) => {
    const along =
      aheadKt === null
        ? ''
        : `${aheadKt < 0 ? 'Rückenwind' : 'Gegenwind'} ${Math.abs(aheadKt)} kt, `;
    return `Neuer Wind, ${end} am besten: ${along}Seitenwind ${across} von ${limit} kt`;
  },
  look: 'Ansehen',
  forgets:
    'Dieses Gerät speichert gerade nichts: Eingaben sind vergessen, sobald das Fenster geschlossen wird.',
  late: 'Der Speicher dieses Geräts antwortet noch nicht. Weitermachen: Eingaben sind gespeichert, sobald er antwortet.',
  newer:
    'Eine neuere Version von Lapstrip führt hier die Aufzeichnung. Alles ist da, aber diese Version kann es nicht lesen: Eingaben sind vergessen, sobald das Fenster geschlossen wird.',
  damaged: (count) =>
    count === 1
      ? 'Ein Eintrag auf diesem Gerät ist nicht lesbar. Er ist beiseitegelegt und steht in der Datei des Flugbuchs.'
      : `${count} Einträge auf diesem Gerät sind nicht lesbar. Sie sind beiseitegelegt und stehen in der Datei des Flugbuchs.`,
  ofNewer: (count) =>
    count === 1
      ? 'Ein Eintrag auf diesem Gerät ist von einer neueren Version von Lapstrip: er bleibt und wird hier nicht benutzt.'
      : `${count} Einträge auf diesem Gerät sind von einer neueren Version von Lapstrip: sie bleiben und werden hier nicht benutzt.`,
  failed: 'In Lapstrip ist ein Fehler aufgetreten. Eingaben bleiben, wie sie sind.',
  whatToDo: 'Was tun?',
  understood: 'Verstanden',
  update: 'Eine neue Version ist bereit. Der Flug bleibt, wie er ist.',
  takeUpdate: 'Übernehmen',
  emergencies: 'Notverfahren',
  openLists: 'öffnet, was bei einer Störung zu tun ist',
  undoable,
  undo: 'Rückgängig',
};
