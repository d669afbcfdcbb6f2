/** A step's words, and the picker that inserts a live number at the caret. */

import type { JSX } from 'preact';
import { useLayoutEffect, useMemo, useRef, useState } from 'preact/hooks';
import { callLang } from '../../board/language';
import { edit, faults, settle } from '../../board/writing/procedure';
import {
  isLiveName,
  LIVE,
  type LiveName,
  type Step,
  type StepChange,
  type StepId,
} from '../../core';
import { inputClass, Labelled, linesClass } from '../../parts/field/Labelled';
import { Pick } from '../../parts/field/Pick';
import { NO_BREAK_SPACE } from '../../parts/format';
import { Key } from '../../parts/key/Key';
import { stepWords } from '../../parts/stepTextWords';
import { unitFor } from '../../parts/units';
import styles from './Editor.module.css';
import { liveNow, writtenLang } from './said';
import { words } from './words';

type TextName = 'item' | 'response' | 'note' | 'call';

type TextElement = HTMLInputElement | HTMLTextAreaElement;

interface Last {
  current: { readonly name: TextName; readonly element: TextElement } | null;
}

/** The schema's maximum lengths, characters. */
const LONGEST_SHORT = 80;
const LONGEST_TEXT = 600;

const UNITS: Readonly<Record<string, string>> = { deg: '°', degC: '°C' };

const NAMES = Object.keys(LIVE).filter(isLiveName);

export function Texts({ step }: { step: Step }): JSX.Element {
  /** The text that last had the focus, and where its caret was. */
  const last: Last = useRef(null);
  /** Where the caret goes once the inserted text is in its entry. */
  const caret = useRef<number | null>(null);
  useLayoutEffect(() => {
    if (caret.current === null) return;
    last.current?.element.focus();
    last.current?.element.setSelectionRange(caret.current, caret.current);
    caret.current = null;
  });
  const now = useRef(step);
  now.current = step;
  const insert = (picked: LiveName) => {
    const { current: step } = now;
    const element = last.current?.element;
    const name = last.current?.name ?? 'response';
    const text = step[name] ?? '';
    const from = element?.selectionStart ?? text.length;
    const to = element?.selectionEnd ?? from;
    const after = `${text.slice(0, from)}{${picked}}`;
    settle();
    caret.current = after.length;
    change(step.id, name, after + text.slice(to), false);
  };
  const text = (name: TextName, label: string) => (
    <Text key={name} id={step.id} name={name} text={step[name] ?? ''} label={label} last={last} />
  );
  // Many lines, and the same whatever is typed.
  const picker = useMemo(() => <LivePicker onInsert={insert} />, []);
  return (
    <section class={styles.formPart}>
      {text('item', words.item)}
      {text('response', words.response)}
      {text('note', words.note)}
      {step.kind === 'say' && text('call', words.call)}
      {picker}
    </section>
  );
}

/**
 * All live numbers at today's values. Selecting alone inserts nothing, because the arrow keys
 * select in passing.
 */
function LivePicker({ onInsert }: { onInsert: (name: LiveName) => void }) {
  const [picked, setPicked] = useState<LiveName>('rotateKt');
  return (
    <div class={styles.inserting}>
      <Pick
        name={words.insertLive}
        options={NAMES.map((name) => ({
          value: name,
          name: words.liveNow(stepWords.live[name], withUnit(name)),
        }))}
        chosen={picked}
        onChoose={(name) => isLiveName(name) && setPicked(name)}
      />
      <Key onPress={() => onInsert(picked)}>{words.insert}</Key>
    </div>
  );
}

function withUnit(name: LiveName): string {
  const kind = LIVE[name];
  const value = liveNow(name);
  if (!('unit' in kind) || value === words.unknown || kind.form === 'heading') return value;
  return `${value}${NO_BREAK_SPACE}${UNITS[kind.unit] ?? unitFor(kind.unit)}`;
}

/** An item and a response must not be empty; an empty note or call is left out. */
function change(id: StepId, name: TextName, text: string, typing: boolean): void {
  const isOptional = name === 'note' || name === 'call';
  const to: StepChange = { [name]: isOptional && text === '' ? undefined : text };
  edit({ kind: 'change', id, to }, typing);
}

interface TextProps {
  readonly id: StepId;
  readonly name: TextName;
  readonly text: string;
  readonly label: string;
  readonly last: Last;
}

/** One of its texts; with the same props it isn't redrawn: a letter changes one of four. */
function Text({ id, name, text, label, last }: TextProps) {
  const isShort = name === 'item' || name === 'response';
  const isWrong = faults.value.some((fault) => fault.step === id && fault.name === name);
  const common = {
    value: text,
    lang: name === 'call' ? callLang() : writtenLang(),
    'aria-invalid': isWrong,
    onFocus: (event: { readonly currentTarget: TextElement }) => {
      last.current = { name, element: event.currentTarget };
    },
    onInput: (event: { readonly currentTarget: TextElement }) =>
      change(id, name, event.currentTarget.value, true),
    onBlur: settle,
  };
  return (
    <Labelled name={label}>
      {isShort ? (
        <input class={inputClass} maxLength={LONGEST_SHORT} {...common} />
      ) : (
        <textarea class={linesClass} rows={2} maxLength={LONGEST_TEXT} {...common} />
      )}
    </Labelled>
  );
}
