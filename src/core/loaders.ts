/** What loads the parts of core that come after the first answer. Those that may come before it stand in the door. */

import type { DayQuestion } from './day/askDay';

/** Loads the reader of whole reports; the first answer reads their wind alone. */
export const loadReportReader = () =>
  import('./weather/readReport').then(({ readReport }) => readReport);

/** Loads the parts of a day that are code; its magnetic model is `loadVariation`'s. */
export const loadPart = {
  /** What a whole report and the winds so far mean. */
  reports: () => import('./day/wholeReports'),
  /** What works out today's numbers from mass, air, wind and slope. */
  physics: () => import('./day/performance'),
  /** What finds the way on the ground, its pace and its calls. */
  taxi: () => import('./taxi/taxi'),
  /** Where the sun stands. */
  sun: () => import('./earth/sunlight'),
};

/**
 * The whole day once, with everything it needs loaded: for tests, benches, scripts and checks from
 * outside. Rejects where a part cannot be loaded; a date that no magnetic model covers is no fault.
 */
export const askDay = (question: DayQuestion) =>
  import('./day/askDay').then((asked) => asked.askDay(question));

/** Loads what reads a document from outside, with its schemas. */
export const loadDocumentReader = () =>
  import('./readDocument.schema').then(({ readDocument }) => readDocument);

/** Loads what checks a document that was parsed already. */
export const loadDocumentCheck = () =>
  import('./readDocument.schema').then(({ checkDocument }) => checkDocument);

/** Loads what says whether a document that is kept can be used. */
export const loadKeptDocumentReader = () =>
  import('./keptDocument.schema').then(({ keptDocumentState }) => keptDocumentState);

/** Loads what says what is wrong in a document that is being written or drawn. */
export const loadDocumentFaults = () =>
  import('./readDocument.schema').then((reader) => reader.documentFaults);

/** Loads what works out the log. */
export const loadLogbook = () => import('./sortie/logbook');
