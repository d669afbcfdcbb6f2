/**
 * A whole sortie of the log: its times, which can be corrected, its figures, what was left undone,
 * notes.
 */

import { useSignal } from '@preact/signals';
import type { JSX } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { langOf } from '../../board/language';
import {
  canTakeUp,
  loggedSortie,
  logTools,
  nameOf,
  note,
  openLogged,
  takeBackEntry,
  takeUpAgain,
} from '../../board/record/log';
import { type Id, isCautionCode, type LoggedSortie, type Seal } from '../../core';
import { Hint, linesClass } from '../../parts/field/Labelled';
import { decimal, NO_BREAK_SPACE, timeOfDay, utcDate, wholeNumber } from '../../parts/format';
import { Key } from '../../parts/key/Key';
import { marked, markedText } from '../../parts/marked';
import { Sheet } from '../../parts/sheet/Sheet';
import { SheetPart, SheetParts } from '../../parts/sheet/SheetPart';
import { length, mass, pressure } from '../../parts/units';
import { words as verdictWords } from '../../parts/verdict/words';
import { hoursMinutes } from './hours';
import styles from './Logged.module.css';
import { TimeEntry } from './TimeEntry';
import { words } from './words';

/** The sheet of a sortie. */
export function LoggedSheet({ id, onClose }: { id: Id; onClose: () => void }): JSX.Element {
  const [isRead, setRead] = useState(false);
  useEffect(() => {
    void openLogged(id)
      .catch(() => undefined)
      .then(() => setRead(true));
  }, [id]);
  const logged = loggedSortie(id);
  const field = logged === null ? null : nameOf(logged.field);
  const title =
    logged === null
      ? words.place
      : words.sortie(
          field === null ? words.noField : `${field.code} ${field.name}`,
          utcDate(logged.times['off chocks'].sortieMs ?? logged.beganAt.sortieMs),
        );
  return (
    <Sheet title={title} close={words.sheet.close} size="page" onClose={onClose}>
      {logged === null && <p>{isRead ? words.sheet.gone : words.reading}</p>}
      {logged !== null && (
        <SheetParts>
          {canTakeUp(id) && <TakeUp id={id} onClose={onClose} />}
          <Times logged={logged} />
          <Notes logged={logged} />
          <Lists logged={logged} />
          <Begun logged={logged} />
          <Left logged={logged} />
          <Phases logged={logged} />
          <WentOn logged={logged} />
          <Winds logged={logged} />
          <Stamps logged={logged} />
          <Seals logged={logged} />
        </SheetParts>
      )}
    </Sheet>
  );
}

function TakeUp({ id, onClose }: { id: Id; onClose: () => void }) {
  return (
    <SheetPart>
      <Key
        onPress={() => {
          takeUpAgain(id);
          onClose();
        }}
      >
        {words.sheet.takeUp}
      </Key>
      <Hint>{words.sheet.takeUpHint}</Hint>
    </SheetPart>
  );
}

interface Of {
  readonly logged: LoggedSortie;
}

function Figure({ name, value }: { name: string; value: string }) {
  return (
    <div class={styles.figure}>
      <dt>{name}</dt>
      <dd>{value}</dd>
    </div>
  );
}

function Times({ logged }: Of) {
  const tools = logTools.value;
  const { times, id, beganAt } = logged;
  if (tools === null) return null;
  // A time of day belongs to the day nearest to what is known of the moment, or of a neighbouring
  // one.
  const known = tools.LOG_MOMENTS.flatMap((moment) => times[moment].recorded?.sortieMs ?? []);
  const minutes = (value: number | null, a: number | null, b: number | null) =>
    value !== null ? hoursMinutes(value) : a === null || b === null ? '–' : words.sheet.outOfOrder;
  return (
    <SheetPart title={words.sheet.times}>
      <Hint>{words.sheet.timesHint}</Hint>
      {tools.LOG_MOMENTS.map((moment) => (
        <TimeEntry
          key={moment}
          sortie={id}
          moment={moment}
          time={times[moment]}
          nearest={(minute) =>
            tools.nearestAtMinute(
              minute,
              times[moment].recorded?.sortieMs ?? known[0] ?? beganAt.sortieMs,
            )
          }
        />
      ))}
      <dl>
        <Figure
          name={words.sheet.block}
          value={minutes(
            tools.blockMinutes(times),
            times['off chocks'].sortieMs,
            times['on chocks'].sortieMs,
          )}
        />
        <Figure
          name={words.sheet.flight}
          value={minutes(
            tools.flightMinutes(times),
            times.airborne.sortieMs,
            times.landed.sortieMs,
          )}
        />
        <Figure name={words.sheet.landings} value={wholeNumber(logged.landings)} />
      </dl>
    </SheetPart>
  );
}

function Notes({ logged: { id, notes } }: Of) {
  const typed = useSignal('');
  return (
    <SheetPart title={words.sheet.notes}>
      <ul>
        {notes.map(({ id: entry, text }) => (
          <li key={entry} class={styles.noted}>
            {text}
            <Key label={words.sheet.dropNote(text)} onPress={() => takeBackEntry(id, entry)}>
              {words.sheet.takeBack}
            </Key>
          </li>
        ))}
      </ul>
      <textarea
        class={`${linesClass} ${styles.note}`}
        aria-label={words.sheet.note}
        placeholder={words.sheet.note}
        maxLength={2000}
        value={typed.value}
        onInput={(event) => {
          typed.value = event.currentTarget.value;
        }}
      />
      <div>
        <Key
          disabled={typed.value.trim() === ''}
          onPress={() => {
            note(id, typed.peek());
            typed.value = '';
          }}
        >
          {words.sheet.addNote}
        </Key>
      </div>
    </SheetPart>
  );
}

