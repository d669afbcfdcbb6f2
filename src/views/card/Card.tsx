/** The Big card: one thing fills the screen, and the screen is its key. */

import type { JSX } from 'preact';
import { useEffect } from 'preact/hooks';
import { sortie } from '../../board/board';
import { openPlace, place } from '../../board/places';
import { closeCard, sayAgain } from '../../board/steps/card';
import { comeBackToSteps, leaveSteps, stepsShown } from '../../board/steps/leavingSteps';
import { offered } from '../../board/steps/stepping';
import { underWay } from '../../core';
import { Fit } from '../../parts/fit/Fit';
import { Key } from '../../parts/key/Key';
import { words as underWayWords } from '../../parts/underWayWords';
import styles from './Card.module.css';
import { CardKey } from './CardKey';
import { CardVerdict } from './CardVerdict';
import type { Face, SmallKey } from './face';
import { Head } from './Head';
import { RollCard } from './Roll';
import { noFace, stepFace, undoLast } from './stepFace';
import { taxiFace } from './taxiFace';
import { windFace } from './windFace';
import { words } from './words';

/**
 * The card, over whichever place is open: Taxi and Wind have faces of their own, all others show
 * the steps.
 */
export function Card(): JSX.Element {
  useEffect(() => {
    const leave = (event: KeyboardEvent) => {
      if (event.key === 'Escape') closeCard();
    };
    addEventListener('keydown', leave);
    return () => removeEventListener('keydown', leave);
  }, []);
  const inSteps = place.value !== 'taxi' && place.value !== 'wind';
  const rolling = inSteps && offered.value?.rolling === true;
  return (
    <main class={styles.card}>
      <h1 class="spoken">{words.card}</h1>
      {inSteps && <StepsShown />}
      {rolling ? <RollCard /> : <Shown face={faceOf()} />}
      {rolling && <SmallKeys keys={[{ name: words.back, onPress: undoLast() }]} />}
    </main>
  );
}

/** The steps are in front of the pilot, as in their own place. */
function StepsShown() {
  useEffect(() => {
    comeBackToSteps();
    return leaveSteps;
  }, []);
  return null;
}

function faceOf(): Face {
  if (place.value === 'taxi') return taxiFace();
  if (place.value === 'wind') return windFace();
  return stepFace() ?? noFace();
}

function Shown({ face }: { face: Face }) {
  const again = sayAgain.value;
  const [next, held] = face.foot;
  return (
    <>
      <p class="spoken" role="status">
        {face.spoken}
      </p>
      <CardKey
        step={face.name}
        critical={face.critical}
        label={face.label}
        held={face.held}
        does={{ ...face.does, pinch: closeCard, ...(again && { two: again }) }}
      >
        <Head cells={face.head} share={face.share} />
        <CardVerdict />
        <Fit silent className={styles.middle} of={face.text}>
          {face.drawn}
        </Fit>
        <span class={styles.foot}>
          <span>{next}</span>
          <span>{held}</span>
        </span>
        <span class={styles.hint}>{face.hint}</span>
      </CardKey>
      <SmallKeys
        keys={[
          ...toWhatIsUnderWay(),
          ...face.keys,
          ...(again === null ? [] : [{ name: words.again, onPress: again }]),
        ]}
      />
    </>
  );
}

/** Over Wind and Taxi, the way to what is under way in the steps. */
function toWhatIsUnderWay(): readonly SmallKey[] {
  const now = underWay(sortie.value);
  return now === null || stepsShown.value
    ? []
    : [{ name: underWayWords.opens[now.what], onPress: () => openPlace('steps') }];
}

/** Keys for what the gestures do; and the way out. */
function SmallKeys({ keys }: { keys: readonly SmallKey[] }) {
  return (
    <div class={styles.keys}>
      {keys.map(({ name, onPress }) => (
        <Key key={name} disabled={onPress === undefined} onPress={() => onPress?.()}>
          {name}
        </Key>
      ))}
      <Key className={styles.close} onPress={closeCard}>
        {words.close}
      </Key>
    </div>
  );
}
