/** The form of one step: its words, its kind and what belongs to it, when it applies. */

import { computed } from '@preact/signals';
import type { JSX } from 'preact';
import { useMemo } from 'preact/hooks';
import { edit, faults, settle, written } from '../../board/writing/procedure';
import {
  findStep,
  GATE_SPEEDS,
  HIGHEST_GATE_FT,
  type LiveName,
  LONGEST_WAIT_S,
  listIn,
  PHASES,
  type PlacedStep,
  type Procedure,
  partsOf,
  STEP_KINDS,
  type Step,
  type StepChange,
  type StepId,
} from '../../core';
import { Choice } from '../../parts/choice/Choice';
import { Hint, Wrong } from '../../parts/field/Labelled';
import { NumberField } from '../../parts/field/NumberField';
import { Pick } from '../../parts/field/Pick';
import { Key } from '../../parts/key/Key';
import { marked } from '../../parts/marked';
import { stepWords } from '../../parts/stepTextWords';
import styles from './Editor.module.css';
import { FormHead } from './FormHead';
import { Preview } from './Preview';
import { partLang, partName, writtenLang } from './said';
import { backToList, duplicateStep, moveBy, moveTo, placeBeside, removeStep } from './state';
import { Texts } from './Texts';
import { When } from './When';
import { words } from './words';

/** The form of a step; nothing if the step is gone. */
export function StepForm({ id }: { id: StepId }): JSX.Element | null {
  const procedure = written.value;
  const placed = procedure && findStep(procedure, id);
  if (!placed) return null;
  const { step } = placed;
  const wrong = faults.value.filter((fault) => fault.step === id);
  return (
    <>
      <Keys id={id} />
      <FormHead>{marked(writtenLang(), words.openStep, step.item)}</FormHead>
      <Preview step={step} options={procedure.options} />
      {wrong.map(({ name, code }) => (
        <Wrong key={name + code}>{words.fault(code)}</Wrong>
      ))}
      <Texts step={step} />
      <Rest placed={placed} procedure={procedure} />
    </>
  );
}

/** Actions on the step as a whole. */
function Keys({ id }: { id: StepId }) {
  const canGo = useMemo(() => computed(() => placeBeside(id, -1) !== null), [id]).value;
  const canCome = useMemo(() => computed(() => placeBeside(id, 1) !== null), [id]).value;
  return useMemo(
    () => (
      <div class={styles.keys}>
        <Key className={styles.toList} onPress={backToList}>
          {words.back}
        </Key>
        <Key disabled={!canGo} onPress={() => moveBy(id, -1)}>
          {words.up}
        </Key>
        <Key disabled={!canCome} onPress={() => moveBy(id, 1)}>
          {words.down}
        </Key>
        <Key onPress={() => duplicateStep(id)}>{words.duplicate}</Key>
        <Key onPress={() => removeStep(id)}>{words.remove}</Key>
      </div>
    ),
    [id, canGo, canCome],
  );
}

function Kind({ step }: { step: Step }) {
  return (
    <Part title={words.kind}>
      <Choice
        label={words.kind}
        options={STEP_KINDS.map((value) => ({ value, name: words.kinds[value] }))}
        chosen={step.kind}
        onChoose={(kind) => change(step, { kind, ...withoutOthers(kind) })}
      />
      <Hint>{words.kindHints[step.kind]}</Hint>
      <OfKind step={step} />
    </Part>
  );
}

function Part({
  title,
  children,
}: {
  title: string;
  children: JSX.Element | (JSX.Element | null)[];
}) {
  return (
    <section class={styles.formPart}>
      <h4 class={styles.partName}>{title}</h4>
      {children}
    </section>
  );
}

const change = ({ id }: Step, to: StepChange): void => edit({ kind: 'change', id, to });

/** Properties of other kinds are dropped with a change of kind; undo restores both. */
function withoutOthers(kind: Step['kind']): StepChange {
  return {
    ...(kind === 'wait' ? {} : { expectS: undefined }),
    ...(kind === 'gate' ? {} : { gate: undefined, gateFt: undefined }),
    ...(kind === 'say' ? {} : { call: undefined }),
  };
}

