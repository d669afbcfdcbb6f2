/**
 * What belongs to the device rather than to a sortie: the theme, the units, and that the caution was
 * read.
 *
 * In localStorage, because the first frame needs it and losing it costs nothing.
 */

import { effect, signal } from '@preact/signals';

/** How the screen looks. `device` follows the device: day, or dusk if it prefers dark. */
export type Theme = 'device' | 'day' | 'dusk' | 'night';

const THEMES: readonly string[] = ['device', 'day', 'dusk', 'night'] satisfies Theme[];

function stored(name: string): string | null {
  try {
    return localStorage.getItem(`lapstrip.${name}`);
  } catch {
    return null;
  }
}

function store(name: string, value: string): void {
  try {
    localStorage.setItem(`lapstrip.${name}`, value);
  } catch {
    // Storage is refused: the preference lasts until the window closes.
  }
}

const isTheme = (name: string | null): name is Theme => name !== null && THEMES.includes(name);

const storedTheme = stored('theme');

/** The theme the pilot chose. */
export const theme = signal<Theme>(isTheme(storedTheme) ? storedTheme : 'device');

/** A brighter night, for readers who need 7:1. */
export const brightNight = signal(stored('brightNight') === 'yes');

/** Which way the taxi plan is turned: north up, or the route ahead up. */
export const planUp = signal<'north' | 'way'>(stored('planUp') === 'way' ? 'way' : 'north');

/** The units that lengths on the ground, pressures and masses are shown and typed in. */
export type LengthUnit = 'm' | 'ft';
export type PressureUnit = 'hPa' | 'inHg';
export type MassUnit = 'kg' | 'lb';

export const lengthUnit = signal<LengthUnit>(stored('lengthUnit') === 'ft' ? 'ft' : 'm');
export const pressureUnit = signal<PressureUnit>(
  stored('pressureUnit') === 'inHg' ? 'inHg' : 'hPa',
);
export const massUnit = signal<MassUnit>(stored('massUnit') === 'lb' ? 'lb' : 'kg');

/** Whether the time on the device's own clock stands beside UTC. */
export const localTime = signal(stored('localTime') === 'yes');

/** Whether the caution was read on this device. */
export const cautionRead = signal(stored('cautionRead') === 'yes');

/** Applies the preferences to the page and stores them; call once, before the first frame. */
export function applyPreferences(): void {
  const dark = matchMedia('(prefers-color-scheme: dark)');
  const systemIsDark = signal(dark.matches);
  dark.addEventListener('change', (change) => {
    systemIsDark.value = change.matches;
  });
  effect(() => {
    const shown = theme.value === 'device' ? (systemIsDark.value ? 'dusk' : 'day') : theme.value;
    document.documentElement.dataset.theme = shown;
    document.documentElement.toggleAttribute('data-bright', brightNight.value);
    const paper = getComputedStyle(document.documentElement).getPropertyValue('--paper');
    document.querySelector('meta[name="theme-color"]')?.setAttribute('content', paper.trim());
    store('theme', theme.value);
    store('brightNight', brightNight.value ? 'yes' : 'no');
    store('planUp', planUp.value);
    store('lengthUnit', lengthUnit.value);
    store('pressureUnit', pressureUnit.value);
    store('massUnit', massUnit.value);
    store('localTime', localTime.value ? 'yes' : 'no');
    store('cautionRead', cautionRead.value ? 'yes' : 'no');
  });
}
