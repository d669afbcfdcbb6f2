/** The handbook's table: pasted, or typed cell by cell, each with what is worked out beneath it. */

import type { JSX } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import { changeAircraft, changeOnce, fitNow } from '../../board/writing/aircraft';
import {
  type Aircraft,
  COLUMN_BOUNDS,
  COLUMNS,
  type Column,
  type Compared,
  type HandbookRow,
  MOST_ROWS,
  readTable,
  WELL_WITHIN,
} from '../../core';
import { lengthUnit, massUnit } from '../../device/preferences';
import { Hint, Labelled, linesClass } from '../../parts/field/Labelled';
import { Fold } from '../../parts/fold/Fold';
import { wholeNumber } from '../../parts/format';
import { Key } from '../../parts/key/Key';
import { Keys } from '../../parts/key/Keys';
import { fromShown, inShown, mass, unitFor } from '../../parts/units';
import styles from './AircraftEditor.module.css';
import { Figures } from './FiguresPart';
import { FitReport } from './FitReport';
import { bookText, inColumn, percentText, unitOf } from './said';
import { ENGINE } from './shown';
import { tableProblem, words } from './words';

interface PartProps {
  readonly aircraft: Aircraft;
}

/** The part. */
export function TablePart({ aircraft }: PartProps): JSX.Element {
  const rows = aircraft.handbook?.rows ?? [];
  return (
    <div class={styles.form}>
      <h3 class={styles.title}>{words.tableTitle}</h3>
      <Hint>{words.tableHint}</Hint>
      {rows.length === 0 && <Hint>{words.withoutTable}</Hint>}
      <Paste />
      <Rows aircraft={aircraft} rows={rows} />
      <Fold quiet title={words.moreTitle}>
        {() => <Figures aircraft={aircraft} names={ENGINE} />}
      </Fold>
      <FitReport aircraft={aircraft} />
    </div>
  );
}

/** More than any table that is read, characters. */
const LONGEST = 20_001;

/** A table from a spreadsheet: what is understood of it is said before it is taken. */
function Paste() {
  const [text, setText] = useState('');
  const read = readTable(text, { length: lengthUnit.value, mass: massUnit.value });
  const isThere = text.trim() !== '';
  const understood = read.columns.flatMap((column) =>
    column === null ? [] : [words.columns[column]],
  );
  return (
    <>
      <Labelled name={words.paste}>
        <textarea
          class={`${linesClass} ${styles.pasted}`}
          rows={isThere ? 6 : 2}
          maxLength={LONGEST}
          spellcheck={false}
          placeholder={words.pasteExample}
          value={text}
          onInput={(event) => setText(event.currentTarget.value)}
        />
      </Labelled>
      <Hint>{words.pasteHint(unitFor('m'), unitFor('kg'))}</Hint>
      {isThere && (
        <div class={styles.group} role="status">
          {read.rows.length > 0 && <p>{words.understood(understood.join(', '))}</p>}
          {read.problems.length > 0 && (
            <ul class={styles.wrong}>
              {read.problems.slice(0, MOST_SAID).map((problem, index) => (
                <li key={index}>{tableProblem(problem)}</li>
              ))}
            </ul>
          )}
        </div>
      )}
      {isThere && read.rows.length > 0 && (
        <Keys>
          <Key
            look="pick"
            onPress={() => {
              changeOnce({ kind: 'rows', part: null, to: read.rows });
              setText('');
            }}
          >
            {words.take(read.rows.length)}
          </Key>
        </Keys>
      )}
    </>
  );
}

/** No more is said at once of what could not be read. */
const MOST_SAID = 8;

/** What nearly every table has. */
const USUAL: readonly Column[] = [
  'pressureAltitudeFt',
  'temperatureC',
  'runM',
  'to50ftM',
  'landingRunM',
  'landingM',
];

interface RowsProps extends PartProps {
  readonly rows: readonly HandbookRow[];
}

