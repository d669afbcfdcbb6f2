/** Load: what is in the aircraft, what that weighs, and where its centre of gravity lies. */

import type { ComponentChildren, JSX } from 'preact';
import { useState } from 'preact/hooks';
import { day, documents } from '../../board/board';
import { loadAs, loadFuel, loadStation } from '../../board/flight/load';
import { undoable, undoChange } from '../../board/record/adding';
import { setInputs } from '../../board/record/choices';
import {
  type Aircraft,
  isSameLoad,
  type LoadSheet as Loaded,
  type Loading,
  loadSheet,
  usualLoad,
} from '../../core';
import { Choice } from '../../parts/choice/Choice';
import { QuantityField } from '../../parts/field/QuantityField';
import { Key } from '../../parts/key/Key';
import { Sheet } from '../../parts/sheet/Sheet';
import { EnvelopePlot } from './EnvelopePlot';
import { Fuel, MOST_KG } from './Fuel';
import { Items } from './Items';
import styles from './LoadSheet.module.css';
import { Masses } from './Masses';
import { StationEntry } from './StationEntry';
import { exceededText, named } from './told';
import { words } from './words';

/** The sheet behind the mass. */
export function LoadSheet({ onClose }: { onClose: () => void }): JSX.Element {
  const { aircraft } = documents.value;
  const title = words.title(aircraft?.name ?? '');
  return (
    <Sheet title={title} close={words.close} size="page" onClose={onClose}>
      {aircraft === null ? (
        <p>{words.none}</p>
      ) : aircraft.load === undefined ? (
        <>
          <Masses sheet={loadSheet(aircraft, null)} masses={aircraft.masses} />
          <p class={styles.hint}>{words.noLoading}</p>
        </>
      ) : (
        // Another aircraft starts with inputs of its own.
        <Loader key={day.inputs().aircraft} aircraft={aircraft} loading={aircraft.load} />
      )}
    </Sheet>
  );
}

function Loader({ aircraft, loading }: { aircraft: Aircraft; loading: Loading }) {
  // While the slider moves, the sheet follows it; the value is stored on release.
  const [movedTo, setMovedTo] = useState<number | null>(null);
  // A preset also replaces an unusable value left in an input.
  const [fresh, setFresh] = useState(0);
  const stored = day.inputs().load ?? usualLoad(loading);
  const load = movedTo === null ? stored : { ...stored, fuelKg: movedTo };
  const sheet = loadSheet(aircraft, load);
  const preset = loading.presets.find((one) => isSameLoad(loading, one, load));
  const stationParts = loading.stations.map((station) => (
    <StationEntry
      key={`${station.id} ${fresh}`}
      station={station}
      load={load}
      exceeded={sheet.exceeded.filter((one) => 'station' in one && one.station === station.id)}
      onChange={(kg) => loadStation(station.id, kg)}
    />
  ));
  return (
    <>
      <div class={styles.result}>
        <Masses sheet={sheet} masses={aircraft.masses} />
        <Verdict sheet={sheet} loading={loading} />
      </div>
      <div class={styles.columns}>
        <div class={styles.column}>
          <LoadPart title={words.presets}>
            <Choice
              label={words.presets}
              options={loading.presets.map(({ name }) => ({ value: name, name: named(name) }))}
              chosen={preset?.name ?? null}
              onChoose={(name) => {
                const taken = loading.presets.find((one) => one.name === name);
                setFresh((times) => times + 1);
                setMovedTo(null);
                if (taken) loadAs({ fuelKg: taken.fuelKg, stations: taken.stations });
              }}
            />
          </LoadPart>
          <LoadPart title={words.fuel}>
            <Fuel
              key={fresh}
              fuel={loading.fuel}
              fuelKg={load.fuelKg}
              exceeded={sheet.exceeded}
              onMove={setMovedTo}
              onChange={(fuelKg) => {
                setMovedTo(null);
                loadFuel(fuelKg);
              }}
            />
          </LoadPart>
          <LoadPart title={words.bingo}>
            <QuantityField
              unit="kg"
              name={words.bingoIn}
              value={day.inputs().bingoKg}
              least={0}
              most={MOST_KG}
              bad={words.massBad}
              hint={words.notSettled}
              onChange={(bingoKg) => setInputs({ bingoKg })}
            />
            <p class={styles.hint}>{words.bingoHint}</p>
          </LoadPart>
          {stationParts}
        </div>
        <div class={styles.column}>
          <LoadPart title={words.envelope}>
            <EnvelopePlot sheet={sheet} envelope={loading.envelope ?? null} />
          </LoadPart>
          <LoadPart title={words.sheet}>
            <Items aircraft={aircraft} loading={loading} load={load} sheet={sheet} />
          </LoadPart>
        </div>
      </div>
    </>
  );
}

export function LoadPart({ title, children }: { title: string; children: ComponentChildren }) {
  return (
    <section class={styles.part}>
      <h3 class={styles.title}>{title}</h3>
      {children}
    </section>
  );
}

/**
 * Whether the load is within the limits given, in words, and the key that undoes the last change.
 */
function Verdict({ sheet, loading }: { sheet: Loaded; loading: Loading }) {
  const within = loading.envelope === undefined ? words.within : words.withinEnvelope;
  return (
    <div class={styles.verdict}>
      <div role="status">
        {sheet.exceeded.length === 0 ? (
          <p>{within}</p>
        ) : (
          sheet.exceeded.map((exceeded) => {
            const { text, drawn } = exceededText(exceeded, loading.stations);
            return (
              <p key={text} class={styles.bad}>
                {drawn}
              </p>
            );
          })
        )}
      </div>
      <Key disabled={undoable.value?.what !== 'load'} onPress={undoChange}>
        {words.undo}
      </Key>
    </div>
  );
}
