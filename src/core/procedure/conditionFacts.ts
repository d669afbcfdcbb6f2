/** Facts that a condition can ask for. */
export const CONDITION_FACTS = [
  /** The sun is more than 6° below the horizon. */
  'night',
  /** From sunset to sunrise: lights are needed. */
  'lights',
  /** The surface is not dry. */
  'wet',
  /** Someone controls the field: ground or tower. */
  'controlled',
  /** Steady wind and gust are below 5 kt. */
  'lightWind',
  /** The way to the runway in use crosses another one. */
  'crossesRunway',
  /** Flying faster than sound is planned. */
  'supersonic',
  /** Something hangs on a station for stores. */
  'stores',
  /** Someone beside the crew is aboard. */
  'passengers',
] as const;
