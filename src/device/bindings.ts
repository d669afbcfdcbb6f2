/**
 * Which control of which device does what: learned, stored on this device, and validated when read.
 */

import { kept } from './kept';
import { MANNERS, type PressManner } from './presses';

/** Everything that can be done without touching the screen. */
export const ACTIONS = [
  'done',
  'back',
  'hold-back',
  'repeat',
  'next-place',
  'big-card',
  'stopwatch',
  'brakes-released',
  'stopping',
  'airborne',
] as const;

/** Something that can be done without touching the screen. */
export type Action = (typeof ACTIONS)[number];

/**
 * A control, by a name that is stable across sessions: `key:PageDown`, `media:nexttrack`,
 * `pad:b3:0:name of the pad`, `pad:a1+:0:name`. The number after the part tells two pads of one
 * model apart.
 */
export type Control = string;

/** A control, pressed in some manner, does something. */
export interface Binding {
  readonly control: Control;
  readonly manner: PressManner;
  readonly action: Action;
}

/** More than anyone learns; a store that holds more is not ours. */
const MOST = 100;
const CONTROL = /^(key:.{1,40}|media:[a-z]{1,20}|pad:(b\d{1,3}|a\d{1,3}[+-]):\d:.{0,200})$/;

const isIn = <T extends string>(names: readonly T[], name: unknown): name is T =>
  names.some((known) => known === name);

const isSame = (a: Binding, b: Binding): boolean =>
  a.control === b.control && a.manner === b.manner && a.action === b.action;

/** The bindings in a stored value; anything else in it is left out. */
export function readBindings(stored: unknown): readonly Binding[] {
  if (!Array.isArray(stored)) return [];
  const read = stored.slice(0, MOST).flatMap((one: unknown): Binding[] => {
    if (typeof one !== 'object' || one === null) return [];
    const { control, manner, action } = one as Record<string, unknown>;
    if (typeof control !== 'string' || !CONTROL.test(control)) return [];
    return isIn(MANNERS, manner) && isIn(ACTIONS, action) ? [{ control, manner, action }] : [];
  });
  return read.filter((one, index) => read.findIndex((other) => isSame(one, other)) === index);
}

/** This device's bindings. */
export const bindings = kept('keys', readBindings);

/** Adds a binding, unless it is there already. */
export function bind(binding: Binding): void {
  if (bindings.value.some((one) => isSame(one, binding))) return;
  bindings.value = [...bindings.value, binding];
}

/** Removes a binding. */
export function unbind(binding: Binding): void {
  bindings.value = bindings.value.filter((one) => !isSame(one, binding));
}

/** What keeps a binding from working. */
export type BindingConflict =
  /** The same control in the same manner also does these: it does nothing until that is settled. */
  | { readonly kind: 'shared'; readonly with: readonly Action[] }
  /** A critical step wants Done held, but holding this control does something else. */
  | { readonly kind: 'cannot-hold'; readonly with: readonly Action[] };

/** What keeps a binding from working among all of them; null if nothing. */
export function conflictOf(binding: Binding, all: readonly Binding[]): BindingConflict | null {
  const { control, manner, action } = binding;
  const onControl = all.filter((one) => one.control === control && one.action !== action);
  const shared = onControl.filter((one) => one.manner === manner).map((one) => one.action);
  if (shared.length > 0) return { kind: 'shared', with: shared };
  if (action !== 'done' || manner !== 'press') return null;
  const holds = onControl.filter((one) => one.manner === 'hold').map((one) => one.action);
  return holds.length > 0 ? { kind: 'cannot-hold', with: holds } : null;
}

/** The manners that mean something on a control. */
export function wantedOf(control: Control, all: readonly Binding[]): ReadonlySet<PressManner> {
  return new Set(all.filter((one) => one.control === control).map(({ manner }) => manner));
}

/** What a control does when pressed in a manner; null if nothing, or if two actions claim it. */
export function actionOf(
  control: Control,
  manner: PressManner,
  all: readonly Binding[],
): Action | null {
  const found = all.filter((one) => one.control === control && one.manner === manner);
  return found.length === 1 ? (found[0]?.action ?? null) : null;
}

/** A control in its parts, for words. */
export type ControlParts =
  | { readonly kind: 'key' | 'media'; readonly name: string }
  | {
      readonly kind: 'pad';
      readonly pad: string;
      /** Which one, of several of one model. */
      readonly copy: number;
      readonly part: 'button' | 'axis';
      readonly number: number;
      readonly way: '+' | '-' | null;
    };

/** Splits the name of a control into its parts. */
export function controlsOf(control: Control): ControlParts {
  const [kind = '', ...rest] = control.split(':');
  if (kind !== 'pad') {
    return { kind: kind === 'media' ? 'media' : 'key', name: rest.join(':') };
  }
  const [part = '', copy = '0', ...pad] = rest;
  const way = part.endsWith('+') ? '+' : part.endsWith('-') ? '-' : null;
  return {
    kind: 'pad',
    pad: pad.join(':'),
    copy: Number(copy),
    part: part.startsWith('b') ? 'button' : 'axis',
    number: Number.parseInt(part.slice(1), 10),
    way,
  };
}
