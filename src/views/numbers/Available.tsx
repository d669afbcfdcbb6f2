/** A declared distance beside its bar, which opens its reason. */

import type { JSX } from 'preact';
import { ask } from '../../board/places';
import { type Declared, declared } from '../../core';
import { Asked } from '../../parts/asked/Asked';
import { length } from '../../parts/units';
import { words } from './words';

interface AvailableProps {
  readonly of: Uppercase<Declared>;
  readonly lengthM: number;
}

const DECLARED: Readonly<Record<Uppercase<Declared>, Declared>> = {
  TORA: 'tora',
  TODA: 'toda',
  ASDA: 'asda',
  LDA: 'lda',
};

/** `TORA 2 950 m`. */
export const Available = ({ of, lengthM }: AvailableProps): JSX.Element => (
  <Asked hint={words.ask} onAsk={() => ask(of, declared(DECLARED[of], lengthM))}>
    {words.availableOf(of, length(lengthM, 'down'))}
  </Asked>
);
