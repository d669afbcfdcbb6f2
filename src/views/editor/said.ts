/** A procedure in words: its parts, its conditions, its live numbers under the facts of the moment. */

import { computed } from '@preact/signals';
import { day } from '../../board/board';
import { langOf } from '../../board/language';
import { written } from '../../board/writing/procedure';
import {
  type AbnormalList,
  groupOf,
  type LiveName,
  languageOf,
  listIn,
  type PartId,
  PHASES,
  type Procedure,
} from '../../core';
import { direction, wholeNumber } from '../../parts/format';
import { filledPieces, liveValue } from '../../parts/live';
import { type Worded, worded } from '../../parts/marked';
import { words } from './words';

/**
 * The name of a part: that of its phase, or its list's title. The caller redraws it when a title
 * changes.
 */
export function partName(part: PartId, procedure: Procedure | null = written.peek()): string {
  const phase = PHASES.find((name) => name === part);
  if (phase !== undefined) return words.phases[phase];
  const list = listIn(part);
  return procedure?.lists.find(({ id }) => id === list)?.title ?? list ?? '';
}

const lang = computed(() =>
  written.value === null ? undefined : langOf(languageOf(written.value)),
);

/** The `lang` of the texts of the procedure being written. */
export const writtenLang = (): string | undefined => lang.value;

/** The `lang` of a part's name: a phase's is the page's. */
export const partLang = (part: PartId): string | undefined =>
  listIn(part) === null ? undefined : writtenLang();

/** A sentence of the page about options of the procedure, whose names are in its language. */
export const withOptions = (
  options: Procedure['options'],
  sentence: (options: Procedure['options']) => string,
): Worded =>
  worded(
    writtenLang(),
    (...names) => sentence(options?.map((one, index) => ({ ...one, name: names[index] ?? '' }))),
    ...(options ?? []).map(({ name }) => name),
  );

/** A live number's present value; a dash if unknown. */
export function liveNow(name: LiveName): string {
  if (name === 'wind') return windNow();
  const value = day.steps()?.facts[name] ?? null;
  if (value === null || typeof value === 'boolean')
    return name === 'callsign' ? words.yourCallsign : words.unknown;
  return liveValue(name, value);
}

function windNow(): string {
  const read = day.wind().wind;
  if (day.enteredWind() === null || read === null) return words.unknown;
  const from = read.fromDeg === null ? '' : `${direction(read.fromDeg)} `;
  const gust = read.gustKt === null ? '' : ` ${words.gust} ${wholeNumber(read.gustKt)}`;
  return `${from}${wholeNumber(read.speedKt ?? 0)}${gust}`;
}

/** A step's text as it reads right now. */
export const textNow = (text: string): string =>
  filledPieces(text, liveNow)
    .map((piece) => piece.text)
    .join('');

/** Where a list leads, as a sentence. */
export function leadsSaid(then: AbnormalList['then']): string {
  if (typeof then === 'string') return words.leadsSaid[then];
  const again = then.reopen.map((phase) => words.phases[phase]).join(', ');
  return words.leadsToPhase(words.phases[then.phase], again);
}

/** What a list has apart from its title and steps, as sentences. */
export function aboutList(list: AbnormalList): string {
  const { phases = [], then } = list;
  const first = phases.map((phase) => words.phases[phase]).join(', ');
  return [
    words.listGroupSaid(words.listGroups[groupOf(list)]),
    ...(first === '' ? [] : [words.lookedForFirst(first)]),
    leadsSaid(then),
  ].join(' ');
}
