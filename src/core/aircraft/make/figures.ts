/** The figures of an aircraft that a pilot types: where each stands, and what it may be. */

import type { Aircraft } from '../aircraft';

/** What a figure is given in, as documents have it. */
export type FigureUnit = 'kg' | 'kt' | 'm' | 'psi' | 'min' | 'power' | 'deg' | 'm2' | 'kW' | 'kN';

export interface FigureSpec {
  readonly unit: FigureUnit;
  readonly least: number;
  readonly most: number;
  /** Without it there is no aircraft; the class has a starting value for it. */
  readonly needed: boolean;
  readonly read: (aircraft: Aircraft) => number | undefined;
  /** The aircraft with another value; undefined leaves it out. */
  readonly written: (aircraft: Aircraft, value: number | undefined) => Aircraft;
}

type Part = 'masses' | 'limits' | 'taxi' | 'takeoff' | 'climb' | 'landing';

const set = <P extends Part>(
  aircraft: Aircraft,
  part: P,
  values: Partial<Aircraft[P]>,
): Aircraft => ({ ...aircraft, [part]: { ...aircraft[part], ...values } });

type Limited = 'crosswindKt' | 'tailwindKt';
type Surface = keyof Aircraft['limits'][Limited];

const limit = (of: Limited, surface: Surface): FigureSpec => ({
  unit: 'kt',
  least: 0,
  most: 99,
  needed: true,
  read: ({ limits }) => limits[of][surface],
  written: (a, kt = 0) => set(a, 'limits', { [of]: { ...a.limits[of], [surface]: kt } }),
});

type Massed = keyof Aircraft['masses'];

const mass = (of: Massed): FigureSpec => ({
  unit: 'kg',
  least: 1,
  most: 700_000,
  needed: true,
  read: ({ masses }) => masses[of],
  written: (a, kg = 1) => set(a, 'masses', { [of]: kg }),
});

const KT = { unit: 'kt', least: 0, most: 1500 } as const;
const M = { unit: 'm', least: 0, most: 10_000 } as const;

const handbookOf = ({ handbook }: Aircraft) => handbook ?? { rows: [] };

type Printed = Exclude<keyof NonNullable<Aircraft['handbook']>, 'rows'>;

/** What the handbook prints beside its table. */
const printed = (of: Printed, unit: FigureUnit, least: number, most: number): FigureSpec => ({
  unit,
  least,
  most,
  needed: false,
  read: (aircraft) => handbookOf(aircraft)[of],
  written: (a, value) => ({ ...a, handbook: { ...handbookOf(a), [of]: value } }),
});

/** Power that gets it rolling and keeps it rolling: all three figures, or none. */
const power = (
  read: (power: NonNullable<Aircraft['taxi']['power']>) => number,
  place: 0 | 1 | 2,
): FigureSpec => ({
  unit: 'power',
  least: 0,
  most: 10_000,
  needed: false,
  read: ({ taxi }) => taxi.power && read(taxi.power),
  written: (a, value) => {
    const { power: before } = a.taxi;
    if (value === undefined) return set(a, 'taxi', { power: undefined });
    const [least, most] = before?.keepRolling ?? [value, value];
    const unit = before?.unit ?? (a.engine === 'piston' ? 'rpm' : '%');
    const breakaway = before?.breakaway ?? value;
    const figures = [breakaway, least, most].map((x, at) => (at === place ? value : x));
    const [first = value, second = value, third = value] = figures;
    return set(a, 'taxi', {
      power: { unit, breakaway: first, keepRolling: [second, third] },
    });
  },
});

/** A pair from least to most; the first typed fills both. */
const pitch = (place: 0 | 1): FigureSpec => ({
  unit: 'deg',
  least: -10,
  most: 90,
  needed: false,
  read: ({ climb }) => climb.pitchDeg?.[place],
  written: (a, value) => {
    if (value === undefined) return set(a, 'climb', { pitchDeg: undefined });
    const [least, most] = a.climb.pitchDeg ?? [value, value];
    return set(a, 'climb', { pitchDeg: place === 0 ? [value, most] : [least, value] });
  },
});

const climbSpeed = (place: 0 | 1): FigureSpec => ({
  ...KT,
  needed: true,
  read: ({ climb }) => climb.speedKt[place],
  written: (a, kt = 0) => {
    const [least, most] = a.climb.speedKt;
    return set(a, 'climb', { speedKt: place === 0 ? [kt, most] : [least, kt] });
  },
});

