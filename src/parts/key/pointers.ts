/** What touches the screen, whether it was a touch that woke it, and whether a click came of one. */

/** Pointers on the screen now, wherever they are; a palm rests beside the keys as well as on them. */
const down = new Set<number>();
let most = 0;
let woke = false;

/** When a pointer was last seen to come down or leave, ms of the events' own clock. */
let seenMs = Number.NEGATIVE_INFINITY;

/**
 * A click follows its pointer at once, or after 0.35 s where the browser waits for a second tap. Both
 * times are those of the events, so that a busy page makes nothing of it. Common practice, no
 * published source.
 */
const CLICK_FOLLOWS_MS = 1000;

/** Begins to watch pointers and the screen's waking; call once. */
export function watchPointers(): void {
  const options = { capture: true, passive: true };
  addEventListener(
    'pointerdown',
    (event) => {
      if (isReader(event)) return;
      seenMs = event.timeStamp;
      // Counted until the next touch begins: handlers of this one's end ask how many there were,
      // also when a palm left the glass before the finger did.
      // The first of its kind: one before it left unseen, off something that was gone by then.
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

/** Most pointers that were on the screen at once, in the touch that lasts or was the last. */
export const pointersSeen = (): number => Math.max(most, 1);

/** Whether no touch has ended since the screen woke. */
export const isWaking = (): boolean => woke;

/** A pointer that is no mouse, finger or pen: what some browsers make of a screen reader's press. */
export const isReader = ({ pointerType }: PointerEvent): boolean => pointerType === '';

/** Whether a pointer was seen just before an event that may have come of it, such as the end of a touch. */
export const followsPointer = ({ timeStamp }: Event): boolean =>
  timeStamp - seenMs < CLICK_FOLLOWS_MS;

/**
 * Whether a pointer made a click; otherwise a screen reader or a switch did. A click is a PointerEvent
 * whose `pointerType` says so: W3C Pointer Events Level 3, "click, auxclick, and contextmenu events".
 * In Safari before 18.2 and Firefox before 129 it is a MouseEvent without one, whatever made it, and
 * `detail` does not tell either: what counts there is whether a pointer was seen just before.
 */
export function isByPointer(click: MouseEvent): boolean {
  const isNamed =
    'pointerType' in click && click.pointerType !== '' && click.pointerType !== undefined;
  return isNamed || followsPointer(click);
}
