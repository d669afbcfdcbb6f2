/** One end in full: its numbers, the rule that sets it apart, and what the pilot knows of it today. */

import type { JSX } from 'preact';
import { day } from '../../../board/board';
import { compare } from '../../../board/day';
import { ask } from '../../../board/places';
import { closeEnd, holdShort } from '../../../board/record/choices';
import { endFigures, type RuleApplied, type WindAnswer } from '../../../core';
import { Asked } from '../../../parts/asked/Asked';
import { shownFigure } from '../../../parts/digits';
import { QuantityField } from '../../../parts/field/QuantityField';
import { decimal, direction, wholeNumber } from '../../../parts/format';
import { Key } from '../../../parts/key/Key';
import { Sheet } from '../../../parts/sheet/Sheet';
import { length } from '../../../parts/units';
import { words as windWords } from '../words';
import styles from './EndSheet.module.css';
import { words } from './words';

interface EndSheetProps {
  readonly end: string;
  readonly answered: WindAnswer;
  readonly onClose: () => void;
}

/** The sheet of an end, beside the best one, or the best beside the next. */
export function EndSheet({ end, answered, onClose }: EndSheetProps): JSX.Element {
  const ends = answered.ranked?.ends ?? [];
  const best = ends[0]?.designator === end ? ends[1] : ends[0];
  const ranked = ends.find(({ designator }) => designator === end);
  const figures = ranked && endFigures(ranked, answered, day.settled());
  const { closedToday, holdShortM } = day.inputs();
  const closed = closedToday.includes(end);
  return (
    <Sheet title={words.endTitle(end)} close={words.close} onClose={onClose}>
      {figures && (
        <dl class={styles.figures}>
          {(
            [
              'headwind',
              'crosswind',
              'crosswindWorst',
              'tailwindWorst',
              'headingMagnetic',
              'available',
            ] as const
          ).map((name) => {
            const figure = figures[name];
            const title = words.figures[name];
            return (
              <div key={name} class={styles.figure}>
                <dt>{title}</dt>
                <dd>
                  {figure.value === null ? (
                    words.unknown
                  ) : (
                    <Asked hint={windWords.ask} onAsk={() => ask(title, figure)}>
                      {figure.unit === 'deg' ? direction(figure.value) : shownFigure(figure)}
                    </Asked>
                  )}
                </dd>
              </div>
            );
          })}
        </dl>
      )}
      {best !== undefined && <Compared a={end} b={best.designator} />}
      <div class={styles.today}>
        <Key pressed={closed} onPress={() => closeEnd(end, !closed)}>
          {closed ? words.closedToday : words.closeToday}
        </Key>
        {day.purpose() === 'landing' && (
          <QuantityField
            unit="m"
            name={words.holdShort}
            value={holdShortM[end] ?? null}
            least={1}
            most={9999}
            bad={words.holdShortBad}
            hint={words.holdShortNone}
            onChange={(metres) => holdShort(end, metres)}
          />
        )}
      </div>
    </Sheet>
  );
}

/** The rules in the order they apply, and the one that decided. */
function Compared({ a, b }: { a: string; b: string }) {
  const compared = compare(a, b);
  if (compared === null) return null;
  return (
    <table class={styles.rules}>
      <caption>
        {words.compared(compared.first === 'a' ? a : b, compared.first === 'a' ? b : a)}
      </caption>
      <thead>
        <tr>
          <th scope="col">{words.rule}</th>
          <th scope="col">{a}</th>
          <th scope="col">{b}</th>
        </tr>
      </thead>
      <tbody>
        {compared.rules.map((rule, place) => (
          // A rule may apply twice, so it is identified by its position.
          <tr key={place} class={rule.decides ? styles.decides : undefined}>
            <th scope="row">
              {words.rules[rule.rule] ?? windWords.reason[rule.rule]}
              <span class={styles.verdict}>{verdictWords(rule)}</span>
            </th>
            <td>{measure(rule, rule.a)}</td>
            <td>{measure(rule, rule.b)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

const verdictWords = ({ decides, verdict }: RuleApplied) =>
  decides ? words.decides : verdict === 'alike' ? words.alike : words.notApplied;

/** What the rule compares, in its own unit. */
function measure({ rule }: RuleApplied, value: number | null): string {
  if (value === null) return words.unknown;
  switch (rule) {
    case 'most-headwind':
      return `${decimal(value, 1)} kt`;
    case 'least-crosswind-share':
    case 'fails-least':
      return Number.isFinite(value) ? `${wholeNumber(value * 100)} %` : words.no;
    case 'most-runway-left':
    case 'longest-runway':
    case 'shortest-taxi':
      return length(value);
    case 'most-aligned':
      return `${wholeNumber(value)}°`;
    case 'preferred':
      return wholeNumber(value);
    case 'alike':
      return '';
    default:
      return value === 1 ? words.yes : words.no;
  }
}
