/**
 * Steps: what was just done, the one step that is due, and what follows; on the roll, the ladder.
 */

import type { JSX } from 'preact';
import { useEffect } from 'preact/hooks';
import { day, sortie } from '../../board/board';
import { openSheet } from '../../board/places';
import { comeBackToSteps, leaveSteps } from '../../board/steps/leavingSteps';
import { offered } from '../../board/steps/stepping';
import { isFlownWithout, unproceduredAircraft } from '../../board/writing/firstProcedure';
import type { Offers, Walk } from '../../core';
import { Key } from '../../parts/key/Key';
import { ClimbRungs } from './ClimbRungs';
import { Due } from './Due';
import { GoOutside } from './GoOutside';
import { LadderView } from './Ladder';
import { ListHead } from './ListHead';
import { ListEnd, Release, SortieEnd, Touchdown } from './Moments';
import { PhaseTabs } from './PhaseTabs';
import { Resume } from './Resume';
import styles from './Steps.module.css';
import { words } from './words';

/** The place Steps. */
export function Steps(): JSX.Element {
  const brief = day.steps();
  useEffect(() => {
    comeBackToSteps();
    return leaveSteps;
  }, []);
  const now = offered.value;
  if (brief === null || now === null) return <NoProcedure />;
  if (now.rolling) return <LadderView />;
  const walk = brief.abnormal?.walk ?? brief.walk;
  const climbing = brief.abnormal === null && walk.phase === 'climb';
  return (
    <div class={`${styles.steps} ${climbing ? styles.climbing : ''}`}>
      {brief.abnormal === null ? (
        <PhaseTabs walk={brief.walk} />
      ) : (
        <ListHead abnormal={brief.abnormal} />
      )}
      {climbing && <ClimbRungs />}
      <Offered now={now} walk={walk} inList={brief.abnormal !== null} />
    </div>
  );
}

function Offered({ now, walk, inList }: { now: Offers; walk: Walk; inList: boolean }) {
  const { main } = now;
  switch (main.what) {
    case 'resume':
      return <Resume walk={walk} left={main.left} />;
    case 'tick':
    case 'supply':
      return <Due walk={walk} main={main} inList={inList} />;
    case 'stamp':
      return main.moment === 'landed' ? <Touchdown now={now} /> : <Release main={main} />;
    case 'go-outside':
      return <GoOutside main={main} />;
    case 'close-list':
      return <ListEnd main={main} nextList={now.nextList} />;
    case 'end-sortie':
      return <SortieEnd now={now} />;
  }
}

function NoProcedure() {
  const without = unproceduredAircraft.value;
  if (without !== null) {
    return (
      <div class={styles.none}>
        <p>{(isFlownWithout.value ? words.flownWithout : words.noProcedure)(without.name)}</p>
        <Key
          look={isFlownWithout.value ? 'plain' : 'pick'}
          moving
          onPress={() => openSheet({ kind: 'procedure', over: null })}
        >
          {isFlownWithout.value ? words.writeOrCopy : words.writeCopyOrWithout}
        </Key>
      </div>
    );
  }
  return (
    <div class={styles.none}>
      <p>{sortie.value.inputs.aircraft === null ? words.noAircraft : words.loading}</p>
      <Key look="pick" moving onPress={() => openSheet({ kind: 'sortie' })}>
        {words.openSortie}
      </Key>
    </div>
  );
}
