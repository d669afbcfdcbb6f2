/** Making an aircraft from the handbook, or editing one: figures, the table, the load sheet. */

import type { JSX } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { sheet } from '../../board/places';
import { chooseAircraft } from '../../board/record/choices';
import {
  canRedo,
  canUndo,
  fitState,
  type KeptAircraft,
  keepAircraft,
  leaveAircraft,
  openAircraft,
  redo,
  startAnew,
  stays,
  typedAircraft,
  undo,
} from '../../board/writing/aircraft';
import type { Aircraft, Hash } from '../../core';
import { Choice, choicesOf } from '../../parts/choice/Choice';
import { Wrong } from '../../parts/field/Labelled';
import { Key } from '../../parts/key/Key';
import { Keys } from '../../parts/key/Keys';
import { Problems } from '../../parts/problem/Problems';
import { Sheet } from '../../parts/sheet/Sheet';
import { starterWords } from '../../parts/starter/starterWords';
import { starterName } from '../../parts/starter/words';
import styles from './AircraftEditor.module.css';
import { Checks, lacksOf } from './Checks';
import { FiguresPart } from './FiguresPart';
import { LoadPart } from './LoadPart';
import { groupShown, partShown } from './shown';
import { TablePart } from './TablePart';
import { words } from './words';

interface AircraftEditorProps {
  /** The aircraft being edited; null to make a new one. */
  readonly of: Hash | null;
  readonly onClose: () => void;
}

/** The sheet. */
export function AircraftEditor({ of, onClose }: AircraftEditorProps): JSX.Element {
  const [opened, setOpened] = useState<'no' | 'yes' | 'failed'>('no');
  useEffect(() => {
    partShown.value = 'figures';
    groupShown.value = null;
    openAircraft(of, words.stopAtFirst).then(
      () => setOpened('yes'),
      () => setOpened('failed'),
    );
    return leaveAircraft;
  }, [of]);
  const aircraft = opened === 'yes' ? typedAircraft.value : null;
  const title = of === null || aircraft === null ? words.make : words.edit(aircraft.name);
  return (
    <Sheet title={title} close={words.close} size="page" onClose={onClose}>
      {opened === 'failed' && <p>{words.failed}</p>}
      {opened === 'no' && <p>{words.loading}</p>}
      {aircraft !== null && <Editor aircraft={aircraft} />}
    </Sheet>
  );
}

/** Undo and redo by their usual keys; in an input the browser's own undo comes first. */
function onKeyDown(event: KeyboardEvent): void {
  const { target } = event;
  const isTyping = target instanceof HTMLInputElement || target instanceof HTMLTextAreaElement;
  if (isTyping || !(event.ctrlKey || event.metaKey)) return;
  const key = event.key.toLowerCase();
  if (key === 'z' && !event.shiftKey) undo();
  else if (key === 'y' || key === 'z') redo();
  else return;
  event.preventDefault();
}

interface EditorProps {
  readonly aircraft: Aircraft;
}

function Editor({ aircraft }: EditorProps) {
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: the keys it listens for are pressed within it; each has a key on the screen.
    <div class={styles.editor} onKeyDown={onKeyDown}>
      <div class={styles.top}>
        <Choice
          label={words.whichPart}
          options={choicesOf(words.parts)}
          chosen={partShown.value}
          onChoose={(part) => {
            partShown.value = part;
          }}
        />
        <Keys>
          <Key disabled={!canUndo.value} onPress={undo}>
            {words.undo}
          </Key>
          <Key disabled={!canRedo.value} onPress={redo}>
            {words.redo}
          </Key>
        </Keys>
      </div>
      {!stays.value && <Wrong>{words.forgets}</Wrong>}
      {partShown.value === 'figures' && <FiguresPart aircraft={aircraft} />}
      {partShown.value === 'table' && <TablePart aircraft={aircraft} />}
      {partShown.value === 'load' && <LoadPart aircraft={aircraft} />}
      <Finish aircraft={aircraft} />
    </div>
  );
}

function Finish({ aircraft }: EditorProps) {
  const [kept, setKept] = useState<KeptAircraft | null>(null);
  // After further typing it is no longer the aircraft that was saved.
  useEffect(() => setKept(null), [aircraft]);
  const isFitting = fitState.value.kind === 'running';
  const isReady = lacksOf(aircraft).length === 0 && !isFitting;
  return (
    <div class={styles.finish}>
      <Checks />
      {isFitting && <p role="status">{words.fitting}</p>}
      <Keys>
        <Key
          look={isReady ? 'pick' : 'plain'}
          disabled={!isReady}
          onPress={() => void keepAircraft(starterWords(), starterName).then(setKept)}
        >
          {words.keep}
        </Key>
        <Key onPress={() => startAnew(words.stopAtFirst)}>{words.anew}</Key>
      </Keys>
      <div role="status">
        {kept?.problems === null && (
          <p>
            {kept.isWritten
              ? words.keptWithProcedure(kept.listed.name)
              : words.kept(kept.listed.name)}
          </p>
        )}
        {kept?.problems && (
          <>
            <Wrong>{words.refused}</Wrong>
            <Problems of={kept.problems} />
          </>
        )}
      </div>
      {kept?.problems === null && (
        <Keys>
          <Key
            look="pick"
            onPress={() => {
              chooseAircraft(kept.listed);
              sheet.value = null;
            }}
          >
            {words.use(kept.listed.name)}
          </Key>
        </Keys>
      )}
    </div>
  );
}
