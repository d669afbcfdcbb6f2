/** Files dropped on the window, wherever in it. */

import { watching } from '../places';
import { openFile } from './opened';

/** Starts taking files; call once. A text that is dragged stays the browser's. */
export function takeDropped(): void {
  if (watching) return;
  const hasFile = ({ dataTransfer }: DragEvent) => dataTransfer?.types.includes('Files') ?? false;
  addEventListener('dragover', (event) => {
    if (!hasFile(event)) return;
    // Without this the browser leaves the app and shows the file.
    event.preventDefault();
    if (event.dataTransfer !== null) event.dataTransfer.dropEffect = 'copy';
  });
  addEventListener('drop', (event) => {
    if (!hasFile(event)) return;
    event.preventDefault();
    const file = event.dataTransfer?.files[0];
    if (file !== undefined) void openFile(file);
  });
}
