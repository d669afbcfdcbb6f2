/** The changes to a field being drawn, and their effect. */

import type { Place } from '../earth/place';
import { decimetre, planPoint } from '../earth/planPoint';
import type { NodeId } from '../taxi/graph';
import type { StretchId } from '../taxi/rules';
import type { Changes } from '../writing/history';
import {
  type EdgeSetting,
  laid,
  type NodeSetting,
  nodeRemoved,
  nodeSet,
  pointPlaced,
  stretchRemoved,
  stretchSet,
} from './editPlan';
import {
  declaredIf,
  type EndSetting,
  endClosed,
  endSet,
  lineSet,
  mendsOfEnd,
  type NewRunway,
  numberSet,
  type RunwaySetting,
  runwayAdded,
  runwayRemoved,
  runwaySet,
  undoubted,
} from './editRunways';
import type { Snapped } from './editSnap';
import { needsVersion2 } from './faults';
import type { Designator, Field, HotSpot, Radio } from './field';
import type { RunwayLine } from './runwayLine';

/** One change to a field: plain data, so that a list of them can be stored and replayed. */
export type FieldEdit =
  | {
      readonly kind: 'head';
      readonly set: Partial<Pick<Field, 'code' | 'name' | 'about' | 'language'>>;
    }
  | { readonly kind: 'elevation'; readonly elevationFt: number }
  /** The reference point; what is drawn keeps its place on the earth. */
  | { readonly kind: 'place'; readonly at: Place }
  | { readonly kind: 'calm-wind'; readonly end: Designator | null }
  /** At an index of the list; one past its end adds, null removes. */
  | { readonly kind: 'radio'; readonly index: number; readonly to: Radio | null }
  | { readonly kind: 'hot-spot'; readonly index: number; readonly to: HotSpot | null }
  | { readonly kind: 'runway-added'; readonly runway: NewRunway }
  | { readonly kind: 'runway-removed'; readonly index: number }
  | { readonly kind: 'runway'; readonly index: number; readonly set: RunwaySetting }
  | { readonly kind: 'line'; readonly index: number; readonly line: RunwayLine }
  | ({ readonly kind: 'number'; readonly designator: Designator } & OfEnd)
  | ({ readonly kind: 'end'; readonly set: EndSetting } & OfEnd)
  | ({ readonly kind: 'closed'; readonly why: string | null } & OfEnd)
  | {
      readonly kind: 'placed';
      readonly what: 'stand' | 'hold' | 'junction';
      readonly at: Snapped;
    }
  /** A taxiway drawn on from a point, or started there. */
  | {
      readonly kind: 'laid';
      readonly from: NodeId | null;
      readonly at: Snapped;
      readonly on: 'taxiway' | 'apron';
      readonly name: string;
    }
  | { readonly kind: 'node'; readonly id: NodeId; readonly set: NodeSetting }
  | { readonly kind: 'node-removed'; readonly id: NodeId }
  | { readonly kind: 'stretch'; readonly id: StretchId; readonly set: EdgeSetting }
  | { readonly kind: 'stretch-removed'; readonly id: StretchId }
  /** Everything, as when starting afresh. */
  | { readonly kind: 'anew'; readonly field: Field };

interface OfEnd {
  readonly index: number;
  readonly side: 0 | 1;
}

/** The field after a change; the same object if the change has no effect. */
export function editedField(field: Field, edit: FieldEdit): Field {
  const edited = changed(field, edit);
  if (edited === field || edit.kind === 'anew') return edited;
  const version = needsVersion2(edited) ? 2 : 1;
  return edited.version === version ? edited : { ...edited, version };
}

