/** Sealing what the pilot was told: the figures shown at a moment that counts. */

import type { Event, Figure, SealedFigure, Unit } from '../../core';
import { day, sortie } from '../board';
import { chosenProcedure } from '../documents/inUse';

/** The figures shown now, and the documents they come from. */
export function seal(): Event {
  const { field, aircraft } = day.inputs();
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
  const end = day.wind().inUse;
  const given = (what: 'qnh' | 'temperature') => day.air()?.standard.includes(what) === false;
  const { pressureAltitude } = day.air() ?? {};
  const qnh = pressureAltitude?.value == null ? null : pressureAltitude.why.inputs.qnhHpa;
  return sealed({
    runway: [day.wind().using, ''],
    wind: [day.enteredWind()?.text, ''],
    headwindKt: [end?.headwindKt, 'kt'],
    crosswindWorstKt: [end?.crosswindWorstKt, 'kt'],
    tailwindWorstKt: [end?.tailwindWorstKt, 'kt'],
    variationDeg: [day.settled().variation.value, 'deg'],
    qnhHpa: [given('qnh') && typeof qnh === 'number' ? qnh : null, 'hPa'],
    temperatureC: [given('temperature') ? day.air()?.temperature.value : null, 'degC'],
  });
}

/** Today's numbers, or the book's if there are none. */
function numberFigures(): Sealed {
  const { takeoff, landing } = day.today() ?? {};
  const hope = takeoff?.expected.because === null ? takeoff.expected.figures : null;
  const plan = takeoff?.planned.because === null ? takeoff.planned.figures : null;
  const down = landing?.expected.because === null ? landing.expected.figures : null;
  const downPlan = landing?.planned.because === null ? landing.planned.figures : null;
  const book = day.numbers();
  const of = (figure: Figure<Unit> | undefined, other?: Figure<Unit>) =>
    figure?.value ?? other?.value;
  return sealed({
    massKg: [day.load()?.takeoffMassKg.value, 'kg'],
    landingMassKg: [day.load()?.landingMassKg.value, 'kg'],
    rotateKt: [of(hope?.rotateKt, book?.takeoff.rotateKt), 'kt'],
    liftOffKt: [of(hope?.liftOffKt, book?.takeoff.liftOffKt), 'kt'],
    runM: [of(plan?.runM), 'm'],
    lastStopKt: [of(plan?.lastStopKt), 'kt'],
    referenceKt: [of(down?.referenceKt), 'kt'],
    approachKt: [of(down?.approachKt, book?.landing.approachKt), 'kt'],
    landingM: [of(downPlan?.plannedM), 'm'],
  });
}
