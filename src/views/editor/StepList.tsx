/** All steps of the procedure, part by part: to open, move and add. */

import { computed } from '@preact/signals';
import type { JSX } from 'preact';
import { useLayoutEffect, useMemo, useRef } from 'preact/hooks';
import { listedAircraft } from '../../board/documents/documents';
import { edit, faults, settle, written, writtenAtRest } from '../../board/writing/procedure';
import {
  type AbnormalList,
  listIn,
  listPart,
  MOST_LISTS,
  type PartId,
  type Procedure,
  partsOf,
  type Step,
  type StepId,
} from '../../core';
import { inputClass, Labelled, wrongClass } from '../../parts/field/Labelled';
import { Pick } from '../../parts/field/Pick';
import { lasting } from '../../parts/format';
import { Key } from '../../parts/key/Key';
import { Keys } from '../../parts/key/Keys';
import { filledPieces } from '../../parts/live';
import { marked, seenAndSaid, type Worded, worded } from '../../parts/marked';
import { conditionSaid } from '../../parts/stepText';
import { beginDrag, dragged } from './drag';
import styles from './Editor.module.css';
import { aboutList, liveNow, partLang, partName, textNow, withOptions, writtenLang } from './said';
import {
  addList,
  addStep,
  editedList,
  editedStep,
  moveBy,
  open,
  openListHead,
  returnTo,
} from './state';
import { words } from './words';

/**
 * The list. A part is redrawn only when it changes: a key press in one step costs no other part.
 */
export function StepList(): JSX.Element {
  const root = useRef<HTMLDivElement>(null);
  const procedure = writtenAtRest.value;
  const back = returnTo.value;
  // Together with the list: a key pressed at once must find the moved row.
  useLayoutEffect(() => {
    if (back === null) return;
    returnTo.value = null;
    const named = back.to === 'list' || back.to === 'list-sight' ? 'data-list' : 'data-step';
    const row = root.current?.querySelector(`[${named}="${back.id}"]`);
    const target = row?.querySelector<HTMLElement>(`[data-at="${back.to}"]`);
    target?.focus({ preventScroll: true });
    row?.scrollIntoView({ block: 'nearest' });
  }, [back]);
  return (
    <div ref={root}>
      <Name />
      <For />
      {procedure !== null &&
        partsOf(procedure).map(({ part, steps }) => (
          <Part
            key={part}
            part={part}
            steps={steps}
            list={procedure.lists.find(({ id }) => id === listIn(part))}
            options={procedure.options}
          />
        ))}
      {procedure !== null && procedure.lists.length < MOST_LISTS && (
        <Keys>
          <Key onPress={addList}>{words.addList}</Key>
        </Keys>
      )}
    </div>
  );
}

/** Unaffected by the letters of a step. */
const ownName = computed(() => written.value?.name ?? '');

/** The procedure's name. */
function Name() {
  const fault = faults.value.find(({ part }) => part === null);
  return (
    <Labelled name={words.name} bad={fault !== undefined && words.fault(fault.code)}>
      <input
        class={inputClass}
        maxLength={80}
        lang={writtenLang()}
        value={ownName.value}
        onInput={(event) => edit({ kind: 'rename', name: event.currentTarget.value }, true)}
        onBlur={settle}
      />
    </Labelled>
  );
}

/** Unaffected by the letters of a step. */
const ownFor = computed(() => written.value?.aircraft ?? '');

/** The aircraft it is for. One that isn't here stays named by its code. */
function For() {
  const here = listedAircraft.value.map(({ code, name }) => ({ value: code, name }));
  const isHere = here.some(({ value }) => value === ownFor.value);
  return (
    <Pick
      name={words.aircraft}
      options={isHere ? here : [{ value: ownFor.value, name: ownFor.value }, ...here]}
      chosen={ownFor.value}
      onChoose={(aircraft) => edit({ kind: 'for', aircraft })}
    />
  );
}

interface PartProps {
  readonly part: PartId;
  readonly steps: readonly Step[];
  /** Undefined for a phase. */
  readonly list: AbnormalList | undefined;
  readonly options: Procedure['options'];
}

function Part({ part, steps, list, options }: PartProps) {
  return useMemo(
    () => (
      <section class={styles.part}>
        <h3 class={styles.partName}>
          {marked(partLang(part), (name) => words.part(name, steps.length), partName(part))}
        </h3>
        {list !== undefined && <ListHead list={list} />}
        <ol data-part={part} class={styles.rows}>
          {steps.map((step, index) => (
            <Slot key={step.id} step={step} part={part} index={index} options={options} />
          ))}
          <End part={part} count={steps.length} />
        </ol>
        <Key onPress={() => addStep(part)}>
          {seenAndSaid(words.addStep, marked(partLang(part), words.addTo, partName(part)))}
        </Key>
      </section>
    ),
    [part, steps, list, options],
  );
}

