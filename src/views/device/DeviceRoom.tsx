/**
 * Device: what stays the same whatever is flown. Screen, language, hand, voice, keys, other windows.
 */

import type { JSX } from 'preact';
import { awake } from '../../board/awake';
import { keeping } from '../../board/board';
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
import { VERSION } from '../../device/version';
import { Choice, choicesOf } from '../../parts/choice/Choice';
import { Hint } from '../../parts/field/Labelled';
import { Key, keyClass } from '../../parts/key/Key';
import { Keys } from '../../parts/key/Keys';
import { SheetPart, SheetParts } from '../../parts/sheet/SheetPart';
import { Units } from './Units';
import { words as unitWords } from './unitWords';
import { KeysPart, SoundPart, VoicePart } from './VoicePart';
import { words as voiceWords } from './voiceWords';
import { words } from './words';

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

/** The room. */
export function DeviceRoom(): JSX.Element {
  return (
    <SheetParts>
      <SheetPart title={words.theme}>
        <ScreenPart />
      </SheetPart>
      <SheetPart title={words.language}>
        <Choice
          label={words.language}
          options={choicesOf(words.languages)}
          chosen={language}
          onChoose={chooseLanguage}
        />
      </SheetPart>
      <SheetPart title={unitWords.title}>
        <Units />
      </SheetPart>
      <SheetPart title={words.hand}>
        <Choice
          label={words.hand}
          options={choicesOf(words.hands)}
          chosen={hand.value}
          onChoose={(chosen) => {
            hand.value = chosen;
          }}
        />
      </SheetPart>
      <SheetPart title={words.beside}>
        <Choice
          label={words.beside}
          options={choicesOf(words.besides)}
          chosen={keptBeside.value}
          onChoose={(chosen) => {
            keptBeside.value = chosen;
          }}
        />
        <Keys>
          <Key
            pressed={cardAtLineUp.value}
            onPress={() => {
              cardAtLineUp.value = !cardAtLineUp.value;
            }}
          >
            {words.cardAtLineUp}
          </Key>
        </Keys>
      </SheetPart>
      <SheetPart title={voiceWords.title}>
        <VoicePart />
        <SoundPart />
      </SheetPart>
      <SheetPart title={voiceWords.keys}>
        <KeysPart />
      </SheetPart>
      <SheetPart title={words.watching}>
        <WatchPart />
      </SheetPart>
      <SheetPart title={words.storage}>
        <StoragePart />
      </SheetPart>
    </SheetParts>
  );
}

/** The screen's theme and light. */
function ScreenPart() {
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
      {theme.value === 'night' && (
        <>
          <Keys>
            <Key
              pressed={brightNight.value}
              onPress={() => {
                brightNight.value = !brightNight.value;
              }}
            >
              {words.brightNight}
            </Key>
          </Keys>
          <Hint>{words.dimIt}</Hint>
        </>
      )}
      <Hint>{words.awake[awake.value]}</Hint>
      {hasFullScreen() && (
        <Keys>
          <Key pressed={isFullScreen.value} onPress={turnFullScreen}>
            {words.fullScreen}
          </Key>
        </Keys>
      )}
      {fullScreenRefused.value && <Hint>{words.fullScreenRefused}</Hint>}
    </>
  );
}

/** The page for others to watch. */
function WatchPart() {
  return (
    <>
      <Hint>{words.watchHint}</Hint>
      <Keys>
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
      </Keys>
    </>
  );
}

/** Where things are stored, and the way back to an earlier store. */
function StoragePart() {
  return (
    <>
      <Hint>{keeping.value === 'forgotten' ? words.notKept : words.kept}</Hint>
      {isStoreBeside() && (
        <>
          <Hint>{words.isBeside}</Hint>
          <Keys>
            <Key onPress={goBackToStoreBefore}>{words.goBack}</Key>
          </Keys>
        </>
      )}
      <Hint>{words.version(VERSION)}</Hint>
    </>
  );
}
