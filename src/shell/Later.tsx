/** A view whose code comes when it is first opened. */

import { type Signal, signal } from '@preact/signals';
import {
  type Attributes,
  type ComponentType,
  createElement,
  type FunctionComponent,
  type JSX,
} from 'preact';
import { Key } from '../parts/key/Key';
import styles from './Later.module.css';
import { words } from './words.en';

type Loaded<P> = ComponentType<P> | 'loading' | 'failed';

/** Makes a component of one that is loaded when it is first drawn; without a network it says so and tries again. */
export function later<P = object>(load: () => Promise<ComponentType<P>>) {
  const loaded: Signal<Loaded<P> | null> = signal(null);
  const start = () => {
    loaded.value = 'loading';
    load().then(
      (component) => {
        loaded.value = component;
      },
      () => {
        loaded.value = 'failed';
      },
    );
  };
  const Later = (props: P): JSX.Element => {
    const Component = loaded.value;
    if (Component === null) queueMicrotask(start);
    if (Component === null || Component === 'loading') {
      return <p class={styles.later}>{words.loading}</p>;
    }
    if (Component === 'failed') {
      return (
        <div class={styles.later}>
          <p>{words.failed}</p>
          <Key onPress={start}>{words.retry}</Key>
        </div>
      );
    }
    return createElement<P>(Component as FunctionComponent<P>, props as P & Attributes);
  };
  return { Later, preload: () => loaded.value === null && start() };
}
