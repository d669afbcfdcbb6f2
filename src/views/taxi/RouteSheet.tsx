/**
 * The route: where it begins, where the runway is entered, other routes, what is closed, its turns.
 */

import type { JSX } from 'preact';
import { day, documents } from '../../board/board';
import {
  closeStretch,
  enterAt,
  isComingIn,
  placeAt,
  standNow,
  stands,
  takeVia,
  taxiParts,
  taxiTo,
} from '../../board/flight/taxi';
import { fieldText, paintedLang } from '../../board/language';
import type { OfferedEntry } from '../../core';
import { followPosition, leavePosition, position } from '../../device/position';
import { wholeNumber } from '../../parts/format';
import { Key } from '../../parts/key/Key';
import { markedText } from '../../parts/marked';
import { turnWords } from '../../parts/pace';
import { QuotedWords } from '../../parts/quoted/Quoted';
import { Sheet } from '../../parts/sheet/Sheet';
import { aboutLength, length, neededLength } from '../../parts/units';
import { endsCalled, pointCalled } from './called';
import { faultWords, routeNames, tellRoute } from './route';
import styles from './Sheets.module.css';
import { Device } from './Watch';
import { words } from './words';

export function RouteSheet({ onClose }: { onClose: () => void }): JSX.Element {
  const fault = day.fault();
  return (
    <Sheet title={words.sheet} close={words.close} size="page" onClose={onClose}>
      {fault && <p class={styles.fault}>{faultWords(fault)}</p>}
      <InWords />
      <From />
      <Entries />
      <Routes />
      <Turns />
      <HotSpots />
      <Own />
      {stands.value.length > 0 && <Points title={words.pointsTitle} />}
      <Closed />
    </Sheet>
  );
}

function InWords() {
  const text = tellRoute(day.told(), day.settled().controlled === true);
  return text === '' ? null : (
    <section class={styles.part}>
      <h3>{words.inWords}</h3>
      <p class={styles.text}>{text}</p>
    </section>
  );
}

/** Where others have gone wrong before; ringed on the plan. */
function HotSpots() {
  const hotSpots = documents.value.field?.taxi.hotSpots ?? [];
  return hotSpots.length === 0 ? null : (
    <section class={styles.part}>
      <h3>{words.hotSpots}</h3>
      <ul class={styles.rows}>
        {hotSpots.map(({ name, about }) => {
          const { text, lang } = fieldText(about);
          return (
            <li key={name}>
              <b lang={paintedLang()}>{name}</b> <QuotedWords lang={lang} text={text} />
            </li>
          );
        })}
      </ul>
    </section>
  );
}

function From() {
  if (stands.value.length === 0) return <Points title={words.noStands} />;
  return (
    <section class={styles.part}>
      <h3>{isComingIn() ? words.toTitle : words.fromTitle}</h3>
      <div class={styles.choices}>
        {stands.value.map((node) => (
          <Key
            key={node.id}
            pressed={standNow.value === node.id}
            onPress={() => (isComingIn() ? taxiTo(node.id) : placeAt(node.id))}
          >
            {markedText(paintedLang(), node.name ?? node.id)}
          </Key>
        ))}
      </div>
    </section>
  );
}

/** What is named most often comes first. */
const POINT_KINDS = ['hold', 'junction', 'runway'] as const;
const STRETCH_KINDS = ['taxiway', 'apron', 'runway'] as const;

/**
 * Every point but the stands: what a tap on the plan does, placing the aircraft, without the plan.
 */
function Points({ title }: { title: string }) {
  const plan = documents.value.field?.taxi ?? { nodes: [], edges: [] };
  const points = POINT_KINDS.flatMap((kind) => plan.nodes.filter((node) => node.kind === kind));
  if (points.length === 0) return null;
  return (
    <section class={styles.part} aria-label={title}>
      <h3>{title}</h3>
      <div class={styles.choices}>
        {points.map((node) => (
          <Key key={node.id} pressed={day.placed() === node.id} onPress={() => placeAt(node.id)}>
            {pointCalled(node, plan, words.points)}
          </Key>
        ))}
      </div>
    </section>
  );
}

