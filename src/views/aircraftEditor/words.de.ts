/** The German words of making and editing an aircraft. */

import type { AircraftClass, BookFigure, Column } from '../../core';
import type { Translated } from '../../parts/translated';
import type * as english from './words.en';

const columns: Readonly<Record<Column, string>> = {
  massKg: 'Masse',
  pressureAltitudeFt: 'Höhe',
  temperatureC: 'Temp.',
  headwindKt: 'Gegenwind',
  runM: 'Startrollen',
  to50ftM: 'Start 50 ft',
  climbFtMin: 'Steigen',
  landingRunM: 'Landerollen',
  landingM: 'Ldg. 50 ft',
};

const figuresSaid: Readonly<Record<BookFigure, string>> = {
  runM: 'Startrollstrecke',
  to50ftM: 'Startstrecke bis 50 ft',
  climbFtMin: 'Steigrate',
  landingRunM: 'Landerollstrecke',
  landingM: 'Landestrecke ab 50 ft',
};

const classes: Readonly<Record<AircraftClass, string>> = {
  'piston-single': 'Einmotorig, Kolben',
  'piston-twin': 'Zweimotorig, Kolben',
  turboprop: 'Turboprop',
  jet: 'Strahlflugzeug',
  'jet-with-reheat': 'Strahl mit Nachbrenner',
  'twin-jet': 'Zweistrahlig',
};

