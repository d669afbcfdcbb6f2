/** Ground speed from the device's own position, once the pilot asks for it. */

import { signal } from '@preact/signals';

/** What the device says of its position. */
export type Position =
  /** Not asked for. */
  | { readonly kind: 'off' }
  | { readonly kind: 'waiting' }
  | {
      readonly kind: 'known';
      /** Ground speed, m/s; null where the device does not say. */
      readonly speedMps: number | null;
      /** Radius within which the position lies in 95 of 100 cases, m. W3C Geolocation, 2022, 4.3.2. */
      readonly accuracyM: number;
      /** By the device's clock, ms. */
      readonly atMs: number;
    }
  /** The pilot or the device said no. */
  | { readonly kind: 'refused' }
  /** The device has none to give. */
  | { readonly kind: 'none' };

/** Where the device is, as far as it was asked. */
export const position = signal<Position>({ kind: 'off' });

let watch: number | null = null;

/** Asks for the position and follows it. The browser asks the pilot. */
export function followPosition(): void {
  if (!('geolocation' in navigator)) {
    position.value = { kind: 'none' };
    return;
  }
  if (watch !== null) return;
  position.value = { kind: 'waiting' };
  watch = navigator.geolocation.watchPosition(
    ({ coords, timestamp }) => {
      position.value = {
        kind: 'known',
        speedMps: coords.speed,
        accuracyM: coords.accuracy,
        atMs: timestamp,
      };
    },
    ({ code, PERMISSION_DENIED }) => {
      if (code !== PERMISSION_DENIED) {
        // One fix was not to be had; what was known stays, and grows old.
        if (position.value.kind === 'waiting') position.value = { kind: 'none' };
        return;
      }
      leavePosition();
      position.value = { kind: 'refused' };
    },
    { enableHighAccuracy: true, maximumAge: 1000, timeout: 15_000 },
  );
}

/** Asks no more. */
export function leavePosition(): void {
  if (watch !== null) navigator.geolocation.clearWatch(watch);
  watch = null;
  position.value = { kind: 'off' };
}
