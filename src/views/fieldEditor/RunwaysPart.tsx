/** Of a field being drawn: its runways. */

import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import { changeField } from '../../board/writing/field';
import { centreOf, type Field, type Runway } from '../../core';
import { Choice, choicesOf } from '../../parts/choice/Choice';
import { EntryField, numberWithin, orUnknown, plainNumber } from '../../parts/field/EntryField';
import { Key } from '../../parts/key/Key';
import { AddRunway } from './AddRunway';
import { EndEntry } from './EndEntry';
import styles from './FieldEditor.module.css';
import { PlaceEntry } from './PlaceEntry';
import { words } from './words';

/** Each runway, and what adds one. */
export function RunwaysPart({ field }: { readonly field: Field }): JSX.Element {
  return (
    <div class={styles.form}>
      {field.runways.map((runway, index) => (
        <RunwayEntry key={index} runway={runway} index={index} />
      ))}
      <AddRunway field={field} />
    </div>
  );
}

function RunwayEntry({ runway, index }: { readonly runway: Runway; readonly index: number }) {
  const [way, setWay] = useState<'centre' | 'ends'>('ends');
  const name = runway.ends.map(({ designator }) => designator).join('/');
  return (
    <section class={styles.group}>
      <h3 class={styles.title}>{words.runway(name)}</h3>
      <Choice
        label={words.howLaid}
        options={choicesOf(words.ways)}
        chosen={way}
        onChoose={setWay}
      />
      {way === 'centre' ? (
        <ByCentre runway={runway} index={index} />
      ) : (
        <ByEnds runway={runway} index={index} />
      )}
      <div class={styles.pair}>
        <EntryField
          name={words.width}
          text={runway.widthM === undefined ? '' : plainNumber(runway.widthM, 1)}
          read={orUnknown(numberWithin(0, 10_000))}
          bad={words.widthBad}
          hint={words.unknown}
          most={6}
          onChange={({ known: widthM }) => changeField({ kind: 'runway', index, set: { widthM } })}
        />
      </div>
      <p class={styles.label}>{words.surface}</p>
      <Choice
        label={words.surface}
        options={choicesOf(words.surfaces)}
        chosen={runway.surface}
        onChoose={(surface) => changeField({ kind: 'runway', index, set: { surface } })}
      />
      <p class={styles.label}>{words.lights}</p>
      <Choice
        label={words.lights}
        options={choicesOf(words.lit)}
        chosen={runway.edgeLights === undefined ? 'unknown' : runway.edgeLights ? 'yes' : 'no'}
        onChoose={(is) => {
          const edgeLights = is === 'unknown' ? null : is === 'yes';
          changeField({ kind: 'runway', index, set: { edgeLights } });
        }}
      />
      <div class={styles.ends}>
        <EndEntry end={runway.ends[0]} index={index} side={0} />
        <EndEntry end={runway.ends[1]} index={index} side={1} />
      </div>
      <Key onPress={() => changeField({ kind: 'runway-removed', index })}>
        {words.removeRunway(name)}
      </Key>
    </section>
  );
}

function ByCentre({ runway, index }: { readonly runway: Runway; readonly index: number }) {
  const line = centreOf(runway);
  if (!line) return <ByEnds runway={runway} index={index} />;
  const set = (given: Partial<typeof line>) =>
    changeField({ kind: 'line', index, line: { ...line, ...given } });
  return (
    <>
      <PlaceEntry name={words.middle} place={line.centre} onChange={(centre) => set({ centre })} />
      <div class={styles.pair}>
        <EntryField
          name={words.bearing}
          text={plainNumber(line.bearingTrueDeg, 2)}
          read={numberWithin(0, 360)}
          bad={words.bearingBad}
          most={8}
          onChange={(bearingTrueDeg) => set({ bearingTrueDeg })}
        />
        <EntryField
          name={words.length}
          text={plainNumber(line.lengthM)}
          read={numberWithin(1, 10_000)}
          bad={words.lengthBad}
          most={8}
          onChange={(lengthM) => set({ lengthM })}
        />
      </div>
    </>
  );
}

function ByEnds({ runway, index }: { readonly runway: Runway; readonly index: number }) {
  const [one, other] = runway.ends;
  return (
    <div class={styles.pair}>
      <PlaceEntry
        name={words.endPlace(one.designator)}
        place={one.at}
        onChange={(at) =>
          changeField({ kind: 'line', index, line: { by: 'ends', ends: [at, other.at] } })
        }
      />
      <PlaceEntry
        name={words.endPlace(other.designator)}
        place={other.at}
        onChange={(at) =>
          changeField({ kind: 'line', index, line: { by: 'ends', ends: [one.at, at] } })
        }
      />
    </div>
  );
}
