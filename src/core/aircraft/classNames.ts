/** The classes an aircraft can be started from. */
export const AIRCRAFT_CLASSES = [
  'piston-single',
  'piston-twin',
  'turboprop',
  'jet',
  'jet-with-reheat',
  'twin-jet',
] as const;

export type AircraftClass = (typeof AIRCRAFT_CLASSES)[number];
