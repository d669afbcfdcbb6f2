/** The key that undoes the last thing. */

import type { JSX } from 'preact';
import { canGoBack, goBack } from '../../board/steps/stepping';
import { Key } from '../../parts/key/Key';
import { words } from './words';

/** As large as the keys beside it, or with a class of its own. */
export function BackKey({ className }: { className?: string | undefined }): JSX.Element {
  return (
    <Key
      moving={className === undefined}
      className={className}
      disabled={!canGoBack()}
      onPress={goBack}
    >
      {words.back}
    </Key>
  );
}
