/** Steps: what was just done, the one step that is due, and what follows; on the roll, the ladder. */

import type { JSX } from 'preact';
import { useEffect } from 'preact/hooks';
import { sortie } from '../../board/board';
import { steps } from '../../board/flight/flight';
import { openSheet } from '../../board/places';
import { comeBackToSteps, leaveSteps } from '../../board/steps/leavingSteps';
import { Key } from '../../parts/key/Key';
import { ClimbRungs } from './ClimbRungs';
import { Due } from './Due';
import { LadderView } from './Ladder';
import { ListHead } from './ListHead';
import { ListEnd, Release, SortieEnd, Touchdown } from './Moments';
import { PhaseTabs } from './PhaseTabs';
import { Resume } from './Resume';
import styles from './Steps.module.css';
import { words } from './words';

/** The place Steps. */
export function Steps(): JSX.Element {
  const brief = steps.value;
  useEffect(() => {
    comeBackToSteps();
    return leaveSteps;
  }, []);
  if (brief === null) return <NoProcedure />;
  const walk = brief.abnormal?.walk ?? brief.walk;
  const { position } = walk;
  const rolling = position.kind === 'moment' && position.moment === 'airborne';
  if (rolling) return <LadderView />;
  const climbing = brief.abnormal === null && walk.phase === 'climb';
  return (
    <div class={`${styles.steps} ${climbing ? styles.climbing : ''}`}>
      {brief.abnormal === null ? (
        <PhaseTabs walk={brief.walk} />
      ) : (
        <ListHead abnormal={brief.abnormal} />
      )}
      {climbing && <ClimbRungs />}
      <Resume walk={walk}>
        {position.kind === 'step' && (
          <Due
            walk={walk}
            row={position.row}
            barrier={position.barrier}
            inList={brief.abnormal !== null}
          />
        )}
        {position.kind === 'moment' &&
          (position.moment === 'landed' ? <Touchdown /> : <Release tied={position.tied} />)}
        {position.kind === 'list-end' && brief.abnormal && <ListEnd list={brief.abnormal.list} />}
        {position.kind === 'end' && <SortieEnd />}
      </Resume>
    </div>
  );
}

function NoProcedure() {
  return (
    <div class={styles.none}>
      <p>{sortie.value.inputs.aircraft === null ? words.noAircraft : words.loading}</p>
      <Key look="pick" moving onPress={() => openSheet({ kind: 'sortie' })}>
        {words.openSortie}
      </Key>
    </div>
  );
}
