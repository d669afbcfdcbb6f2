/** The history of a document being written. */

export {
  beginHistory,
  type Changes,
  changeClosed,
  changed,
  documentNow,
  type History,
  redone,
  restoredHistory,
  type StoredHistory,
  storedHistory,
  undone,
} from './history';
