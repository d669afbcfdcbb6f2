/** What is wrong with a document, a sentence for each problem. */

import type { JSX } from 'preact';
import type { DocumentProblem } from '../../core';
import { words } from './words';

export const Problems = ({ of }: { readonly of: readonly DocumentProblem[] }): JSX.Element => (
  <ul>
    {of.map((problem) => (
      <li key={problem.at + problem.what}>{words.problem(problem)}</li>
    ))}
  </ul>
);
