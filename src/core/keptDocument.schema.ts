/**
 * Reading a stored document: its shape alone, by the version written in it. Bounds and consistency
 * were checked when it came in, and the rules may have changed since: what is stored is not judged
 * again, or a pilot would lose what was flown.
 *
 * When a schema gets a new version, the one before stays here beside it.
 */

import * as v from 'valibot';
import { aircraftSchema } from './aircraft/aircraft.schema';
import { fieldSchema } from './airfield/field.schema';
import { procedureSchema } from './procedure/procedure.schema';

/** The state of a stored document; `newer`: of a version this app doesn't know. */
export type KeptDocumentState = 'readable' | 'damaged' | 'newer';

/** The parts of a schema its shape is read from. */
interface Shaped {
  readonly type: string;
  readonly [property: string]: unknown;
}

const isObject = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

const isSchema = (value: unknown): value is Shaped =>
  isObject(value) && typeof value.type === 'string';

/** Nothing of ours nests deeper, levels. */
const DEEPEST = 64;

/**
 * Whether a value has the shape a schema asks for: types of values, and which are present; extra
 * properties pass.
 */
function hasShape(schema: unknown, value: unknown, depth = 0): boolean {
  if (!isSchema(schema) || depth > DEEPEST) return false;
  const within = (part: unknown, of: unknown) => hasShape(part, of, depth + 1);
  const { entries, item, items, options, wrapped, literal, getter } = schema;
  switch (schema.type) {
    case 'string':
    case 'number':
    case 'boolean':
      return typeof value === schema.type;
    case 'literal':
      return value === literal;
    case 'picklist':
      return Array.isArray(options) && options.includes(value);
    case 'optional':
      return value === undefined || within(wrapped, value);
    case 'array':
      return Array.isArray(value) && value.every((one) => within(item, one));
    case 'strict_tuple':
      return (
        Array.isArray(value) &&
        Array.isArray(items) &&
        items.every((part, place) => within(part, value[place]))
      );
    case 'record':
      return isObject(value) && Object.values(value).every((one) => within(schema.value, one));
    case 'union':
    case 'variant':
      return Array.isArray(options) && options.some((option) => within(option, value));
    case 'lazy':
      return typeof getter === 'function' && within(getter(value), value);
    case 'object':
    case 'strict_object':
      return (
        isObject(value) &&
        isObject(entries) &&
        Object.entries(entries).every(([name, part]) => within(part, value[name]))
      );
    default:
      return false;
  }
}

/** The schemas of each kind, by document version: the first is version 1. */
const SCHEMAS: Readonly<Record<string, readonly v.GenericSchema[]>> = {
  // Version 2 leaves out what version 1 had to say: one shape reads both.
  field: [fieldSchema, fieldSchema],
  aircraft: [aircraftSchema],
  procedure: [procedureSchema],
};

const kept = v.looseObject({
  hash: v.pipe(v.string(), v.minLength(1), v.maxLength(64)),
  kind: v.string(),
  own: v.boolean(),
  content: v.looseObject({ version: v.pipe(v.number(), v.safeInteger(), v.minValue(1)) }),
});

/** Whether a stored document, with its hash and kind, can be used. Never throws. */
export function keptDocumentState(value: unknown): KeptDocumentState {
  const read = v.safeParse(kept, value);
  if (!read.success) return 'damaged';
  const { kind, content } = read.output;
  // An unknown kind comes from a newer app.
  if (!Object.hasOwn(SCHEMAS, kind)) return 'newer';
  const schemas = SCHEMAS[kind] ?? [];
  if (content.version > schemas.length) return 'newer';
  return hasShape(schemas[content.version - 1], content) ? 'readable' : 'damaged';
}
