/** The cautions. */

export const words = [
  'A training aid for simulation. Not for navigation, and not for real flight.',
  'The flight manual, air traffic control, local rules and a licensed instructor come first, always.',
  'Lapstrip says “within the limits given” and names them. It does not know whether a take-off or a landing can be made.',
  'Its fields, aircraft and procedures are invented; put in your own with care, and check them.',
  'Figures are worked out from what was typed. Look at the wind, the field and the time at the top before you believe them.',
] as const;
