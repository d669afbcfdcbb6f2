/**
 * A route in words, for reading aloud and for those who can't see the plan. Never worded like a
 * clearance.
 */

import type { TaxiFault, Told } from '../../core';
import { saidHundreds, saidPoint, saidRunway, saidStand } from '../../parts/spoken.en';
import { inShown, unitFor, width } from '../../parts/units';

/** A length in whole hundreds, with its unit. */
const saidLength = (m: number): string =>
  `${saidHundreds(inShown(m, 'm'))} ${unitFor('m') === 'ft' ? 'feet' : 'metres'}`;

/** One item of a route description. At a controlled field one holds until told to cross. */
function tell(told: Told, controlled: boolean): string {
  switch (told.code) {
    case 'along':
      return told.on === 'apron' ? 'the apron' : saidPoint(told.name);
    case 'runway-ahead': {
      const at = told.hold === null ? '' : `at ${saidPoint(told.hold)} `;
      const ahead = `${at}runway ${saidRunway(told.runway)} ahead`;
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
      return `${saidLength(told.runM)} of run from there`;
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
      return 'This field’s document draws no taxiways: no route, the numbers below stand.';
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
