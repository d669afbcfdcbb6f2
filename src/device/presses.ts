/**
 * Recognises presses, holds and double presses of a control that goes down and up. Pure: times come
 * in, and {@link dueAt} says when to call again.
 *
 * What a control is bound to decides how soon it acts. With presses alone, it acts as the control
 * goes down; if a hold or double press means something else, it waits to tell them apart.
 */

/** A key, button or axis down this long is held, ms. */
export const HOLD_MS = 700;

/** After the due step changes, presses and taps meant for the one before are ignored this long, ms. */
export const SETTLE_MS = 500;

/** The second press of a double press starts within this, ms. */
export const DOUBLE_MS = 350;

/** Nobody presses twice within this: it is one press, bouncing, ms. */
export const BOUNCE_MS = 80;

/** A control that is up for less than this was never released, ms. */
export const CHATTER_MS = 30;

/** No finger is this quick: the device sends presses whole and can't send a hold, ms. */
export const BRIEF_MS = 40;

/** How a control is pressed. */
export const MANNERS = ['press', 'hold', 'double'] as const;

/** How a control is pressed. */
export type PressManner = (typeof MANNERS)[number];

/** What was recognised. */
export interface RecognisedPress {
  readonly manner: PressManner;
  /** When the control went down for it, ms. */
  readonly downMs: number;
  /**
   * It has been down for {@link HOLD_MS}. A press or double press that acted as the control went
   * down is reported again if it turns out to be held.
   */
  readonly held: boolean;
  /** The press before this one was too brief for a finger. */
  readonly brief: boolean;
}

/**
 * What happens to a control. `time`: nothing, but time has passed. `lost`: its state is unknown.
 */
export interface Happening {
  readonly kind: 'down' | 'up' | 'time' | 'lost';
  readonly ms: number;
}

interface Pressing {
  readonly downMs: number;
  /** Null while it is down. */
  readonly upMs: number | null;
  readonly second: boolean;
  readonly told: boolean;
  readonly toldHeld: boolean;
}

/** What is remembered of a control. */
export interface ControlState {
  readonly pressing: Pressing | null;
  readonly brief: boolean;
}

/** A control that was never pressed. */
export const AT_REST: ControlState = { pressing: null, brief: false };

/** A control after something happened to it, and what that was recognised as. */
export interface Recognised {
  readonly pressed: ControlState;
  readonly told: readonly RecognisedPress[];
}

type Wanted = ReadonlySet<PressManner>;

/** When something is decided even if nothing happens, ms; null if never. */
export function dueAt({ pressing }: ControlState, wanted: Wanted): number | null {
  if (pressing === null) return null;
  const { downMs, upMs, told, toldHeld } = pressing;
  if (upMs === null) return toldHeld ? null : downMs + HOLD_MS;
  const letGoMs = Math.max(downMs + BOUNCE_MS, upMs + CHATTER_MS);
  return told || !wanted.has('double') ? letGoMs : Math.max(letGoMs, downMs + DOUBLE_MS);
}

/** Takes what happened; times never go back. */
export function recognise(before: ControlState, happening: Happening, wanted: Wanted): Recognised {
  if (happening.kind === 'lost') return { pressed: AT_REST, told: [] };
  const told: RecognisedPress[] = [];
  let pressed = before;
  for (
    let due = dueAt(pressed, wanted);
    due !== null && due <= happening.ms;
    due = dueAt(pressed, wanted)
  ) {
    const decided = decide(pressed, wanted);
    pressed = decided.pressed;
    told.push(...decided.told);
  }
  const taken = happening.kind === 'time' ? null : take(pressed, happening, wanted);
  return taken === null ? { pressed, told } : { ...taken, told: [...told, ...taken.told] };
}

/** What is decided at the time {@link dueAt} named. */
function decide({ pressing, brief }: ControlState, wanted: Wanted): Recognised {
  if (pressing === null) return { pressed: AT_REST, told: [] };
  const { downMs, upMs, second, told } = pressing;
  if (upMs === null) {
    const manner = second ? 'double' : wanted.has('hold') ? 'hold' : 'press';
    return {
      pressed: { pressing: { ...pressing, told: true, toldHeld: true }, brief },
      told: [{ manner, downMs, held: true, brief }],
    };
  }
  return {
    pressed: { pressing: null, brief: upMs - downMs < BRIEF_MS },
    told: told ? [] : [{ manner: 'press', downMs, held: false, brief }],
  };
}

function take(
  { pressing, brief }: ControlState,
  { kind, ms }: Happening,
  wanted: Wanted,
): Recognised {
  const still = { pressed: { pressing, brief }, told: [] };
  if (kind === 'up') {
    if (pressing === null || pressing.upMs !== null) return still;
    return { pressed: { pressing: { ...pressing, upMs: ms }, brief }, told: [] };
  }
  // Autorepeat of a key that is held down.
  if (pressing !== null && pressing.upMs === null) return still;
  if (pressing !== null && isSamePress(pressing, ms)) {
    return { pressed: { pressing: { ...pressing, upMs: null }, brief }, told: [] };
  }
  const second = pressing !== null;
  const atOnce = second || !(wanted.has('hold') || wanted.has('double'));
  const begun = { downMs: ms, upMs: null, second, told: atOnce, toldHeld: false };
  const manner = second ? 'double' : 'press';
  return {
    pressed: { pressing: begun, brief },
    told: atOnce ? [{ manner, downMs: ms, held: false, brief }] : [],
  };
}

const isSamePress = ({ downMs, upMs }: Pressing, ms: number) =>
  ms < Math.max(downMs + BOUNCE_MS, (upMs ?? ms) + CHATTER_MS);
