/** The route on the ground. */

export type { AsTold, ToldProblem } from './asTold';
export type { Exit } from './exits';
export type { TaxiFault } from './fault';
export type { NodeId, TaxiEdge, TaxiNode } from './graph';
export type { Progress, Stretch, Turn } from './pace';
export type { Crossing, Route, RouteMark as Mark } from './route';
export type { RouteIn as WayIn } from './routeIn';
export type { ChosenEntry, OfferedEntry, RouteOut as WayOut } from './routeOut';
export { type StretchId, stretchId } from './rules';
export type { RunwayStrip as Strip, StripEnd } from './runwayStrip';
export type { Told } from './told';
