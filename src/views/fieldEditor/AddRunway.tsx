/**
 * Adding a runway: bearing, length and number; its middle is the reference point until it is moved.
 */

import type { JSX } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { changeField, variationThere } from '../../board/writing/field';
import { type Field, readDesignator, runwayNumbers, toMagnetic, trueDeg } from '../../core';
import { EntryField, numberWithin, plainNumber } from '../../parts/field/EntryField';
import { direction } from '../../parts/format';
import { Key } from '../../parts/key/Key';
import styles from './FieldEditor.module.css';
import { words } from './words';

/** Default properties of a runway. */
const USUAL = { widthM: 30, surface: 'asphalt', edgeLights: false } as const;

/** The entries, and the key that adds. */
export function AddRunway({ field }: { readonly field: Field }): JSX.Element {
  const [bearingDeg, setBearing] = useState<number | null>(null);
  const [lengthM, setLength] = useState<number | null>(null);
  const [number, setNumber] = useState<string | null>(null);
  const suggested = useSuggested(field, bearingDeg);
  const designator = number ?? suggested?.number ?? null;
  const add = () => {
    if (bearingDeg === null || lengthM === null || designator === null) return;
    const line = {
      by: 'centre' as const,
      centre: field.place,
      bearingTrueDeg: bearingDeg,
      lengthM,
    };
    const { latDeg, lonDeg } = field.place;
    changeField({
      kind: 'runway-added',
      runway: { ...USUAL, designator, line: { ...line, centre: { latDeg, lonDeg } } },
    });
    setBearing(null);
    setLength(null);
    setNumber(null);
  };
  // Starting afresh, these aren't the entries that were typed in.
  return (
    <section class={styles.group} key={field.runways.length}>
      <h3 class={styles.title}>{words.addRunway}</h3>
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
        disabled={bearingDeg === null || lengthM === null || designator === null}
        onPress={add}
      >
        {words.addRunway}
      </Key>
    </section>
  );
}

/** The number a runway of that bearing would carry there on the sortie's day; null until known. */
function useSuggested({ place, numbersFrom }: Field, bearingDeg: number | null) {
  const [variation, setVariation] = useState<number | null>(null);
  const { latDeg, lonDeg } = place;
  useEffect(() => {
    void variationThere({ latDeg, lonDeg }).then(setVariation);
  }, [latDeg, lonDeg]);
  const turn = numbersFrom === 'true' ? 0 : variation;
  if (bearingDeg === null || turn === null) return null;
  const azimuth = toMagnetic(trueDeg(bearingDeg), turn);
  const [number = 36] = runwayNumbers(azimuth);
  const magnetic = direction(bearingDeg - turn + 360).replace('°', '');
  return { magnetic, number: String(number).padStart(2, '0') };
}
