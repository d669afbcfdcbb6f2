/** The numbers of a landing, each with what it was worked out from. */

import type { Aircraft } from '../aircraft/aircraft';
import type { Landing } from '../aircraft/landingAnswer';
import { type Figure, known, unknown } from '../figure';
import { KT_PER_MPS } from '../units';

/** What is said about a landing, as figures that can be asked why. */
export interface LandingFigures {
  readonly referenceKt: Figure<'kt'>;
  /** With what the wind adds. */
  readonly approachKt: Figure<'kt'>;
  readonly touchdownKt: Figure<'kt'>;
  /** From 50 ft over the threshold to touch-down. */
  readonly airM: Figure<'m'>;
  /** From touch-down to rest. */
  readonly runM: Figure<'m'>;
  readonly neededM: Figure<'m'>;
  /** With the factor for planning. */
  readonly plannedM: Figure<'m'>;
  /** The same without the parachute, which may fail; of an aircraft that has one. */
  readonly plannedBareM: Figure<'m'>;
  readonly ldaLeftM: Figure<'m'>;
  readonly plannedLeftM: Figure<'m'>;
  /** Down the aircraft's own path, at the ground speed of the approach. */
  readonly sinkFtMin: Figure<'ft/min'>;
  readonly goAroundPercent: Figure<'%'>;
}

/** The figures of a landing that was worked out; `ldaM` is null while no end is known. */
export function landingFigures(
  landing: Landing,
  { performance }: Aircraft,
  ldaM: number | null,
  gustSpreadKt: number,
): LandingFigures {
  const { speeds, given } = landing;
  const referenceKt = known(speeds.referenceKt, 'kt', {
    formula: 'reference-speed',
    inputs: { stallKt: speeds.stallKt, factor: speeds.referenceKt / speeds.stallKt },
    source: performance?.landing.reference === 1.3 ? 'far-23-73' : 'cs-25-125',
  });
  const approachKt = known(speeds.approachKt, 'kt', {
    formula: `approach-${performance?.landing.additive ?? 'half-gust'}`,
    inputs: {
      reference: referenceKt,
      gustSpreadKt,
      ...(performance?.landing.additive === 'half-gust'
        ? {}
        : { headwindKt: given.reportedHeadwindKt }),
    },
    source: performance?.landing.additive === 'half-gust' ? 'faa-8083-3' : 'practice',
  });
  const runM = known(landing.runM, 'm', {
    formula: 'landing-run',
    inputs: {
      groundKt: speeds.touchdownGroundKt,
      meanMps2: (speeds.touchdownGroundKt / KT_PER_MPS) ** 2 / (2 * landing.runM),
    },
    source: 'equation-of-motion',
  });
  const airM = known(landing.airM, 'm', {
    formula: 'landing-air',
    inputs: { airM: landing.airM },
    source: 'equation-of-motion',
  });
  const neededM = known(landing.neededM, 'm', {
    formula: 'sum',
    inputs: { air: airM, run: runM },
    source: 'equation-of-motion',
  });
  const plannedM = known(landing.plannedM, 'm', {
    formula: 'times-factor',
    inputs: { needed: neededM, factor: given.ldaFactor },
    source: 'landing-factor',
  });
  const plannedBareM = (): Figure<'m'> => {
    const bareM = landing.runWithoutParachuteM;
    if (bareM === null) return unknown('not-in-aircraft');
    const bare = known(bareM, 'm', {
      formula: 'landing-run',
      inputs: {
        groundKt: speeds.touchdownGroundKt,
        meanMps2: (speeds.touchdownGroundKt / KT_PER_MPS) ** 2 / (2 * bareM),
      },
      source: 'equation-of-motion',
    });
    const needed = known(landing.airM + bareM, 'm', {
      formula: 'sum',
      inputs: { air: airM, run: bare },
      source: 'equation-of-motion',
    });
    return known(needed.value * given.ldaFactor, 'm', {
      formula: 'times-factor',
      inputs: { needed, factor: given.ldaFactor },
      source: 'landing-factor',
    });
  };
  const left = (needed: Figure<'m'>): Figure<'m'> =>
    ldaM === null
      ? unknown('no-end')
      : known(ldaM - (needed.value ?? 0), 'm', {
          formula: 'left-of-lda',
          inputs: { availableM: ldaM, needed },
          source: 'field',
        });
  return {
    referenceKt,
    approachKt,
    touchdownKt: known(speeds.touchdownKt, 'kt', {
      formula: 'share-of-approach',
      inputs: { approach: approachKt, share: speeds.touchdownKt / speeds.approachKt },
      source: 'aircraft',
    }),
    airM,
    runM,
    neededM,
    plannedM,
    plannedBareM: plannedBareM(),
    ldaLeftM: left(neededM),
    plannedLeftM: left(plannedM),
    sinkFtMin: known(landing.sinkFtMin, 'ft/min', {
      formula: 'path-sink',
      inputs: { groundKt: speeds.approachGroundKt, pathDeg: given.pathDeg },
      source: 'equation-of-motion',
    }),
    goAroundPercent: known(landing.goAroundPercent, '%', {
      formula: 'as-worked-out',
      inputs: { workedOut: landing.goAroundPercent },
      source: 'equation-of-motion',
    }),
  };
}
