/** The words of drawing a field, in German. */

import type { ChangeVerb } from '../../core';
import type { Translated } from '../../parts/translated';
import type {
  changeWords as englishChangeWords,
  gapWords as englishGapWords,
  needs as englishNeeds,
  placeBad as englishPlaceBad,
  pointName as englishPointName,
  stretchName as englishStretchName,
  words as englishWords,
} from './words.en';

export const words: Translated<typeof englishWords> = {
  draw: 'Platz zeichnen',
  mend: (code) => `${code} bearbeiten`,
  close: 'Schließen',
  loading: 'Einen Moment.',
  failed: 'Der Platz ließ sich nicht laden. Schließen und noch einmal versuchen.',
  undo: 'Rückgängig',
  redo: 'Wiederholen',
  stepped: {
    undone: (what) => `Zurückgenommen: ${what}.`,
    redone: (what) => `Wiederholt: ${what}.`,
  },
  parts: { field: 'Platz', runways: 'Pisten', plan: 'Plan' },
  whichPart: 'Teil des Platzes',
  forgets:
    'Dieses Gerät speichert nichts mehr: Was jetzt gezeichnet wird, geht mit dem Schließen des Fensters verloren.',

  code: 'Kennung',
  codeHint: 'XHAR',
  codeBad:
    'Eine Kennung hat drei oder vier Buchstaben und Ziffern und beginnt mit einem Buchstaben.',
  name: 'Name',
  nameBad: 'Höchstens 80 Zeichen.',
  about: 'Was man über ihn wissen muss',
  aboutBad: 'Höchstens 600 Zeichen.',
  language: 'Sprache dieser Texte',
  languageHint: 'Gefunkt wird in jeder Sprache auf Englisch.',
  whereTitle: 'Wo er liegt',
  placeTitle: 'Bezugspunkt',
  placeHint:
    'Um ihn herum wird der Plan gezeichnet. Bleibt er leer, ist es die Mitte der ersten Piste.',
  placeWays:
    'Als 523541N 0043606E, N5235.688 E00436.100, 52°35′41″N 4°36′06″E oder 52.5948, 4.6017 schreiben.',
  elevation: 'Höhe über MSL, ft',
  elevationBad: 'Eine Höhe liegt zwischen −1 500 und 20 000 ft.',
  calmWind: 'Piste bei schwachem Wind',
  none: 'Keine',
  radio: 'Funk',
  radioName: 'Gesprochen als',
  radioNameBad: 'Höchstens 80 Zeichen.',
  mhz: 'MHz',
  mhzBad: 'Eine Frequenz als 118.7 oder 121.850 schreiben.',
  service: 'Dienst',
  services: {
    ground: 'Ground',
    tower: 'Tower',
    information: 'Information',
    traffic: 'Traffic: niemand kontrolliert',
  },
  addRadio: 'Frequenz hinzufügen',
  removeRadio: (mhz) => `${mhz} entfernen`,

  runway: (name) => `Piste ${name}`,
  addRunway: 'Piste hinzufügen',
  removeRunway: (name) => `Piste ${name} entfernen`,
  howLaid: 'Lage',
  ways: { ends: 'Über die Enden', centre: 'Über die Mitte' },
  addWays: { ends: 'Über beide Enden', centre: 'Über Richtung und Länge' },
  middle: 'Mitte',
  endPlace: (designator) => `Beginn der ${designator}`,
  firstEnd: 'Ein Ende',
  secondEnd: 'Das andere Ende',
  endsHint:
    'Breite und Länge jeder Schwelle, getippt oder eingefügt, auch beide auf einmal. Bei versetzter Schwelle das Ende der befestigten Fläche nehmen.',
  firstNumber: 'Nummer an dem einen Ende',
  proposal: (name, metres, heading, magnetic) =>
    `${name === null ? '' : `Piste ${name}, `}${metres} m, ${heading} rechtweisend${magnetic === null ? '' : `, ${magnetic} missweisend`}`,
  noRunway: {
    'one-place': 'Beide Enden sind derselbe Ort.',
    'too-far-apart':
      'Dazwischen liegen mehr als 10 km. Stimmt eine Ziffer nicht, oder N und S, oder E und W?',
  },
  added: (name) => `Piste ${name} ist hinzugefügt.`,
  placeFirst:
    'Zuerst unter Platz den Bezugspunkt angeben: Diese Piste liegt mit der Mitte auf ihm.',
  bearing: 'Richtung rechtweisend, °',
  bearingBad: 'Eine Richtung liegt zwischen 0 und 360.',
  length: 'Länge, m',
  lengthBad: 'Eine Länge liegt zwischen 1 und 10 000 m.',
  number: (bearing) => `Nummer in Richtung ${bearing}°`,
  numberHint: (magnetic, number) => `${magnetic}° missweisend: ${number}`,
  numberBad: 'Eine Nummer ist 01 bis 36, bei parallelen Pisten mit L, C oder R.',
  width: 'Breite, m',
  widthBad: 'Eine Breite liegt zwischen 0 und 10 000 m.',
  surface: 'Oberfläche',
  surfaces: {
    asphalt: 'Asphalt',
    concrete: 'Beton',
    grass: 'Gras',
    gravel: 'Schotter',
    unknown: 'Unbekannt',
  },
  lights: 'Randfeuer',
  lit: { yes: 'Befeuert', no: 'Unbefeuert', unknown: 'Unbekannt' },
  end: (designator) => `Piste ${designator}`,
  designator: 'Nummer',
  displaced: 'Schwelle versetzt um, m',
  tora: 'TORA, m',
  toda: 'TODA, m',
  asda: 'ASDA, m',
  lda: 'LDA, m',
  metresBad: 'Eine Strecke liegt zwischen 0 und 10 000 m.',
  closed: 'Grund der Schließung',
  closedHint: 'offen',
  closedBad: 'Höchstens 80 Zeichen.',

  plan: (name) =>
    `Plan von ${name}. Pfeiltasten verschieben ihn oder den gewählten Punkt; Plus und Minus machen ihn größer und kleiner; Enter tippt auf das Kreuz in der Mitte; Entf entfernt, was gewählt ist.`,
  tool: 'Was ein Tippen tut',
  tools: {
    choose: 'Wählen',
    taxiway: 'Rollbahn',
    apron: 'Vorfeld',
    stand: 'Standplatz',
    hold: 'Rollhalt',
    'hot-spot': 'Hot Spot',
  },
  toolHints: {
    choose:
      'Einen Punkt oder ein Wegstück antippen, um es zu ändern. Einen gewählten Punkt ziehen, um ihn zu verschieben.',
    taxiway:
      'Von Punkt zu Punkt tippen; auf einer Piste trifft die Rollbahn die Mittellinie. Den letzten Punkt noch einmal antippen, um den Stift abzusetzen.',
    apron:
      'Von Punkt zu Punkt tippen, auch zu Standplätzen. Den letzten Punkt noch einmal antippen, um den Stift abzusetzen.',
    stand: 'Dorthin tippen, wo ein Flugzeug steht.',
    hold: 'Auf die Rollbahn tippen, wo vor der Piste gehalten wird.',
    'hot-spot': 'Dorthin tippen, wo zweimal hinzusehen ist.',
  },
  letter: 'Buchstabe',
  letterBad: 'Höchstens 80 Zeichen.',
  whole: 'Ganzer Platz',
  larger: 'Größer',
  smaller: 'Kleiner',
  north: 'N',
  metres: (m) => `${m} m`,
  penAt: (name) => `Der Stift ist an: ${name}.`,

  chosen: (what) => `Gewählt: ${what}`,
  nothingChosen: 'Nichts ist gewählt.',
  kind: 'Art',
  kinds: {
    junction: 'Kreuzung',
    stand: 'Standplatz',
    hold: 'Rollhalt',
    runway: 'Auf einer Piste',
  },
  painted: 'Wie aufgemalt oder gesprochen',
  gives: 'Führt zu',
  east: 'Östlich vom Bezugspunkt, m',
  northOf: 'Nördlich vom Bezugspunkt, m',
  spotBad: 'Ein Ort liegt nicht weiter als 50 000 m entfernt.',
  joinTo: 'Verbinden mit',
  join: 'Verbinden',
  remove: 'Entfernen',
  led: 'Gerollt wird auf',
  leds: { taxiway: 'Rollbahn', apron: 'Vorfeld', runway: 'Piste' },
  stretchWidth: 'Breite, m',
  unknown: 'unbekannt',
  oneWay: 'In welche Richtung',
  bothWays: 'Beide Richtungen',
  onlyFrom: (name) => `Nur von ${name}`,
  crosses: 'Kreuzt',
  hotSpotName: 'Name auf der Karte',
  hotSpotAbout: 'Was hier schiefgeht',
  hotSpotDefault: 'Zweimal hinsehen.',

  trace: 'Ein Bild abzeichnen',
  traceKept:
    'Eine als Bild gespeicherte Karte kann unter dem Plan liegen. Sie bleibt nur in diesem Fenster: Sie wird weder mit dem Platz noch im Entwurf gespeichert, nicht geteilt, und ist mit dem Schließen weg.',
  choosePicture: 'Bild wählen',
  otherPicture: 'Anderes Bild',
  takeAway: 'Wegnehmen',
  strength: 'Wie es zu sehen ist',
  strengths: { full: 'Deutlich', faint: 'Blass', hidden: 'Verborgen' },
  placeBy: 'Ausrichten an Piste',
  place: (runway) => `An ${runway} ausrichten`,
  placeWithout: 'An einer Piste, über ihre Enden hinzugefügt, lässt es sich genau ausrichten.',
  movePicture: 'Von Hand schieben',
  movingHint:
    'Das Bild ziehen oder mit zwei Fingern vergrößern. Liegt es richtig, noch einmal „Von Hand schieben“ tippen.',
  tapWhere: (end) => `Auf dem Bild antippen, wo Piste ${end} beginnt.`,
  noPicture: {
    empty: 'Die Datei ist leer.',
    pdf: 'Das ist ein PDF. Die Seite als Bild (PNG oder JPEG) speichern und das wählen.',
    unknown: 'Das ist kein Bild. Gezeigt werden PNG, JPEG, WebP und AVIF.',
    broken:
      'Das Bild lässt sich nicht zeigen: Die Datei ist beschädigt, oder der Browser kennt ihre Art nicht. Als PNG oder JPEG speichern.',
    'too-many-bytes': 'Das Bild ist größer als 30 MB. Kleiner speichern.',
    'too-many-pixels': 'Das Bild hat mehr als 50 Millionen Bildpunkte. Kleiner speichern.',
    'one-place': 'Beide Male derselbe Ort. Erst das eine Ende der Piste antippen, dann das andere.',
  },

  list: 'Alles Gezeichnete',
  lists: (title, count) => `${title}: ${count}`,
  points: {
    stand: 'Standplätze',
    hold: 'Rollhalte',
    runway: 'Punkte auf Pisten',
    junction: 'Kreuzungen',
  },
  stretches: 'Wegstücke',
  hotSpots: 'Hot Spots',
  andMore: (count) => `Und noch ${count}.`,

  must: 'Vor dem Speichern nötig',
  gaps: 'Fehlt zum Rollen',
  nothingMissing: 'Nichts fehlt: Von jedem Standplatz führt ein Weg zu jeder offenen Piste.',
  keep: 'Speichern',
  save: 'Als Datei speichern',
  anew: 'Neu anfangen',
  kept: (code) => `${code} ist als eigener Platz gespeichert.`,
  use: (code) => `${code} nehmen`,
  refused: 'Nicht gespeichert:',
};