/** What belongs to the kind, and whether the step is critical. */
function OfKind({ step }: { step: Step }) {
  const { id } = step;
  return (
    <div class={styles.ofKind}>
      {step.kind === 'wait' && (
        <NumberField
          name={words.expectS}
          value={step.expectS ?? null}
          least={0}
          most={LONGEST_WAIT_S}
          bad={words.expectBad}
          hint={words.expectHint}
          onChange={(value) =>
            edit({ kind: 'change', id, to: { expectS: value ?? undefined } }, true)
          }
        />
      )}
      {step.kind === 'gate' && (
        <>
          <Pick
            name={words.gate}
            options={[
              { value: '', name: words.none },
              ...GATE_SPEEDS.map((value) => ({ value, name: liveName(value) })),
            ]}
            chosen={step.gate ?? ''}
            onChoose={(value) => change(step, { gate: GATE_SPEEDS.find((one) => one === value) })}
          />
          <NumberField
            name={words.gateFt}
            value={step.gateFt ?? null}
            least={0}
            most={HIGHEST_GATE_FT}
            bad={words.gateFtBad}
            hint={words.gateFtHint}
            onChange={(value) =>
              edit({ kind: 'change', id, to: { gateFt: value ?? undefined } }, true)
            }
          />
        </>
      )}
      <Key
        pressed={step.critical === true}
        onPress={() => change(step, { critical: step.critical ? undefined : true })}
      >
        {words.isCritical}
      </Key>
    </div>
  );
}

const liveName = (name: LiveName): string => stepWords.live[name];

/** What no letter of a text changes: redrawn only when it changes itself. */
function Rest({ placed, procedure }: { placed: PlacedStep; procedure: Procedure }) {
  const { step, part } = placed;
  const { options, lists } = procedure;
  const { id, kind, expectS, gate, gateFt, critical, when, until, tiedTo, needs } = step;
  const ofKind = useMemo(() => <Kind step={step} />, [id, kind, expectS, gate, gateFt, critical]);
  const asked = useMemo(() => <When id={id} when={when} options={options} />, [id, when, options]);
  const where = useMemo(
    () => <Where placed={placed} procedure={procedure} />,
    [id, part, until, tiedTo, needs, lists],
  );
  return (
    <>
      {ofKind}
      {asked}
      {where}
    </>
  );
}

/** Which part it stands in, how long it counts, and what it is tied to. */
function Where({ placed, procedure }: { placed: PlacedStep; procedure: Procedure }) {
  const { step, part } = placed;
  const needed = step.needs === undefined ? null : findStep(procedure, step.needs);
  return (
    <section class={styles.formPart}>
      <Pick
        name={words.standsIn}
        options={partsOf(procedure).map((one) => ({
          value: one.part,
          name: partName(one.part),
          lang: partLang(one.part),
        }))}
        chosen={part}
        onChoose={(value) => {
          const to = written.value && partsOf(written.value).find((one) => one.part === value);
          if (to) moveTo(step.id, { part: to.part, index: to.steps.length });
        }}
      />
      {listIn(part) === null && (
        <Pick
          name={words.until}
          options={[
            { value: '', name: words.ownPhase },
            ...PHASES.map((value) => ({ value, name: words.phases[value] })),
          ]}
          chosen={step.until ?? ''}
          onChoose={(value) => change(step, { until: PHASES.find((one) => one === value) })}
        />
      )}
      {(part === 'roll' || step.tiedTo !== undefined) && (
        <Key
          pressed={step.tiedTo !== undefined}
          onPress={() => {
            change(step, { tiedTo: step.tiedTo === undefined ? 'brakes released' : undefined });
            settle();
          }}
        >
          {words.withBrakes}
        </Key>
      )}
      {step.needs !== undefined && (
        <Key onPress={() => change(step, { needs: undefined })}>
          {marked(writtenLang(), words.buildsOn, needed?.step.item ?? step.needs)}
        </Key>
      )}
    </section>
  );
}
