/** What became of keeping a field: that it is kept and the key that uses it, or what is wrong with it. */

import type { JSX } from 'preact';
import type { DocumentProblem } from '../../core';
import { Wrong } from '../field/Labelled';
import { Key } from '../key/Key';
import { Problems } from './Problems';

interface KeptProps<L> {
  /** Null before it was tried. */
  readonly outcome:
    | { readonly listed: L; readonly problems: null }
    | { readonly listed: null; readonly problems: readonly DocumentProblem[] }
    | null;
  readonly words: {
    readonly kept: (code: string) => string;
    readonly refused: string;
    readonly use: (code: string) => string;
  };
  readonly onUse: (listed: L) => void;
}

export function Kept<L extends { readonly code: string }>({
  outcome,
  words,
  onUse,
}: KeptProps<L>): JSX.Element {
  return (
    <>
      <div role="status">
        {outcome?.problems === null && <p>{words.kept(outcome.listed.code)}</p>}
        {outcome?.problems && (
          <>
            <Wrong>{words.refused}</Wrong>
            <Problems of={outcome.problems} />
          </>
        )}
      </div>
      {outcome?.problems === null && (
        <Key look="pick" onPress={() => onUse(outcome.listed)}>
          {words.use(outcome.listed.code)}
        </Key>
      )}
    </>
  );
}