/** What a field still needs to be a document, as sentences. */
export const needs: Translated<typeof englishNeeds> = {
  code: 'Die Kennung fehlt: drei oder vier Buchstaben und Ziffern, am Anfang ein Buchstabe.',
  name: 'Der Name fehlt.',
  place: 'Der Ort fehlt: eine Piste über beide Enden hinzufügen oder den Bezugspunkt angeben.',
  runway: 'Eine Piste fehlt.',
};

/** Why a text is no place, as a sentence. */
export const placeBad: typeof englishPlaceBad = (problem) => {
  switch (problem.code) {
    case 'unread':
      return 'Nicht als Ort gelesen. Als 52°35′41″N 4°36′06″E oder 52.5948, 4.6017 schreiben.';
    case 'half':
      return 'Nur ein halber Ort: Breite und Länge schreiben.';
    case 'same-axis':
      return 'Eines muss eine Breite sein, N oder S, das andere eine Länge, E oder W.';
    case 'out-of-range':
      return problem.axis === 'lat'
        ? `${problem.text}: Eine Breite geht bis 90°.`
        : `${problem.text}: Eine Länge geht bis 180°.`;
    case 'swapped':
      return 'Das Erste liegt über 90°: Die Breite kommt zuerst. Ist es die Länge, E oder W schreiben.';
    case 'sixty':
      return `${problem.text}: Minuten und Sekunden gehen bis 59.`;
    case 'digits':
      return problem.axis === 'lat'
        ? `${problem.text}: Ohne Abstände hat eine Breite 2 Stellen für die Grad, wie N523541.`
        : `${problem.text}: Ohne Abstände hat eine Länge 3 Stellen für die Grad, wie E0043606.`;
    case 'no-letter':
      return `${problem.text}: N oder S, E oder W schreiben.`;
    case 'comma':
      return 'Trennt das Komma die beiden, oder ist es ein Dezimalkomma? Ein Leerzeichen dazwischen setzen.';
    case 'letter-o':
      return 'O ist deutsch Ost und französisch West. E oder W schreiben.';
  }
};

