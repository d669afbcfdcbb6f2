/** Which place is open, which sheet lies over it, and whether a wind is being typed. */

import { signal } from '@preact/signals';
import type { ComponentType } from 'preact';
import type {
  EndFigures,
  Figure,
  Hash,
  Id,
  LessonHeader,
  LowSun,
  RankedEnd,
  Unit,
  WindAnswer,
} from '../core';

/** The five places, in the order of the keys at the bottom edge. */
export const PLACES = ['wind', 'taxi', 'steps', 'numbers', 'log'] as const;

/** A place: one tap away from any other. */
export type PlaceName = (typeof PLACES)[number];

/** A figure of an end, built when it is asked for. */
export interface FigureOfEnd {
  readonly name: keyof EndFigures;
  readonly end: RankedEnd;
  /** The answer in which the end was ranked. */
  readonly answer: WindAnswer;
}

/** A low sun whose elevation is asked about. */
export interface FigureOfSun {
  readonly sun: LowSun;
}

/** A number whose reason is asked for: ready, or to be built first. */
export type AskedFigure = Figure<Unit> | FigureOfEnd | FigureOfSun;

/** The rooms behind the places, in the order of their tabs. */
export const ROOMS = ['sortie', 'library', 'device', 'about'] as const;

/**
 * A room: what is flown today, what the pilot owns, what belongs to the device, what Lapstrip is.
 * Each is a tap away from the others, in the same sheet.
 */
export type RoomName = (typeof ROOMS)[number];

/** What can lie over a place. A sheet opened from a sheet lies over that one, and closes to it. */
export type OpenSheet =
  | { readonly kind: RoomName }
  /** The sortie's time. */
  | { readonly kind: 'clock' }
  /** What can be done after an uncaught error. */
  | { readonly kind: 'failed' }
  /** The lists for when something is wrong. */
  | { readonly kind: 'wrong' }
  /** What speaks against the runway in use. */
  | { readonly kind: 'verdict' }
  | { readonly kind: 'load'; readonly over: OpenSheet | null }
  /** An aircraft without a procedure: what can be done about it. */
  | { readonly kind: 'procedure'; readonly over: OpenSheet | null }
  /** The pilot's own version of a procedure, being written. */
  | { readonly kind: 'editor'; readonly hash: Hash; readonly over: OpenSheet | null }
  /** Which keys, sticks and pedals do what. */
  | { readonly kind: 'keys'; readonly over: OpenSheet | null }
  /** A field being drawn: a new one, or an existing one corrected. */
  | { readonly kind: 'drawing'; readonly of: Hash | null; readonly over: OpenSheet | null }
  /** An aircraft being made, or one being edited. */
  | { readonly kind: 'making'; readonly of: Hash | null; readonly over: OpenSheet | null }
  /** A sortie of the log. */
  | { readonly kind: 'logged'; readonly sortie: Id }
  /** A document to share or print. */
  | { readonly kind: 'share' | 'print'; readonly hash: Hash; readonly over: OpenSheet | null }
  /** A lesson being made. */
  | { readonly kind: 'lesson'; readonly over: OpenSheet | null }
  /** A lesson to print, whole. */
  | (LessonHeader & {
      readonly kind: 'printLesson';
      readonly documents: readonly Hash[];
      readonly over: OpenSheet | null;
    })
  /** A document compared with another of its kind. */
  | { readonly kind: 'compare'; readonly hash: Hash; readonly over: OpenSheet | null }
  /** What came from elsewhere, a file or what follows `#` in a link: shown before it is stored. */
  | { readonly kind: 'incoming'; readonly from: File | string; readonly over: OpenSheet | null }
  /** An extract of a map, or a file that can't be looked at: what it holds, before it is stored. */
  | { readonly kind: 'map'; readonly from: File | string; readonly over: OpenSheet | null }
  | {
      readonly kind: 'why';
      readonly title: string;
      readonly figure: AskedFigure;
      readonly over: OpenSheet | null;
    };

const isPlace = (name: string): name is PlaceName => PLACES.some((known) => known === name);

const isWatch = () => globalThis.location?.hash === '#/watch';

/** This window only shows what the others do: it has no keys, and adds nothing to the record. */
export const watching = isWatch();

const nameIn = (hash: string): string => hash.replace(/^#\/?/, '').split('?')[0] ?? '';

function placeInAddress(hash = globalThis.location?.hash ?? ''): PlaceName {
  const name = nameIn(hash);
  return isPlace(name) ? name : 'wind';
}

/** Whether the address the app was started at names a place. */
export const isPlaceAsked = (): boolean => isPlace(nameIn(globalThis.location?.hash ?? ''));

/** The open place. */
export const place = signal<PlaceName>(placeInAddress());

/** The sheet over it; null if there is none. */
export const sheet = signal<OpenSheet | null>(null);

/** The keypad is open, over any place. */
export const typing = signal(false);

/** One step fills the screen, and the whole screen is the key. */
export const bigCard = signal(false);

/** A place wants the whole height, as the roll does: the places' keys are hidden. */
export const onRoll = signal(false);

/** What stands beside a place if there is room for two. */
export const beside = signal<Readonly<Record<PlaceName, PlaceName>>>({
  wind: 'steps',
  steps: 'wind',
  taxi: 'steps',
  numbers: 'wind',
  log: 'wind',
});

/** What is drawn instead of everything else, such as the Big card; its code comes later. */
export const inFront = signal<ComponentType | null>(null);

/**
 * Opens a place, and closes what lies over it. The address follows, so that a shortcut or a reload
 * lands there.
 */
export function openPlace(name: PlaceName): void {
  place.value = name;
  typing.value = false;
  sheet.value = null;
  history.replaceState(null, '', `#/${name}`);
}

/** Opens the place an address names. */
export const openPlaceIn = ({ hash }: Pick<Location, 'hash'>): void =>
  openPlace(placeInAddress(hash));

/** Incoming content follows a question mark; only then is the code that takes it loaded. */
export async function takeFromAddress(): Promise<void> {
  if (location.search === '' && !location.hash.includes('?')) return;
  const { takeIncoming } = await import('./documents/incoming');
  takeIncoming();
}

/** Follows changes of the address, by hand, by a shortcut or by a link. */
export function followAddress(): void {
  addEventListener('hashchange', () => {
    // Whether a window writes is fixed when it is opened.
    if (isWatch() !== watching) location.reload();
    else if (location.hash.includes('?')) void takeFromAddress();
    else openPlace(placeInAddress());
  });
}

/**
 * Opens the reason for a number; without a title it is a figure of a runway end, which the sheet
 * has a title for.
 */
export function ask(title: string, figure: AskedFigure): void {
  sheet.value = { kind: 'why', title, figure, over: sheet.value };
}

/** Opens a sheet over the place. */
export function openSheet(opened: OpenSheet): void {
  sheet.value = opened;
}

/** Opens the keypad over the place. */
export function openTyping(): void {
  sheet.value = null;
  typing.value = true;
}
