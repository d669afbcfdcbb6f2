/** The phases, each with its progress; a tap shows all its steps. */

import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import { day } from '../../board/board';
import { chosenProcedure, procedure } from '../../board/documents/inUse';
import { stepsLang } from '../../board/language';
import { openSheet } from '../../board/places';
import { setSimulated, tie } from '../../board/steps/memory';
import { beginAt, offered, resumeFrom, tick } from '../../board/steps/stepping';
import {
  mayDoNow,
  mayGoOnFrom,
  type Phase,
  type PhaseRows,
  type StepRow,
  tiesOf,
  type Walk,
} from '../../core';
import { Key } from '../../parts/key/Key';
import { Sheet } from '../../parts/sheet/Sheet';
import { liveText } from './liveText';
import styles from './PhaseTabs.module.css';
import { StepMark, stateLang, stateWords } from './StepMark';
import { words } from './words';

/** The row of phases. */
export function PhaseTabs({ walk }: { walk: Walk }): JSX.Element {
  const [open, setOpen] = useState<Phase | null>(null);
  const opened = walk.phases.find(({ phase }) => phase === open);
  return (
    <>
      <ol class={styles.phases}>
        {walk.phases.map(({ phase, handled, total, rows }) => (
          <li key={phase}>
            <button
              type="button"
              class={`${styles.phase} ${phase === walk.phase ? styles.here : ''}`}
              aria-label={
                isNotFlown({ rows, total })
                  ? words.phaseNotFlown(words.phase[phase])
                  : words.phaseStands(words.phase[phase], handled, total, phase === walk.phase)
              }
              onClick={() => setOpen(phase)}
            >
              <span class={styles.name}>{words.phase[phase]}</span>
              <svg
                class={styles.bar}
                viewBox="0 0 100 8"
                preserveAspectRatio="none"
                aria-hidden="true"
              >
                <rect class={styles.frame} x="1" y="1" width="98" height="6" />
                <rect
                  class={styles.full}
                  x="1"
                  y="1"
                  width={total === 0 ? 0 : (98 * handled) / total}
                  height="6"
                />
              </svg>
            </button>
          </li>
        ))}
      </ol>
      {opened && <AllSteps phase={opened} onClose={() => setOpen(null)} />}
    </>
  );
}

/** Whether a phase was left out by beginning at a later one, and nothing was done in it before. */
const isNotFlown = ({ rows, total }: Pick<PhaseRows, 'rows' | 'total'>) =>
  total === 0 && rows.some(({ state }) => state.kind === 'not-flown');

function AllSteps({ phase, onClose }: { phase: PhaseRows; onClose: () => void }) {
  return (
    <Sheet
      title={words.allSteps(words.phase[phase.phase])}
      close={words.close}
      size="page"
      onClose={onClose}
    >
      {offered.value?.begin.includes(phase.phase) && (
        <div class={styles.begin}>
          <span>{words.beginNote}</span>
          <Key
            onPress={() => {
              beginAt(phase.phase);
              onClose();
            }}
          >
            {words.beginHere}
          </Key>
        </div>
      )}
      <ol>
        {phase.rows.map((row) => (
          <Row key={row.step.id} row={row} onClose={onClose} />
        ))}
      </ol>
      <WriteOwn onClose={onClose} />
    </Sheet>
  );
}

/** The way to one's own version of the steps. */
function WriteOwn({ onClose }: { onClose: () => void }) {
  const hash = chosenProcedure.value;
  if (hash === null) return null;
  return (
    <Key
      className={styles.writeOwn}
      onPress={() => {
        onClose();
        openSheet({ kind: 'editor', hash, over: null });
      }}
    >
      {words.writeOwn}
    </Key>
  );
}

/** Whether the pilot does it earlier than the procedure has it. */
const isTied = ({ step }: StepRow) =>
  procedure.value !== null && tiesOf(procedure.value, day.inputs().ties).has(step.id);

const isNotSimulated = ({ state }: StepRow) =>
  state.kind === 'not-needed' && state.notSimulated === true;

function Row({ row, onClose }: { row: StepRow; onClose: () => void }) {
  const { kind } = row.state;
  const facts = day.steps()?.facts;
  return (
    <li class={styles.row}>
      <StepMark row={row} />
      <span class={styles.item}>
        <b lang={stepsLang()}>{liveText(row.step.item)}</b>
        {(kind === 'open' || kind === 'done') && (
          <span lang={stepsLang()}> {liveText(row.step.response)}</span>
        )}
        {kind !== 'open' && kind !== 'done' && (
          <span class={styles.state} lang={stateLang(row)}>
            {stateWords(row)}
          </span>
        )}
      </span>
      {isNotSimulated(row) && (
        <Key onPress={() => setSimulated(row.step.id)}>{words.simulated}</Key>
      )}
      {isTied(row) && <Key onPress={() => tie(row.step.id, null)}>{words.putBack}</Key>}
      {facts !== undefined && mayDoNow(row, facts) && (
        <Key onPress={() => tick(row, 'done')}>{words.doneNow}</Key>
      )}
      {mayGoOnFrom(row) && (
        <Key
          onPress={() => {
            resumeFrom(row);
            onClose();
          }}
        >
          {words.goOnFrom}
        </Key>
      )}
    </li>
  );
}
