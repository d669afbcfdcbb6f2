/** Routes in German, for anyone not looking at the plan; never worded as a clearance. */

import type { Told } from '../../core';
import { saidDistance, saidPoint, saidRunway, saidStand } from '../../parts/spoken.de';
import { knownLength, type Round, unitFor, width } from '../../parts/units';

/** A length as far as it is known, with its unit. */
const saidLength = (m: number, round: Round = 'nearest'): string =>
  `${saidDistance(knownLength(m, round))} ${unitFor('m') === 'ft' ? 'Fuß' : 'Meter'}`;

import type * as english from './route.en';

/** One item of a route. At a controlled field, hold until told to cross. */
function tell(told: Told, controlled: boolean): string {
  switch (told.code) {
    case 'along':
      return told.on === 'apron' ? 'das Vorfeld' : saidPoint(told.name);
    case 'runway-ahead': {
      const at = told.hold === null ? '' : `bei ${saidPoint(told.hold)} `;
      const ahead = `${at}Piste ${saidRunway(told.runway)} voraus`;
      if (told.told) return `${ahead}, queren wie angewiesen, nach beiden Seiten schauen`;
      if (controlled) {
        return `${ahead}, warten, bis ${told.along ? 'Aufrollen' : 'Querung'} freigegeben`;
      }
      return `${ahead}, halten, nach beiden Seiten schauen, ${told.along ? 'das Aufrollen' : 'die Querung'} ansagen`;
    }
    case 'along-runway':
      return `Backtrack auf Piste ${saidRunway(told.runway)}, ${saidLength(told.lengthM)}`;
    case 'turn-too-tight':
      return `${Math.round(Math.abs(told.turnDeg))} Grad ${told.turnDeg > 0 ? 'rechts' : 'links'} auf ${told.onto === 'apron' ? 'das Vorfeld' : saidPoint(told.onto)}, zu eng für eine Kurve`;
    case 'back-to-exit':
      return `Backtrack auf Piste ${saidRunway(told.end)}, ${saidLength(told.lengthM)}, bis ${saidPoint(told.exit)}`;
    case 'hold-short':
      return `${told.hold === null ? '' : `bei ${saidPoint(told.hold)} `}halten vor Piste ${saidRunway(told.end)}`;
    case 'backtrack':
      return `dann Backtrack auf Piste ${saidRunway(told.end)}, ${saidLength(told.lengthM)}`;
    case 'intersection':
      return `ab dort ${saidLength(told.runM, 'down')} Startlaufstrecke`;
    case 'stand':
      return told.name ? saidStand(told.name) : 'dein Standplatz';
  }
}

/** The whole route as one sentence. */
export const tellRoute: typeof english.tellRoute = (told, controlled) => {
  const isAfterRunway = (index: number) => told[index - 1]?.code === 'runway-ahead';
  const text = told
    .map((one, index) => `${isAfterRunway(index) ? 'dann ' : ''}${tell(one, controlled)}`)
    .join(', ');
  return text === '' ? '' : `${text.charAt(0).toUpperCase()}${text.slice(1)}.`;
};

/** Why there is no route, and what to do about it. */
export const faultWords: typeof english.faultWords = (fault) => {
  switch (fault.code) {
    case 'no-plan':
      return 'Von diesem Platz gibt es keinen Rollplan, also keine Route; die Werte unten gelten. Aus einer Kartendatei lässt er sich in der Bibliothek hinzufügen.';
    case 'no-end':
      return 'Noch keine Piste gewählt: unter „Wind“ eine nehmen.';
    case 'no-start':
      return 'Wo bist du? Deinen Standplatz antippen oder irgendeinen Punkt.';
    case 'no-stand':
      return 'Dieser Plan hat keinen Standplatz: den Punkt antippen, an dem du bist.';
    case 'no-destination':
      return 'Zu welchem Standplatz? Unter „Route“ wählen oder antippen.';
    case 'no-stand-to-go-to':
      return 'Dieser Plan hat keinen Standplatz als Ziel: keine Route dorthin.';
    case 'start-unknown':
      return 'Der Punkt, an dem du warst, ist nicht auf diesem Plan: antippen, wo du bist.';
    case 'end-without-hold':
      return `Der Plan hat keinen Rollhalt für Piste ${fault.end}: keine Route dorthin.`;
    case 'no-exit':
      return `Der Plan zeigt keinen Weg von Piste ${fault.end} herunter.`;
    case 'closed':
      return `Was du gesperrt hast, teilt den Platz hier in zwei Stücke: Kein Weg bleibt. Gesperrt: ${fault.stretches.map((one) => one.replace('~', ' bis ')).join(', ')}.`;
    case 'too-narrow':
      return `Jeder Weg hat eine Rollbahn, die schmaler ist als die ${width(fault.neededWidthM)}, die dieses Fahrwerk braucht.`;
    case 'one-way':
      return 'Eine Einbahn-Rollbahn führt in die andere Richtung: von hier kein Weg.';
    case 'in-pieces':
      return 'Der Plan ist in Stücken: Nichts verbindet diesen Punkt mit dem Rollhalt der Piste.';
  }
};

/** What keeps a route as told from being followed. */
export const problemWords: typeof english.problemWords = (problem) => {
  switch (problem.code) {
    case 'no-name':
      return problem.said === ''
        ? 'Am Ende fehlt ein Name.'
        : `${problem.said} gibt es auf diesem Plan nicht.`;
    case 'no-runway':
      return problem.said === '' || /[A-Z]{2}/.test(problem.said)
        ? 'Welche Piste?'
        : `Welche Piste ist ${problem.said}?`;
    case 'too-long':
      return 'Zu lang: höchstens 200 Zeichen.';
    case 'nothing-said':
      return 'Keine Rollbahn genannt.';
    case 'no-start':
      return 'Erst sagen, wo du bist: unter „Route“ oder auf dem Plan.';
    case 'not-joined':
      return `${problem.one} und ${problem.other} treffen nicht zusammen.`;
    case 'closed':
      return `${problem.name} ist auf dieser Route heute gesperrt.`;
    case 'too-narrow':
      return `${problem.name} ist für dieses Fahrwerk zu schmal.`;
    case 'one-way':
      return `${problem.name} ist eine Einbahn in die andere Richtung.`;
    case 'ends-short':
      return `${problem.last} führt zu keinem Rollhalt für Piste ${problem.end}.`;
    case 'other-end':
      return `Sie führt zu Piste ${problem.said}, gewählt ist ${problem.end}.`;
    case 'not-met':
      return `Diese Route kommt nicht zu Piste ${problem.runway}.`;
    case 'no-stand-at-end':
      return `Von ${problem.last} kommt man nicht zum Standplatz: den Standplatz nennen oder was dazwischen liegt.`;
  }
};

/** A route's taxiways in order. */
export const routeNames: typeof english.routeNames = ({ legs }) =>
  legs
    .filter(({ on }) => on !== 'apron')
    .map(({ name }) => name)
    .join(', ') || 'nur Vorfeld';

/** A route in a line: its taxiways, its length, and the runways on it. */
export const wayWords: typeof english.wayWords = (route, length) => {
  const runways = route.crossings.map(({ runway, told, alongM }) => {
    if (told) return `${runway} queren wie angewiesen`;
    return alongM > 0 ? `Backtrack ${runway}` : `halten vor ${runway}`;
  });
  return `${[`${routeNames(route)}: ${length}`, ...runways].join(', ')}.`;
};
