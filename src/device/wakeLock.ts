/** Keeps the screen lit while a sortie runs. */

/** Whether the screen is kept lit, and why not. */
export type Awake =
  /** Nothing asks for it. */
  | 'not-wanted'
  | 'held'
  /** The browser said no, or took it back: battery saver, or a permission that was withdrawn. */
  | 'refused'
  /** This browser cannot, or not at this address. */
  | 'none';

/**
 * A screen wake lock that comes back after the app was hidden, because browsers take it away then.
 * Where the browser has none, or refuses one (battery saver, plain http), the screen simply dims as
 * it always did; `changed` is told.
 */
export class WakeLock {
  readonly #changed: (awake: Awake) => void;
  #wanted = false;
  #asking = false;
  #sentinel: WakeLockSentinel | null = null;

  constructor(changed: (awake: Awake) => void) {
    this.#changed = changed;
  }

  /** Whether the screen is kept lit at this moment. */
  get held(): boolean {
    return this.#sentinel !== null && !this.#sentinel.released;
  }

  /** Keeps the screen lit from now on, and asks again where that was refused before. Never rejects. */
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
      // Released while the browser was still thinking: do not keep what is no longer wanted.
      if (!this.#wanted) return await sentinel.release();
      this.#sentinel = sentinel;
      sentinel.addEventListener('release', () => {
        // A hidden window loses it every time, and gets it back when it is shown.
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
