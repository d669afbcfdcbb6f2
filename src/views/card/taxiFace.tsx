/** The face of the card in Taxi: the next turn, what not to exceed, and the point to pass. */

import { day, documents } from '../../board/board';
import { passNext, takeBackPassing } from '../../board/flight/taxi';
import { withinSentence } from '../../board/language';
import { pageLanguage } from '../../device/pageLanguage';
import { wholeNumber } from '../../parts/format';
import { durationWords, holdWords, passingWords, turnWords } from '../../parts/pace';
import { length } from '../../parts/units';
import styles from './Card.module.css';
import { endWords, windWords } from './edges';
import type { Face } from './face';
import { words } from './words';

/** What the route asks for now. */
export function paceLines(): readonly string[] {
  const at = day.progress();
  const takes = day.pace();
  const turn = day.nextTurn();
  const measured = at?.stretches.at(-1);
  const maxKt = documents.value.aircraft?.taxi.maxKt;
  const isOver = measured !== undefined && maxKt !== undefined && measured.groundKt > maxKt;
  return [
    ...(turn === null ? [] : [turnWords(turn)]),
    ...(maxKt === undefined ? [] : [words.notExceed(wholeNumber(maxKt))]),
    ...(measured === undefined
      ? []
      : [
          isOver
            ? `${words.measured(wholeNumber(measured.groundKt))}, ${words.over(wholeNumber(maxKt))}`
            : words.measured(wholeNumber(measured.groundKt)),
        ]),
    ...(takes?.elapsedS != null && takes.expectedS !== null
      ? [words.soFar(durationWords(takes.elapsedS), durationWords(takes.expectedS))]
      : at !== null && takes?.leftS != null
        ? [words.takes(length(at.leftM), durationWords(takes.leftS))]
        : []),
  ];
}

/** The pace over the whole screen. */
export function taxiFace(): Face {
  const at = day.progress();
  const coming = day.passing();
  const hold =
    coming?.kind === 'cross' ? [holdWords(coming.crossing, day.settled().controlled === true)] : [];
  const noRoute = at === null ? [words.noRoute] : [];
  const [first = '', ...lines] = [...noRoute, ...hold, ...paceLines()];
  const next = at?.next ?? null;
  const passing = coming === null ? null : passingWords(coming);
  const across = at?.last == null ? undefined : takeBackPassing;
  const arrived = at?.last == null ? '' : passingWords({ kind: 'arrive', mark: at.last });
  const said = passing ?? arrived;
  return {
    name: `taxi/${next?.node ?? ''}`,
    share: at === null || at.leftM + at.goneM === 0 ? null : at.goneM / (at.leftM + at.goneM),
    head: [words.taxi, endWords(), windWords()],
    drawn: (
      <>
        <strong class={styles.item}>{first}</strong>
        {lines.map((line, index) => (
          <span key={index} class={styles.line}>
            {line}
          </span>
        ))}
      </>
    ),
    text: [first, ...lines].join(' ').replace(/\d/g, '0'),
    foot: [said, ''],
    hint: passing === null ? '' : words.hints.tap(withinSentence(passing, pageLanguage())),
    label: said === '' ? first : said,
    spoken: first,
    critical: false,
    held: '',
    does: { ...(passing !== null && { tap: passNext }), ...(across && { across }) },
    keys: [{ name: words.back, onPress: across }],
  };
}
