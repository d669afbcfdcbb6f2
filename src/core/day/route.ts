/** Fifth stage: the route on the ground, its pace and its calls. */

import type { Aircraft } from '../aircraft/aircraft';
import type { Designator, Field } from '../airfield/field';
import type { Phase } from '../procedure/procedure';
import { type Call, type CallFacts, fieldCalled } from '../radio/call';
import { dueCallKind } from '../radio/dueCall';
import type { Purpose } from '../runway/question';
import { sameData } from '../same';
import type { Inputs } from '../sortie/entry';
import type { Sortie, Stamp } from '../sortie/fold';
import type { AsTold } from '../taxi/asTold';
import type { TaxiFault } from '../taxi/fault';
import type { NodeId } from '../taxi/graph';
import type { Progress, Turn } from '../taxi/pace';
import type { Crossing, Route, RouteMark } from '../taxi/route';
import type { RouteIn, RouteInQuestion } from '../taxi/routeIn';
import type { RouteOut, RouteOutQuestion } from '../taxi/routeOut';
import type { TaxiRules } from '../taxi/rules';
import type { Told } from '../taxi/told';
import { isControlled } from './conditions';
import type { Memo } from './memo';
import { type Getters, type LateParts, present, type Sources } from './sources';
import type { TodayBrief } from './today';

/** Where the aircraft stands, and what it may roll on. */
export interface Standing {
  /** The stand the pilot named, or the only one. */
  readonly stand: NodeId | null;
  /** Where the pilot put the aircraft on this route; null if nowhere. */
  readonly placed: NodeId | null;
  /** Where the route to the runway begins; null if only the pilot can know. */
  readonly from: NodeId | null;
  readonly rules: TaxiRules;
}

/** The route on the ground. */
export interface OnTheGround {
  /** To the runway in use; null for a landing, and without code or field. */
  readonly out: RouteOut | null;
  /** From the exit after landing to the stand; null for a take-off. */
  readonly back: RouteIn | null;
  /** The route as told, with what keeps it from being followed; null if nobody told one. */
  readonly asTold: AsTold | null;
  /** Lays a route as it might be told over the plan; null without code or field. */
  readonly layTold: ((text: string) => AsTold) | null;
  /** The route taken; null if none, and `fault` says why. */
  readonly route: Route | null;
  readonly fault: TaxiFault | null;
  /** The route in items to tell; empty if none. */
  readonly told: readonly Told[];
  /** How many of the points to hold at on it nobody surveyed: put where one is usually painted. */
  readonly holdsAssumed: number;
  /** Its turns, with the speed for each. */
  readonly turns: readonly Turn[];
  /** Progress along the route by points passed; null without one. */
  readonly progress: Progress | null;
  /** Null if no turn is left. */
  readonly nextTurn: Turn | null;
  /** Null if no crossing is left. */
  readonly nextCrossing: Crossing | null;
  /** What is done at the next point; null if none is left, and without a route. */
  readonly passing: Passing | null;
  /** The next crossing, or the last one once none is left, for a step; null if there is none. */
  readonly crossingStep: CallFacts['crossing'];
  /** Time the route takes and has taken; null without one. */
  readonly pace: Pace | null;
  /** What calls are made of; null without a field. */
  readonly callFacts: CallFacts | null;
  /** All calls, in order. */
  readonly calls: readonly Call[];
  /** Null if no call is left. */
  readonly dueCall: Call | null;
  /** The painted name of the holding point it is for; null where it has none. */
  readonly dueCallAt: string | null;
}

/** What passing the next point of a route means. */
export type Passing =
  | { readonly kind: 'leave' | 'pass' | 'arrive'; readonly mark: RouteMark }
  /** It is where one holds before the crossing, or the first point beyond, where no hold is drawn. */
  | { readonly kind: 'cross'; readonly mark: RouteMark; readonly crossing: Crossing };

/** Seconds. */
export interface Pace {
  /** Since the watch started; null before. */
  readonly elapsedS: number | null;
  /** At taxi speed, for the whole route and what is left of it; null if unknown. */
  readonly expectedS: number | null;
  readonly leftS: number | null;
}

const nodeOf = (field: Field | null, id: NodeId | null | undefined) =>
  field?.taxi.nodes.find((node) => node.id === id) ?? null;

