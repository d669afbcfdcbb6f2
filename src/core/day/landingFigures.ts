/** The numbers of a landing, each with its inputs. */

import type { Aircraft } from '../aircraft/aircraft';
import type { Landing, StopForcesN } from '../aircraft/landingAnswer';
import { type Figure, type Known, known, unknown } from '../figure';

/** A landing's figures, each of which can be asked why. */
export interface LandingFigures {
  readonly referenceKt: Figure<'kt'>;
  /** Including the wind additive. */
  readonly approachKt: Figure<'kt'>;
  readonly touchdownKt: Figure<'kt'>;
  /** From 50 ft over the threshold to touch-down. */
  readonly airM: Figure<'m'>;
  /** From touch-down to rest. */
  readonly runM: Figure<'m'>;
  readonly neededM: Figure<'m'>;
  /** Including the planning factor. */
  readonly plannedM: Figure<'m'>;
  /** The same without the parachute, which may fail; only if the aircraft has one. */
  readonly plannedBareM: Figure<'m'>;
  readonly ldaLeftM: Figure<'m'>;
  readonly plannedLeftM: Figure<'m'>;
  /** Down the aircraft's own path, at the ground speed of the approach. */
  readonly sinkFtMin: Figure<'ft/min'>;
  readonly goAroundPercent: Figure<'%'>;
}

/** A landing's figures; `ldaM` is null while no end is known. */
export function landingFigures(
  landing: Landing,
  { performance }: Aircraft,
  ldaM: number | null,
  gustSpreadKt: number,
): LandingFigures {
  const { speeds, given } = landing;
  const referenceKt = known(speeds.referenceKt, 'kt', {
    formula: 'reference-speed',
    inputs: { stallKt: speeds.stallKt, factor: given.referenceFactor },
    source: given.referenceFactor === 1.3 ? 'far-23-73' : 'cs-25-125',
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
  const airM = known(landing.airM, 'm', {
    formula: 'landing-air',
    inputs: {
      pathDeg: given.pathDeg,
      approachTrueKt: landing.airTrueKt.approach,
      flareTrueKt: landing.airTrueKt.flare,
      touchdownTrueKt: landing.airTrueKt.touchdown,
      headwindKt: given.headwindKt,
      massKg: given.massKg,
      ...landing.flareN,
    },
    source: 'arc-of-flare',
  });
  const run = (runM: number, forcesN: StopForcesN) =>
    known(runM, 'm', {
      formula: 'landing-run',
      inputs: {
        groundKt: speeds.touchdownGroundKt,
        heldS: landing.heldS,
        massKg: given.massKg,
        ...forcesN,
      },
      source: 'equation-of-motion',
    });
  const needed = (run: Known<'m'>) =>
    known(landing.airM + run.value, 'm', {
      formula: 'sum',
      inputs: { air: airM, run },
      source: 'equation-of-motion',
    });
  const planned = (needed: Known<'m'>) =>
    known(needed.value * given.ldaFactor, 'm', {
      formula: 'times-factor',
      inputs: { needed, factor: given.ldaFactor },
      source: 'landing-factor',
    });
  const runM = run(landing.runM, landing.forcesN);
  const neededM = needed(runM);
  const plannedM = planned(neededM);
  const { bare } = landing;
  const left = (needed: Known<'m'>): Figure<'m'> =>
    ldaM === null
      ? unknown('no-end')
      : known(ldaM - needed.value, 'm', {
          formula: 'left-of-lda',
          inputs: { availableM: ldaM, needed },
          source: 'field',
        });
  return {
    referenceKt,
    approachKt,
    touchdownKt: known(speeds.touchdownKt, 'kt', {
      formula: 'share-of-approach',
      inputs: { approach: approachKt, share: given.touchdownShare },
      source: 'aircraft',
    }),
    airM,
    runM,
    neededM,
    plannedM,
    plannedBareM:
      bare === null ? unknown('not-in-aircraft') : planned(needed(run(bare.runM, bare.forcesN))),
    ldaLeftM: left(neededM),
    plannedLeftM: left(plannedM),
    sinkFtMin: known(landing.sinkFtMin, 'ft/min', {
      formula: 'path-sink',
      inputs: { groundKt: speeds.approachGroundKt, pathDeg: given.pathDeg },
      source: 'equation-of-motion',
    }),
    goAroundPercent: known(landing.goAroundPercent, '%', {
      formula: 'go-around',
      inputs: landing.goAround,
      source: 'equation-of-motion',
    }),
  };
}
