/** Full screen for the app, without the browser's own bars. */

import { signal } from '@preact/signals';

/** Whether the browser offers it. Most devices run installed apps full screen anyway. */
export const hasFullScreen = (): boolean => document.fullscreenEnabled === true;

/** Whether the app is full screen now. */
export const isFullScreen = signal(document.fullscreenElement !== null);

/** Whether full screen was requested and refused. */
export const fullScreenRefused = signal(false);

document.addEventListener('fullscreenchange', () => {
  isFullScreen.value = document.fullscreenElement !== null;
});

/** Enters or leaves full screen. */
export async function toggleFullScreen(): Promise<void> {
  fullScreenRefused.value = false;
  try {
    if (document.fullscreenElement === null) await document.documentElement.requestFullscreen();
    else await document.exitFullscreen();
  } catch {
    fullScreenRefused.value = true;
  }
}
