/** The field's plan with a route on it. */

import type { JSX } from 'preact';
import { day, documents } from '../../board/board';
import { taxiParts } from '../../board/flight/taxi';
import type { Route } from '../../core';
import { type Picked, Plan } from '../../parts/plan/Plan';
import { words } from './words';

/** The plan of the field; nothing before its code is loaded. */
export function FieldPlan(props: {
  route: Route | null;
  /** What it shows, for those who can't see it. */
  label: string;
  /** How many metres of the route lie behind the aircraft. */
  goneM?: number;
  picked?: Picked | null;
  onPick?: (picked: Picked | null) => void;
  closer?: number;
  upDeg?: number | null;
}): JSX.Element | null {
  const { route, label, goneM = 0, picked = null, closer = 0, upDeg = null } = props;
  const { field } = documents.value;
  const parts = taxiParts.value;
  if (field === null || parts === null) return null;
  const closed = new Set(day.inputs().taxiClosed);
  return (
    <Plan
      strips={parts.stripsOf(field)}
      nodes={field.taxi.nodes}
      edges={field.taxi.edges}
      isClosed={(edge) => closed.has(parts.stretchId(edge))}
      using={day.wind().using}
      route={route?.points ?? []}
      goneM={goneM}
      crossings={route?.crossings ?? []}
      hotSpots={field.taxi.hotSpots ?? []}
      from={route?.nodes[0] ?? day.from()}
      to={route?.nodes.at(-1) ?? null}
      picked={picked}
      onPick={props.onPick ?? (() => {})}
      closer={closer}
      upDeg={upDeg}
      windFromDeg={day.wind().fromTrueDeg}
      words={{ ...words.planWords, label }}
    />
  );
}
