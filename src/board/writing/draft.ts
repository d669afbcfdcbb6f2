/** A document being written or drawn, of whatever kind: its changes, what is wrong in it, its draft on the device. */

import { computed, signal } from '@preact/signals';
import {
  beginHistory,
  type Changes,
  changed,
  type DocumentFault,
  type History,
  loadDocumentFaults,
  redone,
  restoredHistory,
  type StoredHistory,
  settled,
  standing,
  storedHistory,
  undone,
} from '../../core';
import { draftKeeper, readDraft } from '../../record/drafts';

/** A document of any kind. */
interface Document {
  readonly lapstrip: string;
}

type Check = Awaited<ReturnType<typeof loadDocumentFaults>>;

const check = signal<Check | null>(null);

/** Loads what checks documents. Rejects where it cannot be had. */
export async function loadCheck(): Promise<void> {
  check.value ??= await loadDocumentFaults();
}

/** What keeps a document from being kept, by its schema; empty before that is loaded. */
export const faultsOf = (document: Document | null): readonly DocumentFault[] =>
  document === null ? [] : (check.value?.(document) ?? []);

/** What a kind of document says of its drafts. */
interface Drafting<D, E> {
  readonly changes: Changes<D, E>;
  /** The name that the draft in hand is kept under on the device. */
  readonly name: () => string;
  /** Whether it needs no draft, as when it is kept as a document. */
  readonly isDone: (history: History<D, E>) => boolean;
  /** What is stored beside the changes. */
  readonly more?: () => object;
}

/** The draft of a document, as signals, and what is done with it. One stands for whatever is open of its kind. */
export function draftOf<D extends Document, E>({ changes, name, isDone, more }: Drafting<D, E>) {
  const history = signal<History<D, E> | null>(null);
  /** Whether it will still be there after a reload. */
  const stays = signal(true);

  const stored = () => {
    const now = history.peek();
    return now === null || isDone(now)
      ? name()
      : { ...storedHistory(now), ...more?.(), code: name() };
  };
  const keeper = draftKeeper(stored, (isKept) => {
    stays.value = isKept;
  });

  function take(change: (history: History<D, E>) => History<D, E>): void {
    const before = history.peek();
    if (before === null) return;
    const after = change(before);
    history.value = after;
    if (standing(after) !== standing(before)) keeper.soon();
  }

  return {
    history,
    stays,
    keeper,
    /** As it stands; null where none is open. */
    document: computed(() => history.value && standing(history.value)),
    canUndo: computed(() => history.value !== null && history.value.at > 0),
    canRedo: computed(
      () => history.value !== null && history.value.at < history.value.steps.length,
    ),

    /** Closes what is open, so that another can be. */
    close(): void {
      keeper.flush();
      history.value = null;
    },
    /** Opens one, or goes on with it as it was left. */
    open(from: D | History<D, E>): void {
      history.value = 'steps' in from ? from : beginHistory(from);
    },
    /** Makes a change. Where it `goesOn` setting what the last one set, the two are one. */
    edit: (edit: E, goesOn = false) => take((now) => changed(changes, now, edit, goesOn)),
    /** What comes next is a change of its own. */
    settle: () => take(settled),
    /** Takes the last change back. */
    undo: () => take(undone),
    /** Makes again what was taken back last. */
    redo: () => take(redone),
    /** What was left of one, from the device or from where it was `kept` before; null where there is none that can be gone on with. */
    left: async (of: string, kept?: unknown) => leftIn(changes, (await readDraft(of)) ?? kept),
  };
}

/** A history with what was stored beside it. Until 0.2 the number of changes that hold was `made` for procedures. */
type Left<D, E> = StoredHistory<D, E> & { readonly made?: number; readonly known?: unknown };

function leftIn<D extends Document, E>(changes: Changes<D, E>, kept: unknown) {
  if (typeof kept !== 'object' || kept === null) return null;
  const { start, edits, made, at = made, known } = kept as Left<D, E>;
  try {
    const history = restoredHistory(changes, { start, edits, at: at ?? 0 });
    // What another version left may not be what this one can draw: a change it does not know gives nothing.
    const isOurs =
      history.steps.every(({ document }) => document !== undefined) &&
      faultsOf(standing(history)).every(({ code }) => code !== 'not-of-shape');
    return isOurs ? { history, known } : null;
  } catch {
    return null;
  }
}
