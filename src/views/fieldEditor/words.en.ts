/** The words of drawing a field. */

import type { ChangeVerb, Field, FieldChange, PlaceProblem, RouteGap } from '../../core';

export const words = {
  draw: 'Draw a field',
  mend: (code: string) => `Edit ${code}`,
  close: 'Close',
  loading: 'One moment.',
  failed: 'The field could not be loaded. Close this and try again.',
  undo: 'Undo',
  redo: 'Redo',
  stepped: {
    undone: (what: string) => `Undone: ${what}.`,
    redone: (what: string) => `Redone: ${what}.`,
  },
  parts: { field: 'Field', runways: 'Runways', plan: 'Plan' },
  whichPart: 'Part of the field',
  forgets: 'This device stores nothing more: what is drawn now is lost when the window closes.',

  code: 'Code',
  codeHint: 'XHAR',
  codeBad: 'A code is three or four letters and digits, and begins with a letter.',
  name: 'Name',
  nameBad: 'A name is up to 80 characters.',
  about: 'What to know of it',
  aboutBad: 'Up to 600 characters.',
  language: 'Language of these texts',
  languageHint: 'What is said on the radio is English in every language.',
  whereTitle: 'Where it lies',
  placeTitle: 'Reference point',
  placeHint:
    'The plan is drawn around it. Left empty, it is the middle of the first runway you add.',
  placeWays:
    'Write it as 523541N 0043606E, N5235.688 E00436.100, 52°35′41″N 4°36′06″E or 52.5948, 4.6017.',
  elevation: 'Elevation, ft',
  elevationBad: 'An elevation is from −1 500 to 20 000 ft.',
  calmWind: 'Runway used in light wind',
  none: 'None',
  radio: 'Radio',
  radioName: 'Spoken as',
  radioNameBad: 'Up to 80 characters.',
  mhz: 'MHz',
  mhzBad: 'A frequency is written as 118.7 or 121.850.',
  service: 'Service',
  services: {
    ground: 'Ground',
    tower: 'Tower',
    information: 'Information',
    traffic: 'Traffic: no one controls',
  },
  addRadio: 'Add a frequency',
  removeRadio: (mhz: string) => `Remove ${mhz}`,

  runway: (name: string) => `Runway ${name}`,
  addRunway: 'Add a runway',
  removeRunway: (name: string) => `Remove runway ${name}`,
  howLaid: 'Where it lies',
  ways: { ends: 'By its ends', centre: 'By its middle' },
  addWays: { ends: 'By its two ends', centre: 'By bearing and length' },
  middle: 'Middle',
  endPlace: (designator: string) => `Where ${designator} begins`,
  firstEnd: 'One end',
  secondEnd: 'The other end',
  endsHint:
    'Latitude and longitude of each threshold, typed or pasted; both at once will do. Where a threshold is displaced, take the end of the pavement.',
  firstNumber: 'Number at the one end',
  proposal: (
    name: string | null,
    metres: string,
    heading: string,
    magnetic: string | null,
  ): string =>
    `${name === null ? '' : `Runway ${name}, `}${metres} m, ${heading} true${magnetic === null ? '' : `, ${magnetic} magnetic`}`,
  noRunway: {
    'one-place': 'Both ends are one place.',
    'too-far-apart': 'These are more than 10 km apart. Is a digit wrong, or N and S, or E and W?',
  },
  added: (name: string) => `Runway ${name} is added.`,
  placeFirst: 'Give the reference point first, under Field: this runway will lie across it.',
  bearing: 'True bearing, °',
  bearingBad: 'A bearing is from 0 to 360.',
  length: 'Length, m',
  lengthBad: 'A length is from 1 to 10 000 m.',
  number: (bearing: string) => `Number seen on ${bearing}°`,
  numberHint: (magnetic: string, number: string) => `${magnetic}° magnetic: ${number}`,
  numberBad: 'A number is 01 to 36, with L, C or R for parallels.',
  width: 'Width, m',
  widthBad: 'A width is from 0 to 10 000 m.',
  surface: 'Surface',
  surfaces: {
    asphalt: 'Asphalt',
    concrete: 'Concrete',
    grass: 'Grass',
    gravel: 'Gravel',
    unknown: 'Not known',
  },
  lights: 'Edge lights',
  lit: { yes: 'Lit', no: 'Not lit', unknown: 'Not known' },
  end: (designator: string) => `Runway ${designator}`,
  designator: 'Number',
  displaced: 'Threshold displaced, m',
  tora: 'TORA, m',
  toda: 'TODA, m',
  asda: 'ASDA, m',
  lda: 'LDA, m',
  metresBad: 'A distance is from 0 to 10 000 m.',
  closed: 'Closed because',
  closedHint: 'open',
  closedBad: 'Up to 80 characters.',

  plan: (name: string) =>
    `Plan of ${name}. Arrow keys move it, or the point that is chosen; plus and minus make it larger and smaller; Enter is a tap at the cross in the middle; Delete removes what is chosen.`,
  tool: 'What a tap does',
  tools: {
    choose: 'Choose',
    taxiway: 'Taxiway',
    apron: 'Apron',
    stand: 'Stand',
    hold: 'Holding point',
    'hot-spot': 'Hot spot',
  },
  toolHints: {
    choose: 'Tap a point or a stretch to change it. Drag a chosen point to move it.',
    taxiway:
      'Tap from point to point; on a runway it meets the centreline. Tap the last point again to lift the pen.',
    apron: 'Tap from point to point, stands too. Tap the last point again to lift the pen.',
    stand: 'Tap where an aircraft stands.',
    hold: 'Tap a taxiway where one holds short.',
    'hot-spot': 'Tap where one looks twice.',
  },
  letter: 'Letter',
  letterBad: 'Up to 80 characters.',
  whole: 'Whole field',
  larger: 'Larger',
  smaller: 'Smaller',
  north: 'N',
  metres: (m: number) => `${m} m`,
  penAt: (name: string) => `The pen is at ${name}.`,

  chosen: (what: string) => `Chosen: ${what}`,
  nothingChosen: 'Nothing is chosen.',
  kind: 'Kind',
  kinds: { junction: 'Junction', stand: 'Stand', hold: 'Holding point', runway: 'On a runway' },
  painted: 'As painted or spoken',
  gives: 'Gives on to',
  east: 'East of the reference, m',
  northOf: 'North of the reference, m',
  spotBad: 'A place is within 50 000 m.',
  joinTo: 'Join to',
  join: 'Join',
  remove: 'Remove',
  led: 'Rolled on as',
  leds: { taxiway: 'Taxiway', apron: 'Apron', runway: 'Runway' },
  stretchWidth: 'Width, m',
  unknown: 'not known',
  oneWay: 'Which way',
  bothWays: 'Both ways',
  onlyFrom: (name: string) => `Only from ${name}`,
  crosses: 'Crosses',
  hotSpotName: 'As charted',
  hotSpotAbout: 'What goes wrong here',
  hotSpotDefault: 'Look twice.',

  trace: 'Trace a picture',
  traceKept:
    'A chart saved as a picture can lie under the plan. It stays in this window only: it is not saved with the field or its draft, nor shared, and is gone when you close this.',
  choosePicture: 'Choose a picture',
  otherPicture: 'Another picture',
  takeAway: 'Take it away',
  strength: 'How it shows',
  strengths: { full: 'Clear', faint: 'Faint', hidden: 'Hidden' },
  placeBy: 'Place it by runway',
  place: (runway: string) => `Place by ${runway}`,
  placeWithout: 'With a runway, added by its ends, it can be placed exactly.',
  movePicture: 'Move by hand',
  movingHint:
    'Drag the picture, or spread it with two fingers. Tap “Move by hand” again when it lies right.',
  tapWhere: (end: string) => `On the picture, tap where runway ${end} begins.`,
  noPicture: {
    empty: 'The file is empty.',
    pdf: 'This is a PDF. Save its page as a picture (PNG or JPEG), and choose that.',
    unknown: 'This is no picture. PNG, JPEG, WebP and AVIF can be shown.',
    broken:
      'This picture cannot be shown: the file is damaged, or this browser does not know its kind. Save it as PNG or JPEG.',
    'too-many-bytes': 'This picture is larger than 30 MB. Save it smaller.',
    'too-many-pixels': 'This picture has more than 50 million pixels. Save it smaller.',
    'one-place': 'Both taps were in one place. Tap one end of the runway, then the other.',
  },

  list: 'All that is drawn',
  lists: (title: string, count: number) => `${title}: ${count}`,
  points: {
    stand: 'Stands',
    hold: 'Holding points',
    runway: 'Points on runways',
    junction: 'Junctions',
  },
  stretches: 'Stretches',
  hotSpots: 'Hot spots',
  andMore: (count: number) => `And ${count} more.`,

  must: 'Before it can be saved',
  gaps: 'Missing for a way on the ground',
  nothingMissing: 'Nothing is missing: every stand reaches every open runway.',
  keep: 'Save',
  save: 'Save as a file',
  anew: 'Start over',
  kept: (code: string) => `${code} is saved as one of your own fields.`,
  use: (code: string) => `Use ${code}`,
  refused: 'It was not saved:',
} as const;

