/**
 * Pointers on the screen: how many, whether a touch woke the screen, and whether one made a click.
 */

/** Pointers on the screen now, wherever they are; a palm also rests beside the keys. */
const down = new Set<number>();
let most = 0;
let woke = false;

/** When a pointer was last seen to come down or leave, ms of the events' own clock. */
let seenMs = Number.NEGATIVE_INFINITY;

/**
 * A click follows its pointer at once, or after 0.35 s if the browser waits for a second tap. Both
 * times are the events' own, so a busy page makes no difference. Common practice, no published
 * source.
 */
const CLICK_FOLLOWS_MS = 1000;

/** Starts watching pointers and screen waking; call once. */
export function watchPointers(): void {
  const options = { capture: true, passive: true };
  addEventListener(
    'pointerdown',
    (event) => {
      if (isReader(event)) return;
      seenMs = event.timeStamp;
      // Counted until the next touch begins: handlers of this touch's end ask how many there were,
      // even if a palm left the glass before the finger did.
      if (event.isPrimary) down.clear();
      if (down.size === 0) most = 0;
      down.add(event.pointerId);
      most = Math.max(most, down.size);
    },
    options,
  );
  const leave = (event: PointerEvent) => {
    if (isReader(event)) return;
    seenMs = event.timeStamp;
    down.delete(event.pointerId);
    // Kept until the handlers of this event have run: they ask whether it woke the screen.
    setTimeout(() => {
      woke = false;
    });
  };
  addEventListener('pointerup', leave, options);
  addEventListener('pointercancel', leave, options);
  document.addEventListener('visibilitychange', () => {
    woke = document.visibilityState === 'visible';
    down.clear();
    most = 0;
  });
}

/** Most pointers on the screen at once, in the present touch or the last. */
export const pointersSeen = (): number => Math.max(most, 1);

/** Whether no touch has ended since the screen woke. */
export const isWaking = (): boolean => woke;

/** A pointer that is no mouse, finger or pen: how some browsers deliver a screen reader's press. */
export const isReader = ({ pointerType }: PointerEvent): boolean => pointerType === '';

/**
 * Whether a pointer was seen just before an event that may stem from it, such as the end of a
 * touch.
 */
export const followsPointer = ({ timeStamp }: Event): boolean =>
  timeStamp - seenMs < CLICK_FOLLOWS_MS;

/**
 * Whether a pointer made a click; if not, a screen reader or a switch did. A click is a
 * PointerEvent whose `pointerType` says so: W3C Pointer Events Level 3, "click, auxclick, and
 * contextmenu events". In Safari before 18.2 and Firefox before 129 it is a MouseEvent without one,
 * whatever made it, and `detail` doesn't tell either: there, what counts is whether a pointer was
 * seen just before.
 */
export function isByPointer(click: MouseEvent): boolean {
  const isNamed =
    'pointerType' in click && click.pointerType !== '' && click.pointerType !== undefined;
  return isNamed || followsPointer(click);
}
