/** Drawing a field from nothing, or correcting one: form, runways, plan, and what is missing. */

import type { JSX } from 'preact';
import { useEffect, useLayoutEffect, useRef, useState } from 'preact/hooks';
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
  stepped,
  undo,
} from '../../board/writing/field';
import {
  type DocumentProblem,
  type Field,
  type FieldChange,
  fieldChange,
  type Hash,
} from '../../core';
import { saveFile } from '../../device/files';
import { Choice, choicesOf } from '../../parts/choice/Choice';
import { Wrong } from '../../parts/field/Labelled';
import { Key } from '../../parts/key/Key';
import { Kept } from '../../parts/problem/Kept';
import { Sheet } from '../../parts/sheet/Sheet';
import { Checks, lacksOf } from './Checks';
import styles from './FieldEditor.module.css';
import { FieldPart } from './FieldPart';
import { choose, dropWhatIsGone, looks, marks, type PartName, partShown } from './hand';
import { PlanPart } from './PlanPart';
import { RunwaysPart } from './RunwaysPart';
import { takeAway } from './trace';
import { changeWords, words } from './words';

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
  // Gone with the editor, and never kept.
  useEffect(() => takeAway, []);
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
  const step = stepped.value;
  const change = step === null ? null : fieldChange(step.edit, step.without, step.made);
  useEffect(() => {
    if (change === null) {
      marks.value = null;
      return;
    }
    partShown.value = partOf(change, partShown.value);
    marks.value = change.spots.length + change.lines.length > 0 ? change : null;
  }, [step]);
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
        <p class={styles.stepped} role="status">
          {step && change && words.stepped[step.way](changeWords(change))}
        </p>
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

/** The part that shows a change: of a runway the form, or the plan if that is what one looks at. */
function partOf({ what }: FieldChange, now: PartName): PartName {
  switch (what.kind) {
    case 'entry':
    case 'radio':
      return 'field';
    case 'end':
      return 'runways';
    case 'runway':
      return now === 'plan' ? 'plan' : 'runways';
    case 'all':
      return now;
    default:
      return 'plan';
  }
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
  const shown = useRef<HTMLDivElement>(null);
  // It comes above the key that was pressed, which stays where it is.
  useLayoutEffect(() => {
    if (kept !== null) shown.current?.scrollIntoView({ block: 'end' });
  }, [kept]);
  return (
    <div class={styles.finish} ref={shown}>
      <Kept
        outcome={kept}
        words={words}
        onUse={(listed) => {
          chooseField(listed);
          sheet.value = null;
        }}
      />
      <div class={styles.choice}>
        <Key
          look={isDocument && kept?.listed == null ? 'pick' : 'plain'}
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
    </div>
  );
}
