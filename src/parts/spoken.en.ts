/** How things are said when read aloud to the pilot: as on the radio. */

import * as radio from './radio/spelling';

export const saidEach = radio.saidEach;
export const saidRunway = radio.saidRunway;
export const saidDirection = radio.saidDirection;
export const saidDigits = radio.saidDigits;
export const saidPoint = radio.saidPoint;
export const saidStand = radio.saidStand;
export const saidCallsign = radio.saidCallsign;
export const saidHundreds = radio.saidHundreds;
export const saidDistance = radio.saidDistance;
