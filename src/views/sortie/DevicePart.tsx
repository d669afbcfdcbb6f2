/**
 * What belongs to the device: the screen's theme and light, which hand presses, what stands beside
 * the steps, other windows.
 */

import type { JSX } from 'preact';
import { awake } from '../../board/awake';
import { sheet } from '../../board/places';
import { goBackToStoreBefore, isStoreBeside } from '../../board/record/everything';
import { cardAtLineUp, keptBeside } from '../../board/steps/card';
import { askToWatch } from '../../board/watch';
import {
  fullScreenRefused,
  hasFullScreen,
  isFullScreen,
  toggleFullScreen,
} from '../../device/fullScreen';
import { language } from '../../device/language';
import { chooseLanguage } from '../../device/languageChoice';
import { brightNight, theme } from '../../device/preferences';
import { hand } from '../../device/sides';
import { Choice, choicesOf } from '../../parts/choice/Choice';
import { Hint } from '../../parts/field/Labelled';
import { Key, keyClass } from '../../parts/key/Key';
import { words } from './deviceWords';
import styles from './SortieSheet.module.css';

/**
 * Enters or leaves full screen. The sheet closes first: a full-screen element lies over it, and the
 * sheet would block every touch on the page below. If refused, the sheet says so.
 */
function turnFullScreen(): void {
  const open = sheet.value;
  if (!isFullScreen.value) sheet.value = null;
  void toggleFullScreen().then(() => {
    if (fullScreenRefused.value) sheet.value ??= open;
  });
}

/** The keys, each with a note. */
export function DevicePart(): JSX.Element {
  return (
    <>
      <Choice
        label={words.theme}
        options={choicesOf(words.themes)}
        chosen={theme.value}
        onChoose={(name) => {
          theme.value = name;
        }}
      />
      <p class={styles.said}>{words.language}</p>
      <Choice
        label={words.language}
        options={choicesOf(words.languages)}
        chosen={language}
        onChoose={chooseLanguage}
      />
      {theme.value === 'night' && (
        <>
          <Key
            pressed={brightNight.value}
            onPress={() => {
              brightNight.value = !brightNight.value;
            }}
          >
            {words.brightNight}
          </Key>
          <Hint>{words.dimIt}</Hint>
        </>
      )}
      <Hint>{words.awake[awake.value]}</Hint>
      {hasFullScreen() && (
        <Key pressed={isFullScreen.value} onPress={turnFullScreen}>
          {words.fullScreen}
        </Key>
      )}
      {fullScreenRefused.value && <Hint>{words.fullScreenRefused}</Hint>}
      {isStoreBeside() && (
        <>
          <Hint>{words.isBeside}</Hint>
          <Key onPress={goBackToStoreBefore}>{words.goBack}</Key>
        </>
      )}
      <p class={styles.said}>{words.hand}</p>
      <Choice
        label={words.hand}
        options={choicesOf(words.hands)}
        chosen={hand.value}
        onChoose={(chosen) => {
          hand.value = chosen;
        }}
      />
      <p class={styles.said}>{words.beside}</p>
      <Choice
        label={words.beside}
        options={choicesOf(words.besides)}
        chosen={keptBeside.value}
        onChoose={(chosen) => {
          keptBeside.value = chosen;
        }}
      />
      <Key
        pressed={cardAtLineUp.value}
        onPress={() => {
          cardAtLineUp.value = !cardAtLineUp.value;
        }}
      >
        {words.cardAtLineUp}
      </Key>
      <Hint>{words.watchHint}</Hint>
      {/* biome-ignore lint/a11y/useValidAnchor: it leads to a page; that it was asked for is noted beside. */}
      <a
        class={keyClass({})}
        href="#/watch"
        target="_blank"
        rel="noopener"
        onClick={askToWatch}
        onAuxClick={askToWatch}
      >
        {words.watch}
      </a>
    </>
  );
}
