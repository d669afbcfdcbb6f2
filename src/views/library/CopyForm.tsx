/** What a copy of a document is to be called. */

import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import type { Listed } from '../../board/documents/documents';
import { type CopyProblem, copyDocument, freeCode } from '../../board/documents/library';
import { inputClass, Labelled, Wrong } from '../../parts/field/Labelled';
import { Key } from '../../parts/key/Key';
import { Keys } from '../../parts/key/Keys';
import { words as problemWords } from '../../parts/problem/words';
import styles from './Library.module.css';
import { words } from './words';

/** A name may be no longer, characters. */
const LONGEST_NAME = 80;

/** The form: a name and, for a field, a code. */
export function CopyForm({
  of,
  onDone,
}: {
  readonly of: Listed;
  readonly onDone: () => void;
}): JSX.Element {
  const [code, setCode] = useState(() => freeCode(of));
  const [name, setName] = useState(() => words.copyOf(of.name).slice(0, LONGEST_NAME));
  const [problem, setProblem] = useState<CopyProblem | null>(null);
  const copy = () =>
    void copyDocument(of, { code, name }).then(
      (found) => {
        setProblem(found);
        if (found === null) onDone();
      },
      () => setProblem([{ at: '', what: 'not-read' }]),
    );
  return (
    <form
      class={styles.form}
      onSubmit={(event) => {
        event.preventDefault();
        copy();
      }}
    >
      {of.kind === 'field' && (
        <Labelled name={words.copyCode} bad={problem === 'code-taken' && words.codeTaken(code)}>
          <input
            class={inputClass}
            maxLength={8}
            autocapitalize="characters"
            spellcheck={false}
            value={code}
            onInput={(event) => setCode(event.currentTarget.value)}
          />
        </Labelled>
      )}
      <Labelled name={words.copyName}>
        <input
          class={inputClass}
          maxLength={LONGEST_NAME}
          value={name}
          onInput={(event) => setName(event.currentTarget.value)}
        />
      </Labelled>
      <Keys>
        <Key look="pick" disabled={name.trim() === ''} onPress={copy}>
          {words.copyIt}
        </Key>
      </Keys>
      {problem !== null && problem !== 'code-taken' && (
        <Wrong>{problem.map(problemWords.problem).join(' ')}</Wrong>
      )}
    </form>
  );
}
