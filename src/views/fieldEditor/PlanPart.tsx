/** Of a field being drawn: its taxi plan. */

import type { JSX } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import type { Field } from '../../core';
import { Choice, choicesOf } from '../../parts/choice/Choice';
import { anyText, EntryField } from '../../parts/field/EntryField';
import { hintClass } from '../../parts/field/Labelled';
import { DrawingBoard } from './Board';
import { ChosenPanel } from './ChosenPanel';
import styles from './FieldEditor.module.css';
import { letter, looks, pen, takeTool, tool } from './hand';
import { Things } from './Things';
import { handlingHint, Tracing } from './Tracing';
import { pointName, words } from './words';

/** The board, the tools under it, the selection, and everything as lists. */
export function PlanPart({ field }: { readonly field: Field }): JSX.Element {
  const drawing = useRef<HTMLDivElement>(null);
  const panel = useRef<HTMLDivElement>(null);
  const looked = looks.value;
  useEffect(() => {
    if (looked === 0) return;
    panel.current?.focus({ preventScroll: true });
    drawing.current?.scrollIntoView({ block: 'start' });
  }, [looked]);
  const handled = handlingHint();
  const penAt = field.taxi.nodes.find(({ id }) => id === pen.value);
  return (
    <div class={styles.planPart}>
      <div class={styles.draw} ref={drawing}>
        <DrawingBoard field={field} />
        <Choice
          label={words.tool}
          options={choicesOf(words.tools)}
          chosen={tool.value}
          onChoose={takeTool}
        />
        <div class={styles.toolRow}>
          {tool.value === 'taxiway' && handled === null && (
            <EntryField
              name={words.letter}
              text={letter.value}
              read={(text) => anyText(80)(text) || null}
              bad={words.letterBad}
              onChange={(text) => {
                letter.value = text;
              }}
            />
          )}
          <p class={handled === null ? hintClass : styles.label} role="status">
            {handled ?? (penAt ? words.penAt(pointName(penAt)) : words.toolHints[tool.value])}
          </p>
        </div>
      </div>
      <div class={styles.beside}>
        <div class={styles.panel} ref={panel} tabIndex={-1}>
          <ChosenPanel field={field} />
        </div>
        <Tracing field={field} />
        <Things field={field} />
      </div>
    </div>
  );
}
