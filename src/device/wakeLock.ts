/** Keeps the screen on while a sortie runs. */

/** Whether the screen is kept on, and if not, why. */
export type Awake =
  /** Nothing requests it. */
  | 'not-wanted'
  | 'held'
  /** The browser refused or withdrew it: battery saver, or a revoked permission. */
  | 'refused'
  /** Not supported by this browser, or not at this address. */
  | 'none';

/**
 * A screen wake lock that returns after the app was hidden, when browsers release it. If the
 * browser has none or refuses (battery saver, plain http), the screen simply dims as usual;
 * `changed` is called.
 */
export class WakeLock {
  readonly #changed: (awake: Awake) => void;
  #wanted = false;
  #asking = false;
  #sentinel: WakeLockSentinel | null = null;

  constructor(changed: (awake: Awake) => void) {
    this.#changed = changed;
  }

  /** Whether the screen is kept on right now. */
  get held(): boolean {
    return this.#sentinel !== null && !this.#sentinel.released;
  }

  /** Keeps the screen on from now on, and asks again if that was refused before. Never rejects. */
  async hold(): Promise<void> {
    if (!this.#wanted) {
      this.#wanted = true;
      document.addEventListener('visibilitychange', this.#acquire);
    }
    await this.#acquire();
  }

  /** Lets the screen dim again. */
  async release(): Promise<void> {
    if (!this.#wanted) return;
    this.#wanted = false;
    document.removeEventListener('visibilitychange', this.#acquire);
    const sentinel = this.#sentinel;
    this.#sentinel = null;
    this.#changed('not-wanted');
    await sentinel?.release();
  }

  readonly #acquire = async (): Promise<void> => {
    if (!('wakeLock' in navigator)) return this.#changed('none');
    if (document.hidden || this.held || this.#asking) return;
    this.#asking = true;
    try {
      const sentinel = await navigator.wakeLock.request('screen');
      // Released while the request was pending: don't keep what is no longer wanted.
      if (!this.#wanted) return await sentinel.release();
      this.#sentinel = sentinel;
      sentinel.addEventListener('release', () => {
        // A hidden window always loses the lock, and gets it back when shown.
        if (this.#sentinel === sentinel && !document.hidden) this.#changed('refused');
      });
      this.#changed('held');
    } catch {
      this.#sentinel = null;
      if (this.#wanted) this.#changed('refused');
    } finally {
      this.#asking = false;
    }
  };
}
