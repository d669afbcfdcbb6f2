/** What is due, as said: live numbers digit by digit where the trade says them so. */

import { day } from '../../board/board';
import { cautions } from '../../board/flight/cautions';
import { CALL_LANGUAGE, stepsLanguage } from '../../board/language';
import { walked } from '../../board/steps/due';
import {
  type ClimbRung,
  isLiveName,
  LIVE,
  type LiveName,
  type Position,
  primarySubtag,
  type Rung,
  type StepRow,
} from '../../core';
import { pageLanguage } from '../../device/pageLanguage';
import type { Said } from '../../device/speech';
import { liveDigits, piecesInUnits, shownLive } from '../../parts/live';
import { sayCall } from '../../parts/radio/calls';
import { saying } from '../../parts/sentence';
import {
  saidCallsign,
  saidDigits,
  saidDirection,
  saidHundreds,
  saidRunway,
} from '../../parts/spoken';
import { cautionText } from '../../parts/verdict/cautionText';
import { type StepSpeech, saidWind, speechIn } from './otherLanguage';
import { words } from './words';

/** As the page says them. */
const pageSpeech = (): StepSpeech => ({
  ...words,
  digits: saidDigits,
  hundreds: saidHundreds,
  direction: saidDirection,
  runway: saidRunway,
  callsign: saidCallsign,
});

/** How a text in a language is said: as the page says it, if it is the page's own. */
const speechOf = (language: string): StepSpeech =>
  primarySubtag(language) === pageLanguage() ? pageSpeech() : speechIn(language);

function saidText(text: string, language: string): Said {
  const speech = speechOf(language);
  const said = piecesInUnits(text)
    .map((piece) => {
      if (typeof piece === 'string') return piece;
      return isLiveName(piece.live) ? saidLive(piece.live, speech) : '';
    })
    .join('');
  return [{ text: speech.signs(said), language }];
}

function saidLive(name: LiveName, speech: StepSpeech): string {
  if (name === 'wind') {
    const read = day.wind().wind;
    return read === null ? speech.unknown : saidWind(read, speech);
  }
  const value = day.steps()?.facts[name] ?? null;
  if (value === null) return name === 'callsign' ? speech.yourCallsign : speech.unknown;
  if (name === 'runway') return speech.runway(String(value));
  if (name === 'callsign') return speech.callsign(day.inputs().callsign);
  if (typeof value !== 'number') return String(value);
  if (LIVE[name].form === 'heading') return speech.direction(value);
  return saidNumber(name, value, speech);
}

/** Speeds and pressures digit by digit, whole hundreds as such: Annex 10, vol. II, 5.2.1.4.1. */
function saidNumber(name: LiveName, value: number, speech: StepSpeech): string {
  const { value: shown, unit } = shownLive(name, value);
  if (unit === 'kt' || unit === 'hPa' || unit === 'inHg')
    return speech.digits(liveDigits(name, value));
  const isHeight = unit === 'ft' || unit === 'm';
  return isHeight && shown > 0 && shown % 100 === 0 ? speech.hundreds(shown) : String(shown);
}

/** A sentence in the language of the page, containing texts in their own. */
const inPage = (sentence: (...texts: string[]) => string, ...said: readonly Said[]): Said =>
  saying(pageLanguage(), sentence, ...said);

function saidStep({ step, state }: StepRow): Said {
  const language = stepsLanguage();
  const item = saidText(step.item, language);
  const said =
    step.call === undefined
      ? inPage(words.step, item, saidText(step.response, language))
      : inPage(words.call, item, saidText(step.call, CALL_LANGUAGE));
  return state.kind === 'again' ? inPage(words.again, said) : said;
}

/** What is due; empty if nothing is. */
export function saidDue(): Said {
  const position = walked.value?.position;
  return position === undefined ? [] : saidPosition(position);
}

function saidPosition(position: Position): Said {
  switch (position.kind) {
    case 'step': {
      const said = saidStep(position.row);
      if (position.barrier !== null) return inPage(words.heldBefore, said);
      return position.row.step.kind === 'barrier' ? inPage(words.barrier, said) : said;
    }
    case 'moment': {
      const next = `${words.moment[position.moment]}.`;
      const tied = position.tied.flatMap(saidStep);
      return inPage((steps) => (tied.length === 0 ? next : `${next} ${steps}`), tied);
    }
    case 'list-end':
      return inPage(() => words.listEnd);
    case 'end':
      return inPage(() => words.end);
  }
}

/** The radio call due on Taxi, in the pilot's own words if there are any; empty if none is. */
export function saidCall(): Said {
  const call = day.dueCall();
  if (call === null) return [];
  const text = sayCall(call, day.inputs().ownCalls[call.kind]);
  return [{ text, language: CALL_LANGUAGE }];
}

/** The worst that stops, against the runway in use; empty if nothing does. */
export function saidCaution(): Said {
  const worst = cautions.value.find(({ stops }) => stops);
  if (worst === undefined) return [];
  return inPage(() => words.signs(`${cautionText(worst).text}.`));
}

/** A gate of the roll or the climb; what must not be exceeded rounds down. */
export function saidGate(gate: Rung | ClimbRung): string {
  const kt = 'speed' in gate ? gate.speed.value : gate.speedKt;
  if (kt === null) return '';
  return words.gate[gate.what](isNotToExceed(gate.what) ? Math.floor(kt) : Math.round(kt));
}

const isNotToExceed = (what: (Rung | ClimbRung)['what']): boolean =>
  what === 'last-stop' || what === 'gear-up' || what === 'flaps-up';