export const words: Translated<typeof english>['words'] = {
  make: 'Flugzeug anlegen',
  edit: (name) => `${name} bearbeiten`,
  close: 'Schließen',
  loading: 'Einen Moment.',
  failed: 'Das Flugzeug ließ sich nicht laden. Schließen und noch einmal versuchen.',
  undo: 'Rückgängig',
  redo: 'Wiederholen',
  whichPart: 'Teil des Flugzeugs',
  parts: { figures: 'Werte', table: 'Tabelle', load: 'Beladung' },
  forgets:
    'Dieses Gerät speichert nichts mehr: Was jetzt eingegeben wird, ist beim Schließen verloren.',

  startTitle: 'Beginnen mit',
  startHint:
    'Was leer bleibt, kommt von dort. Die Werte sind für eine Klasse üblich und gehören zu keinem Muster: Die aus dem Handbuch sind besser.',
  classes,
  atHand: 'Oder mit einem vorhandenen Flugzeug',
  noneAtHand: 'Auswählen',
  name: 'Name',
  nameHint: 'wie du es nennst',
  nameBad: 'Ein Name hat bis zu 80 Zeichen.',
  bookTitle: 'Aus dem Handbuch',
  bookHint:
    'Das reicht für Handbuchwerte. Mit der Tabelle dazu werden die Zahlen des Tages gerechnet.',
  groups: {
    masses: 'Weitere Massen',
    wind: 'Windgrenzen',
    limits: 'Fahrwerk, Klappen, Reifen, Piste',
    climb: 'Steigflug',
    taxi: 'Rollen',
    words: 'In Worten',
  },
  named: (name, unit) => `${name}, ${unit}`,
  asClass: (value) => `Leer: ${value}, wie die Klasse.`,
  valueBad: (least, most, unit) => `Von ${least} bis ${most} ${unit}.`,
  powerUnit: 'Leistung wird abgelesen in',
  powerUnits: { '%': '%', rpm: 'U/min' },
  texts: {
    rotateTo: { name: 'Rotieren auf', hint: 'etwa: 8° Nase hoch' },
    afterBreakaway: { name: 'Sobald es rollt', hint: 'etwa: gleich zurück' },
    steering: { name: 'Gelenkt mit', hint: 'etwa: Pedalen' },
  },
  textBad: 'Bis zu 80 Zeichen.',
  about: 'Was man wissen sollte',
  aboutBad: 'Bis zu 600 Zeichen.',
  stop: 'Zum Anhalten, der Reihe nach, je eine Zeile',
  stopBad: 'Eine bis sechs Zeilen mit bis zu 80 Zeichen.',
  stopAtFirst: ['Leerlauf', 'Bremsen'],

  tableTitle: 'Die Tabelle aus dem Handbuch',
  tableHint:
    'Zeilen der Leistungsseiten: trockene, ebene, befestigte Piste, ohne Faktoren. Was in einer Zeile nicht steht, bleibt leer. Ab acht Zeilen folgen die Zahlen des Tages dem Handbuch.',
  withoutTable:
    'Ohne Tabelle werden die Handbuchwerte gezeigt, wie sie sind, an jedem Tag und bei jeder Masse.',
  paste: 'Aus einer Tabellenkalkulation einfügen',
  pasteHint: (length, mass) =>
    `Spalten in beliebiger Folge, mit Überschriften. Ohne Einheit in der Überschrift gelten ${length} für Strecken und ${mass} für Massen.`,
  pasteExample: 'Höhe ft; Temp °C; Rollstrecke; bis 50 ft; Landerollstrecke',
  take: (rows) => (rows === 1 ? 'Diese Zeile übernehmen' : `Diese ${rows} Zeilen übernehmen`),
  understood: (list) => `Verstanden: ${list}.`,
  rowsTitle: 'Zeilen',
  row: 'Zeile',
  addRow: 'Zeile hinzufügen',
  removeRow: (number) => `Zeile ${number} entfernen`,
  columns,
  otherColumns: 'Weitere Spalten',
  cell: (row, column) => `Zeile ${row}, ${column}`,
  cellBad: (row, column, least, most) => `Zeile ${row}, ${column}: von ${least} bis ${most}.`,
  emptyCells: (mass) =>
    `Leer: ${mass} oder die übliche Landemasse, Meereshöhe, Normtemperatur, windstill.`,
  moreTitle: 'Triebwerk und Flügel, für genauere Zahlen',

  fitTitle: 'Handbuch und Rechnung',
  fitting: 'Es wird gerechnet.',
  stopFit: 'Abbrechen',
  fitAgain: 'Rechnen',
  fitFailed: {
    'too-slow': 'Es dauerte zu lange und wurde abgebrochen.',
    'not-worked-out': 'Es ließ sich nicht ausrechnen.',
    stopped: 'Es wurde abgebrochen.',
  },
  fits: (most) => `Jede Zeile wird auf ${most} getroffen.`,
  fitsNot: (most) =>
    `Bis zu ${most} neben dem Handbuch. Das sagt Lapstrip überall, wo Zahlen stehen.`,
  bookAxis: (unit) => `Handbuch, ${unit}`,
  foundAxis: (unit) => `Gerechnet, ${unit}`,
  plotLabel: (figures, within) =>
    `Handbuch und Rechnung: ${figures} Werte, davon ${within} auf 3 % genau.`,
  band: 'Zwischen den Linien: auf 3 % genau.',
  marks: figuresSaid,
  noFigure: 'keine',
  off: (percent) => `${percent} %`,

  loadTitle: 'Beladeplan',
  withoutLoad:
    'Ohne Beladeplan gelten die Zahlen für die üblichen Massen, und ein Schwerpunkt wird nicht gerechnet.',
  addLoad: 'Beladeplan anlegen',
  removeLoad: 'Beladeplan entfernen',
  fuelTitle: 'Kraftstoff',
  tanks: 'Tanks fassen',
  landingFuel: 'Kraftstoff bei der Landung',
  density: 'Dichte, kg/L',
  densityHint: 'nicht in Litern gezeigt',
  armsTitle: 'Schwerpunkt',
  arms: { no: 'Nicht rechnen', yes: 'Rechnen' },
  arm: (of, unit) => `${of}, ${unit} hinter Bezugsebene`,
  emptyArm: (unit) => `Flugzeug leer, ${unit} hinter Bezugsebene`,
  armBad: (least, most) => `Von ${least} bis ${most}.`,
  crewTitle: 'Besatzung',
  crewName: 'Wer',
  crewMass: 'Masse mit Gepäck',
  addCrew: 'Besatzung hinzufügen',
  remove: (name) => `${name} entfernen`,
  stationsTitle: 'Sitze, Gepäck, Außenlasten',
  station: (name) => `Station ${name}`,
  stationName: 'Wie beschriftet',
  stationKind: 'Was sie trägt',
  stationKinds: { people: 'Personen', baggage: 'Gepäck', stores: 'Außenlasten' },
  stationMost: 'Höchstens',
  each: 'Eine Person wiegt',
  aboard: 'An Bord, üblich beladen',
  aboardHint: 'nichts',
  choiceName: 'Was',
  choiceMass: 'Masse',
  addChoice: 'Auswahl hinzufügen',
  addStation: 'Station hinzufügen',
  newStation: (number) => `Station ${number}`,
  newCrew: (number) => `Besatzung ${number}`,
  newChoice: (number) => `Last ${number}`,
  pilot: 'Pilot',
  usual: 'Üblich',
  usualLoad: (fuel, takeoff, landing) =>
    `Üblich beladen sind ${fuel} Kraftstoff an Bord: ${takeoff} beim Start, ${landing} bei der Landung.`,
  envelopeTitle: 'Schwerpunktbereich',
  envelopeHint: 'Die Ecken der Reihe nach, einmal herum.',
  corner: (number) => `Ecke ${number}`,
  cornerMass: 'Masse',
  addCorner: 'Ecke hinzufügen',
  envelopeLabel: (corners) => `Schwerpunktbereich mit ${corners} Ecken und der üblichen Beladung.`,
  inEnvelope: 'Scheibe: üblicher Start. Quadrat: übliche Landung.',

  must: 'Vor dem Speichern',
  nothingMissing: 'Es fehlt nichts.',
  assumed: (count) =>
    count === 1
      ? 'Ein Wert ist noch der seiner Klasse. Mit dem Handbuch vergleichen.'
      : `${count} Werte sind noch die der Klasse. Mit dem Handbuch vergleichen.`,
  keep: 'Speichern',
  anew: 'Von vorn',
  kept: (name) => `${name} ist als eigenes Flugzeug gespeichert.`,
  keptWithProcedure: (name) =>
    `${name} ist als eigenes Flugzeug gespeichert, mit einem Verfahren für seine Klasse. Lies es gegen das Flughandbuch und mach es zu deinem.`,
  use: (name) => `${name} fliegen`,
  refused: 'Nicht gespeichert:',
};

