/** Drawing a field from nothing, or correcting one: form, runways, plan, and what is missing. */

import type { JSX } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import type { KeptField } from '../../board/documents/keptField';
import { sheet } from '../../board/places';
import { chooseField } from '../../board/record/choices';
import {
  canRedo,
  canUndo,
  drawnField,
  fieldFile,
  keepField,
  openDraft,
  redo,
  startAnew,
  stays,
  undo,
} from '../../board/writing/field';
import type { DocumentProblem, Field, Hash } from '../../core';
import { saveFile } from '../../device/files';
import { Choice, choicesOf } from '../../parts/choice/Choice';
import { Wrong } from '../../parts/field/Labelled';
import { Key } from '../../parts/key/Key';
import { Kept } from '../../parts/problem/Kept';
import { Sheet } from '../../parts/sheet/Sheet';
import { Checks, lacksOf } from './Checks';
import styles from './FieldEditor.module.css';
import { FieldPart } from './FieldPart';
import { choose, dropWhatIsGone, looks, partShown } from './hand';
import { PlanPart } from './PlanPart';
import { RunwaysPart } from './RunwaysPart';
import { words } from './words';

interface FieldEditorProps {
  /** The field being corrected; null to draw a new one. */
  readonly of: Hash | null;
  readonly onClose: () => void;
}

/** The sheet. */
export function FieldEditor({ of, onClose }: FieldEditorProps): JSX.Element {
  const [opened, setOpened] = useState<'no' | 'yes' | 'failed'>('no');
  useEffect(() => {
    partShown.value = of === null ? 'field' : 'plan';
    choose(null);
    looks.value = 0;
    openDraft(of).then(
      () => setOpened('yes'),
      () => setOpened('failed'),
    );
  }, [of]);
  const field = opened === 'yes' ? drawnField.value : null;
  useEffect(() => {
    if (field !== null) dropWhatIsGone(field);
  }, [field]);
  const title = of === null || field === null ? words.draw : words.mend(field.code);
  return (
    <Sheet title={title} close={words.close} size="page" onClose={onClose}>
      {opened === 'failed' && <p>{words.failed}</p>}
      {opened === 'no' && <p>{words.loading}</p>}
      {field !== null && <Editor field={field} />}
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

function Editor({ field }: { readonly field: Field }) {
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
        <div class={styles.choice}>
          <Key disabled={!canUndo.value} onPress={undo}>
            {words.undo}
          </Key>
          <Key disabled={!canRedo.value} onPress={redo}>
            {words.redo}
          </Key>
        </div>
      </div>
      {!stays.value && <Wrong>{words.forgets}</Wrong>}
      {partShown.value === 'field' && <FieldPart field={field} />}
      {partShown.value === 'runways' && <RunwaysPart field={field} />}
      {partShown.value === 'plan' && <PlanPart field={field} />}
      <Checks field={field} />
      <Finish field={field} />
    </div>
  );
}

function Finish({ field }: { readonly field: Field }) {
  const [kept, setKept] = useState<KeptField | null>(null);
  const isDocument = lacksOf(field).length === 0;
  // After further drawing it is no longer the field that was saved.
  useEffect(() => setKept(null), [field]);
  const refuse = (problems: readonly DocumentProblem[]) => setKept({ listed: null, problems });
  const save = async () => {
    const file = await fieldFile().catch(() => [{ at: '', what: words.failed }]);
    if (file instanceof File) saveFile(file);
    else refuse(file);
  };
  return (
    <div class={styles.finish}>
      <div class={styles.choice}>
        <Key
          look={isDocument ? 'pick' : 'plain'}
          disabled={!isDocument}
          onPress={() => void keepField().then(setKept)}
        >
          {words.keep}
        </Key>
        <Key disabled={!isDocument} onPress={() => void save()}>
          {words.save}
        </Key>
        <Key onPress={startAnew}>{words.anew}</Key>
      </div>
      <Kept
        outcome={kept}
        words={words}
        onUse={(listed) => {
          chooseField(listed);
          sheet.value = null;
        }}
      />
    </div>
  );
}
