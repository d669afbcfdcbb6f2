/** The door of core: everything else imports core from here. */

export * from './aircraft';
export * from './airfield';
export {
  degreesOf,
  type MagneticDeg,
  magneticDeg,
  type North,
  relativeDeg,
  type TrueDeg,
  toMagnetic,
  toTrue,
  trueDeg,
  turnDeg,
  wrapDeg,
} from './angle';
export * from './day';
export {
  besideLine,
  type DocumentLine,
  documentLines,
  inOrder,
  lineOf,
  nextPlace,
  type OwnedDocument,
} from './documentLines';
export type { DocumentProblem, FormProblem, ShapeProblem } from './documentProblem.schema';
export * from './earth';
export type { DocumentFault, Fault, ValueFault } from './fault';
export { type Cause, type Figure, known, type SourceId, unknown, type Why } from './figure';
export { found, matchOf, type Searched, slipsIn } from './found';
export { type InLanguages, languageOf, primarySubtag, textIn } from './language';
export type { Lesson, LessonHeader } from './lesson/lesson.schema';
export {
  askDay,
  loadDocumentCheck,
  loadDocumentFaults,
  loadDocumentReader,
  loadFitter,
  loadKeptDocumentReader,
  loadLessonCheck,
  loadLogbook,
  loadMapReader,
  loadPart,
  loadReportReader,
  loadWorldReader,
} from './loaders';
export { LONG_LEAD_IN_M } from './map/assumed';
export type { MapExtract, MapField, MapNote } from './map/readMapExtract';
export {
  MOST_PICTURE_BYTES,
  type PictureHead,
  type PictureProblem,
  readPictureHead,
} from './picture';
export { plainly, shownPlainly, type TextFault } from './plainText';
export * from './procedure';
export * from './radio';
export type { CheckedDocument, ReadDocument } from './readDocument.schema';
export { isReservedName } from './reservedName';
export * from './runway';
export { sameData, sameDocument } from './same';
export * from './sortie';
export * from './taxi';
export {
  HPA_PER_INHG,
  KG_PER_LB,
  KT_PER_MPS,
  M_PER_FT,
  RADIANS_PER_DEGREE,
  type Unit,
} from './units';
export * from './weather';
export type { World, WorldKind, WorldSearch } from './world';
export { takenOn } from './world/notice';
export * from './writing';
/** Loads what works out magnetic variation, and the tables for a date; rejects with RangeError outside 1900 to 2030. */
export const loadVariation = (at: Date) =>
  import('./earth/variationTable').then(({ variationTableFor }) => variationTableFor(at));
