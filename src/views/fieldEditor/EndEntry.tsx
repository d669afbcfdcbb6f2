/** One end of a runway being drawn: its number, elevation and declared distances. */

import type { JSX } from 'preact';
import { changeField, drawnLang } from '../../board/writing/field';
import { type RunwayEnd, readDesignator } from '../../core';
import {
  anyText,
  EntryField,
  numberWithin,
  orUnknown,
  plainNumber,
} from '../../parts/field/EntryField';
import styles from './FieldEditor.module.css';
import { words } from './words';

const DISTANCES = ['displacedM', 'toraM', 'todaM', 'asdaM', 'ldaM'] as const;

const names = () => ({
  displacedM: words.displaced,
  toraM: words.tora,
  todaM: words.toda,
  asdaM: words.asda,
  ldaM: words.lda,
});

interface EndEntryProps {
  readonly end: RunwayEnd;
  readonly index: number;
  readonly side: 0 | 1;
}

export function EndEntry({ end, index, side }: EndEntryProps): JSX.Element {
  const of = { index, side };
  return (
    <fieldset class={styles.end} aria-label={words.end(end.designator)}>
      <p class={styles.label}>{words.end(end.designator)}</p>
      <EntryField
        name={words.designator}
        text={end.designator}
        read={readDesignator}
        bad={words.numberBad}
        most={4}
        onChange={(designator) => changeField({ kind: 'number', ...of, designator })}
      />
      <EntryField
        name={words.elevation}
        text={end.elevationFt === undefined ? '' : plainNumber(end.elevationFt)}
        read={orUnknown(numberWithin(-1500, 20_000))}
        bad={words.elevationBad}
        hint={words.unknown}
        most={8}
        onChange={({ known: elevationFt }) =>
          changeField({ kind: 'end', ...of, set: { elevationFt } })
        }
      />
      {DISTANCES.map((distance) => (
        <EntryField
          key={distance}
          name={names()[distance]}
          text={plainNumber(end[distance])}
          read={numberWithin(0, 10_000)}
          bad={words.metresBad}
          most={8}
          onChange={(metres) => changeField({ kind: 'end', ...of, set: { [distance]: metres } })}
        />
      ))}
      <EntryField
        name={words.closed}
        text={end.closed ?? ''}
        lang={drawnLang()}
        read={anyText(80)}
        bad={words.closedBad}
        hint={words.closedHint}
        onChange={(why) => changeField({ kind: 'closed', ...of, why: why || null })}
      />
    </fieldset>
  );
}
