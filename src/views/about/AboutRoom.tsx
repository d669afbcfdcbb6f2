/** About: what Lapstrip is, the cautions, and where its numbers come from. */

import type { JSX } from 'preact';
import { VERSION } from '../../device/version';
import { Cautions } from '../../parts/cautions/Cautions';
import styles from './About.module.css';
import { words } from './words';

/** The room. */
export function AboutRoom(): JSX.Element {
  return (
    <div class={styles.about}>
      <p>{words.what}</p>
      <h3>{words.cautionsTitle}</h3>
      <Cautions />
      <h3>{words.dataTitle}</h3>
      <ul class={styles.list}>
        {words.data.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
      <h3>{words.keptTitle}</h3>
      <p>{words.kept}</p>
      <p>{words.version(VERSION)}</p>
      <p>
        {words.licence}{' '}
        <a class={styles.link} href="licences.txt" target="_blank" rel="noreferrer">
          {words.licences}
        </a>
      </p>
    </div>
  );
}
