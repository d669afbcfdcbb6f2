/** The words for what came from elsewhere, before it is kept, in German. */

import type { Translated } from '../../parts/translated';
import type { words as english } from './incomingWords.en';

/** One thing, inflected for its sentence, or a number of them. */
const count = (number: number, one: string, more: string) =>
  number === 1 ? one : `${number} ${more}`;

/** Parts of a document, by property name. */
const partNames: typeof english.partNames = {
  name: 'Name',
  about: 'Beschreibung',
  language: 'Sprache',
  translations: 'Übersetzungen',
  place: 'Ort',
  numbersFrom: 'Nord der Pistennummern',
  calmWindEnd: 'Piste für schwachen Wind',
  preferredEnds: 'bevorzugte Pisten',
  radio: 'Funk',
  runways: 'Pisten',
  taxi: 'Rollen',
  engine: 'Triebwerk',
  masses: 'Massen',
  limits: 'Grenzen',
  takeoff: 'Start',
  climb: 'Steigflug',
  landing: 'Landung',
  load: 'Beladung',
  stop: 'Anhalten',
  performance: 'Flugleistungen',
  handbook: 'Handbuchtabelle',
  madeFrom: 'Klasse, mit der begonnen wurde',
  aircraft: 'Flugzeug',
  options: 'Ausrüstung',
  phases: 'Abschnitte',
  lists: 'Listen',
  edition: 'Fassung',
  basedOn: 'Original',
  source: 'Herkunft',
  doubts: 'Zweifel',
};

