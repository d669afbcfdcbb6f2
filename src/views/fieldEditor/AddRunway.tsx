/**
 * Adding a runway: by its two ends, as charts and AIPs give them, or by its middle, bearing and
 * length.
 */

import type { JSX } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { changeField, variationThere } from '../../board/writing/field';
import {
  type Field,
  isPlaced,
  oppositeOf,
  type Place,
  type RunwayBetween,
  type RunwayLine,
  readDesignator,
  runwayBetween,
  runwayNumbers,
  toMagnetic,
  trueDeg,
} from '../../core';
import { Choice, choicesOf } from '../../parts/choice/Choice';
import { EntryField, numberWithin, plainNumber } from '../../parts/field/EntryField';
import { Hint, Wrong } from '../../parts/field/Labelled';
import { direction, wholeNumber } from '../../parts/format';
import { Key } from '../../parts/key/Key';
import styles from './FieldEditor.module.css';
import { PlaceEntry } from './PlaceEntry';
import { words } from './words';

/** The entries, and the key that adds. */
export function AddRunway({ field }: { readonly field: Field }): JSX.Element {
  const [way, setWay] = useState<'ends' | 'centre'>('ends');
  const [added, setAdded] = useState<string | null>(null);
  const add = (line: RunwayLine, designator: string) => {
    changeField({ kind: 'runway-added', runway: { designator, line } });
    setAdded(words.added([designator, oppositeOf(designator)].join('/')));
  };
  const Way = way === 'ends' ? AddByEnds : AddByCentre;
  return (
    <section class={styles.group}>
      <h3 class={styles.title}>{words.addRunway}</h3>
      <Choice
        label={words.howLaid}
        options={choicesOf(words.addWays)}
        chosen={way}
        onChoose={setWay}
      />
      {/* Starting afresh, these aren't the entries that were typed in. */}
      <Way key={field.runways.length} field={field} onAdd={add} />
      <p role="status">{added}</p>
    </section>
  );
}

interface WayProps {
  readonly field: Field;
  readonly onAdd: (line: RunwayLine, designator: string) => void;
}

function AddByEnds({ field, onAdd }: WayProps) {
  const [from, setFrom] = useState<Place | null>(null);
  const [to, setTo] = useState<Place | null>(null);
  const [number, setNumber] = useState<string | null>(null);
  const turn = useTurn(field, from);
  const between = from && to && runwayBetween(from, to, turn);
  const found = typeof between === 'string' ? null : between;
  const designator = number ?? found?.numbers?.[0] ?? null;
  return (
    <>
      <Hint>{words.endsHint}</Hint>
      <Hint>{words.placeWays}</Hint>
      <div class={`${styles.pair} ${styles.adding}`}>
        <PlaceEntry
          name={words.firstEnd}
          place={from}
          onChange={(place, second) => {
            setFrom(place);
            if (second) setTo(second);
          }}
        />
        <PlaceEntry name={words.secondEnd} place={to} onChange={setTo} />
      </div>
      <div role="status">
        {typeof between === 'string' && <Wrong>{words.noRunway[between]}</Wrong>}
        {found && <p class={styles.label}>{proposal(found)}</p>}
      </div>
      <div class={styles.short}>
        <EntryField
          name={words.firstNumber}
          text={designator ?? ''}
          read={readDesignator}
          bad={words.numberBad}
          most={4}
          onChange={setNumber}
        />
      </div>
      <Key
        look="pick"
        disabled={found === null || designator === null}
        onPress={() =>
          from && to && designator && onAdd({ by: 'ends', ends: [from, to] }, designator)
        }
      >
        {words.addRunway}
      </Key>
    </>
  );
}

function proposal({ lengthM, headingTrueDeg, headingMagneticDeg, numbers }: RunwayBetween): string {
  const heading = direction(headingTrueDeg);
  return words.proposal(
    numbers?.join('/') ?? null,
    wholeNumber(lengthM),
    heading,
    headingMagneticDeg === null ? null : direction(headingMagneticDeg),
  );
}

function AddByCentre({ field, onAdd }: WayProps) {
  const [bearingDeg, setBearing] = useState<number | null>(null);
  const [lengthM, setLength] = useState<number | null>(null);
  const [number, setNumber] = useState<string | null>(null);
  const { latDeg, lonDeg } = field.place;
  const centre = { latDeg, lonDeg };
  const turn = useTurn(field, isPlaced(field) ? centre : null);
  const suggested = suggestedBy(bearingDeg, turn);
  const designator = number ?? suggested?.number ?? null;
  const add = () => {
    if (bearingDeg === null || lengthM === null || designator === null) return;
    onAdd({ by: 'centre', centre, bearingTrueDeg: bearingDeg, lengthM }, designator);
  };
  return (
    <>
      {!isPlaced(field) && <Hint>{words.placeFirst}</Hint>}
      <div class={styles.pair}>
        <EntryField
          name={words.bearing}
          text={bearingDeg === null ? '' : plainNumber(bearingDeg, 2)}
          read={numberWithin(0, 360)}
          bad={words.bearingBad}
          most={8}
          onChange={setBearing}
        />
        <EntryField
          name={words.length}
          text={lengthM === null ? '' : plainNumber(lengthM)}
          read={numberWithin(1, 10_000)}
          bad={words.lengthBad}
          most={8}
          onChange={setLength}
        />
        <EntryField
          name={words.number(bearingDeg === null ? '…' : plainNumber(bearingDeg))}
          text={number ?? ''}
          read={readDesignator}
          bad={words.numberBad}
          hint={suggested === null ? '' : words.numberHint(suggested.magnetic, suggested.number)}
          most={4}
          onChange={setNumber}
        />
      </div>
      <Key
        look="pick"
        disabled={
          !isPlaced(field) || bearingDeg === null || lengthM === null || designator === null
        }
        onPress={add}
      >
        {words.addRunway}
      </Key>
    </>
  );
}

/**
 * From true headings there to those that numbers are painted by, on the sortie's day, degrees; null
 * until known.
 */
function useTurn({ numbersFrom }: Field, at: Place | null): number | null {
  const [variation, setVariation] = useState<number | null>(null);
  const { latDeg = null, lonDeg = null } = at ?? {};
  useEffect(() => {
    let isLast = true;
    setVariation(null);
    if (latDeg !== null && lonDeg !== null)
      void variationThere({ latDeg, lonDeg }).then((deg) => isLast && setVariation(deg));
    return () => {
      isLast = false;
    };
  }, [latDeg, lonDeg]);
  return numbersFrom === 'true' ? 0 : variation;
}

/** The number a runway of that bearing would carry; null until known. */
function suggestedBy(bearingDeg: number | null, turn: number | null) {
  if (bearingDeg === null || turn === null) return null;
  const [number = 36] = runwayNumbers(toMagnetic(trueDeg(bearingDeg), turn));
  const magnetic = direction(bearingDeg - turn + 360).replace('°', '');
  return { magnetic, number: String(number).padStart(2, '0') };
}
