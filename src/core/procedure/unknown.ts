/** Live numbers of a step that aren't known, and where the pilot enters them. */

import { type Facts, isLiveName, type LiveName, liveNamesIn } from './facts';
import type { Step } from './procedure';

/**
 * The live numbers in what a step asks for, its item, response and gate, that aren't known; in the
 * order they are read, each once. A note or a call says more about the step and keeps nobody from it.
 */
export function unknownIn(step: Step, facts: Facts): readonly LiveName[] {
  const asked = [step.item, step.response].flatMap(liveNamesIn).filter(isLiveName);
  const gate = step.gate === undefined ? [] : [step.gate];
  return [...new Set([...asked, ...gate])].filter((name) => facts[name] === null);
}

/** Where a live number is entered: a place, a sheet, or the keypad for a wind. */
export type EnteredAt = 'wind' | 'keypad' | 'sortie' | 'load' | 'numbers';

/**
 * Where an unknown live number is entered, given the other facts; null if the pilot can't supply it,
 * such as a speed that the aircraft's document doesn't give.
 */
export function enteredAt(name: LiveName, facts: Facts): EnteredAt | null {
  switch (name) {
    case 'field':
    case 'callsign':
      return 'sortie';
    case 'runway':
      return runwayAt(facts);
    case 'runwayMagnetic':
      // Of a runway that is chosen only the variation can be missing.
      return facts.runway === null ? runwayAt(facts) : 'sortie';
    case 'wind':
    case 'windKt':
      return windAt(facts);
    case 'headwindKt':
    case 'crosswindKt':
      return facts.runway === null ? runwayAt(facts) : windAt(facts);
    case 'qnh':
    case 'temperatureC':
      return 'numbers';
    case 'densityAltitudeFt':
      return facts.qnh === null || facts.temperatureC === null ? 'numbers' : null;
    case 'markM':
      return 'numbers';
    case 'massKg':
    case 'landingMassKg':
    case 'fuelKg':
      // Without any fuel the aircraft's document has no load sheet.
      return facts.fuelKg === null ? null : 'load';
    case 'markKt':
    case 'markLeastKt':
    case 'lastStopKt':
    case 'goOnKt':
    case 'rotateKt':
    case 'liftOffKt':
    case 'runM':
    case 'climbKt':
    case 'climbPitch':
    case 'referenceKt':
    case 'approachKt':
    case 'landingM':
      return facts.runway === null ? runwayAt(facts) : null;
    // Of a chosen field its document says them; a crossing needs a taxi plan, which not every field has.
    case 'ground':
    case 'tower':
    case 'crossing':
    case 'crossingAt':
      return facts.field === null ? 'sortie' : null;
    case 'options':
    case 'taxiKt':
    case 'turnKt':
    case 'breakaway':
    case 'keepRolling':
    case 'gearKt':
    case 'flapsKt':
    case 'reheatOffKt':
      return null;
  }
}

const runwayAt = ({ field }: Facts): EnteredAt => (field === null ? 'sortie' : 'wind');

const windAt = ({ wind }: Facts): EnteredAt | null => (wind === null ? 'keypad' : null);
