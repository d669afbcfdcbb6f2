/** What is due, as it is said: live numbers digit by digit where the trade says them so. */

import { inputs, wind } from '../../board/board';
import { walked } from '../../board/due';
import { steps } from '../../board/flight';
import { dueCall } from '../../board/taxi';
import {
  isLiveName,
  LIVE,
  type LiveName,
  type Position,
  piecesOf,
  type Rung,
  roundedLive,
  type StepRow,
} from '../../core';
import { sayCall } from '../../parts/calls.en';
import {
  saidCallsign,
  saidDigits,
  saidDirection,
  saidHundreds,
  saidRunway,
} from '../../parts/spoken.en';
import { words } from './words.en';

/** A text of the procedure as it is said now. */
function saidText(text: string): string {
  return piecesOf(text)
    .map((piece) => {
      if (typeof piece === 'string') return words.signs(piece);
      return isLiveName(piece.live) ? saidLive(piece.live) : '';
    })
    .join('');
}

function saidLive(name: LiveName): string {
  if (name === 'wind') return saidWind();
  const value = steps.value?.facts[name] ?? null;
  if (value === null) return name === 'callsign' ? words.yourCallsign : words.unknown;
  if (name === 'runway') return saidRunway(String(value));
  if (name === 'callsign') return saidCallsign(inputs.value.callsign);
  if (typeof value !== 'number') return words.signs(String(value));
  if (LIVE[name].form === 'heading') return saidDirection(value);
  return saidNumber(name, roundedLive(name, value));
}

/** Speeds and pressures digit by digit, whole hundreds as such: Annex 10, vol. II, 5.2.1.4.1. */
function saidNumber(name: LiveName, value: number): string {
  const kind = LIVE[name];
  const unit = 'unit' in kind ? kind.unit : null;
  if (unit === 'kt' || unit === 'hPa') return saidDigits(value);
  const isHeight = unit === 'ft' || unit === 'm';
  return isHeight && value > 0 && value % 100 === 0 ? saidHundreds(value) : String(value);
}

function saidWind(): string {
  const read = wind.value.wind;
  if (read === null || read.speedKt === null) return words.unknown;
  if (read.speedKt === 0 && read.gustKt === null) return words.calm;
  return words.wind(
    read.fromDeg === null ? null : saidDirection(read.fromDeg),
    saidDigits(read.speedKt),
    read.gustKt === null ? null : saidDigits(read.gustKt),
  );
}

function saidStep({ step, state }: StepRow): string {
  const item = saidText(step.item);
  const said =
    step.call === undefined
      ? words.step(item, saidText(step.response))
      : words.call(item, saidText(step.call));
  return state.kind === 'again' ? words.again(said) : said;
}

/** What is due; empty where there is nothing. */
export function saidDue(): string {
  const position = walked.value?.position;
  return position === undefined ? '' : saidPosition(position);
}

function saidPosition(position: Position): string {
  switch (position.kind) {
    case 'step': {
      const said = saidStep(position.row);
      if (position.barrier !== null) return words.heldBefore(said);
      return position.row.step.kind === 'barrier' ? words.barrier(said) : said;
    }
    case 'moment': {
      const tied = position.tied.map(saidStep).join(' ');
      return `${words.moment[position.moment]}. ${tied === '' ? '' : words.tied(tied)}`.trim();
    }
    case 'list-end':
      return words.listEnd;
    case 'end':
      return words.end;
  }
}

/** The radio call that is due on Taxi, in the pilot's own words where there are any; empty where none is. */
export function saidCall(): string {
  const call = dueCall.value;
  return call === null ? '' : sayCall(call, inputs.value.ownCalls[call.kind]);
}

/** A gate of the roll; what must not be exceeded is rounded down. */
export function saidGate({ what, speed }: Rung): string {
  if (speed.value === null) return '';
  return words.gate[what](what === 'last-stop' ? Math.floor(speed.value) : Math.round(speed.value));
}