function Entries() {
  const planned = day.out();
  if (planned === null || planned.entries.length < 1 || planned.entry === null) return null;
  return (
    <section class={styles.part}>
      <h3>{words.entryTitle(planned.entry.end)}</h3>
      <ul class={styles.rows}>
        {planned.entries.map((entry) => (
          <li key={`${entry.hold} ${entry.rollsFromM}`}>
            <Key
              className={styles.row ?? ''}
              pressed={entry === planned.entry}
              onPress={() =>
                enterAt(
                  { end: entry.end, hold: entry.hold, intersection: entry.rollsFromM > 0 },
                  entry.rollsFromM,
                )
              }
            >
              <span>{entryWords(entry)}</span>
              <small>
                {words.taxiDistance(length(entry.taxiM))}; {fitWords(entry)}
              </small>
            </Key>
          </li>
        ))}
      </ul>
    </section>
  );
}

function entryWords({ name, hold, runM, rollsFromM, backtrackM }: OfferedEntry): string {
  const called = name ?? hold;
  if (rollsFromM > 0) return words.intersection(called, length(runM, 'down'));
  return backtrackM > 0
    ? words.backtrack(called, length(runM, 'down'), length(backtrackM))
    : words.wholeRun(called, length(runM, 'down'));
}

/** Whether today's planned run fits what remains. */
function fitWords({ runM }: OfferedEntry): string {
  const planned = day.today()?.takeoff.planned;
  const neededM = planned?.because === null ? planned.figures.runM.value : null;
  if (neededM === null) return words.runUnknown;
  const leftM = runM - neededM;
  return leftM < 0
    ? words.runShort(neededLength(neededM, runM), aboutLength(-leftM, 'up'))
    : words.runNeeded(neededLength(neededM, runM), aboutLength(leftM, 'down'));
}

function Routes() {
  const parts = taxiParts.value;
  const taken = day.route();
  const others = day.out()?.alternatives;
  if (parts === null || taken === null || others === undefined) return null;
  const all = [taken, ...others].sort((a, b) => a.lengthM - b.lengthM);
  return (
    <section class={styles.part}>
      <h3>{words.routesTitle}</h3>
      {others.length === 0 && <p>{words.routesNone}</p>}
      <ul class={styles.rows}>
        {all.map((one) => (
          <li key={parts.routeKey(one)}>
            <Key
              className={styles.row ?? ''}
              pressed={one === taken}
              onPress={() => takeVia(one === all[0] ? null : parts.routeKey(one))}
            >
              <span>{words.way(routeNames(one), length(one.lengthM))}</span>
              {one.crossings.length > 0 && (
                <small>
                  {words.crossesRunways(one.crossings.map(({ runway }) => runway).join(', '))}
                </small>
              )}
            </Key>
          </li>
        ))}
      </ul>
    </section>
  );
}

function Turns() {
  if (day.turns().length === 0) return null;
  return (
    <section class={styles.part}>
      <h3>{words.turnsTitle}</h3>
      <ol class={styles.list}>
        {day.turns().map((turn) => (
          <li key={turn.atM}>
            {turn.canBeMade ? (
              <>
                {words.turn(turn.turnDeg, turn.onto, wholeNumber(Math.floor(turn.maxKt)))}
                <small>
                  {' '}
                  {words.turnBound[turn.boundBy]}
                  {turn.radiusM !== null && `; ${words.turnRadius(length(turn.radiusM))}`}
                </small>
              </>
            ) : (
              turnWords(turn)
            )}
          </li>
        ))}
      </ol>
    </section>
  );
}

/** Every stretch as a key that stays down while it is closed: what a tap on the plan does, without the plan. */
function Closed() {
  const plan = documents.value.field?.taxi ?? { nodes: [], edges: [] };
  const edges = STRETCH_KINDS.flatMap((kind) => plan.edges.filter(({ on }) => on === kind));
  const parts = taxiParts.value;
  if (parts === null || edges.length === 0) return null;
  const closed = new Set(day.inputs().taxiClosed);
  return (
    <section class={styles.part} aria-label={words.closedTitle}>
      <h3>{words.closedTitle}</h3>
      <p class={styles.about}>{words.closedHint}</p>
      <div class={styles.choices}>
        {edges.map((edge) => {
          const id = parts.stretchId(edge);
          const isClosed = closed.has(id);
          return (
            <Key key={id} pressed={isClosed} onPress={() => closeStretch(id, !isClosed)}>
              {words.stretchName(edge.name, ...endsCalled(edge, plan, words.points))}
            </Key>
          );
        })}
      </div>
    </section>
  );
}

/** The device's own position, requested here and nowhere else. */
function Own() {
  const isOn = position.value.kind === 'known' || position.value.kind === 'waiting';
  return (
    <section class={styles.part}>
      <p>{words.deviceAbout}</p>
      <Device />
      <Key onPress={isOn ? leavePosition : followPosition}>
        {isOn ? words.leaveDevice : words.useDevice}
      </Key>
    </section>
  );
}