/** What a document needs before it is one, as sentences. */
export const needs = {
  code: 'It has no code: three or four letters and digits, the first a letter.',
  name: 'It has no name.',
  place: 'It has no place: add a runway by its two ends, or give the reference point.',
  runway: 'It has no runway.',
} as const;

/** Why a text is no place, as a sentence. */
export function placeBad(problem: PlaceProblem): string {
  switch (problem.code) {
    case 'unread':
      return 'Not read as a place. Write it as 52°35′41″N 4°36′06″E or 52.5948, 4.6017.';
    case 'half':
      return 'Half a place: write latitude and longitude.';
    case 'same-axis':
      return 'One must be a latitude, N or S, the other a longitude, E or W.';
    case 'out-of-range':
      return problem.axis === 'lat'
        ? `${problem.text}: a latitude goes up to 90°.`
        : `${problem.text}: a longitude goes up to 180°.`;
    case 'swapped':
      return 'The first is beyond 90°: latitude comes first. If it is the longitude, write E or W.';
    case 'sixty':
      return `${problem.text}: minutes and seconds go up to 59.`;
    case 'digits':
      return problem.axis === 'lat'
        ? `${problem.text}: run together, a latitude has 2 digits of degrees, as N523541.`
        : `${problem.text}: run together, a longitude has 3 digits of degrees, as E0043606.`;
    case 'no-letter':
      return `${problem.text}: write N or S, E or W.`;
    case 'comma':
      return 'Does the comma part the two, or is it a decimal comma? Put a space between the two.';
    case 'letter-o':
      return 'O is east in German and west in French. Write E or W.';
  }
}

