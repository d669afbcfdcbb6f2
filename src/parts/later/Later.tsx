/** A part of the screen whose code comes when it is first drawn, or asked for before. */

import { type Signal, signal } from '@preact/signals';
import {
  type Attributes,
  type ComponentType,
  createElement,
  type FunctionComponent,
  type JSX,
} from 'preact';
import { fetchFurtherWords } from '../catalogues';
import { Key } from '../key/Key';
import { words } from './words.en';

type When = 'drawn' | 'drawn silently' | 'asked';

/** A component that comes later, and the way to have it sooner. */
export interface LaterComponent<P> {
  readonly Later: FunctionComponent<P>;
  readonly preload: () => void;
}

/**
 * Makes a component of one whose code is loaded apart. `when` says when it begins to come: when it
 * is drawn, which is said or not, or only once it was asked for with `preload`, until when nothing
 * is drawn. Without a network it says so and tries again.
 */
export function later<P = object>(
  load: () => Promise<ComponentType<P>>,
  when: When = 'drawn',
): LaterComponent<P> {
  const loaded: Signal<ComponentType<P> | 'loading' | 'failed' | null> = signal(null);
  const start = () => {
    loaded.value = 'loading';
    fetchFurtherWords()
      .then(load)
      .then(
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
      return when === 'drawn' ? <p>{words.loading}</p> : null;
    }
    if (component === 'failed') {
      return (
        <p>
          {words.failed} <Key onPress={start}>{words.retry}</Key>
        </p>
      );
    }
    return createElement<P>(component as FunctionComponent<P>, props as P & Attributes);
  };
  return { Later, preload };
}
