/** Which of the winds entered count at the field, and which of them is in use. */

import type { EnteredWind, Sortie } from '../sortie/fold';
import { readWind } from '../weather/readWind';
import type { Sources } from './sources';

/** A wind, report or forecast, and how many were entered before it. */
export interface PlacedWind {
  readonly entered: EnteredWind;
  readonly place: number;
  /** It says nothing of now, only what is expected. */
  readonly isForecast: boolean;
}

export interface WindsHere {
  /** All that count at the field, oldest first. */
  readonly all: readonly PlacedWind[];
  /** The last wind or report; without any, the last forecast. */
  readonly inUse: PlacedWind | null;
  /** The last wind or report of another field, while there is none here. */
  readonly elsewhere: EnteredWind | null;
}

/**
 * Sorts a sortie's winds by field. What was entered here counts, whatever station it is of: that
 * is the pilot's choice. Of what was entered at another field, or before one was chosen, only this
 * field's own reports count, and a wind entered before there was a field, which belongs to the
 * first. `code` is the field's.
 */
export function windsHere(
  { winds, inputs }: Sortie,
  code: string | null,
  fieldCode: Sources['fieldCode'],
): WindsHere {
  const all: PlacedWind[] = [];
  let elsewhere: EnteredWind | null = null;
  for (const [place, entered] of winds.entries()) {
    const { station, kind } = readWind(entered.text);
    const isForecast = kind === 'forecast';
    if (isHere(entered, station)) all.push({ entered, place, isForecast });
    else if (!isForecast) elsewhere = entered;
  }
  const present = all.findLast(({ isForecast }) => !isForecast) ?? null;
  return {
    all,
    inUse: present ?? all.at(-1) ?? null,
    elsewhere: present === null ? elsewhere : null,
  };

  function isHere({ field }: EnteredWind, station: string | null): boolean {
    if (field === inputs.field) return true;
    if (station !== null) return station === code;
    // A field that was mended is another document, and still the same place.
    return field === null || (code !== null && fieldCode(field) === code);
  }
}
