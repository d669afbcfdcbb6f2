/**
 * A document being written or drawn, of whatever kind: its changes, its faults, its draft on the
 * device.
 */

import { batch, computed, signal } from '@preact/signals';
import {
  beginHistory,
  type Changes,
  changeClosed,
  changed,
  type DocumentFault,
  documentNow,
  type History,
  loadDocumentFaults,
  redone,
  restoredHistory,
  type StoredHistory,
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

/** Loads what checks documents. Rejects if it isn't available. */
export async function loadCheck(): Promise<void> {
  check.value ??= await loadDocumentFaults();
}

/** What keeps a document from being saved, by its schema; empty until the check is loaded. */
export const faultsOf = (document: Document | null): readonly DocumentFault[] =>
  document === null ? [] : (check.value?.(document) ?? []);

/** What undo or redo did last: the change it took back or made again, and the document around it. */
export interface Stepped<D, E> {
  readonly way: 'undone' | 'redone';
  readonly edit: E;
  /** The document without the change, and with it. */
  readonly without: D;
  readonly made: D;
}

/** What a kind of document says about its drafts. */
interface Drafting<D, E> {
  readonly changes: Changes<D, E>;
  /** The name the device stores the present draft under. */
  readonly name: () => string;
  /** Whether no draft is needed, for instance because the document itself is saved. */
  readonly isDone: (history: History<D, E>) => boolean;
  /** What is stored beside the changes. */
  readonly more?: () => object;
}

/**
 * The draft of a document, as signals, and its operations. One instance serves whatever is open of
 * its kind.
 */
export function draftOf<D extends Document, E>({ changes, name, isDone, more }: Drafting<D, E>) {
  const history = signal<History<D, E> | null>(null);
  /** What undo or redo did last; null once anything else was done. */
  const stepped = signal<Stepped<D, E> | null>(null);
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
    const isOther = documentNow(after) !== documentNow(before);
    batch(() => {
      history.value = after;
      if (isOther) stepped.value = null;
    });
    if (isOther) keeper.soon();
  }

  /** Undoes or redoes one change. */
  function step(way: 'undone' | 'redone'): void {
    const before = history.peek();
    if (before === null) return;
    const change = before.steps[way === 'undone' ? before.at - 1 : before.at];
    batch(() => {
      take(way === 'undone' ? undone : redone);
      const after = history.peek();
      if (change === undefined || after === null) return;
      const [from, to] = [documentNow(before), documentNow(after)];
      const [without, made] = way === 'undone' ? [to, from] : [from, to];
      stepped.value = { way, edit: change.edit, without, made };
    });
  }

  return {
    history,
    stepped,
    stays,
    keeper,
    /** The document as it stands; null if none is open. */
    document: computed(() => history.value && documentNow(history.value)),
    canUndo: computed(() => history.value !== null && history.value.at > 0),
    canRedo: computed(
      () => history.value !== null && history.value.at < history.value.steps.length,
    ),

    /** Closes what is open, so that another can be opened. */
    close(): void {
      keeper.flush();
      history.value = null;
      stepped.value = null;
    },
    /** Opens a document, or continues it was left. */
    open(from: D | History<D, E>): void {
      history.value = 'steps' in from ? from : beginHistory(from);
    },
    /** Makes a change. If it `goesOn` setting what the last one set, the two count as one. */
    edit: (edit: E, goesOn = false) => take((now) => changed(changes, now, edit, goesOn)),
    /** Ends the current change: what comes next is a new one. */
    settle: () => take(changeClosed),
    /** Undoes the last change. */
    undo: () => step('undone'),
    /** Redoes the last change undone. */
    redo: () => step('redone'),
    /**
     * What was left of a document, on the device or where it was `kept` before; null if nothing can
     * be continued.
     */
    left: async (of: string, kept?: unknown) => leftIn(changes, (await readDraft(of)) ?? kept),
  };
}

/**
 * A history with what was stored beside it. Until 0.2 procedures stored the number of valid changes
 * as `made`.
 */
type Left<D, E> = StoredHistory<D, E> & { readonly made?: number; readonly known?: unknown };

function leftIn<D extends Document, E>(changes: Changes<D, E>, kept: unknown) {
  if (typeof kept !== 'object' || kept === null) return null;
  const { start, edits, made, at = made, known } = kept as Left<D, E>;
  try {
    const history = restoredHistory(changes, { start, edits, at: at ?? 0 });
    // What another version left may be beyond this one: an unknown change yields nothing.
    const isOurs =
      history.steps.every(({ document }) => document !== undefined) &&
      faultsOf(documentNow(history)).every(({ code }) => code !== 'not-of-shape');
    return isOurs ? { history, known } : null;
  } catch {
    return null;
  }
}