/** Why a route is missing, as a sentence; `name` names a point or a stretch of the plan. */
export const gapWords: typeof englishGapWords = (gap, name) => {
  switch (gap.code) {
    case 'no-stand':
      return 'Es gibt keinen Standplatz, an dem ein Weg beginnt.';
    case 'end-without-hold':
      return `Kein Rollhalt führt zu Piste ${gap.end}.`;
    case 'runway-without-exit':
      return `Keine Rollbahn trifft auf Piste ${gap.runway}: Nach der Landung führt kein Weg hinaus.`;
    case 'in-pieces': {
      const [first = '', ...more] = gap.nodes.map(name);
      return more.length === 0
        ? `Nichts verbindet ${first} mit dem Rest.`
        : `Nichts verbindet ${first} und noch ${more.length} mit dem Rest.`;
    }
    case 'crosses-unsaid':
      return `${name(gap.stretch)}: kreuzt Piste ${gap.runway}, aber das ist nicht angegeben.`;
    case 'crosses-not':
      return `${name(gap.stretch)}: kreuzt laut Angabe Piste ${gap.runway}, tut es aber nicht.`;
    case 'runway-unguarded':
      return `${name(gap.stretch)}: Vor Piste ${gap.runway} fehlt ein Rollhalt.`;
    case 'no-way':
      return `Wegen Einbahnstücken führt von ${name(gap.stand)} kein Weg zu einem Rollhalt für Piste ${gap.end}.`;
  }
};

