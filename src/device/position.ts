/** Ground speed from the device's own position, once the pilot asks for it. */

import { signal } from '@preact/signals';

export type DevicePosition =
  /** Not requested. */
  | { readonly kind: 'off' }
  | { readonly kind: 'waiting' }
  | {
      readonly kind: 'known';
      /** Ground speed, m/s; null if the device doesn't say. */
      readonly speedMps: number | null;
      /** Radius of 95 % confidence, m. W3C Geolocation, 2022, 4.3.2. */
      readonly accuracyM: number;
      /** By the device's clock, ms. */
      readonly atMs: number;
    }
  /** The pilot or the device refused. */
  | { readonly kind: 'refused' }
  /** The device has no position to give. */
  | { readonly kind: 'none' };

/** Where the device is, as far as requested. */
export const position = signal<DevicePosition>({ kind: 'off' });

let watch: number | null = null;

/** Requests the position and follows it. The browser asks the pilot. */
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
        // One fix failed; what was known stays, and grows old.
        if (position.value.kind === 'waiting') position.value = { kind: 'none' };
        return;
      }
      leavePosition();
      position.value = { kind: 'refused' };
    },
    { enableHighAccuracy: true, maximumAge: 1000, timeout: 15_000 },
  );
}

/** Stops following. */
export function leavePosition(): void {
  if (watch !== null) navigator.geolocation.clearWatch(watch);
  watch = null;
  position.value = { kind: 'off' };
}
