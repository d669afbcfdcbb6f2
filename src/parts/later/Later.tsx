/** A part of the screen whose code is loaded when first drawn, or preloaded. */

import { type Signal, signal } from '@preact/signals';
import {
  type Attributes,
  type ComponentType,
  createElement,
  type FunctionComponent,
  type JSX,
} from 'preact';
import { withWords } from '../catalogues';
import { Key } from '../key/Key';
import { Sheet } from '../sheet/Sheet';
import { words } from './words';

type When = 'drawn' | 'drawn silently' | 'asked';

/** A component that comes later, and a way to have it sooner. */
export interface LaterComponent<P> {
  readonly Later: FunctionComponent<P>;
  readonly preload: () => void;
}

/** What a component that isn't loaded yet shows: a sentence, and the key that tries again. */
type Told<P> = (props: P, said: string, again: JSX.Element | null) => JSX.Element | null;

/**
 * Makes a component of one whose code is loaded separately. `when` says when loading starts: when
 * it is drawn, with or without saying so, or only on `preload`, until when nothing is drawn.
 * Offline, it says so and tries again.
 */
export function later<P = object>(
  load: () => Promise<ComponentType<P>>,
  when: When = 'drawn',
): LaterComponent<P> {
  return comingLater(load, when, (_props, said, again) => (
    <p>
      {said} {again}
    </p>
  ));
}

/**
 * The same for one drawn as a sheet: what it says while loading stands in a sheet too, because
 * nothing behind an open sheet can be seen.
 */
export const laterSheet = <P extends { readonly onClose: () => void }>(
  load: () => Promise<ComponentType<P>>,
): LaterComponent<P> =>
  comingLater(load, 'drawn', ({ onClose }, said, again) => (
    <Sheet title={said} close={words.close} onClose={onClose}>
      {again}
    </Sheet>
  ));

function comingLater<P>(
  load: () => Promise<ComponentType<P>>,
  when: When,
  told: Told<P>,
): LaterComponent<P> {
  const loaded: Signal<ComponentType<P> | 'loading' | 'failed' | null> = signal(null);
  const start = () => {
    loaded.value = 'loading';
    withWords(load).then(
      (component) => {
        loaded.value = component;
      },
      () => {
        loaded.value = 'failed';
      },
    );
  };
  const preload = () => {
    if (loaded.peek() === null) start();
  };
  const Later = (props: P): JSX.Element | null => {
    const component = loaded.value;
    if (component === null && when !== 'asked') queueMicrotask(preload);
    if (component === null || component === 'loading') {
      return when === 'drawn' ? told(props, words.loading, null) : null;
    }
    if (component === 'failed') {
      return told(props, words.failed, <Key onPress={start}>{words.retry}</Key>);
    }
    return createElement<P>(component as FunctionComponent<P>, props as P & Attributes);
  };
  return { Later, preload };
}