export const words: Translated<typeof english> = {
  title: 'Eingegangen',
  compareTitle: (name) => `${name} vergleichen`,
  compareWith: 'Mit',
  compareNone: 'Es gibt nichts, womit es zu vergleichen wäre.',
  compareSame: 'Beide sagen dasselbe.',
  compareFailed: 'Das ist gerade nicht verfügbar.',
  compareRead: 'Links vom Pfeil steht das andere, rechts dieses.',
  versionOf: (name, version) => `${name}, ${version}`,
  close: 'Schließen',
  looking: 'Wird angesehen',
  refused: 'Das ist nicht verwendbar, und nichts wurde geändert:',
  entry: (number, kind) => `Eintrag ${number} des Flugbuchs${kind === '' ? '' : ` („${kind}“)`}`,
  noEntry: (entry) => `${entry} ist beschädigt: So etwas schreibt Lapstrip nicht.`,
  entryLacks: (entry, at) => `${entry} ist beschädigt: „${at}“ fehlt.`,
  entryHolds: (entry, at, value) => `${entry} ist beschädigt: „${at}“ kann nicht ${value} sein.`,
  kinds: {
    field: 'Ein Platz',
    aircraft: 'Ein Flugzeug',
    procedure: 'Ein Verfahren',
  },
  document: (kind, name) => `${kind}: „${name}“`,
  steps: (steps) => `Es hat ${count(steps, 'einen Schritt', 'Schritte')}.`,
  noAircraft: (code) => `Es ist für das Flugzeug ${code}, das es hier noch nicht gibt.`,
  same: 'Genau dasselbe ist schon da.',
  fresh: 'Unter diesem Namen ist noch nichts da. Es käme zur Auswahl hinzu.',
  earlier: 'Genau dasselbe ist schon da, als frühere Fassung Ihres eigenen.',
  other: (name) => `Unter derselben Kennung haben Sie „${name}“.`,
  otherOfApp: (name) => `Unter derselben Kennung hat die Demo „${name}“.`,
  ages: { newer: 'Dieses ist neuer.', older: 'Dieses ist älter.' },
  differs: 'Das neue weicht ab:',
  added: (steps) => `${count(steps, 'Ein Schritt', 'Schritte')} mehr:`,
  removed: (steps) => `${count(steps, 'Ein Schritt', 'Schritte')} weniger:`,
  changed: (steps) => `${count(steps, 'Ein Schritt lautet', 'Schritte lauten')} anders:`,
  moved: (steps) => `${count(steps, 'Ein Schritt steht', 'Schritte stehen')} an anderer Stelle.`,
  lists: (lists) =>
    `${count(lists, 'Eine Liste', 'Listen')} neu, oder mit anderem Titel oder anderem Ende:`,
  partNames,
  parts: (parts) => `Mehr weicht ab bei: ${parts}.`,
  step: (item, response) => `${item} – ${response}`,
  became: (before, after) => `${before} → ${after}`,
  saysOfItself: 'Es sagt von sich selbst:',
  aspect: (name, before, after) => `${name}: ${before} → ${after}`,
  aspects: {
    critical: 'kritisch',
    when: 'gilt',
    kind: 'Art',
    until: 'wieder fällig bis',
    tiedTo: 'abgehakt mit',
    needs: 'baut auf',
    gate: 'Geschwindigkeit der Marke',
    gateFt: 'Höhe der Marke, ft',
    expectS: 'Dauer, Sekunden',
    note: 'Hinweis',
    call: 'Wortlaut des Funkspruchs',
  },
  yes: 'ja',
  no: 'nein',
  none: 'ohne',
  always: 'immer',
  facts: (facts) => `${count(facts, 'Ein Unterschied', 'Unterschiede')}:`,
  optionsDiffer: (options) => `${count(options, 'Eine Option weicht', 'Optionen weichen')} ab:`,
  notUsed: 'Diese Dokumente kämen hinzu. Keines wird benutzt, bevor es unter „Flug“ gewählt ist:',
  andMore: (more) => `und noch ${more}`,
  add: 'Hinzufügen',
  wasAdded: (name) =>
    `„${name}“ ist hinzugefügt. Benutzt wird es erst, wenn es unter „Flug“ gewählt ist.`,
  beside: 'Beide behalten',
  overMine: 'Meines ersetzen',
  overDemo: 'Das der Demo ersetzen',
  newest: 'Zur neuesten Fassung machen',
  wasPutOver: (name) =>
    `„${name}“ steht von jetzt an in den Listen. Das bisherige bleibt in der Bibliothek, und ein begonnener Flug behält, was er hat.`,
  part: (part, of) => `Code ${part} von ${of} ist gelesen.`,
  missing: (missing) => `Noch zu lesen: ${missing}. Mit der Kamera lesen wie diesen.`,
  record: (sorties, entries, documents) =>
    `Ein Flugbuch: ${count(sorties, 'ein Flug', 'Flüge')} mit ${count(entries, 'einem Eintrag', 'Einträgen')}${documents === 0 ? '' : `, dazu ${count(documents, 'ein Dokument', 'Dokumente')}`}.`,
  recordHint:
    'Was schon da ist, bleibt, wie es ist; was fehlt, kommt hinzu. Ein zweites Mal fügt nichts hinzu.',
  leftOut: (documents) =>
    documents === 1
      ? 'Ein Dokument darin ist nicht verwendbar und entfiele.'
      : `${documents} Dokumente darin sind nicht verwendbar und entfielen.`,
  mended: (entries) =>
    `${count(entries, 'Ein Eintrag enthielt', 'Einträge enthielten')} Zeichen, die nicht zu sehen sind oder täuschen: Dort steht ein Leerzeichen oder „\ufffd“.`,
  merge: 'Zusammenführen',
  merging: 'Wird geschrieben',
  merged: (sorties, entries, documents) =>
    `Hinzugefügt: ${count(entries, 'ein Eintrag', 'Einträge')} in ${count(sorties, 'einem Flug', 'Flügen')}${documents === 0 ? '' : `, ${count(documents, 'ein Dokument', 'Dokumente')}`}.`,
  keptOut: (entries) =>
    `${count(entries, 'Ein Eintrag', 'Einträge')} ausgelassen: ${entries === 1 ? 'Er gehört' : 'Sie gehören'} zu Flügen auf diesem Gerät, und die ändert kein Flugbuch von anderswo.`,
  mergedNothing: 'Alles davon war schon da.',
  notMerged: 'Das Gerät konnte es nicht speichern. Nichts wurde geändert.',
};
