/**
 * Mixing norths does not compile. This file holds no test that runs: `tsc` fails it where a line
 * marked as an error compiles after all.
 */

import {
  cosDeg,
  degreesOf,
  type MagneticDeg,
  magneticDeg,
  relativeDeg,
  type TrueDeg,
  toMagnetic,
  toTrue,
  trueDeg,
} from '../../src/core/angle';

const wind = trueDeg(270);
const heading = magneticDeg(284);

// Of the same north.
relativeDeg(wind, trueDeg(266));
relativeDeg(heading, magneticDeg(280));
relativeDeg(toMagnetic(wind, -14), heading);
relativeDeg(wind, toTrue(heading, -14));

// @ts-expect-error a true wind against a magnetic heading
relativeDeg(wind, heading);
// @ts-expect-error and the other way round
relativeDeg(heading, wind);
// @ts-expect-error a plain number is of neither north
relativeDeg(wind, 280);
// @ts-expect-error directions are subtracted by relativeDeg alone
wind - heading;
// @ts-expect-error also two of the same north, since 350 and 10 are not 340 apart
wind - wind;
// @ts-expect-error neither is greater
wind < heading;
// @ts-expect-error nor the same
wind === heading;
// @ts-expect-error variation is applied once
toMagnetic(heading, -14);
// @ts-expect-error as much the other way
toTrue(wind, -14);
// @ts-expect-error trigonometry wants an angle between two directions
cosDeg(wind);
// @ts-expect-error one is not the other under another name
export const asMagnetic: MagneticDeg = wind;
// @ts-expect-error nor this way
export const asTrue: TrueDeg = heading;
// @ts-expect-error a number becomes a direction where its north is named
export const unnamed: TrueDeg = 270;
// @ts-expect-error and a direction becomes a number by degreesOf
export const bare: number = wind;

export const named: number = degreesOf(wind);
