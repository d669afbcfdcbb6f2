/** Asking a worker, which is ended with its answer, when it takes too long, or when it is stopped. */

interface Asking<Told, Answer> {
  readonly worker: Worker;
  readonly asked: unknown;
  /** How long it may take, ms, and what its silence means. */
  readonly patienceMs: number;
  readonly late: Answer;
  /** The answer in what it tells; null if there is more to come. */
  readonly answerIn: (told: Told) => Answer | null;
}

/** A question to a worker. */
export interface Apart<Answer> {
  /** Rejects if the worker fails. */
  readonly outcome: Promise<Answer>;
  /** Ends it with this answer, unless it has one. */
  readonly end: (answer: Answer) => void;
}

/** Asks it. */
export function askApart<Told, Answer>({
  worker,
  asked,
  patienceMs,
  late,
  answerIn,
}: Asking<Told, Answer>): Apart<Answer> {
  let end: Apart<Answer>['end'] = () => undefined;
  let timer: ReturnType<typeof setTimeout> | undefined;
  const outcome = new Promise<Answer>((resolve, reject) => {
    end = resolve;
    timer = setTimeout(() => resolve(late), patienceMs);
    worker.onmessage = ({ data }: MessageEvent<Told>) => {
      const answer = answerIn(data);
      if (answer !== null) resolve(answer);
    };
    worker.onerror = () => reject(new Error('not read'));
    worker.onmessageerror = () => reject(new Error('not read'));
    worker.postMessage(asked);
  }).finally(() => {
    clearTimeout(timer);
    worker.terminate();
  });
  return { outcome, end };
}
