/** What is one's own: how the version differs from the original, part by part. */

import type { JSX } from 'preact';
import { listedAircraft } from '../../board/documents/documents';
import { callLang } from '../../board/language';
import { comparedWith, written } from '../../board/writing/procedure';
import {
  type AbnormalList,
  type OptionDifference,
  type OwnDifference,
  ownDifference,
  type Procedure,
  type ProcedureOption,
  type Step,
} from '../../core';
import { joined, markedText, type Worded, worded } from '../../parts/marked';
import { leafSaid } from '../../parts/stepText';
import { stepWords } from '../../parts/stepTextWords';
import styles from './Editor.module.css';
import { aboutStep } from './StepList';
import { aboutList, partLang, partName, withOptions, writtenLang } from './said';
import { words } from './words';

/** The view of differences. */
export function Differences(): JSX.Element {
  const base = comparedWith.value;
  const own = written.value;
  const found = base === null || own === null ? null : ownDifference(base, own);
  if (own === null || found === null || isNothing(found)) return <p>{words.nothingMine}</p>;
  return <AllDifferences found={found} procedure={own} before={words.before} after={words.after} />;
}

const isNothing = ({ aircraft, options, parts }: OwnDifference) =>
  aircraft === null && parts.length + options.length === 0;

/** An aircraft by its name; by its code if it isn't here. */
const nameOf = (aircraft: string) =>
  listedAircraft.value.find(({ code }) => code === aircraft)?.name ?? aircraft;

interface AllDifferencesProps {
  readonly found: OwnDifference;
  /** Whose list titles and options name things. */
  readonly procedure: Procedure;
  /** Whose wording came before, and whose after. */
  readonly before: string;
  readonly after: string;
}

/** A list of differences. */
export function AllDifferences({
  found: { aircraft, options, parts },
  procedure,
  before,
  after,
}: AllDifferencesProps): JSX.Element {
  return (
    <>
      {aircraft !== null && <p>{words.forNow(nameOf(aircraft))}</p>}
      {options.length > 0 && <Options options={options} before={before} after={after} />}
      {parts.map((one) => (
        <section key={one.part} class={styles.part}>
          <h3 class={styles.partName} lang={partLang(one.part)}>
            {partName(one.part, procedure)}
          </h3>
          <dl class={styles.differences}>
            {one.list !== null && (
              <div>
                <dt class={styles.differs}>{words.listChanged}</dt>
                <dd class={styles.was}>
                  {before}: {fullListOf(one.list.before).drawn}
                </dd>
                <dd class={styles.is}>
                  {after}: {fullListOf(one.list.after).drawn}
                </dd>
              </div>
            )}
            <Kind
              title={words.added}
              lines={one.added.map((step) => fullTextOf(step, procedure))}
            />
            <Kind
              title={words.removedHead}
              lines={one.removed.map((step) => fullTextOf(step, procedure))}
            />
            <Kind
              title={words.moved}
              lines={one.moved.map(({ step, from }) =>
                joined(', ', [
                  worded(writtenLang(), itself, step.item),
                  from === one.part
                    ? ofPage(words.movedHere)
                    : worded(partLang(from), words.movedFrom, partName(from, procedure)),
                ]),
              )}
            />
            {one.reworded.map((pair) => (
              <div key={pair.after.id}>
                <dt class={styles.differs}>
                  {words.reworded}: {markedText(writtenLang(), pair.after.item)}
                </dt>
                <dd class={styles.was}>
                  {before}: {fullTextOf(pair.before, procedure).drawn}
                </dd>
                <dd class={styles.is}>
                  {after}: {fullTextOf(pair.after, procedure).drawn}
                </dd>
              </div>
            ))}
          </dl>
        </section>
      ))}
    </>
  );
}

/** The options that differ: they decide whether the steps that ask for them are there. */
function Options({
  options,
  before,
  after,
}: Pick<AllDifferencesProps, 'before' | 'after'> & {
  readonly options: readonly OptionDifference[];
}) {
  return (
    <section class={styles.part}>
      <h3 class={styles.partName}>{words.optionsHead}</h3>
      <dl class={styles.differences}>
        {options.map(({ before: was, after: is }) => (
          <div key={is?.id ?? was?.id}>
            <dt class={styles.differs}>
              {was === null ? words.added : is === null ? words.removedHead : words.reworded}
            </dt>
            {was !== null && (
              <dd class={styles.was}>
                {before}: {optionText(was)}
              </dd>
            )}
            {is !== null && (
              <dd class={styles.is}>
                {after}: {optionText(is)}
              </dd>
            )}
          </div>
        ))}
      </dl>
    </section>
  );
}

const optionText = (option: ProcedureOption) =>
  withOptions([option], (named) => leafSaid({ option: option.id }, named)[option.fitted ? 0 : 1])
    .drawn;

function Kind({ title, lines }: { title: string; lines: readonly Worded[] }) {
  if (lines.length === 0) return null;
  return (
    <div>
      <dt class={styles.differs}>{title}</dt>
      {lines.map(({ text, drawn }) => (
        <dd key={text}>{drawn}</dd>
      ))}
    </div>
  );
}

const itself = (text: string) => text;
const ofPage = (text: string) => worded(undefined, () => text);

const textOf = ({ item, response }: Step) => worded(writtenLang(), words.stepText, item, response);

/** Everything a step says, so that any difference shows. */
export const fullTextOf = (step: Step, { options }: Pick<Procedure, 'options'>): Worded =>
  joined(' · ', [
    textOf(step),
    ...(step.note === undefined ? [] : [worded(writtenLang(), itself, step.note)]),
    ...(step.call === undefined ? [] : [worded(callLang(), itself, step.call)]),
    aboutStep(step, options),
    ...(step.gate === undefined ? [] : [ofPage(stepWords.live[step.gate])]),
    ...(step.gateFt === undefined ? [] : [ofPage(`${step.gateFt} ft`)]),
    ...(step.tiedTo === undefined ? [] : [ofPage(words.withBrakes)]),
    ...(step.needs === undefined ? [] : [ofPage(words.needsSaid(step.needs))]),
    ...(step.until === undefined ? [] : [ofPage(words.untilSaid(words.phases[step.until]))]),
  ]);

/** What a list has apart from its steps. */
export const fullListOf = (list: AbnormalList): Worded =>
  worded(writtenLang(), (title) => words.stepText(title, aboutList(list)), list.title);