function Rows({ aircraft, rows }: RowsProps) {
  const [wanted, setWanted] = useState<ReadonlySet<Column>>(new Set());
  const shown = COLUMNS.filter(
    (column) => wanted.has(column) || rows.some((row) => row[column] !== undefined),
  );
  const figures = fitNow.value?.figures ?? [];
  const table = useRef<HTMLTableElement>(null);
  const isAdding = useRef(false);
  // Whoever adds a row goes on typing in it.
  useEffect(() => {
    if (!isAdding.current) return;
    isAdding.current = false;
    focusRow(table.current?.tBodies[0]?.lastElementChild);
  }, [rows.length]);
  const set = (to: readonly HandbookRow[], part: string | null) =>
    part === null
      ? changeOnce({ kind: 'rows', part, to })
      : changeAircraft({ kind: 'rows', part, to });
  const add = () => {
    if (rows.length >= MOST_ROWS) return;
    isAdding.current = true;
    if (shown.length === 0) setWanted(new Set(USUAL));
    set([...rows, {}], null);
  };
  return (
    <>
      {rows.length > 0 && (
        <section aria-label={words.rowsTitle}>
          <table
            ref={table}
            class={styles.table}
            style={{ '--columns': shown.length }}
            onKeyDown={(event) => {
              if (event.key !== 'Enter' || !(event.target instanceof HTMLInputElement)) return;
              const next = event.target.closest('tr')?.nextElementSibling;
              if (next == null) add();
              else focusRow(next);
            }}
          >
            <thead>
              <tr>
                <td />
                {shown.map((column) => (
                  <th key={column} scope="col">
                    {words.columns[column]}
                    <small>{unitOf(column)}</small>
                  </th>
                ))}
                <td />
              </tr>
            </thead>
            <tbody>
              {rows.map((row, index) => (
                <tr key={index}>
                  <th scope="row">
                    <span class={styles.narrowOnly}>{words.row} </span>
                    {index + 1}
                  </th>
                  {shown.map((column) => (
                    <Cell
                      key={`${column} ${unitOf(column)}`}
                      row={index}
                      column={column}
                      value={row[column]}
                      found={figures.find((one) => one.row === index && one.name === column)}
                      onChange={(value) =>
                        set(
                          rows.map((one, at) =>
                            at === index ? withCell(one, column, value) : one,
                          ),
                          `${index}.${column}`,
                        )
                      }
                    />
                  ))}
                  <td class={styles.remove}>
                    <button
                      type="button"
                      class={styles.removeRow}
                      aria-label={words.removeRow(index + 1)}
                      onClick={() =>
                        set(
                          rows.filter((_, at) => at !== index),
                          null,
                        )
                      }
                    >
                      ×
                    </button>
                  </td>
                </tr>
              ))}
            </tbody>
          </table>
        </section>
      )}
      {rows.length > 0 && <Hint>{words.emptyCells(mass(aircraft.masses.usualTakeoffKg))}</Hint>}
      <Keys>
        <Key disabled={rows.length >= MOST_ROWS} onPress={add}>
          {words.addRow}
        </Key>
      </Keys>
      {rows.length > 0 && shown.length < COLUMNS.length && (
        <Fold quiet title={words.otherColumns}>
          {() => (
            <Keys>
              {COLUMNS.filter((column) => !shown.includes(column)).map((column) => (
                <Key key={column} onPress={() => setWanted(new Set([...wanted, column]))}>
                  {words.columns[column]}
                </Key>
              ))}
            </Keys>
          )}
        </Fold>
      )}
    </>
  );
}

const focusRow = (row: Element | null | undefined) => row?.querySelector('input')?.focus();

function withCell(row: HandbookRow, column: Column, value: number | null): HandbookRow {
  const { [column]: _, ...rest } = row;
  return value === null ? rest : { ...rest, [column]: value };
}

interface CellProps {
  readonly row: number;
  readonly column: Column;
  readonly value: number | undefined;
  readonly found: Compared | undefined;
  readonly onChange: (value: number | null) => void;
}

/** A number as typed: null if empty, NaN if it is none. */
function typedNumber(text: string): number | null {
  const plain = text.trim().replace('−', '-').replace(',', '.');
  return plain === '' ? null : Number(plain);
}

/** What the book prints, and beneath it what is worked out. */
function Cell({ row, column, value, found, onChange }: CellProps) {
  const [typed, setTyped] = useState<string | null>(null);
  const unit = inColumn(column);
  const [least, most] = COLUMN_BOUNDS[column];
  const toCore = (number: number) => (unit === null ? number : fromShown(number, unit));
  const fits = (text: string) => {
    const number = typedNumber(text);
    return number === null || (toCore(number) >= least && toCore(number) <= most);
  };
  const shown =
    value === undefined ? '' : String(Math.round(unit === null ? value : inShown(value, unit)));
  const bound = (of: number) => wholeNumber(unit === null ? of : inShown(of, unit));
  const isWrong = typed !== null && !fits(typed);
  const off = found?.found == null ? null : found.found / found.book - 1;
  return (
    <td data-label={words.named(words.columns[column], unitOf(column))}>
      <input
        class={styles.cell}
        inputMode={least < 0 ? 'text' : 'decimal'}
        maxLength={7}
        autocomplete="off"
        aria-label={words.cell(row + 1, words.columns[column])}
        aria-invalid={isWrong}
        value={typed ?? shown}
        onInput={(event) => {
          const text = event.currentTarget.value;
          setTyped(text);
          const number = typedNumber(text);
          if (fits(text)) onChange(number === null ? null : toCore(number));
        }}
        onBlur={(event) => {
          if (fits(event.currentTarget.value)) setTyped(null);
        }}
      />
      {isWrong && (
        <span class={styles.wrong}>
          {words.cellBad(row + 1, words.columns[column], bound(least), bound(most))}
        </span>
      )}
      {found !== undefined && (
        <span class={off === null || Math.abs(off) > WELL_WITHIN ? styles.off : styles.near}>
          {found.found === null ? (
            words.noFigure
          ) : (
            <>
              {bookText(found.name, found.found)} <span>{percentText(off ?? 0)}</span>
            </>
          )}
        </span>
      )}
    </td>
  );
}
