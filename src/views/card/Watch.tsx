/** The page for an instructor or an audience: large, without keys, following the other windows. */

import type { JSX } from 'preact';
import { day } from '../../board/board';
import { stepsLang } from '../../board/language';
import { offered } from '../../board/steps/stepping';
import type { Upcoming, Walk } from '../../core';
import { Fit } from '../../parts/fit/Fit';
import { markedText } from '../../parts/marked';
import { momentWords } from '../../parts/procedure';
import styles from './Card.module.css';
import { CardVerdict } from './CardVerdict';
import { endWords, read, windWords } from './edges';
import type { Face } from './face';
import { Head } from './Head';
import { sinceReleased, stopWords } from './Roll';
import { Rungs, rungsNow } from './Rungs';
import { noFace, stepFace } from './stepFace';
import { paceLines } from './taxiFace';
import { alongAndAcross, firmLines } from './windFace';
import { words } from './words';

/** How many of the following steps are shown. */
const NEXT_SHOWN = 3;

/** The page. */
export function Watch(): JSX.Element {
  const brief = day.steps();
  const walk = brief === null ? null : (brief.abnormal?.walk ?? brief.walk);
  const face = stepFace() ?? noFace();
  const rolling = offered.value?.rolling === true;
  return (
    <main class={`${styles.card} ${styles.watch}`}>
      <h1 class="spoken">{words.watch}</h1>
      {day.settled().field === null ? (
        <p class={styles.empty}>{words.nothingYet}</p>
      ) : (
        <>
          <Head
            cells={rolling ? [sinceReleased(), '', ''] : [face.head[0], '', face.foot[1]]}
            share={rolling ? null : face.share}
          />
          <CardVerdict />
          <div class={styles.parts}>
            {rolling ? <Rolling /> : <DueNow face={face} walk={walk} />}
            <Beside walk={walk} />
          </div>
          <p class={styles.note}>{words.watchNote}</p>
        </>
      )}
    </main>
  );
}

function Rolling() {
  const rungs = rungsNow();
  return (
    <section class={styles.due}>
      <Fit className={styles.ladder} of={JSON.stringify(rungs)}>
        <Rungs rungs={rungs} />
      </Fit>
      <p class={styles.toStop}>{stopWords()}</p>
    </section>
  );
}

function DueNow({ face, walk }: { face: Face; walk: Walk | null }) {
  return (
    <section class={styles.due}>
      <p class="spoken" role="status">
        {face.spoken}
      </p>
      <Fit className={styles.middle} of={face.text}>
        {face.drawn}
      </Fit>
      <ol class={styles.next} aria-label={words.next}>
        {(walk?.next ?? []).slice(0, NEXT_SHOWN).map((next) => (
          <li key={keyOf(next)}>
            {next.kind === 'moment' ? (
              momentWords[next.moment]
            ) : (
              <>
                {markedText(stepsLang(), read(next.row.step.item))}{' '}
                <b lang={stepsLang()}>{read(next.row.step.response)}</b>
              </>
            )}
          </li>
        ))}
      </ol>
    </section>
  );
}

const keyOf = (next: Upcoming) => (next.kind === 'moment' ? next.moment : next.row.step.id);

/** The end in use with the wind on it; while taxiing, the pace. */
function Beside({ walk }: { walk: Walk | null }) {
  const { inUse, ranked } = day.wind();
  const isTaxiing = walk?.phase === 'taxi';
  const lines = [
    windWords(),
    ...(inUse === null ? [] : alongAndAcross(inUse)),
    ...(ranked === null || ranked.best?.designator !== inUse?.designator ? [] : firmLines(ranked)),
    ...(isTaxiing ? paceLines() : []),
  ];
  return (
    <section class={styles.beside}>
      <Fit className={styles.middle} of={[endWords(), ...lines].join(' ').replace(/\d/g, '0')}>
        <strong class={styles.end}>{endWords()}</strong>
        {lines.map((line, index) => (
          <span key={index} class={styles.line}>
            {line}
          </span>
        ))}
      </Fit>
    </section>
  );
}
