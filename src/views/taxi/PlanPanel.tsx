/** The plan with the route on it; a tap says where the aircraft is, or closes a stretch. */

import type { ComponentChildren, JSX } from 'preact';
import { useState } from 'preact/hooks';
import { day, documents } from '../../board/board';
import {
  closeStretch,
  hasLanded,
  isComingIn,
  placeAt,
  taxiParts,
  taxiTo,
} from '../../board/flight/taxi';
import { paintedLang } from '../../board/language';
import type { AsTold, Field, Route, TaxiEdge, TaxiNode } from '../../core';
import { planUp } from '../../device/preferences';
import { Key } from '../../parts/key/Key';
import { markedText } from '../../parts/marked';
import { turnWords } from '../../parts/pace';
import type { Picked } from '../../parts/plan/Plan';
import { length } from '../../parts/units';
import { endsCalled, meetingAt, pointCalled } from './called';
import { FieldPlan } from './FieldPlan';
import { faultWords, problemWords, tellRoute } from './route';
import styles from './Taxi.module.css';
import { words } from './words';

/** The keys over the plan and the gaps around them, px: tokens.css, --key-moving and twice --s-2. */
const KEYS_PX = 80;

/** The plan, what to know about the route, and what was tapped. */
export function PlanPanel({
  onRoute,
  onTold,
}: {
  onRoute: () => void;
  onTold: () => void;
}): JSX.Element | null {
  const [picked, setPicked] = useState<Picked | null>(null);
  const [closer, setCloser] = useState(0);
  const { field } = documents.value;
  const parts = taxiParts.value;
  if (field === null || parts === null) return <div class={styles.panel} />;
  const shown = day.route();
  const asTold = day.asTold();
  const isTold = (asTold?.route ?? null) !== null;
  const spoken = tellRoute(day.told(), day.settled().controlled === true);
  return (
    <div class={styles.panel}>
      <p class="spoken">{spoken}</p>
      <div class={styles.drawn}>
        <FieldPlan
          route={shown}
          label={`${words.plan(field.name)}. ${spoken}`}
          goneM={day.progress()?.goneM ?? 0}
          picked={picked}
          onPick={setPicked}
          closer={closer}
          coveredPx={KEYS_PX}
          upDeg={planUp.value === 'way' && shown !== null ? headingAhead(shown) : null}
        />
        <div class={styles.tools}>
          <div class={styles.routes}>
            <Key onPress={onRoute}>{words.route}</Key>
            <Key moving className={styles.told ?? ''} pressed={isTold} onPress={onTold}>
              {isTold ? words.told.using(saidNames(asTold?.items ?? [])) : words.told.key}
            </Key>
          </div>
          <Key
            className={styles.turn ?? ''}
            onPress={() => {
              planUp.value = planUp.value === 'north' ? 'way' : 'north';
            }}
          >
            {planUp.value === 'north' ? words.northUp : words.wayUp}
          </Key>
        </div>
      </div>
      {picked === null ? (
        <Note />
      ) : (
        <PickedBar
          picked={picked}
          field={field}
          onCloser={() => setCloser(closer + 1)}
          onDone={() => setPicked(null)}
        />
      )}
    </div>
  );
}

/** The taxiways and points that were said, in order. */
const saidNames = (items: AsTold['items']): string =>
  items.flatMap((item) => ('name' in item ? [item.name] : [])).join(' ');

/** The direction of the route ahead, degrees true, from the last point passed. */
function headingAhead({ points }: Route): number {
  const goneM = day.progress()?.goneM ?? 0;
  let atM = 0;
  for (const [index, point] of points.entries()) {
    const next = points[index + 1];
    if (next === undefined) break;
    const [east, north] = [next.eastM - point.eastM, next.northM - point.northM];
    atM += Math.hypot(east, north);
    if (atM > goneM) return (Math.atan2(east, north) * 180) / Math.PI;
  }
  return 0;
}