/** Every figure, by its path in the document; those that others follow from stand before them. */
export const FIGURES = {
  'masses.maxTakeoffKg': mass('maxTakeoffKg'),
  'masses.emptyKg': mass('emptyKg'),
  'masses.usualTakeoffKg': mass('usualTakeoffKg'),
  'masses.maxLandingKg': mass('maxLandingKg'),
  'masses.usualLandingKg': mass('usualLandingKg'),
  'limits.crosswindKt.dry': limit('crosswindKt', 'dry'),
  'limits.crosswindKt.wet': limit('crosswindKt', 'wet'),
  'limits.crosswindKt.contaminated': limit('crosswindKt', 'contaminated'),
  'limits.tailwindKt.dry': limit('tailwindKt', 'dry'),
  'limits.tailwindKt.wet': limit('tailwindKt', 'wet'),
  'limits.tailwindKt.contaminated': limit('tailwindKt', 'contaminated'),
  'limits.demonstratedCrosswindKt': {
    ...KT,
    needed: false,
    read: ({ limits }) => limits.demonstratedCrosswindKt,
    written: (a, kt) => set(a, 'limits', { demonstratedCrosswindKt: kt }),
  },
  'limits.flapsKt': {
    ...KT,
    needed: true,
    read: ({ limits }) => limits.flapsKt,
    written: (a, kt = 0) => set(a, 'limits', { flapsKt: kt }),
  },
  'limits.gearKt': {
    ...KT,
    needed: false,
    read: ({ limits }) => limits.gearKt,
    written: (a, kt) => set(a, 'limits', { gearKt: kt }),
  },
  'limits.tyreKt': {
    ...KT,
    needed: false,
    read: ({ limits }) => limits.tyreKt,
    written: (a, kt) => set(a, 'limits', { tyreKt: kt }),
  },
  'limits.tyrePsi': {
    unit: 'psi',
    least: 5,
    most: 500,
    needed: false,
    read: ({ limits }) => limits.tyrePsi,
    written: (a, psi) => set(a, 'limits', { tyrePsi: psi }),
  },
  'limits.brakesCoolMin': {
    unit: 'min',
    least: 0,
    most: 600,
    needed: false,
    read: ({ limits }) => limits.brakesCoolMin,
    written: (a, min) => set(a, 'limits', { brakesCoolMin: min }),
  },
  'limits.leastWidthM': {
    unit: 'm',
    least: 3,
    most: 100,
    needed: false,
    read: ({ limits }) => limits.leastWidthM,
    written: (a, m) => set(a, 'limits', { leastWidthM: m }),
  },
  'takeoff.rotateKt': {
    ...KT,
    needed: true,
    read: ({ takeoff }) => takeoff.rotateKt,
    written: (a, kt = 0) => set(a, 'takeoff', { rotateKt: kt }),
  },
  'takeoff.liftOffKt': {
    ...KT,
    needed: true,
    read: ({ takeoff }) => takeoff.liftOffKt,
    written: (a, kt = 0) => set(a, 'takeoff', { liftOffKt: kt }),
  },
  'takeoff.runM': {
    ...M,
    needed: false,
    read: ({ takeoff }) => takeoff.runM,
    written: (a, m) => set(a, 'takeoff', { runM: m }),
  },
  'climb.flapsUpByKt': {
    ...KT,
    needed: true,
    read: ({ climb }) => climb.flapsUpByKt,
    written: (a, kt = 0) => set(a, 'climb', { flapsUpByKt: kt }),
  },
  'climb.gearUpByKt': {
    ...KT,
    needed: false,
    read: ({ climb }) => climb.gearUpByKt,
    written: (a, kt) => set(a, 'climb', { gearUpByKt: kt }),
  },
  'climb.speedKt.0': climbSpeed(0),
  'climb.speedKt.1': climbSpeed(1),
  'climb.reheatOffKt': {
    ...KT,
    needed: false,
    read: ({ climb }) => climb.reheatOffKt,
    written: (a, kt) => set(a, 'climb', { reheatOffKt: kt }),
  },
  'climb.pitchDeg.0': pitch(0),
  'climb.pitchDeg.1': pitch(1),
  'landing.approachKt': {
    ...KT,
    needed: true,
    read: ({ landing }) => landing.approachKt,
    written: (a, kt = 0) => set(a, 'landing', { approachKt: kt }),
  },
  'landing.runM': {
    ...M,
    needed: false,
    read: ({ landing }) => landing.runM,
    written: (a, m) => set(a, 'landing', { runM: m }),
  },
  'taxi.maxKt': {
    ...KT,
    needed: true,
    read: ({ taxi }) => taxi.maxKt,
    written: (a, kt = 0) => set(a, 'taxi', { maxKt: kt }),
  },
  'taxi.turnKt': {
    ...KT,
    needed: true,
    read: ({ taxi }) => taxi.turnKt,
    written: (a, kt = 0) => set(a, 'taxi', { turnKt: kt }),
  },
  'taxi.power.breakaway': power(({ breakaway }) => breakaway, 0),
  'taxi.power.keepRolling.0': power(({ keepRolling }) => keepRolling[0], 1),
  'taxi.power.keepRolling.1': power(({ keepRolling }) => keepRolling[1], 2),
  'handbook.takeoffStallKt': printed('takeoffStallKt', 'kt', 0, 1500),
  'handbook.wingAreaM2': printed('wingAreaM2', 'm2', 1, 1000),
  'handbook.powerKw': printed('powerKw', 'kW', 1, 50_000),
  'handbook.thrustKn': printed('thrustKn', 'kN', 0.1, 3000),
  'handbook.reheatKn': printed('reheatKn', 'kN', 0.1, 3000),
  'handbook.minimumControlKt': printed('minimumControlKt', 'kt', 0, 1500),
} as const satisfies Readonly<Record<string, FigureSpec>>;

/** A figure by its path in the document. */
export type FigureName = keyof typeof FIGURES;

/** All of them, in that order. */
export const FIGURE_NAMES = Object.keys(FIGURES).filter(
  (name): name is FigureName => name in FIGURES,
);

/** What a figure is and may be. */
export const figureSpec = (name: FigureName): FigureSpec => FIGURES[name];
