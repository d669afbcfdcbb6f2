/** What came of the fit: how near the book it is, what does not fit, and a plot of it. */

import type { JSX } from 'preact';
import { fitState, startFit, stopFit } from '../../board/writing/aircraft';
import { type Aircraft, type Fit, WELL_WITHIN } from '../../core';
import { Key } from '../../parts/key/Key';
import { Keys } from '../../parts/key/Keys';
import styles from './AircraftEditor.module.css';
import { FitPlot } from './FitPlot';
import { percent, troubleSaid } from './troubleSaid';
import { words } from './words';

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
