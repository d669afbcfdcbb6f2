/** The history of a document being written. */

export {
  beginHistory,
  type Changes,
  changed,
  type History,
  redone,
  restoredHistory,
  type StoredHistory,
  settled,
  standing,
  storedHistory,
  undone,
} from './history';