const VERBS: Readonly<Record<ChangeVerb, string>> = {
  added: 'hinzugefügt',
  removed: 'entfernt',
  moved: 'verschoben',
  changed: 'geändert',
};

/** A change, as it follows "Undone". */
export const changeWords: typeof englishChangeWords = ({ what, verb }) => {
  const is = (name: string) => `${name} ${VERBS[verb]}`;
  switch (what.kind) {
    case 'entry':
      return is(ENTRIES[what.entry]);
    case 'radio':
      return is(`Frequenz ${what.radio.mhz}`);
    case 'hot-spot':
      return is(what.hot.name);
    case 'runway':
      return is(`Piste ${what.runway.ends.map(({ designator }) => designator).join('/')}`);
    case 'end':
      return is(`Piste ${what.end}`);
    case 'node':
      return is(pointName(what.node));
    case 'stretch':
      return is(stretchName(what.edge.name, pointName(what.from), pointName(what.to)));
    case 'all':
      return 'alles neu angefangen';
  }
};

const ENTRIES = {
  code: 'Kennung',
  name: 'Name',
  about: 'was man über ihn wissen muss',
  language: 'Sprache',
  elevation: 'Höhe',
  place: 'Bezugspunkt',
  calmWind: 'Piste bei schwachem Wind',
} as const;

/** A point's name here. */
export const pointName: typeof englishPointName = (node) =>
  node === undefined ? '' : (node.name ?? `${POINT[node.kind]} ${node.id}`);

const POINT = {
  stand: 'Standplatz',
  hold: 'Rollhalt',
  junction: 'Kreuzung',
  runway: 'Pistenpunkt',
} as const;

/** A stretch's name here: its letter and what it joins. Plans say `apron` in any language. */
export const stretchName: typeof englishStretchName = (letter, from, to) =>
  `${letter === 'apron' ? 'Vorfeld' : letter}, ${from} bis ${to}`;
