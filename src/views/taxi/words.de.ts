/** The words of Taxi, in German. */

import { durationWords } from '../../parts/pace.de';
import type { Translated } from '../../parts/translated';
import type { words as english } from './words.en';

const hand = (deg: number) => (deg > 0 ? 'rechts' : 'links');

/** Names of stretches. Documents say `apron` in any language. */
const named = (names: string) => names.replace(/\bapron\b/g, 'Vorfeld');

export const words: Translated<typeof english> = {
  noAircraft: 'Unter „Flug“ ein Flugzeug wählen.',
  noField: 'Unter „Wind“ einen Platz wählen.',
  openWind: 'Wind öffnen',
  whereIAm: 'Wo ich bin',
  chooseStand: 'Standplatz wählen',
  doNotExceed: 'Höchstens',
  inTurns: (kt) => `${kt} kt in engen Kurven`,
  getRolling: 'Anrollen',
  afterwards: (what) => `dann ${what}`,
  keepRolling: 'Weiterrollen',
  kt: 'kt',
  ask: 'zeigt, woher dieser Wert kommt',

  sayOn: (mhz, at) => (at === null ? `Auf ${mhz} sagen` : `Bei ${at} auf ${mhz} sagen`),
  say: 'Sagen',
  noRadio: 'Hier ist keine Frequenz bekannt. Für sich selbst sagen:',
  allCalls: 'Alle Funksprüche',

  time: durationWords,
  plan: (field) => `Plan von ${field}`,
  bigCard: 'Großbild',
  northUp: 'Nord oben',
  wayUp: 'Weg oben',
  route: 'Route',
  hotSpots: 'Gefahrenstellen (Hot Spots)',
  planWords: {
    north: 'N',
    ahead: (runway) => `Piste ${runway} voraus`,
    hold: (name) => `Halt ${name}`,
    whole: 'Ganz',
  },

  at: (point) => `Bei ${point}`,
  notYet: 'Noch nicht',
  mark: (kind) => (kind === 'hold' ? 'der Rollhalt' : kind === 'stand' ? 'der Standplatz' : 'hier'),
  noSpeed: 'kein Tempo',
  speed: (kt) => `${kt} kt`,
  speedBetween: (least, most) => `${least} bis ${most} kt`,
  over: (kt) => `über ${kt} kt`,
  stretch: (from, to, length, seconds) => `${from} bis ${to}, ${length} in ${seconds}`,
  give: (kt) => `Stoppfehler ±${kt} kt`,
  giveNone: 'zu kurz zum Stoppen',
  atSpeed: (duration, kt) => `${duration} bei ${kt} kt`,
  soFar: (elapsed, expected) => `${elapsed} vergangen, ${expected} erwartet`,
  toGo: (length, duration) => `noch ${length}, ${duration}`,
  device: (kt, age, length) => `Gerät ${kt} kt, ${age} alt, ± ${length}`,
  deviceNoSpeed: (age, length) =>
    `Gerät gibt keine Geschwindigkeit; Position ${age} alt, ± ${length}`,
  deviceRefused: 'Die Position des Geräts wurde verweigert: Die Stoppuhr läuft weiter.',
  deviceNone: 'Dieses Gerät gibt keine Position.',
  deviceWaiting: 'Wartet auf die Position des Geräts',
  useDevice: 'Position des Geräts nutzen',
  leaveDevice: 'Position des Geräts nicht mehr nutzen',
  deviceAbout:
    'Geschwindigkeit über Grund von diesem Gerät, mit Alter und Genauigkeit. Nur solange gewünscht.',

  here: 'Ich bin hier',
  leaveIt: 'Verwerfen',
  closer: 'Größer',
  closeIt: 'Heute sperren',
  openIt: 'Wieder öffnen',
  stretchName: (name, from, to) =>
    from === to ? named(`${name}, ${from}`) : named(`${name}, ${from} bis ${to}`),
  junction: (names) => `Wo ${named(names)} zusammentreffen`,
  points: {
    by: (what, near) => named(near === undefined ? what : `${what} bei ${near}`),
    runway: (ends) => `Piste ${ends}`,
    bend: 'Knick',
  },

  close: 'Schließen',
  sheet: 'Route',
  fromTitle: 'Standplatz',
  told: {
    key: 'Rollen über',
    using: (text) => `Über ${text}`,
    title: 'Rollen über',
    label: 'Wie der Lotse es sagt',
    hint: (example) => `Buchstaben antippen oder schreiben: ${example}.`,
    taxiways: 'Rollbahnen',
    runways: 'Pisten und Standplätze',
    atRunway: { 'hold short': 'Halten vor', cross: 'Queren', backtrack: 'Backtrack' },
    takeBack: 'Letztes löschen',
    use: 'Diese Route nehmen',
    drop: 'Route des Plans nehmen',
    meant: 'Gemeint vielleicht',
    unsaid: (names) => `Über ${names}, was nicht gesagt wurde.`,
    noLonger: (why) => `Die angesagte Route passt nicht: ${why} Gezeichnet ist die des Plans.`,
  },
  toTitle: 'Zum Standplatz',
  taxiThere: 'Dorthin rollen',
  noStands: 'Der Plan hat keinen Standplatz. Wo steht das Flugzeug?',
  pointsTitle: 'Oder an einem Punkt',
  entryTitle: (end) => `Auf Piste ${end}`,
  wholeRun: (hold, length) => `${hold}: volle Länge, ${length}`,
  backtrack: (hold, length, back) => `${hold}: volle Länge, ${length}, nach ${back} Backtrack`,
  intersection: (hold, length) => `${hold}: ab dort ${length} Startlaufstrecke`,
  runNeeded: (needed, left) => `heute nötig ${needed}: Reserve ${left}`,
  runShort: (needed, short) => `heute nötig ${needed}: ${short} zu wenig`,
  runUnknown: 'was heute nötig ist, ist nicht bekannt',
  taxiDistance: (length) => `${length} Rollweg`,
  routesTitle: 'Wege',
  way: (names, length) => `${names}, ${length}`,
  crossesRunways: (runways) => `kreuzt ${runways}`,
  routesNone: 'Kein anderer Weg ist höchstens ein Zehntel länger als dieser.',
  inWords: 'In Worten',
  exitAt: (name, length) =>
    `Die Landung von heute verlässt die Piste voraussichtlich bei ${name}, ${length} nach der Schwelle.`,
  exitBack: (name, back) =>
    `Die Landung von heute reicht über den letzten Abrollweg hinaus: ${back} Backtrack bis ${name}.`,
  runwayUsed: (length) =>
    `Einen anderen Weg gibt es nicht: ${length} Backtrack auf einer Piste. Davor halten, ansagen, nach beiden Seiten schauen.`,
  backtrackNote: (hold, end, length) =>
    `Bei ${hold} halten; dann ${length} Backtrack auf Piste ${end}.`,
  tightNote: (turn) => `Diese Route lässt sich nicht rollen: ${turn}.`,
  holdsAssumed: (count) =>
    count === 1
      ? 'Die Karte hat hier keinen Rollhalt: Wo zu halten ist, ist angenommen. Auf das Schild achten.'
      : `Der Karte fehlen ${count} Rollhalte auf diesem Weg: Wo zu halten ist, ist angenommen. Auf die Schilder achten.`,
  assumedHold: 'Rollhalt, angenommen: Die Karte hat keinen',
  closed: (names) => `Heute gesperrt: ${names}.`,
  closedTitle: 'Heute gesperrt',
  closedHint: 'Was hier gedrückt ist, ist gesperrt. Auch ein Tippen auf den Plan sperrt ein Stück.',
  turnsTitle: 'Kurven',
  turn: (deg, onto, kt) =>
    `${Math.round(Math.abs(deg))}° ${hand(deg)} auf ${named(onto)}: ${kt} kt,`,
  turnRadius: (length) => `Radius ${length}`,
  turnBound: {
    comfort: 'für ruhiges Rollen',
    tipping: 'um nicht zu kippen',
    sharp: 'enge Kurve, nach dem Dokument des Flugzeugs',
    limit: 'die Grenze geradeaus',
  },

  calls: 'Funksprüche',
  callsign: 'Das Rufzeichen wird unter „Flug“ eingetragen.',
  readBack: 'Zurücklesen',
  to: (name, mhz) => `${name}, ${mhz}`,
  direction: 'Abflug Richtung',
  ownWords: 'In eigenen Worten',
  ownFor: (call) => `Eigene Worte für: ${call}`,
  usualWords: 'Die üblichen Worte',
  placeholders: (names) => `Wo das steht, wird es ausgefüllt: ${names}`,
};
