/**
 * Which entries this version understands. An entry that is damaged or written by a later version
 * must not keep the app from starting: it is kept, and skipped.
 */

import { PHASES } from '../procedure/phases';
import type { Entry, SortieEvent, Stamped } from './entry';

/** An entry as it comes out of storage: its kind and its content may be anything. */
export type Written = Stamped & { readonly kind: string };

/** What an entry may carry, before we know that it does. */
type Carried = Readonly<Partial<Record<string, unknown>>>;

const isObject = (value: unknown): value is Carried => typeof value === 'object' && value !== null;
const isText = (value: unknown): boolean => typeof value === 'string';

const isTick = ({ run, pass, step, saw }: Carried): boolean =>
  isText(run) && Number.isSafeInteger(pass) && isText(step) && isObject(saw);
const isOfRun = ({ run }: Carried): boolean => isText(run);

const isPhase = (name: unknown): boolean => PHASES.some((known) => known === name);

const leadsSomewhere = (to: unknown): boolean =>
  to === 'return' ||
  to === 'end' ||
  (isObject(to) && Array.isArray(to.reopen) && to.reopen.every(isPhase));

const isPasses = (passes: unknown): boolean =>
  isObject(passes) &&
  Object.entries(passes).every(([phase, pass]) => isPhase(phase) && Number.isSafeInteger(pass));

/** For each kind, whether an entry carries what the fold will ask of it. */
const CARRIES: Readonly<Record<SortieEvent['kind'], (carried: Carried) => boolean>> = {
  set: ({ inputs }) => isObject(inputs),
  wind: ({ text, north }) => isText(text) && (north === 'true' || north === 'magnetic'),
  clock: ({ sortieMs, rate }) => Number.isFinite(sortieMs) && Number.isFinite(rate),
  done: isTick,
  held: isTick,
  cannot: isTick,
  open: ({ run, procedure }) => isText(run) && isText(procedure),
  close: ({ run, leadsTo }) => isText(run) && leadsSomewhere(leadsTo),
  passed: isTick,
  begun: ({ run, phase }) => isText(run) && isPhase(phase),
  reopen: ({ run, passes }) => isText(run) && isPasses(passes),
  stamp: ({ what }) => isText(what),
  taxied: ({ point }) => isText(point),
  interrupted: isOfRun,
  resumed: isOfRun,
  'taken up': () => true,
  undo: ({ target }) => isText(target),
  accepted: ({ cautions, purpose }) => Array.isArray(cautions) && isText(purpose),
  noted: ({ text }) => isText(text),
  corrected: ({ what, sortieMs }) =>
    isText(what) && (sortieMs === null || Number.isFinite(sortieMs)),
  sealed: ({ documents, figures }) => isObject(documents) && isObject(figures),
};

const isKind = (kind: string): kind is SortieEvent['kind'] => Object.hasOwn(CARRIES, kind);

/** Whether this version of the app knows what the entry means. */
export function isUnderstood(entry: Written): entry is Entry {
  const { kind } = entry;
  return isKind(kind) && CARRIES[kind](entry as unknown as Carried);
}