type Told = Parameters<(typeof english.troubles)['row-apart']>[0];

const at = ({ row, figure }: Told) => `Zeile ${row}, ${figuresSaid[figure]}`;

export const troubles: Translated<typeof english>['troubles'] = {
  'distance-below-run': (told) =>
    `${at(told)}: ${told.book} ist nicht länger als das Rollen in derselben Zeile. Sind zwei Spalten vertauscht?`,
  'row-apart': (told) =>
    `${at(told)}: Im Handbuch stehen ${told.book}, alle anderen Zeilen lassen ${told.foretold} erwarten. Auf Tippfehler, andere Klappenstellung oder anderen Belag prüfen.`,
  'thrust-apart': (told) =>
    `${at(told)} liegt ${told.percent} daneben. Alles würde mit ${told.thrust} ${told.isMore ? 'mehr' : 'weniger'} Leistung oder Schub passen: Triebwerkswerte prüfen oder leer lassen.`,
  'rows-apart': (told) =>
    `${at(told)}: ${told.book} liegt ${told.percent} daneben, und keine Zeile allein erklärt es. Die Zeilen widersprechen einander oder den Geschwindigkeiten: auf Zeilen mit anderer Masse, Klappenstellung oder anderem Belag prüfen.`,
  'over-mass': (told) => `${at(told)}: Ihre Masse liegt über der höchsten.`,
  'under-empty': (told) => `${at(told)}: Ihre Masse liegt unter der Leermasse.`,
  'never-stops': (told) =>
    `${at(told)}: Es käme nie zum Stehen. Anfluggeschwindigkeit und Landewerte prüfen.`,
  'cannot-climb': (told) =>
    `${at(told)}: Es würde dort nicht steigen. Leistung des Triebwerks sowie Masse und Höhe der Zeile prüfen.`,
  'no-figure': (told) =>
    `${at(told)}: Es würde dort nicht abheben. Leistung des Triebwerks sowie Masse und Höhe der Zeile prüfen.`,
};

export const tableProblem: Translated<typeof english>['tableProblem'] = (problem) => {
  switch (problem.code) {
    case 'too-long':
      return 'Das ist mehr als jede Tabelle.';
    case 'too-many-rows':
      return 'Nur die ersten 60 Zeilen werden übernommen.';
    case 'no-rows':
      return 'Es wurde keine Zeile mit Zahlen gefunden.';
    case 'column-unknown':
      return `Die Spalte „${problem.text}“ wird nicht verstanden und fällt weg.`;
    case 'column-twice':
      return `Die Spalte „${problem.text}“ bedeutet dasselbe wie eine andere und fällt weg.`;
    case 'no-number':
      return `Zeile ${problem.line}, ${columns[problem.column]}: „${problem.text}“ ist keine Zahl und fällt weg.`;
    case 'out-of-range':
      return `Zeile ${problem.line}, ${columns[problem.column]}: „${problem.text}“ kann nicht sein und fällt weg. Ist es eine andere Einheit?`;
  }
};
