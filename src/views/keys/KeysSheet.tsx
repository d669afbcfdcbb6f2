/** Keys and sticks: what each of them does, learned by pressing it, and what each device sends. */

import type { JSX } from 'preact';
import { useEffect } from 'preact/hooks';
import { learning, seen, showing } from '../../board/hands/hands';
import {
  ACTIONS,
  type Action,
  type Binding,
  bindings,
  conflictOf,
  unbind,
} from '../../device/bindings';
import { Key } from '../../parts/key/Key';
import { Sheet } from '../../parts/sheet/Sheet';
import { controlName } from './controlName';
import { Devices } from './Devices';
import styles from './Keys.module.css';
import { words } from './words';

/** The sheet. Escape first cancels learning. */
export function KeysSheet({ onClose }: { onClose: () => void }): JSX.Element {
  useEffect(() => {
    showing.value = true;
    seen.value = [];
    return () => {
      showing.value = false;
      learning.value = null;
    };
  }, []);
  const close = () => {
    if (learning.value === null) onClose();
    else learning.value = null;
  };
  return (
    <Sheet title={words.title} close={words.close} size="page" onClose={close}>
      <p class={styles.about}>{words.about}</p>
      <div class={styles.parts}>
        <section>
          <h3 class={styles.title}>{words.actions}</h3>
          <ul>
            {ACTIONS.map((action) => (
              <ActionRow key={action} action={action} />
            ))}
          </ul>
          {bindings.value.length > 0 && (
            <Key
              className={styles.forget}
              onPress={() => {
                bindings.value = [];
              }}
            >
              {words.forget}
            </Key>
          )}
        </section>
        <Devices />
      </div>
    </Sheet>
  );
}

function ActionRow({ action }: { action: Action }) {
  const own = bindings.value.filter((one) => one.action === action);
  const name = words.action[action];
  const isLearning = learning.value === action;
  return (
    <li class={styles.action}>
      <div class={styles.head}>
        <p>
          <b class={styles.name}>{name}</b>
          <span class={styles.note}>{words.actionNote[action]}</span>
        </p>
        <Key
          pressed={isLearning}
          label={isLearning ? words.cancel : words.learnFor(name)}
          onPress={() => {
            learning.value = isLearning ? null : action;
          }}
        >
          {isLearning ? words.cancel : words.learn}
        </Key>
      </div>
      <div role="status">{isLearning && <p class={styles.press}>{words.press}</p>}</div>
      {own.length > 0 && (
        <ul class={styles.bound}>
          {own.map((binding) => (
            <Bound key={`${binding.control} ${binding.manner}`} binding={binding} />
          ))}
        </ul>
      )}
    </li>
  );
}

function Bound({ binding }: { binding: Binding }) {
  const control = controlName(binding.control);
  const conflict = conflictOf(binding, bindings.value);
  const others = conflict?.with.map((action) => words.action[action]) ?? [];
  return (
    <li>
      <div class={styles.binding}>
        <span>{words.bound(control, words.manner[binding.manner])}</span>
        <Key
          label={words.remove(control, words.action[binding.action])}
          onPress={() => unbind(binding)}
        >
          {words.takeAway}
        </Key>
      </div>
      {conflict !== null && (
        <p class={styles.conflict}>
          {conflict.kind === 'shared' ? words.shared(others) : words.cannotHold(others)}
        </p>
      )}
    </li>
  );
}