/** The stand: the one that is named, or the only one there is. */
export function standOf(field: Field | null, named: NodeId | null): NodeId | null {
  if (nodeOf(field, named) !== null) return named;
  const stands = field?.taxi.nodes.filter(({ kind }) => kind === 'stand') ?? [];
  return stands.length === 1 ? (stands[0]?.id ?? null) : null;
}

/** After stopping on the runway or landing, no stand counts until the pilot names one. */
export function isOffStand(stamps: readonly Pick<Stamp, 'what'>[]): boolean {
  const last = stamps.at(-1)?.what;
  return last === 'stopping' || last === 'landed';
}

/** Where the aircraft stands, needed before an end is chosen. */
export function standingOf(
  { sortie, documents, parts }: Sources,
  taxiClosed: () => Inputs['taxiClosed'],
  memo: Memo,
): Getters<Standing> {
  const { field, aircraft } = documents;
  const stand = memo(() => standOf(field(), sortie().inputs.stand));
  const placed = memo(() => {
    const point = sortie().taxied.find((one) => one.placed)?.point ?? null;
    return nodeOf(field(), point)?.id ?? null;
  });
  return {
    stand,
    placed,
    from: memo(() => placed() ?? (isOffStand(sortie().stamps) ? null : stand())),
    rules: memo(
      () => ({
        closed: taxiClosed(),
        neededWidthM: present(parts.taxi())?.neededWidthM(aircraft()) ?? null,
      }),
      sameData,
    ),
  };
}

interface RouteSources extends Getters<Standing> {
  readonly purpose: () => Purpose;
  /** The end in use, even without a wind. */
  readonly using: () => Designator | null;
  readonly today: () => TodayBrief | null;
  /** The pressure someone gave, hPa; null if nobody did. */
  readonly qnhHpa: () => number | null;
  /** The phase the steps have come to, which depends on the route in turn; null if none is known. */
  readonly phase: () => Phase | null;
}

