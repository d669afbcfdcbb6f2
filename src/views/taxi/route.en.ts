/**
 * A route in words, for reading aloud and for those who can't see the plan. Never worded like a
 * clearance.
 */

import type { Route, TaxiFault, Told, ToldProblem } from '../../core';
import { saidDistance, saidPoint, saidRunway, saidStand } from '../../parts/spoken.en';
import { knownLength, type Round, unitFor, width } from '../../parts/units';

/** A length as far as it is known, with its unit. */
const saidLength = (m: number, round: Round = 'nearest'): string =>
  `${saidDistance(knownLength(m, round))} ${unitFor('m') === 'ft' ? 'feet' : 'metres'}`;

/** One item of a route description. At a controlled field one holds until told to cross. */
function tell(told: Told, controlled: boolean): string {
  switch (told.code) {
    case 'along':
      return told.on === 'apron' ? 'the apron' : saidPoint(told.name);
    case 'runway-ahead': {
      const at = told.hold === null ? '' : `at ${saidPoint(told.hold)} `;
      const ahead = `${at}runway ${saidRunway(told.runway)} ahead`;
      if (told.told) return `${ahead}, cross as told, look both ways`;
      const todo = told.along ? 'enter' : 'cross';
      return controlled
        ? `${ahead}, hold until told to ${todo}`
        : `${ahead}, hold, look both ways, say that you ${todo}`;
    }
    case 'along-runway':
      return `backtrack runway ${saidRunway(told.runway)}, ${saidLength(told.lengthM)}`;
    case 'turn-too-tight':
      return `${tightTurn(told.turnDeg)} onto ${told.onto === 'apron' ? 'the apron' : saidPoint(told.onto)}, too tight to make`;
    case 'back-to-exit':
      return `backtrack runway ${saidRunway(told.end)}, ${saidLength(told.lengthM)}, to ${saidPoint(told.exit)}`;
    case 'hold-short':
      return `${told.hold === null ? '' : `at ${saidPoint(told.hold)} `}hold short runway ${saidRunway(told.end)}`;
    case 'backtrack':
      return `then backtrack runway ${saidRunway(told.end)}, ${saidLength(told.lengthM)}`;
    case 'intersection':
      return `${saidLength(told.runM, 'down')} of run from there`;
    case 'stand':
      return saidStand(told.name || 'your stand');
  }
}

const tightTurn = (turnDeg: number): string =>
  `a turn of ${Math.round(Math.abs(turnDeg))} degrees ${turnDeg > 0 ? 'right' : 'left'}`;

/** The whole route as one sentence. */
export function tellRoute(told: readonly Told[], controlled: boolean): string {
  const isAfterRunway = (index: number) => told[index - 1]?.code === 'runway-ahead';
  const text = told
    .map((one, index) => `${isAfterRunway(index) ? 'then ' : ''}${tell(one, controlled)}`)
    .join(', ');
  return text === '' ? '' : `${text.charAt(0).toUpperCase()}${text.slice(1)}.`;
}

/** Why there is no route, and what can be done about it. */
export function faultWords(fault: TaxiFault): string {
  switch (fault.code) {
    case 'no-plan':
      return 'There is no taxi plan of this field, and so no route: the numbers below stand. A plan can be added from a map file, in the Library.';
    case 'no-end':
      return 'No runway selected yet: choose one on Wind.';
    case 'no-start':
      return 'Where are you? Tap your stand, or any point.';
    case 'no-stand':
      return 'This plan has no stand: tap the point you are at.';
    case 'no-destination':
      return 'Which stand do you taxi to? Choose it under Route, or tap it.';
    case 'no-stand-to-go-to':
      return 'This plan has no stand to taxi to: no route in.';
    case 'start-unknown':
      return 'The point you were at is not on this plan: tap where you are.';
    case 'end-without-hold':
      return `The plan has no holding point for runway ${fault.end}: no route to it.`;
    case 'no-exit':
      return `The plan shows no way off runway ${fault.end}.`;
    case 'closed':
      return `What you closed cuts the field in two here: no route is left. Closed: ${fault.stretches.map((one) => one.replace('~', ' to ')).join(', ')}.`;
    case 'too-narrow':
      return `Every route has a taxiway narrower than ${width(fault.neededWidthM)}, which this gear needs.`;
    case 'one-way':
      return 'A one-way taxiway leads the other way: no route from here.';
    case 'in-pieces':
      return 'The plan is in pieces: nothing joins this point to the runway’s holding point.';
  }
}

/** What keeps a route as told from being followed. */
export function problemWords(problem: ToldProblem): string {
  switch (problem.code) {
    case 'no-name':
      return problem.said === ''
        ? 'A name is missing at the end.'
        : `There is no ${problem.said} on this plan.`;
    case 'no-runway':
      return problem.said === '' || /[A-Z]{2}/.test(problem.said)
        ? 'Which runway?'
        : `Which runway is ${problem.said}?`;
    case 'too-long':
      return 'Too long: 200 characters at most.';
    case 'nothing-said':
      return 'No taxiway was said.';
    case 'no-start':
      return 'Say where you are first: under Route, or on the plan.';
    case 'not-joined':
      return `${problem.one} and ${problem.other} don’t meet.`;
    case 'closed':
      return `${problem.name} is closed today on this route.`;
    case 'too-narrow':
      return `${problem.name} is too narrow for this gear.`;
    case 'one-way':
      return `${problem.name} is one-way, the other way.`;
    case 'ends-short':
      return `${problem.last} leads to no holding point for runway ${problem.end}.`;
    case 'other-end':
      return `It leads to runway ${problem.said}, and ${problem.end} is selected.`;
    case 'not-met':
      return `This route doesn’t come to runway ${problem.runway}.`;
    case 'no-stand-at-end':
      return `From ${problem.last} the stand can’t be reached: say which stand, or what lies between.`;
  }
}

/** A route's taxiways in order. */
export const routeNames = ({ legs }: Route): string =>
  legs
    .filter(({ on }) => on !== 'apron')
    .map(({ name }) => name)
    .join(', ') || 'apron only';

/** A route in a line: its taxiways, its length, and the runways on it. */
export function wayWords(route: Route, length: string): string {
  const runways = route.crossings.map(({ runway, told, alongM }) =>
    told ? `cross ${runway} as told` : `${alongM > 0 ? 'backtrack' : 'hold short'} ${runway}`,
  );
  return `${[`${routeNames(route)}: ${length}`, ...runways].join(', ')}.`;
}
