/**
 * What an installed app is opened with while its window is there already, and files the device opens
 * with it. Web App Launch Handler API, W3C; browsers that have none open a new page instead.
 */

interface LaunchParams {
  readonly targetURL?: string;
  readonly files?: readonly { getFile(): Promise<File> }[];
}

interface LaunchQueue {
  setConsumer(consumer: (launched: LaunchParams) => void): void;
}

/** What is told of a launch. */
export interface Launched {
  onFile(file: File): void;
  /** An address of the app, other than the one this page was opened at. */
  onAddress(address: URL): void;
}

const isQueue = (queue: unknown): queue is LaunchQueue =>
  typeof queue === 'object' && queue !== null && 'setConsumer' in queue;

/** Begins to listen to launches; also those from before are told. */
export function followLaunches({ onFile, onAddress }: Launched): void {
  const queue: unknown = Reflect.get(globalThis, 'launchQueue');
  if (!isQueue(queue)) return;
  const [page] = performance.getEntriesByType('navigation');
  let isFirst = true;
  queue.setConsumer(({ targetURL, files = [] }) => {
    const opened = isFirst ? page : undefined;
    isFirst = false;
    // What a page was opened with is told again after a reload.
    if (opened instanceof PerformanceNavigationTiming && opened.type === 'reload') return;
    const [file] = files;
    if (file !== undefined) void file.getFile().then(onFile, () => undefined);
    else if (targetURL !== undefined && targetURL !== opened?.name) onAddress(new URL(targetURL));
  });
}