/** The route on the ground. */
export function routeOf(
  { sortie, documents: { field, aircraft }, secondMs, parts }: Sources,
  { purpose, using, today, qnhHpa, phase, stand, placed, from, rules }: RouteSources,
  memo: Memo,
): Getters<OnTheGround> {
  const taxi = memo(() => present(parts.taxi()));
  const chosen = memo(() => {
    const { taxiEntry, taxiVia, taxiTold } = sortie().inputs;
    return { entry: taxiEntry, via: taxiVia, told: taxiTold };
  }, sameData);
  const landingM = memo(() => landingLengthM(today(), aircraft()));

  const outAsked = memo((): RouteOutQuestion | null => {
    const of = field();
    if (of === null || purpose() === 'landing') return null;
    return { field: of, from: from(), end: using(), rules: rules(), ...chosen() };
  });
  const backAsked = memo((): RouteInQuestion | null => {
    const of = field();
    if (of === null || purpose() !== 'landing') return null;
    const asked = { field: of, end: using(), landingM: landingM(), to: stand(), from: placed() };
    return { ...asked, rules: rules(), told: chosen().told };
  });
  const out = memo((): RouteOut | null => {
    const [code, asked] = [taxi(), outAsked()];
    return code === null || asked === null ? null : code.findRouteOut(asked);
  });
  const back = memo((): RouteIn | null => {
    const [code, asked] = [taxi(), backAsked()];
    return code === null || asked === null ? null : code.findRouteIn(asked);
  });
  const layTold = memo(() => {
    const [code, leaving, coming] = [taxi(), outAsked(), backAsked()];
    if (code === null) return null;
    if (leaving !== null)
      return (text: string) => code.layAsTold(text, code.toldOutQuestion(leaving));
    if (coming !== null) return (text: string) => code.layAsTold(text, code.toldInQuestion(coming));
    return null;
  });
  const route = memo(() => out()?.route ?? back()?.route ?? null);

  const turns = memo((): readonly Turn[] => {
    const [code, taken, flown] = [taxi(), route(), aircraft()];
    return code === null || taken === null || flown === null ? [] : code.turnsOf(taken, flown);
  });
  const progress = memo((): Progress | null => {
    const [code, taken] = [taxi(), route()];
    if (code === null || taken === null) return null;
    const passed = sortie().taxied.filter((one) => !one.placed);
    return code.progressOn(
      taken,
      passed.map(({ point, at }) => ({ node: point, ms: at.wallMs })),
    );
  });
  const nextCrossing = memo(
    () => route()?.crossings.find(({ atM }) => atM > (progress()?.goneM ?? 0)) ?? null,
  );
  // Nobody asks to cross the runway it is on; where nobody is asked, that is when it is said.
  const isAsked = memo(() => {
    const of = field();
    return of !== null && isControlled(of);
  });
  const crossingToCall = memo(
    () =>
      route()?.crossings.find(
        (crossing) =>
          crossing.atM > (progress()?.goneM ?? 0) &&
          !(isAsked() && isBeingCrossed(crossing, progress())),
      ) ?? null,
  );
  const callFacts = memo(() =>
    callFactsOf({
      field: field(),
      inputs: sortie().inputs,
      stand: purpose() === 'landing' ? stand() : from(),
      using: using(),
      out: out(),
      route: route(),
      crossing: crossingToCall(),
      qnhHpa: qnhHpa(),
    }),
  );
  const calls = memo((): readonly Call[] => {
    const [code, facts, radio] = [taxi(), callFacts(), field()?.radio];
    if (code === null || facts === null || radio === undefined) return [];
    // A route as told that ends before a runway to be crossed leads to no line-up yet.
    const endsBefore = out()?.asTold?.route != null && out()?.entry == null;
    return code.CALLS.filter(
      (kind) =>
        (kind !== 'crossing' || facts.crossing !== null) && (kind !== 'line-up' || !endsBefore),
    ).map((kind) => code.callFor(kind, radio, facts));
  });
  const dueKind = memo(() =>
    dueCallKind({
      purpose: purpose(),
      phase: phase(),
      stamps: stampsOfThisTry(sortie()),
      progress: progress(),
      crosses: crossingToCall() !== null,
    }),
  );

  return {
    out,
    back,
    asTold: memo(() => out()?.asTold ?? back()?.asTold ?? null),
    layTold,
    route,
    fault: memo(() => out()?.fault ?? back()?.fault ?? null),
    told: memo((): readonly Told[] => {
      const [code, of] = [taxi(), field()];
      if (code === null) return [];
      const nameOf = (node: NodeId) => nodeOf(of, node)?.name ?? null;
      const telling = { route: route(), turns: turns(), nameOf };
      const [leaving, coming] = [out(), back()];
      if (leaving?.route || leaving?.entry) return code.toldOut(telling, leaving.entry);
      if (coming === null || coming.fault !== null) return [];
      return code.toldIn(telling, nameOf(stand() ?? '') ?? '', coming.exit, using());
    }),
    holdsAssumed: memo(() => {
      const holds = [out()?.entry?.hold, ...(route()?.crossings ?? []).map(({ hold }) => hold)];
      return holds.filter((hold) => nodeOf(field(), hold)?.assumed === true).length;
    }),
    turns,
    progress,
    nextTurn: memo(() => turns().find(({ atM }) => atM >= (progress()?.goneM ?? 0)) ?? null),
    nextCrossing,
    crossingStep: memo(
      () => crossingFacts(field(), route(), nextCrossing() ?? route()?.crossings.at(-1) ?? null),
      sameData,
    ),
    passing: memo(() => passingAt(progress(), nextCrossing())),
    pace: memo(() => paceOf(taxi(), route(), progress(), sortie(), aircraft(), secondMs)),
    callFacts,
    calls,
    dueCall: memo(() => calls().find(({ kind }) => kind === dueKind()) ?? null),
    dueCallAt: memo(() => {
      if (dueKind() === 'crossing') return callFacts()?.crossing?.hold ?? null;
      return dueKind() === 'line-up' && phase() !== 'line-up' ? (callFacts()?.hold ?? null) : null;
    }),
  };
}

/** What was stamped since the take-off was begun anew. */
const stampsOfThisTry = ({ stamps, run }: Pick<Sortie, 'stamps' | 'run'>): readonly Stamp[] =>
  stamps.filter(({ pass }) => pass === (run?.passes.roll ?? 1));

/** Whether the holding point before a crossing was left for the runway: leave was given. */
const isBeingCrossed = ({ hold }: Crossing, progress: Progress | null): boolean =>
  hold !== null && progress !== null && progress.next !== null && progress.last?.node === hold;

