/** What an airfield document is. The JSON Schema in public/schemas is generated from this. */

import * as v from 'valibot';
import {
  described,
  designator,
  document,
  holdsTogether,
  languages,
  metres,
  shortText,
  text,
} from '../document.schema';
import { textFaults } from '../plainText';
import { fieldFaults } from './faults';

const place = v.strictObject({
  latDeg: described(
    v.pipe(v.number(), v.minValue(-90), v.maxValue(90)),
    'WGS 84 latitude, degrees, north positive.',
  ),
  lonDeg: described(
    v.pipe(v.number(), v.minValue(-180), v.maxValue(180)),
    'WGS 84 longitude, degrees, east positive.',
  ),
});

const elevationFt = described(
  v.pipe(v.number(), v.minValue(-1500), v.maxValue(20000)),
  'Elevation above mean sea level, feet.',
);

const runwayEnd = v.strictObject({
  designator,
  at: described(
    place,
    'Where this end of the pavement lies: the start of TORA. A displaced landing threshold lies further on.',
  ),
  elevationFt: v.optional(elevationFt),
  displacedM: described(
    v.optional(metres, 0),
    'How far the landing threshold lies from this end, metres.',
  ),
  toraM: described(metres, 'Take-off run available from this end, metres.'),
  todaM: described(metres, 'Take-off distance available from this end, metres.'),
  asdaM: described(metres, 'Accelerate-stop distance available from this end, metres.'),
  ldaM: described(metres, 'Landing distance available towards this end, metres.'),
  cablesM: described(
    v.optional(v.pipe(v.array(metres), v.maxLength(8))),
    'How far from this end of the pavement arresting cables lie across the runway, metres; empty where there is none, left out where it is not known.',
  ),
  closed: described(v.optional(shortText), 'Why this end is closed; leave out when it is open.'),
});

/** What the source of a runway contradicts, or does not say. */
export const DOUBTS = [
  /** The numbers fit the other ends, and were swapped. */
  'swapped',
  /** A number is far off the direction of its runway, or was worked out from it. */
  'number',
  /** The stated length doesn't fit the coordinates: the shorter one counts. */
  'length',
  /** The stated direction doesn't fit the coordinates, which count. */
  'heading',
  /** One end only was given: the other was worked out from direction and length. */
  'one-end',
  /** An end's elevation can't be, and was left out. */
  'elevation',
  /** A displaced threshold lies beyond half of the runway. */
  'displaced',
] as const;

const runway = v.strictObject({
  widthM: v.optional(metres),
  surface: v.picklist(['asphalt', 'concrete', 'grass', 'gravel', 'unknown']),
  edgeLights: described(v.optional(v.boolean()), 'Left out where nobody knows.'),
  declared: described(
    v.optional(v.boolean()),
    'False where nobody declared distances: then they are the length of the pavement.',
  ),
  doubts: described(
    v.optional(v.pipe(v.array(v.picklist(DOUBTS)), v.maxLength(DOUBTS.length))),
    'What the source contradicts, and what was worked out for want of it.',
  ),
  ends: described(v.strictTuple([runwayEnd, runwayEnd]), 'The two ends, in any order.'),
});

const nodeId = described(
  v.pipe(v.string(), v.regex(/^[A-Za-z0-9-]{1,16}$/, 'form-point')),
  'Names a point of the taxiway plan.',
);

const node = v.strictObject({
  id: nodeId,
  xM: described(v.number(), 'Metres east of the reference point.'),
  yM: described(v.number(), 'Metres north of the reference point.'),
  kind: described(
    v.picklist(['junction', 'stand', 'hold', 'runway']),
    'A hold is a holding point; a runway point lies on a runway.',
  ),
  name: described(v.optional(shortText), 'As painted or spoken: "Stand 6", "K1".'),
  assumed: described(
    v.optional(v.boolean()),
    'True for a holding point that nobody surveyed: put where one is usually painted.',
  ),
  ends: described(
    v.optional(v.array(designator)),
    'For a hold or runway point: the ends that are entered from here, at their start or by rolling back along the runway. Left out where a hold only guards a crossing, and where a runway point is only an exit.',
  ),
});

const edge = v.strictObject({
  from: nodeId,
  to: nodeId,
  name: described(
    shortText,
    'The taxiway\'s letter, "apron", or the runway\'s name such as "01/19".',
  ),
  on: described(v.picklist(['taxiway', 'apron', 'runway']), 'What one rolls on.'),
  widthM: v.optional(metres),
  oneWay: described(v.optional(v.boolean()), 'Only from `from` to `to`.'),
  crosses: described(
    v.optional(shortText),
    'The runway that this stretch crosses, such as "01/19".',
  ),
});

const hotSpot = v.strictObject({
  xM: described(v.number(), 'Metres east of the reference point.'),
  yM: described(v.number(), 'Metres north of the reference point.'),
  name: described(shortText, 'As charted: "HS 1".'),
  about: described(shortText, 'What goes wrong here, in a few words.'),
});

const radio = v.strictObject({
  name: described(shortText, 'As spoken: "Harrow traffic".'),
  mhz: described(
    v.pipe(v.string(), v.regex(/^\d{3}\.\d{1,3}$/, 'form-frequency')),
    'Frequency, MHz, as written.',
  ),
  service: described(
    v.picklist(['ground', 'tower', 'information', 'traffic']),
    '`traffic` means that no one controls: pilots tell each other.',
  ),
});

const fieldShape = v.strictObject({
  ...document('field'),
  version: described(
    v.picklist([1, 2]),
    'The version of the schema it follows: 2 where something is left out as not known, doubted or assumed.',
  ),
  code: described(
    v.pipe(v.string(), v.regex(/^[A-Z0-9][A-Z0-9-]{1,7}$/, 'form-field-code')),
    'Location indicator. Invented fields begin with X.',
  ),
  name: shortText,
  ...languages,
  about: described(text, 'What a pilot should know of it, in a sentence or two.'),
  place: v.strictObject({ ...place.entries, elevationFt }),
  numbersFrom: described(
    v.optional(v.picklist(['magnetic', 'true']), 'magnetic'),
    "Which north the runway numbers are painted to: true in Canada's northern airspace.",
  ),
  calmWindEnd: described(
    v.optional(designator),
    'The end used in light wind, where the field names one.',
  ),
  preferredEnds: described(
    v.optional(v.pipe(v.array(designator), v.maxLength(40))),
    'Ends that the field prefers to spare its neighbours the noise, the most preferred first.',
  ),
  radio: v.pipe(v.array(radio), v.maxLength(20)),
  runways: v.pipe(v.array(runway), v.minLength(1), v.maxLength(20)),
  taxi: v.strictObject({
    nodes: v.pipe(v.array(node), v.maxLength(4000)),
    edges: v.pipe(v.array(edge), v.maxLength(10000)),
    hotSpots: described(
      v.optional(v.pipe(v.array(hotSpot), v.maxLength(40))),
      'Where aircraft have met, or strayed on to a runway, and one looks twice. Called so by ICAO Annex 4, chapter 13.',
    ),
  }),
});

/** An airfield document of the right shape, which may still name things it doesn't have. */
export type FieldShape = v.InferOutput<typeof fieldShape>;

/** An airfield: runways with declared distances, stands, taxiways and radio. */
export const fieldSchema = v.pipe(
  fieldShape,
  holdsTogether<FieldShape>(textFaults),
  holdsTogether(fieldFaults),
);
