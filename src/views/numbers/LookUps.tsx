/** Look-up tables: computed when opened, today's cell marked. */

import type { JSX } from 'preact';
import { day } from '../../board/board';
import { lookUps } from '../../board/flight/today';
import { type LookUp, turnDeg } from '../../core';
import { Fold } from '../../parts/fold/Fold';
import { wholeNumber } from '../../parts/format';
import { aboutLengthDigits, massDigits, unitFor } from '../../parts/units';
import styles from './Numbers.module.css';
import { words } from './words';

/** The tables, each collapsed until opened. */
export function LookUps(): JSX.Element | null {
  const given = day.dayGiven();
  const tables = lookUps.value;
  const end = day.numbersEnd();
  const { wind, fromTrueDeg } = day.wind();
  const speedKt = wind?.speedKt ?? null;
  if (tables === null || given === null) return null;
  const off =
    end === null || fromTrueDeg === null
      ? null
      : Math.abs(turnDeg(fromTrueDeg - end.headingTrueDeg));
  return (
    <section>
      <h2 class={styles.title}>{words.lookUps}</h2>
      <Fold title={words.crosswindTable}>
        {() => (
          <Table
            table={tables.crosswindTable(off, speedKt)}
            corner={words.crosswindCorner}
            columnName={(kt) => words.kt(wholeNumber(kt))}
            rowName={(deg) => `${wholeNumber(deg)}°`}
          />
        )}
      </Fold>
      <Fold title={words.speedTable}>
        {() => (
          <Table
            table={tables.speedTable(given)}
            corner={words.massCorner(unitFor('kg'))}
            columnName={(i) => words.speedColumns[i] ?? ''}
            rowName={(kg) => massDigits(kg)}
            wholeRow
          />
        )}
      </Fold>
      <Fold title={words.runTable(end?.designator ?? null, unitFor('m'))}>
        {() => (
          <Table
            table={tables.runTable(given, end?.designator ?? null, end?.headwindLeastKt ?? null)}
            corner={words.runCorner}
            columnName={(ft) => words.feet(wholeNumber(ft))}
            rowName={(c) => words.celsius(wholeNumber(c))}
            cell={(m) => aboutLengthDigits(m, 'up')}
          />
        )}
      </Fold>
    </section>
  );
}

interface TableProps {
  readonly table: LookUp | null;
  readonly corner: string;
  readonly columnName: (value: number) => string;
  readonly rowName: (value: number) => string;
  /** A cell as written; a whole number unless given. */
  readonly cell?: (value: number) => string;
  /** Today is a row, not a cell. */
  readonly wholeRow?: boolean;
}

function Table({
  table,
  corner,
  columnName,
  rowName,
  cell: written = wholeNumber,
  wholeRow,
}: TableProps) {
  if (table === null) return null;
  const [todayRow, todayColumn] = table.today ?? [null, null];
  const isToday = (row: number, column: number) =>
    row === todayRow && (wholeRow === true || column === todayColumn);
  return (
    <div class={styles.scroll}>
      <table class={styles.table}>
        <thead>
          <tr>
            <th scope="col">{corner}</th>
            {table.columns.map((column) => (
              <th key={column} scope="col">
                {columnName(column)}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {table.rows.map(({ of, cells }, row) => (
            <tr key={of}>
              <th scope="row">{rowName(of)}</th>
              {cells.map((cell, column) => (
                <td
                  key={column}
                  class={isToday(row, column) ? styles.today : undefined}
                  aria-label={
                    isToday(row, column) && cell !== null
                      ? words.todayCell(written(cell))
                      : undefined
                  }
                >
                  {cell === null ? '—' : written(cell)}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
      <p class={styles.book}>{table.today === null ? words.todayOutside : words.todayMarked}</p>
    </div>
  );
}
