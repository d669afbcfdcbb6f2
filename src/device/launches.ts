/**
 * What the installed app is opened with while its window is open already, and files the device
 * opens with it. Web App Launch Handler API, W3C; browsers without it open a new page instead.
 */

interface LaunchParams {
  readonly targetURL?: string;
  readonly files?: readonly { getFile(): Promise<File> }[];
}

interface LaunchQueue {
  setConsumer(consumer: (launched: LaunchParams) => void): void;
}

/** Receives launches. */
export interface Launched {
  onFile(file: File): void;
  /** An address of the app other than the one this page was opened at. */
  onAddress(address: URL): void;
}

const isQueue = (queue: unknown): queue is LaunchQueue =>
  typeof queue === 'object' && queue !== null && 'setConsumer' in queue;

/** Starts listening for launches; earlier ones are delivered too. */
export function followLaunches({ onFile, onAddress }: Launched): void {
  const queue: unknown = Reflect.get(globalThis, 'launchQueue');
  if (!isQueue(queue)) return;
  const [page] = performance.getEntriesByType('navigation');
  let isFirst = true;
  queue.setConsumer(({ targetURL, files = [] }) => {
    const opened = isFirst ? page : undefined;
    isFirst = false;
    // A reload delivers the page's own launch again.
    if (opened instanceof PerformanceNavigationTiming && opened.type === 'reload') return;
    const [file] = files;
    if (file !== undefined) void file.getFile().then(onFile, () => undefined);
    else if (targetURL !== undefined && targetURL !== opened?.name) onAddress(new URL(targetURL));
  });
}