/** What went wrong: the lists that were gone through, with their times. */
function Lists({ logged: { lists, language } }: Of) {
  if (lists.length === 0) return null;
  const lang = language === null ? undefined : langOf(language);
  return (
    <SheetPart title={words.sheet.lists}>
      <dl>
        {lists.map(({ id, list, title, openedAt, closedAt }) => (
          <div key={id} class={styles.figure}>
            <dt lang={title === null ? undefined : lang}>{title ?? list}</dt>
            <dd>
              {words.sheet.listTimes(
                timeOfDay(openedAt.sortieMs),
                closedAt && timeOfDay(closedAt.sortieMs),
              )}
            </dd>
          </div>
        ))}
      </dl>
    </SheetPart>
  );
}

/** Where the sortie was begun, if not on the ramp. */
function Begun({ logged: { begun } }: Of) {
  const last = begun.at(-1);
  if (last === undefined) return null;
  return (
    <SheetPart>
      <p>{words.sheet.begunAt(words.phases[last.phase], timeOfDay(last.at.sortieMs))}</p>
    </SheetPart>
  );
}

function Left({ logged: { done, heldBack, cannot, language } }: Of) {
  const lang = language === null ? undefined : langOf(language);
  return (
    <SheetPart title={words.ticked(done)}>
      {heldBack.length > 0 && (
        <>
          <h4>{words.sheet.left}</h4>
          <ul>
            {heldBack.map(({ item, step }) => (
              <li key={step} class={styles.figure}>
                {item === null ? step : markedText(lang, item)}
              </li>
            ))}
          </ul>
        </>
      )}
      {cannot.length > 0 && (
        <>
          <h4>{words.sheet.cannot}</h4>
          <ul>
            {cannot.map(({ item, step, why }) => (
              <li key={step} class={styles.figure}>
                {marked(
                  item === null ? undefined : lang,
                  (what) => (why === null ? what : words.sheet.cannotWhy(what, why)),
                  item ?? step,
                )}
              </li>
            ))}
          </ul>
        </>
      )}
    </SheetPart>
  );
}

function Phases({ logged: { phases } }: Of) {
  if (phases.length === 0) return null;
  return (
    <SheetPart title={words.sheet.phases}>
      <dl>
        {phases.map(({ phase, ms }) => (
          <Figure
            key={phase}
            name={words.phases[phase]}
            value={words.sheet.minutes(decimal(ms / 60_000, 1))}
          />
        ))}
      </dl>
    </SheetPart>
  );
}

function Winds({ logged: { winds } }: Of) {
  if (winds.length === 0) return null;
  return (
    <SheetPart title={words.sheet.winds}>
      <dl>
        {winds.map(({ id, text, at }) => (
          <Figure key={id} name={timeOfDay(at.sortieMs)} value={text} />
        ))}
      </dl>
    </SheetPart>
  );
}

/** Limits the pilot went on in spite of; one that another version of the app named goes by its name. */
function WentOn({ logged: { accepted } }: Of) {
  if (accepted.length === 0) return null;
  return (
    <SheetPart title={verdictWords.went}>
      <dl>
        {accepted.map(({ code, value, limit, end, at }) => (
          <Figure
            key={`${at.wallMs} ${code} ${limit}`}
            name={[timeOfDay(at.sortieMs), end ?? ''].join(' ')}
            value={isCautionCode(code) ? verdictWords.said({ code, value, limit }) : code}
          />
        ))}
      </dl>
    </SheetPart>
  );
}

function Stamps({ logged: { stamps } }: Of) {
  if (stamps.length === 0) return null;
  return (
    <SheetPart title={words.sheet.stamps}>
      <dl>
        {stamps.map(({ id, what, at }) => (
          <Figure key={id} name={words.moments[what] ?? what} value={timeOfDay(at.sortieMs)} />
        ))}
      </dl>
    </SheetPart>
  );
}

function Seals({ logged }: Of) {
  if (logged.seals.length === 0) return null;
  return (
    <SheetPart title={words.sheet.figures}>
      {logged.seals.map((seal) => (
        <Sealed key={seal.at.wallMs} seal={seal} title={momentOf(logged, seal)} />
      ))}
    </SheetPart>
  );
}

/** What a seal was made at, with its time: a moment stamped with it, else the end. */
function momentOf({ stamps }: LoggedSortie, { at }: Seal): string {
  const stamp = stamps.find((one) => one.at.wallMs === at.wallMs);
  const moment = stamp === undefined ? words.sheet.ended : words.moments[stamp.what];
  return words.sheet.sealed(moment, timeOfDay(at.sortieMs));
}

function Sealed({ seal, title }: { seal: Seal; title: string }) {
  const names = Object.values(seal.documents).flatMap((hash) => nameOf(hash)?.name ?? []);
  return (
    <details class={styles.sealed}>
      <summary>{title}</summary>
      <dl>
        {Object.entries(seal.figures).map(([name, { value, unit }]) => (
          <Figure
            key={name}
            name={words.figures[name] ?? name}
            value={typeof value === 'number' ? figureText(value, unit) : value}
          />
        ))}
        {names.length > 0 && <Figure name={words.sheet.with} value={names.join(', ')} />}
      </dl>
    </details>
  );
}

/**
 * Speeds and angles to a tenth, as they were judged; the rest in the units of today's choice. A seal
 * keeps its own: only what is shown of it changes.
 */
function figureText(value: number, unit: string): string {
  switch (unit) {
    case 'hPa':
      return pressure(value);
    case 'kg':
      return mass(value);
    case 'm':
      return length(value);
    default:
      return [decimal(value, 1), words.units[unit] ?? unit].join(NO_BREAK_SPACE);
  }
}
