/** What came of the fit: how near the book it is, what does not fit, and a plot of it. */

import type { JSX } from 'preact';
import { fitState, startFit, stopFit } from '../../board/writing/aircraft';
import { type Aircraft, type Fit, type FitTrouble, WELL_WITHIN } from '../../core';
import { Key } from '../../parts/key/Key';
import { Keys } from '../../parts/key/Keys';
import styles from './AircraftEditor.module.css';
import { FitPlot } from './FitPlot';
import { bookSaid, percentText } from './said';
import { troubles, words } from './words';

/** The report; nothing without a table. */
export function FitReport({ aircraft }: { readonly aircraft: Aircraft }): JSX.Element | null {
  const state = fitState.value;
  if (state.kind === 'none') return null;
  return (
    <section class={styles.fit}>
      <h3 class={styles.title}>{words.fitTitle}</h3>
      {state.kind === 'running' && (
        <>
          <p role="status">{words.fitting}</p>
          <progress class={styles.bar} aria-label={words.fitting} />
          <Keys>
            <Key onPress={stopFit}>{words.stopFit}</Key>
          </Keys>
        </>
      )}
      {state.kind === 'failed' && (
        <>
          <p role="status">{words.fitFailed[state.problem]}</p>
          <Keys>
            <Key onPress={startFit}>{words.fitAgain}</Key>
          </Keys>
        </>
      )}
      {state.kind === 'fitted' && <Fitted aircraft={aircraft} fit={state.fit} />}
    </section>
  );
}

interface FittedProps {
  readonly aircraft: Aircraft;
  readonly fit: Fit;
}

function Fitted({ aircraft, fit }: FittedProps) {
  const worst = fit.worst === null ? null : Math.abs(fit.worst.by);
  return (
    <>
      {worst !== null && (
        <p role="status" class={worst > WELL_WITHIN ? styles.wrong : undefined}>
          {worst > WELL_WITHIN ? words.fitsNot(percent(worst)) : words.fits(percent(worst))}
        </p>
      )}
      {fit.troubles.length > 0 && (
        <ul class={styles.troubles}>
          {fit.troubles.map((trouble) => (
            <li key={`${trouble.row} ${trouble.figure} ${trouble.code}`}>
              {troubleSaid(trouble, aircraft)}
            </li>
          ))}
        </ul>
      )}
      <FitPlot figures={fit.figures} />
    </>
  );
}

/** A share as a percentage without its sign, rounded away from nothing. */
const percent = (share: number) => percentText(Math.ceil(1000 * share) / 1000).replace('+', '');

/** A trouble as a sentence, with what would mend it. */
export function troubleSaid(trouble: FitTrouble, { handbook }: Aircraft): string {
  const { row, figure } = trouble;
  const book = handbook?.rows[row]?.[figure];
  const factor = trouble.code === 'thrust-apart' ? trouble.factor : 1;
  const told = {
    row: row + 1,
    figure,
    book: book === undefined ? '' : bookSaid(figure, book),
    foretold: trouble.code === 'row-apart' ? bookSaid(figure, trouble.foretold) : '',
    percent: 'by' in trouble ? percentText(trouble.by) : '',
    thrust: percent(Math.abs(factor - 1)),
    isMore: factor > 1,
  };
  if (trouble.code !== 'no-figure') return troubles[trouble.code](told);
  const { because } = trouble;
  return because === 'over-mass' || because === 'never-stops' || because === 'cannot-climb'
    ? troubles[because](told)
    : troubles['no-figure'](told);
}
