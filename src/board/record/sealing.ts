/** Sealing what the pilot was told: the figures shown at a moment that counts. */

import type { Event, Figure, SealedFigure, Unit } from '../../core';
import { enteredWind, inputs, settled, sortie, wind } from '../board';
import { chosenProcedure } from '../documents/inUse';
import { numbers } from '../flight/flight';
import { sheetOfToday } from '../flight/load';
import { air, today } from '../flight/today';

/** The figures shown now, and the documents they come from. */
export function seal(): Event {
  const { field, aircraft } = inputs.value;
  const procedure = sortie.value.run?.procedure ?? chosenProcedure.value;
  const documents = Object.fromEntries(
    Object.entries({ field, aircraft, procedure }).flatMap(([kind, hash]) =>
      hash === null ? [] : [[kind, hash]],
    ),
  );
  return { kind: 'sealed', documents, figures: { ...windFigures(), ...numberFigures() } };
}

type Sealed = Record<string, SealedFigure>;

/** Only known values are sealed. */
function sealed(values: Readonly<Record<string, readonly [SealedValue, string]>>): Sealed {
  return Object.fromEntries(
    Object.entries(values).flatMap(([name, [value, unit]]) =>
      value === null || value === undefined ? [] : [[name, { value, unit }]],
    ),
  );
}

type SealedValue = number | string | null | undefined;

function windFigures(): Sealed {
  const end = wind.value.inUse;
  const given = (what: 'qnh' | 'temperature') => air.value?.standard.includes(what) === false;
  const { pressureAltitude } = air.value ?? {};
  const qnh = pressureAltitude?.value == null ? null : pressureAltitude.why.inputs.qnhHpa;
  return sealed({
    runway: [wind.value.using, ''],
    wind: [enteredWind.value?.text, ''],
    headwindKt: [end?.headwindKt, 'kt'],
    crosswindWorstKt: [end?.crosswindWorstKt, 'kt'],
    tailwindWorstKt: [end?.tailwindWorstKt, 'kt'],
    variationDeg: [settled.value.variation.value, 'deg'],
    qnhHpa: [given('qnh') && typeof qnh === 'number' ? qnh : null, 'hPa'],
    temperatureC: [given('temperature') ? air.value?.temperature.value : null, 'degC'],
  });
}

/** Today's numbers, or the book's if there are none. */
function numberFigures(): Sealed {
  const { takeoff, landing } = today.value ?? {};
  const hope = takeoff?.expected.because === null ? takeoff.expected.figures : null;
  const plan = takeoff?.planned.because === null ? takeoff.planned.figures : null;
  const down = landing?.expected.because === null ? landing.expected.figures : null;
  const downPlan = landing?.planned.because === null ? landing.planned.figures : null;
  const book = numbers.value;
  const of = (figure: Figure<Unit> | undefined, other?: Figure<Unit>) =>
    figure?.value ?? other?.value;
  return sealed({
    massKg: [sheetOfToday.value?.takeoffMassKg.value, 'kg'],
    landingMassKg: [sheetOfToday.value?.landingMassKg.value, 'kg'],
    rotateKt: [of(hope?.rotateKt, book?.takeoff.rotateKt), 'kt'],
    liftOffKt: [of(hope?.liftOffKt, book?.takeoff.liftOffKt), 'kt'],
    runM: [of(plan?.runM), 'm'],
    lastStopKt: [of(plan?.lastStopKt), 'kt'],
    referenceKt: [of(down?.referenceKt), 'kt'],
    approachKt: [of(down?.approachKt, book?.landing.approachKt), 'kt'],
    landingM: [of(downPlan?.plannedM), 'm'],
  });
}
