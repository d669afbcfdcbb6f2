/** Keeps the screen lit while a sortie runs. */

/**
 * A screen wake lock that comes back after the app was hidden, because browsers take it away then.
 * Where the browser has none, or refuses one (battery saver, plain http), the screen simply dims as
 * it always did; {@link held} tells.
 */
export class WakeLock {
  #wanted = false;
  #sentinel: WakeLockSentinel | null = null;

  /** Whether the screen is kept lit at this moment. */
  get held(): boolean {
    return this.#sentinel !== null && !this.#sentinel.released;
  }

  /** Keeps the screen lit from now on. Resolves to whether the browser agreed; never rejects. */
  async hold(): Promise<boolean> {
    if (!this.#wanted) {
      this.#wanted = true;
      document.addEventListener('visibilitychange', this.#acquire);
    }
    await this.#acquire();
    return this.held;
  }

  /** Lets the screen dim again. */
  async release(): Promise<void> {
    this.#wanted = false;
    document.removeEventListener('visibilitychange', this.#acquire);
    const sentinel = this.#sentinel;
    this.#sentinel = null;
    await sentinel?.release();
  }

  readonly #acquire = async (): Promise<void> => {
    if (!('wakeLock' in navigator) || document.hidden || this.held) return;
    try {
      const sentinel = await navigator.wakeLock.request('screen');
      // Released while the browser was still thinking: do not keep what is no longer wanted.
      if (this.#wanted) this.#sentinel = sentinel;
      else await sentinel.release();
    } catch {
      this.#sentinel = null;
    }
  };
}