/** Why the route can't be found, or what is unusual about it. */
function Note() {
  const said = [noteOf(), assumedNote(), closedNote()].filter((one) => one !== null).join(' ');
  return said === '' ? null : (
    <p class={styles.note} role="status">
      {said}
    </p>
  );
}

/** That where to hold on the route is nobody's survey. */
function assumedNote(): string | null {
  const count = day.holdsAssumed();
  return count === 0 ? null : words.holdsAssumed(count);
}

/** What is closed today, which the next sortie from here takes over. */
function closedNote(): string | null {
  const closed = new Set(day.inputs().taxiClosed);
  const edges = documents.value.field?.taxi.edges ?? [];
  const names = edges
    .filter((edge) => closed.has(taxiParts.value?.stretchId(edge) ?? ''))
    .map(({ name }) => name);
  return names.length === 0 ? null : words.closed([...new Set(names)].join(', '));
}

function noteOf(): string | null {
  const fault = day.fault();
  if (fault !== null) return faultWords(fault);
  const [problem] = day.asTold()?.problems ?? [];
  if (problem !== undefined) return words.told.noLonger(problemWords(problem));
  const tight = day.turns().find(({ canBeMade }) => !canBeMade);
  if (tight !== undefined) return words.tightNote(turnWords(tight));
  // Once landed, the pilot sees where it leaves.
  const exit = hasLanded() ? null : (day.back()?.exit ?? null);
  const usedM = day.route()?.runwayM ?? 0;
  if (usedM > 0) return words.runwayUsed(length(usedM));
  const entry = day.out()?.entry ?? null;
  if (entry !== null && entry.backtrackM > 0)
    return words.backtrackNote(entry.name ?? entry.hold, entry.end, length(entry.backtrackM));
  if (exit === null) return null;
  return exit.backtrackM > 0
    ? words.exitBack(exit.name, length(exit.backtrackM))
    : words.exitAt(exit.name, length(exit.fromThresholdM));
}

function PickedBar({
  picked,
  field,
  onCloser,
  onDone,
}: {
  picked: Picked;
  field: Field;
  onCloser: () => void;
  onDone: () => void;
}) {
  const act = (work: () => void) => () => {
    work();
    onDone();
  };
  return (
    <div class={styles.picked}>
      <b>
        {picked.kind === 'node' ? nodeWords(picked.node, field) : edgeWords(picked.edge, field)}
      </b>
      {picked.kind === 'node' ? (
        <>
          {isComingIn() && picked.node.kind === 'stand' && (
            <Key onPress={act(() => taxiTo(picked.node.id))}>{words.taxiThere}</Key>
          )}
          <Key look="pick" onPress={act(() => placeAt(picked.node.id))}>
            {words.here}
          </Key>
        </>
      ) : (
        <CloseKey edge={picked.edge} onDone={onDone} />
      )}
      <Key label={words.closer} onPress={onCloser}>
        +
      </Key>
      <Key onPress={onDone}>{words.leaveIt}</Key>
    </div>
  );
}

function CloseKey({ edge, onDone }: { edge: TaxiEdge; onDone: () => void }) {
  const id = taxiParts.value?.stretchId(edge) ?? '';
  const isClosed = day.inputs().taxiClosed.includes(id);
  return (
    <Key
      look={isClosed ? 'plain' : 'stop'}
      onPress={() => {
        closeStretch(id, !isClosed);
        onDone();
      }}
    >
      {isClosed ? words.openIt : words.closeIt}
    </Key>
  );
}

const edgeWords = (edge: TaxiEdge, { taxi }: Field) =>
  words.stretchName(edge.name, ...endsCalled(edge, taxi, words.points));

/** A point by its name, or by what meets there. */
function nodeWords(node: TaxiNode, { taxi }: Field): ComponentChildren {
  if (node.assumed) return words.assumedHold;
  if (node.name !== undefined) return markedText(paintedLang(), node.name);
  const names = meetingAt(node, taxi.edges);
  return names.length > 1
    ? words.junction(names.join(', '))
    : pointCalled(node, taxi, words.points);
}
