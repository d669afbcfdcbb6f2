/** The field's plan with a route on it. */

import type { JSX } from 'preact';
import { useMemo } from 'preact/hooks';
import { day, documents } from '../../board/board';
import { taxiParts } from '../../board/flight/taxi';
import type { Route, TaxiEdge } from '../../core';
import { type Picked, Plan } from '../../parts/plan/Plan';
import { words } from './words';

/** The same empty list every time. */
const NONE: readonly never[] = [];

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
  coveredPx?: number;
}): JSX.Element | null {
  const { route, label, goneM = 0, picked = null, closer = 0, upDeg = null } = props;
  const { coveredPx = 0 } = props;
  const { field } = documents.value;
  const parts = taxiParts.value;
  const closed = day.inputs().taxiClosed;
  // The plan prepares its lines anew only when another stretch is closed.
  const isClosed = useMemo(() => {
    const ids = new Set(closed);
    return (edge: TaxiEdge) => parts !== null && ids.has(parts.stretchId(edge));
  }, [closed.join(' '), parts]);
  if (field === null || parts === null) return null;
  return (
    <Plan
      strips={parts.stripsOf(field)}
      nodes={field.taxi.nodes}
      edges={field.taxi.edges}
      isClosed={isClosed}
      using={day.wind().using}
      route={route?.points ?? NONE}
      goneM={goneM}
      crossings={route?.crossings ?? NONE}
      hotSpots={field.taxi.hotSpots ?? NONE}
      from={route?.nodes[0] ?? day.from()}
      to={route?.nodes.at(-1) ?? null}
      picked={picked}
      onPick={props.onPick ?? (() => {})}
      closer={closer}
      upDeg={upDeg}
      coveredPx={coveredPx}
      windFromDeg={day.wind().fromTrueDeg}
      words={{ ...words.planWords, label }}
    />
  );
}
