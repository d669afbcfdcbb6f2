/** What loads the parts of core that come after the first answer. Those that may come before it stand in the door. */

/** Loads the reader of whole reports; the first answer reads their wind alone. */
export const loadReportReader = () =>
  import('./weather/readReport').then(({ readReport }) => readReport);

/** Loads what a whole report, the sun and the winds so far mean for the day. */
export const loadDay = () => import('./day/wholeReports');

/** Loads what works out today's numbers from mass, air, wind and slope. */
export const loadPerformance = () => import('./day/performance');

/** Loads what finds the way on the ground, its pace and its calls. */
export const loadTaxi = () => import('./taxi/taxi');

/** Loads what reads a document from outside, with its schemas. */
export const loadDocumentReader = () =>
  import('./readDocument.schema').then(({ readDocument }) => readDocument);

/** Loads what checks a document that was parsed already. */
export const loadDocumentCheck = () =>
  import('./readDocument.schema').then(({ checkDocument }) => checkDocument);

/** Loads what says whether a document that is kept can be used. */
export const loadKeptDocumentReader = () =>
  import('./keptDocument.schema').then(({ keptDocumentState }) => keptDocumentState);

/** Loads what draws and mends fields. */
export const loadFieldEditor = () => import('./airfield/editor');

/** Loads what works out the log. */
export const loadLogbook = () => import('./sortie/logbook');
