/** Why a text, or a part of it, can't be used. */

import type { JSX } from 'preact';
import type { Problem } from '../../../core';
import { words } from '../runways/words';

/** In one sentence. */
export function ProblemText({ problem }: { problem: Problem }): JSX.Element {
  return <>{words.problem(problem)}</>;
}