/** What is missing for a way, as a sentence. `name` names a point or a stretch of the plan. */
export function gapWords(gap: RouteGap, name: (id: string) => string): string {
  switch (gap.code) {
    case 'no-stand':
      return 'There is no stand to begin from.';
    case 'end-without-hold':
      return `No holding point gives on to ${gap.end}.`;
    case 'runway-without-exit':
      return `No taxiway meets runway ${gap.runway}, so one who lands cannot leave it.`;
    case 'in-pieces': {
      const [first = '', ...more] = gap.nodes.map(name);
      const others = more.length === 0 ? '' : ` and ${more.length} more`;
      return `Nothing joins ${first}${others} to the rest.`;
    }
    case 'crosses-unsaid':
      return `${name(gap.stretch)} crosses runway ${gap.runway} and does not say so.`;
    case 'crosses-not':
      return `${name(gap.stretch)} is said to cross runway ${gap.runway}, and does not.`;
    case 'runway-unguarded':
      return `There is no holding point before runway ${gap.runway} on ${name(gap.stretch)}.`;
    case 'no-way':
      return `One-way stretches keep ${name(gap.stand)} from every holding point for ${gap.end}.`;
  }
}

const VERBS: Readonly<Record<ChangeVerb, string>> = {
  added: 'added',
  removed: 'removed',
  moved: 'moved',
  changed: 'changed',
};

/** A change, as it follows "Undone". */
export function changeWords({ what, verb }: FieldChange): string {
  const is = (name: string) => `${name} ${VERBS[verb]}`;
  switch (what.kind) {
    case 'entry':
      return is(ENTRIES[what.entry]);
    case 'radio':
      return is(`frequency ${what.radio.mhz}`);
    case 'hot-spot':
      return is(what.hot.name);
    case 'runway':
      return is(`runway ${what.runway.ends.map(({ designator }) => designator).join('/')}`);
    case 'end':
      return is(`runway ${what.end}`);
    case 'node':
      return is(pointName(what.node));
    case 'stretch':
      return is(stretchName(what.edge.name, pointName(what.from), pointName(what.to)));
    case 'all':
      return 'everything started over';
  }
}

const ENTRIES = {
  code: 'code',
  name: 'name',
  about: 'what to know of it',
  language: 'language',
  elevation: 'elevation',
  place: 'reference point',
  calmWind: 'runway used in light wind',
} as const;

/** A point of the plan as it is called here. */
export function pointName(node: Field['taxi']['nodes'][number] | undefined): string {
  if (node === undefined) return '';
  return node.name ?? `${POINT[node.kind]} ${node.id}`;
}

const POINT = {
  stand: 'stand',
  hold: 'holding point',
  junction: 'junction',
  runway: 'runway point',
} as const;

/** A stretch as it is called here: its letter, and what it joins. */
export const stretchName = (letter: string, from: string, to: string): string =>
  `${letter}, ${from} to ${to}`;