/** What a list has apart from its steps, editable. */
function ListHead({ list }: { list: AbnormalList }) {
  const { id, title } = list;
  const fault = faults.value.find(({ part, step }) => part === listPart(id) && step === null);
  return (
    <div class={styles.listHead} data-list={id}>
      <button
        type="button"
        class={`${styles.open} ${editedList.value === id ? styles.opened : ''}`}
        data-at="list"
        aria-pressed={editedList.value === id}
        onClick={() => openListHead(id)}
      >
        <span class={styles.line}>
          {seenAndSaid(words.changeList, marked(writtenLang(), words.changeListOf, title))}
        </span>
        <span class={styles.about}>{aboutList(list)}</span>
        {fault !== undefined && <span class={wrongClass}>{words.fault(fault.code)}</span>}
      </button>
    </div>
  );
}

/** Whether a dragged step would be dropped before the step at that place of the part. */
function isBefore(part: PartId, index: number, steps: number): boolean {
  const drag = dragged.value;
  if (drag?.to == null || drag.to.part !== part) return false;
  const places = written.value && partsOf(written.value).find((one) => one.part === part)?.steps;
  const from = places?.findIndex(({ id }) => id === drag.id) ?? -1;
  // The index counts the other steps only.
  const at = from !== -1 && from <= drag.to.index ? drag.to.index + 1 : drag.to.index;
  return at === index && index <= steps;
}

/** Below the last step: a drop target too. */
function End({ part, count }: { part: PartId; count: number }) {
  const isHere = isBefore(part, count, count);
  if (count === 0)
    return <li class={`${styles.end} ${isHere ? styles.here : ''}`}>{words.noSteps}</li>;
  return isHere ? <li class={`${styles.last} ${styles.here}`} aria-hidden="true" /> : null;
}

interface RowProps {
  readonly step: Step;
  readonly part: PartId;
  readonly index: number;
  readonly options: Procedure['options'];
}

/** A row is redrawn only when its own step changes, or something it refers to. */
function Slot({ step, part, index, options }: RowProps) {
  return useMemo(
    () => <Row step={step} part={part} index={index} options={options} />,
    [step, part, index, options],
  );
}

const STEP_BY: Readonly<Record<string, -1 | 1>> = { ArrowUp: -1, ArrowDown: 1 };

function Row({ step, part, index, options }: RowProps) {
  const { id } = step;
  const item = textNow(step.item);
  // Only its own: one in another row redraws nothing here.
  const fault = useMemo(
    () => computed(() => faults.value.find((one) => one.step === id)?.code ?? null),
    [id],
  ).value;
  const move = (event: KeyboardEvent, at: 'handle' | 'row') => {
    const by = STEP_BY[event.key];
    // The handle moves with the arrows alone; elsewhere they scroll, and move with Alt.
    if (by === undefined || (at === 'row' && !event.altKey)) return;
    event.preventDefault();
    moveBy(id, by);
    returnTo.value = { id, to: at };
  };
  const classes = [
    styles.row,
    editedStep.value === id ? styles.opened : '',
    dragged.value?.id === id ? styles.lifted : '',
    isBefore(part, index, index) ? styles.here : '',
  ];
  return (
    <li data-step={id} class={classes.filter(Boolean).join(' ')}>
      <Handle id={id} item={item} onKeyDown={(event) => move(event, 'handle')} />
      <button
        type="button"
        class={styles.open}
        data-at="row"
        aria-pressed={editedStep.value === id}
        aria-keyshortcuts="Alt+ArrowUp Alt+ArrowDown"
        onClick={() => open(id)}
        onKeyDown={(event) => move(event, 'row')}
      >
        <span class={styles.line} lang={writtenLang()}>
          <b>{item}:</b> <Filled text={step.response} />
        </span>
        <span class={styles.about}>{aboutStep(step, options).drawn}</span>
        {fault !== null && <span class={wrongClass}>{words.fault(fault)}</span>}
      </button>
    </li>
  );
}

interface HandleProps {
  readonly id: StepId;
  readonly item: string;
  readonly onKeyDown: (event: KeyboardEvent) => void;
}

/** The handle a step is moved by. */
function Handle({ id, item, onKeyDown }: HandleProps) {
  return (
    <button
      type="button"
      class={styles.handle}
      data-at="handle"
      onPointerDown={(event) => beginDrag(event, id)}
      onKeyDown={onKeyDown}
    >
      <span class="spoken">{marked(writtenLang(), words.drag, item)}</span>
      <svg viewBox="0 0 16 24" class={styles.grip} aria-hidden="true">
        <path d="M2 7H14M2 12H14M2 17H14" />
      </svg>
    </button>
  );
}

/** A text with its live numbers underlined, at today's values. */
export function Filled({ text }: { text: string }): JSX.Element {
  return (
    <span>
      {filledPieces(text, liveNow).map((piece) =>
        piece.live ? <span class={styles.live}>{piece.text}</span> : piece.text,
      )}
    </span>
  );
}

/** Its kind, and what else to know about it, on one line. */
export function aboutStep(step: Step, options: Procedure['options']): Worded {
  const { kind, critical, expectS, when } = step;
  const about = [
    words.kinds[kind],
    ...(critical ? [words.critical] : []),
    ...(expectS === undefined ? [] : [words.expect(lasting(expectS))]),
  ].join(', ');
  return when === undefined
    ? worded(undefined, () => about)
    : withOptions(options, (named) => `${about}, ${words.when(conditionSaid(when, named))}`);
}
