/** The world's fields: the set read, searched, and turned into documents. Loaded when wanted. */

export { type NearField, nearestFields } from './nearest';
export { readWorld, type World } from './readWorld';
export { type WorldQuestion, type WorldSearch, worldSearch } from './search';
export { worldDocument } from './worldDocument';
export { PER_DEGREE, WORLD_KINDS, type WorldField, type WorldKind } from './worldField';
