/**
 * What the core set asks of a browser, whichever engine it has: little enough that three drivers can
 * give it alike.
 */

/** A size of the page, CSS px. */
export interface Size {
  readonly width: number;
  readonly height: number;
}

/** A point of the page, CSS px. */
export interface Point {
  readonly x: number;
  readonly y: number;
}

/** How a finger touches. */
export interface Touch {
  /** How long it stays, ms. The browser itself keeps the time. */
  readonly ms: number;
  /** How far it slides to the right before it leaves, CSS px. */
  readonly slidePx?: number;
}

/** What can be handed into a page and out of it. */
export type Plain =
  | undefined
  | null
  | boolean
  | number
  | string
  | readonly Plain[]
  | { readonly [name: string]: Plain };

/** A running browser with one window. */
export interface Running {
  /** Goes to an address and waits until it has loaded. */
  open(url: string): Promise<void>;
  /** Runs a function in the page and gives what comes of it; it sees nothing but its arguments. */
  run<Args extends readonly Plain[], Result>(
    what: (...args: Args) => Result,
    ...args: Args
  ): Promise<Awaited<Result>>;
  /** Gives the page another size. */
  resize(size: Size): Promise<void>;
  /** Touches a point. An engine that has no touch on a desktop clicks, with the same times. */
  touch(at: Point, how: Touch): Promise<void>;
  /** Types a text at the keyboard. */
  type(text: string): Promise<void>;
  /** Presses a key together with Control. */
  control(letter: string): Promise<void>;
  /** A picture of the page, as PNG. */
  screenshot(): Promise<Buffer>;
  /** Ends all of the browser's processes at once, as a flat battery does, and waits until they are gone. */
  kill(): Promise<void>;
  /** Closes the browser as a user does. */
  close(): Promise<void>;
}

/** A browser that can be started, again and again on the same profile. */
export interface Engine {
  readonly name: string;
  /** Starts it on a profile's folder, which it makes or comes back to. */
  start(profile: string, size: Size): Promise<Running>;
}
