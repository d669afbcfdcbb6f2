/** Facts a condition can ask for. */
export const CONDITION_FACTS = [
  /** The sun is more than 6° below the horizon. */
  'night',
  /** From sunset to sunrise: lights are needed. */
  'lights',
  /** The surface isn't dry. */
  'wet',
  /** Someone controls the field: ground or tower. */
  'controlled',
  /** Steady wind and gust are below 5 kt. */
  'lightWind',
  /** The route to the runway in use crosses another one. */
  'crossesRunway',
  /** Supersonic flight is planned. */
  'supersonic',
  /** A station for stores is loaded. */
  'stores',
  /** Someone besides the crew is aboard. */
  'passengers',
  /** An arresting cable lies across the runway in use. */
  'cable',
] as const;
