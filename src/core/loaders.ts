/**
 * Loads the parts of core that come after the first answer. Those that may come before it are
 * exported by the door.
 */

import type { DayQuestion } from './day/askDay';

/** Loads the reader of whole reports; the first answer reads only their wind. */
export const loadReportReader = () =>
  import('./weather/readReport').then(({ readReport }) => readReport);

/** Loads the parts of a day that are code; for its magnetic model see `loadVariation`. */
export const loadPart = {
  /** What a whole report and the winds so far mean. */
  reports: () => import('./day/wholeReports'),
  /** Today's numbers from mass, air, wind and slope. */
  physics: () => import('./day/performance'),
  /** The taxi route, its pace and its calls. */
  taxi: () => import('./taxi/taxi'),
  /** Where the sun stands. */
  sun: () => import('./earth/sunlight'),
};

/**
 * The whole day once, loading everything it needs: for tests, benches, scripts and outside checks.
 * Rejects if a part can't be loaded; a date no magnetic model covers is no error.
 */
export const askDay = (question: DayQuestion) =>
  import('./day/askDay').then((asked) => asked.askDay(question));

/** Loads the reader of documents from outside, with its schemas. */
export const loadDocumentReader = () =>
  import('./readDocument.schema').then(({ readDocument }) => readDocument);

/** Loads the check of a document that is parsed already. */
export const loadDocumentCheck = () =>
  import('./readDocument.schema').then(({ checkDocument }) => checkDocument);

/** Loads the check of a lesson that is parsed already. */
export const loadLessonCheck = () =>
  import('./lesson/lesson.schema').then(({ checkLesson }) => checkLesson);

/** Loads the check of whether a stored document can be used. */
export const loadKeptDocumentReader = () =>
  import('./keptDocument.schema').then(({ keptDocumentState }) => keptDocumentState);

/** Loads the check of a document being written or drawn. */
export const loadDocumentFaults = () =>
  import('./readDocument.schema').then((reader) => reader.documentFaults);

/** Loads the code of the log. */
export const loadLogbook = () => import('./sortie/logbook');

/** Loads the reader of extracts of a map. */
export const loadMapReader = () => import('./map/readMapExtract');

/** Loads what reads and searches the world's fields. */
export const loadWorldReader = () => import('./world');

/** Loads what fits an aircraft's physics to its handbook. */
export const loadFitter = () => import('./aircraft/fit/fitAircraft');