/** What the next point is passed as. */
export function passingAt(
  progress: Pick<Progress, 'next' | 'last' | 'leftM' | 'goneM'> | null,
  crossing: Crossing | null,
): Passing | null {
  const mark = progress?.next ?? null;
  if (progress === null || mark === null) return null;
  const isGuard = crossing?.hold === mark.node;
  const isBeyond = crossing !== null && crossing.hold === null && mark.atM >= crossing.atM;
  if (crossing !== null && (isGuard || isBeyond)) return { kind: 'cross', mark, crossing };
  if (progress.last === null && mark.atM === 0) return { kind: 'leave', mark };
  return { kind: mark.atM >= progress.goneM + progress.leftM ? 'arrive' : 'pass', mark };
}

/** From the threshold to where today's landing stops, m: expected, else the book's run. */
function landingLengthM(today: TodayBrief | null, aircraft: Aircraft | null): number | null {
  const expected = today?.landing.expected;
  const neededM = expected?.because === null ? expected.figures.neededM.value : null;
  return neededM ?? aircraft?.landing.runM ?? null;
}

function paceOf(
  taxi: LateParts['taxi'] | null,
  route: Route | null,
  progress: Progress | null,
  { taxied }: Pick<Sortie, 'taxied'>,
  aircraft: Aircraft | null,
  secondMs: () => number,
): Pace | null {
  if (taxi === null || route === null || progress === null) return null;
  const { sinceMs, leftM, next } = progress;
  const speedKt = aircraft?.taxi.maxKt ?? null;
  const arrivedMs = next === null ? taxied.at(-1)?.at.wallMs : undefined;
  const takes = (metres: number) => (speedKt === null ? null : taxi.secondsAt(metres, speedKt));
  return {
    elapsedS: sinceMs === null ? null : ((arrivedMs ?? secondMs()) - sinceMs) / 1000,
    expectedS: takes(route.lengthM),
    leftS: takes(leftM),
  };
}

interface CallSources {
  readonly field: Field | null;
  readonly inputs: Pick<Inputs, 'callsign' | 'departTo'>;
  readonly stand: NodeId | null;
  readonly using: Designator | null;
  readonly out: RouteOut | null;
  readonly route: Route | null;
  readonly crossing: Crossing | null;
  readonly qnhHpa: number | null;
}

function crossingFacts(
  field: Field | null,
  route: Route | null,
  crossing: Crossing | null,
): CallFacts['crossing'] {
  if (crossing === null) return null;
  return {
    runway: crossing.runway,
    on: route?.legs[crossing.leg]?.name ?? null,
    hold: nodeOf(field, crossing.hold)?.name ?? null,
    along: crossing.alongM > 0,
  };
}

/** Taxiways and points as said, and runways gone along. */
const saidNames = ({ items }: AsTold): readonly string[] =>
  items.flatMap((item) => {
    if (item.code === 'taxiway' || item.code === 'point') return [item.name];
    return item.code === 'backtrack' ? [item.runway] : [];
  });

function callFactsOf(sources: CallSources): CallFacts | null {
  const { field, inputs, stand, using, out, route, crossing, qnhHpa } = sources;
  if (field === null) return null;
  const nameOf = (node: NodeId | null) => nodeOf(field, node)?.name ?? null;
  const entry = out?.entry ?? null;
  const legs = route?.legs ?? [];
  // A route as told may end before the runway.
  const limit = nodeOf(field, route?.nodes.at(-1));
  const limitName = out?.asTold && limit?.kind === 'hold' ? (limit.name ?? null) : null;
  return {
    callsign: inputs.callsign.trim() || null,
    field: fieldCalled(field),
    stand: nameOf(stand),
    hold: entry?.name ?? limitName,
    told: out?.asTold?.route ? saidNames(out.asTold) : null,
    end: using,
    via: legs.filter(({ on }) => on !== 'apron').map(({ name }) => name),
    crossing: crossingFacts(field, route, crossing),
    crossed: (route?.crossings ?? []).map(({ runway }) => runway),
    backtrack: (entry?.backtrackM ?? 0) > 0,
    intersection: (entry?.rollsFromM ?? 0) > 0,
    departTo: inputs.departTo,
    qnhHpa,
  };
}
