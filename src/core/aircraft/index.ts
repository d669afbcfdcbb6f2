/** What an aircraft is, its load, and its physics. */

export type { Aircraft } from './aircraft';
export {
  carriedKg,
  isSameLoad,
  type Load,
  type Loading,
  type LoadStation as Station,
  usualLoad,
} from './load';
export type { Balance, LoadEnvelope as Envelope } from './loadEnvelope';
export { type Exceeded, type LoadFigures as LoadSheet, loadSheet } from './loadSheet';
