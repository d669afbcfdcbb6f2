/** A field as the map has it, before it is kept: its plan, what was found, assumed and missing. */

import type { JSX } from 'preact';
import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import type { KeptField } from '../../board/documents/keptField';
import { keepMapField, type PlanTarget, planTargets } from '../../board/documents/mapField';
import { sheet } from '../../board/places';
import { chooseField } from '../../board/record/choices';
import { draftStrips, type Field, type MapField } from '../../core';
import { Key } from '../../parts/key/Key';
import { Plan } from '../../parts/plan/Plan';
import type { GroundPoint } from '../../parts/plan/projection';
import { Kept } from '../../parts/problem/Kept';
import { length } from '../../parts/units';
import styles from './Map.module.css';
import { Notes } from './Notes';
import { words } from './words';

const NONE: readonly never[] = [];
const never = () => false;
const nothing = () => undefined;

/** The preview, and the keys that keep it. */
export function MapPreview({ found }: { readonly found: MapField }): JSX.Element {
  const { field } = found;
  const [place, setPlace] = useState<GroundPoint | null>(null);
  const plan = useRef<HTMLDivElement>(null);
  const strips = useMemo(() => draftStrips(field), [field]);
  const show = (at: GroundPoint) => {
    // A new object each time, so that a second tap leads back to the place.
    setPlace({ ...at });
    plan.current?.scrollIntoView({ block: 'nearest' });
  };
  const counts = Object.entries(words.counts) as [
    keyof typeof words.counts,
    (n: number) => string,
  ][];
  return (
    <div class={styles.preview}>
      <div class={styles.about}>
        <h3 class={styles.name}>{words.aerodrome(field.code, field.name)}</h3>
        <p>{counts.map(([what, said]) => said(found.found[what])).join(' · ')}</p>
        <Finish field={field} />
      </div>
      <div class={styles.plan} ref={plan}>
        <Plan
          strips={strips}
          nodes={field.taxi.nodes}
          edges={field.taxi.edges}
          isClosed={never}
          using={null}
          route={NONE}
          goneM={0}
          crossings={NONE}
          hotSpots={field.taxi.hotSpots ?? NONE}
          from={null}
          to={null}
          picked={null}
          place={place}
          onPick={nothing}
          closer={0}
          upDeg={null}
          windFromDeg={null}
          words={{ ...words.planWords, label: words.plan(field.name) }}
        />
      </div>
      <div class={styles.lists}>
        <Notes title={words.assumed} hint={words.assumedHint} notes={found.assumed} onShow={show} />
        <Notes title={words.missing} hint={words.missingHint} notes={found.missing} onShow={show} />
        <p class={styles.small}>{words.notForReal}</p>
      </div>
    </div>
  );
}

function Finish({ field }: { readonly field: Field }) {
  const [targets, setTargets] = useState<readonly PlanTarget[]>([]);
  const [kept, setKept] = useState<KeptField | null>(null);
  useEffect(() => {
    let isGone = false;
    void planTargets(field).then((found) => {
      if (!isGone) setTargets(found);
    });
    return () => {
      isGone = true;
    };
  }, [field]);
  const keep = (whole: Field) => void keepMapField(whole).then(setKept);
  return (
    <>
      {kept?.problems !== null && (
        <div class={styles.keys}>
          <Key look={targets.length === 0 ? 'pick' : 'plain'} onPress={() => keep(field)}>
            {words.keep}
          </Key>
          {targets.map(
            ({ hash, code, name, field: whole }) =>
              whole !== null && (
                <Key key={hash} look="pick" onPress={() => keep(whole)}>
                  {words.add(code, name)}
                </Key>
              ),
          )}
        </div>
      )}
      {kept === null &&
        targets.map(({ hash, code, misfit }) => (
          <p key={hash} class={styles.small}>
            {misfit === null
              ? words.addHint(code)
              : misfit.kind === 'runway-missing'
                ? words.missingRunway(code, misfit.runway)
                : words.besideRunway(code, misfit.runway, length(Math.round(misfit.offM)))}
          </p>
        ))}
      <Kept
        outcome={kept}
        words={{ kept: words.kept, refused: words.notKept, use: words.use }}
        onUse={(listed) => {
          chooseField(listed);
          sheet.value = null;
        }}
      />
    </>
  );
}
