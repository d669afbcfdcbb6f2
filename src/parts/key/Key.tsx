/** A key: paper with a heavy edge, or filled if it is the one to press. */

import type { ComponentChildren, JSX } from 'preact';
import styles from './Key.module.css';

export type KeyLook = 'plain' | 'pick' | 'stop';

export interface KeyProps {
  readonly look?: KeyLook;
  /** Used while the aircraft moves: larger. */
  readonly moving?: boolean;
  /** For a key that stays down: whether it is down. */
  readonly pressed?: boolean;
  readonly disabled?: boolean;
  readonly label?: string | undefined;
  readonly className?: string | undefined;
  readonly onPress: () => void;
  readonly children: ComponentChildren;
}

/** The classes of a key, for parts that build keys of their own. */
export function keyClass({
  look = 'plain',
  moving,
  pressed,
  className,
}: Partial<KeyProps>): string {
  return [
    styles.key,
    look === 'plain' ? '' : styles[look],
    moving ? styles.moving : '',
    pressed ? styles.pressed : '',
    className ?? '',
  ]
    .filter(Boolean)
    .join(' ');
}

/** A key that acts when pressed. To tick a step, use TickKey. */
export function Key(props: KeyProps): JSX.Element {
  const { pressed, disabled, label, onPress, children } = props;
  return (
    <button
      type="button"
      class={keyClass(props)}
      disabled={disabled ?? false}
      aria-pressed={pressed}
      aria-label={label}
      onClick={onPress}
    >
      {children}
    </button>
  );
}
