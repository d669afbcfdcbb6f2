/** The whole screen for the app, without the browser's own bars. */

import { signal } from '@preact/signals';

/** Whether the browser can give it. An app that is installed has it already on most devices. */
export const hasFullScreen = (): boolean => document.fullscreenEnabled === true;

/** Whether it is given now. */
export const isFullScreen = signal(document.fullscreenElement !== null);

/** Whether it was asked for and refused. */
export const fullScreenRefused = signal(false);

document.addEventListener('fullscreenchange', () => {
  isFullScreen.value = document.fullscreenElement !== null;
});

/** Takes the whole screen, or gives it back. */
export async function toggleFullScreen(): Promise<void> {
  fullScreenRefused.value = false;
  try {
    if (document.fullscreenElement === null) await document.documentElement.requestFullscreen();
    else await document.exitFullscreen();
  } catch {
    fullScreenRefused.value = true;
  }
}
