/** Write: one's own version of a procedure, made from the original, which stays. */

import { effect } from '@preact/signals';
import type { JSX } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import type { OwnVersion } from '../../board/documents/ownDocuments';
import {
  canRedo,
  canUndo,
  faults,
  goOnFromOther,
  isUnkept,
  type Kept,
  keepOwn,
  openWriting,
  overtaken,
  settle,
  stage,
  takenIn,
} from '../../board/writing/procedure';
import { type Hash, listIn, type PlacedFault } from '../../core';
import { Choice } from '../../parts/choice/Choice';
import { Hint, Wrong } from '../../parts/field/Labelled';
import { Key } from '../../parts/key/Key';
import { Sheet } from '../../parts/sheet/Sheet';
import { Differences } from './Differences';
import styles from './Editor.module.css';
import { Follow, News } from './Follow';
import { ListForm } from './ListForm';
import { StepForm } from './StepForm';
import { StepList } from './StepList';
import {
  closeForm,
  closeGone,
  editedList,
  editedStep,
  makeAgain,
  open,
  openListHead,
  spokenOfEdit,
  takeBack,
} from './state';
import { Versions } from './Versions';
import { words } from './words';

type View = keyof typeof words.views | 'follow';

interface EditorProps {
  /** The procedure, or one of its versions. */
  readonly hash: Hash;
  readonly onClose: () => void;
}

/** The sheet for writing a procedure. */
export function Editor({ hash, onClose }: EditorProps): JSX.Element {
  useEffect(() => {
    closeForm();
    spokenOfEdit.value = '';
    void openWriting(hash, words.ownName);
    return settle;
  }, [hash]);
  return (
    <Sheet title={words.title} close={words.close} size="page" onClose={onClose}>
      {stage.value === 'failed' && <p>{words.failed}</p>}
      {stage.value === 'opening' && <p>{words.loading}</p>}
      {stage.value === 'open' && <Open />}
    </Sheet>
  );
}

function Open() {
  const [view, setView] = useState<View>('steps');
  useEffect(() => {
    addEventListener('keydown', undoKeys);
    return () => removeEventListener('keydown', undoKeys);
  }, []);
  return (
    <div class={`${styles.editor} ${overtaken.value === null ? '' : styles.overtaken}`}>
      <Bar />
      <Choice
        label={words.viewsLabel}
        options={(['steps', 'mine', 'versions'] as const).map((value) => ({
          value,
          name: words.views[value],
        }))}
        chosen={view === 'follow' ? null : view}
        onChoose={setView}
      />
      {view !== 'follow' && <News onLook={() => setView('follow')} />}
      {view === 'steps' && <Steps />}
      {view === 'mine' && <Differences />}
      {view === 'versions' && <Versions />}
      {view === 'follow' && <Follow onDone={() => setView('steps')} />}
    </div>
  );
}

/**
 * The list, and the open step or abnormal list: beside it if there is room, otherwise in its place.
 */
function Steps() {
  const id = editedStep.value;
  const list = editedList.value;
  const isOpen = id !== null || list !== null;
  // Another version may be shown by now, without what was open.
  useEffect(() => effect(closeGone), []);
  return (
    <div class={styles.pair}>
      <div class={`${styles.list} ${isOpen ? styles.away : ''}`}>
        <StepList />
      </div>
      <div class={`${styles.form} ${isOpen ? '' : styles.away}`}>
        {!isOpen && <Hint>{words.chooseStep}</Hint>}
        {id !== null && <StepForm key={id} id={id} />}
        {list !== null && <ListForm key={list} id={list} />}
      </div>
    </div>
  );
}

/** Undo and redo as everywhere, even while a text has the focus: its letters are changes too. */
function undoKeys(event: KeyboardEvent): void {
  if (!(event.ctrlKey || event.metaKey) || event.altKey) return;
  const key = event.key.toLowerCase();
  if (key !== 'z' && key !== 'y') return;
  event.preventDefault();
  if (key === 'y' || event.shiftKey) makeAgain();
  else takeBack();
}

/** Undo, redo and save, and what keeps the edit from being saved. */
function Bar() {
  const [kept, setKept] = useState<Kept | null>(null);
  const first = faults.value[0];
  const other = overtaken.value;
  const isRight = isUnkept.value && first === undefined;
  const canKeep = isRight && other === null;
  const keep = (over: OwnVersion | null = null) =>
    void keepOwn(over).then((result) => {
      setKept(result);
      spokenOfEdit.value = '';
    });
  return (
    <div class={styles.bar}>
      <div class={styles.keys}>
        <Key disabled={!canUndo.value} onPress={takeBack}>
          {words.undo}
        </Key>
        <Key disabled={!canRedo.value} onPress={makeAgain}>
          {words.redo}
        </Key>
        <Key
          look={canKeep ? 'pick' : 'plain'}
          className={styles.keep}
          disabled={!canKeep}
          onPress={() => keep()}
        >
          {words.keep}
        </Key>
      </div>
      <div class={styles.state} role="status">
        {spokenOfEdit.value !== '' && <p>{spokenOfEdit.value}</p>}
        {other !== null && <p class={styles.count}>{words.overtaken(other.edition.number)}</p>}
        {spokenOfEdit.value === '' && first === undefined && other === null && (
          <Outcome kept={kept} />
        )}
        {first !== undefined && <Wrong>{words.faulty(faults.value.length)}</Wrong>}
      </div>
      {other !== null && (
        <div class={styles.keys}>
          <Key
            onPress={() => {
              goOnFromOther();
              spokenOfEdit.value = words.wentOn(other.edition.number);
            }}
          >
            {words.goOnFrom(other.edition.number)}
          </Key>
          <Key disabled={!isRight} onPress={() => keep(other)}>
            {words.keepOver(other.edition.number + 1)}
          </Key>
        </div>
      )}
      {first !== undefined && <ShowFault fault={first} />}
    </div>
  );
}

/** Opens the step or list with a fault, unless it is open. */
function ShowFault({ fault: { step, part } }: { fault: PlacedFault }) {
  const list = step === null && part !== null ? listIn(part) : null;
  if (step === editedStep.value && list === editedList.value) return null;
  if (step !== null) return <Key onPress={() => open(step)}>{words.showFault}</Key>;
  return list === null ? null : <Key onPress={() => openListHead(list)}>{words.showFault}</Key>;
}

function Outcome({ kept }: { kept: Kept | null }) {
  if (takenIn.value !== null) return <p>{words.takenIn(takenIn.value)}</p>;
  if (isUnkept.value && kept?.kind !== 'refused' && kept?.kind !== 'failed')
    return <p>{words.unkept}</p>;
  switch (kept?.kind) {
    case 'kept':
      return <p>{`${words.keptAs(kept.number)} ${words.flown[kept.flown]}`}</p>;
    case 'refused':
      return (
        <Wrong>
          {words.refused} {kept.problems.map(({ at, what }) => `${at}: ${what}`).join('; ')}
        </Wrong>
      );
    case 'failed':
      return <Wrong>{words.keepFailed}</Wrong>;
    default:
      return <p>{words.nothingToKeep}</p>;
  }
}
