/** The saved versions: any of them, and the original, can be restored. */

import type { JSX } from 'preact';
import { takeUpWriting, versions, writing, written } from '../../board/writing/procedure';
import { type Procedure, sameDocument, withoutEmptyPhases } from '../../core';
import { timeOfDay, utcDate } from '../../parts/format';
import { Key } from '../../parts/key/Key';
import styles from './Editor.module.css';
import { spokenOfEdit } from './state';
import { words } from './words';

/** The list of versions, newest first, and the original. */
export function Versions(): JSX.Element {
  const now = writing.value;
  if (now === null || now === 'failed') return <p>{words.loading}</p>;
  return (
    <>
      {versions.value.length === 0 && <p>{words.noVersions}</p>}
      <ol>
        {versions.value.map(({ hash, content, edition }) => (
          <Version
            key={hash}
            name={words.version(edition.number)}
            about={keptOn(edition.keptAt)}
            content={content}
          />
        ))}
        <Version name={words.original} about={words.asOriginal} content={now.original.content} />
      </ol>
    </>
  );
}

function keptOn(keptAt: string): string {
  const ms = Date.parse(keptAt);
  return words.keptOn(utcDate(ms), timeOfDay(ms));
}

/** What counts in comparing two versions: neither their numbers nor, for the original, the name. */
const stepsOf = (procedure: Procedure) => {
  const { phases, lists } = withoutEmptyPhases(procedure);
  return { phases, lists };
};

interface VersionProps {
  readonly name: string;
  readonly about: string;
  readonly content: Procedure;
}

function Version({ name, about, content }: VersionProps) {
  const isNow = written.value !== null && sameDocument(stepsOf(content), stepsOf(written.value));
  return (
    <li class={styles.version}>
      <p>
        <b>{name}</b>, {about}
      </p>
      {isNow ? (
        <p>{words.isNow}</p>
      ) : (
        <Key
          label={words.takeUpOf(name)}
          onPress={() => {
            takeUpWriting(content);
            spokenOfEdit.value = words.takenUp;
          }}
        >
          {words.takeUp}
        </Key>
      )}
    </li>
  );
}