function changed(field: Field, edit: FieldEdit): Field {
  switch (edit.kind) {
    case 'head':
      return { ...field, ...edit.set };
    case 'elevation':
      return { ...field, place: { ...field.place, elevationFt: edit.elevationFt } };
    case 'place':
      return placeSet(field, edit.at);
    case 'calm-wind': {
      const { calmWindEnd: _, ...rest } = field;
      return edit.end === null ? rest : { ...rest, calmWindEnd: edit.end };
    }
    case 'radio':
      return { ...field, radio: listSet(field.radio, edit.index, edit.to) };
    case 'hot-spot': {
      const hotSpots = listSet(field.taxi.hotSpots ?? [], edit.index, edit.to);
      const { hotSpots: _, ...taxi } = field.taxi;
      return { ...field, taxi: hotSpots.length === 0 ? taxi : { ...taxi, hotSpots } };
    }
    case 'runway-added':
      return runwayAdded(field, edit.runway);
    case 'runway-removed':
      return runwayRemoved(field, edit.index);
    case 'runway':
      return runwaySet(field, edit.index, edit.set);
    case 'line':
      return undoubted(lineSet(field, edit.index, edit.line), edit.index, [
        'length',
        'heading',
        'one-end',
      ]);
    case 'number':
      return undoubted(numberSet(field, edit.index, edit.side, edit.designator), edit.index, [
        'swapped',
        'number',
      ]);
    case 'end':
      return declaredIf(
        undoubted(endSet(field, edit.index, edit.side, edit.set), edit.index, mendsOfEnd(edit.set)),
        edit.index,
        edit.set,
      );
    case 'closed':
      return endClosed(field, edit.index, edit.side, edit.why);
    case 'placed':
      return pointPlaced(field, edit.what, edit.at);
    case 'laid':
      return laid(field, edit.from, edit.at, edit);
    case 'node':
      return nodeSet(field, edit.id, edit.set);
    case 'node-removed':
      return nodeRemoved(field, edit.id);
    case 'stretch':
      return stretchSet(field, edit.id, edit.set);
    case 'stretch-removed':
      return stretchRemoved(field, edit.id);
    case 'anew':
      return edit.field;
  }
}

function listSet<T>(list: readonly T[], index: number, to: T | null): T[] {
  return [...list.slice(0, index), ...(to === null ? [] : [to]), ...list.slice(index + 1)];
}

/**
 * If the reference point moves further than this, metres, the plan moves with it: the whole field
 * was placed elsewhere.
 */
const SAME_FIELD_M = 20_000;

function placeSet(field: Field, at: Place): Field {
  const place = { ...field.place, latDeg: at.latDeg, lonDeg: at.lonDeg };
  const shift = planPoint(field.place, at);
  if (shift === null || Math.hypot(shift.eastM, shift.northM) > SAME_FIELD_M) {
    return { ...field, place };
  }
  const stay = <T extends { xM: number; yM: number }>(point: T): T => ({
    ...point,
    xM: decimetre(point.xM - shift.eastM),
    yM: decimetre(point.yM - shift.northM),
  });
  const { nodes, edges, hotSpots } = field.taxi;
  return {
    ...field,
    place,
    taxi: {
      nodes: nodes.map(stay),
      edges,
      ...(hotSpots === undefined ? {} : { hotSpots: hotSpots.map(stay) }),
    },
  };
}

/** Names what a change sets, if doing it twice equals doing it once; null for all others. */
function sets(edit: FieldEdit): string | null {
  switch (edit.kind) {
    case 'head':
      return JSON.stringify([edit.kind, Object.keys(edit.set)]);
    case 'elevation':
      return edit.kind;
    case 'runway':
      return JSON.stringify([edit.kind, edit.index, Object.keys(edit.set)]);
    case 'end':
      return JSON.stringify([edit.kind, edit.index, edit.side, Object.keys(edit.set)]);
    case 'node':
      return JSON.stringify([edit.kind, edit.id, Object.keys(edit.set)]);
    case 'stretch':
      // Reversed, a stretch starts from its other point, and its direction is set again from there.
      return 'onlyFrom' in edit.set
        ? null
        : JSON.stringify([edit.kind, edit.id, Object.keys(edit.set)]);
    default:
      return null;
  }
}

/** What a history of a field needs to know about its changes. */
export const fieldChanges: Changes<Field, FieldEdit> = { edited: editedField, sets };
