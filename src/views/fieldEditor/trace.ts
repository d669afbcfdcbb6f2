/**
 * The picture that is traced: where it lies and how strongly it shows. None of it is stored or
 * becomes part of the field.
 */

import { batch, signal } from '@preact/signals';
import {
  laidBy,
  lieMoved,
  onPicture,
  type PictureLie,
  type PicturePoint,
  type PictureProblem,
} from '../../core';
import { forgetPicture, type Picture, readPicture } from '../../device/pictures';
import type { GroundPoint } from '../../parts/plan/projection';
import { marks } from './hand';
import type { words } from './words';

/** How strongly it shows. */
export type Strength = keyof typeof words.strengths;

/** What a tap or a drag does to the picture: nothing, place its two known points, or move it. */
type Handling =
  | { readonly kind: 'none' }
  | { readonly kind: 'moves' }
  | {
      readonly kind: 'places';
      /** Where the two known points lie, and what they are called. */
      readonly points: readonly [KnownPoint, KnownPoint];
      /** The first as tapped. */
      readonly first: PicturePoint | null;
    };

/** A point whose place is known: where a runway begins. */
export interface KnownPoint {
  readonly name: string;
  readonly at: GroundPoint;
}

export const picture = signal<Picture | null>(null);
/** Where it lies; null until the board has laid it out for the first time. */
export const lie = signal<PictureLie | null>(null);
export const strength = signal<Strength>('full');
export const handling = signal<Handling>({ kind: 'none' });

/** Why the last file was no picture, or why its points place nothing. */
export const trouble = signal<PictureProblem | 'one-place' | null>(null);

/** Lays a picture from a file under the plan, or says why it can't be. */
export async function layPicture(file: File): Promise<void> {
  const read = await readPicture(file);
  batch(() => {
    trouble.value = typeof read === 'string' ? read : null;
    if (typeof read === 'string') return;
    takeAway();
    picture.value = read;
    strength.value = 'full';
  });
}

/** Takes the picture away, and all that was known of it. */
export function takeAway(): void {
  const before = picture.peek();
  batch(() => {
    picture.value = null;
    lie.value = null;
    handling.value = { kind: 'none' };
    trouble.value = null;
  });
  if (before !== null) forgetPicture(before);
}

/** Begins to place it by two known points. */
export function beginPlacing(points: readonly [KnownPoint, KnownPoint]): void {
  batch(() => {
    handling.value = { kind: 'places', points, first: null };
    marks.value = null;
    trouble.value = null;
    // What can't be seen can't be tapped.
    strength.value = 'full';
  });
}

/** A tap while it is placed: on one of its points, seen at a point of the ground as it now lies. */
export function placeAt(seen: GroundPoint): void {
  const now = lie.value;
  const { value: how } = handling;
  if (now === null || how.kind !== 'places') return;
  const tapped = onPicture(now, seen);
  if (how.first === null) {
    handling.value = { ...how, first: tapped };
    marks.value = { spots: [seen], lines: [] };
    return;
  }
  const [from, to] = how.points;
  const placed = laidBy([how.first, tapped], [from.at, to.at]);
  batch(() => {
    marks.value = null;
    if (placed === null) {
      trouble.value = 'one-place';
      handling.value = { ...how, first: null };
      return;
    }
    lie.value = placed;
    trouble.value = null;
    handling.value = { kind: 'none' };
  });
}

/** Moves it, and enlarges it about where it is moved to. */
export function movePicture(from: GroundPoint, to: GroundPoint, growth: number): void {
  if (lie.value !== null) lie.value = lieMoved(lie.value, from, to, growth);
}
