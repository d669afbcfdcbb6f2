/** What touches the screen, and whether it was a touch that woke it. */

/** Pointers on the screen now, wherever they are; a palm rests beside the keys as well as on them. */
const down = new Set<number>();
let most = 0;
let woke = false;

/** Begins to watch pointers and the screen's waking; call once. */
export function watchPointers(): void {
  const options = { capture: true, passive: true };
  addEventListener(
    'pointerdown',
    (event) => {
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
