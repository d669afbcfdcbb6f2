/** How two documents of one kind differ, and which of them is the newer. */

import {
  type Aircraft,
  type Field,
  type OptionDifference,
  ownDifference,
  type Procedure,
  type ProcedureOption,
} from '../../core';
import { partsThatDiffer, type StepDifferences, stepDifferences } from '../../exchange/differences';
import { aircraftDifference, type FactDifference, fieldDifference } from '../../exchange/facts';

/** What differs between two documents. */
export interface Differences {
  /** For fields and aircraft: what a pilot has a name for. */
  readonly facts: readonly FactDifference[];
  /** Parts that differ in more than that, by the names of their properties. */
  readonly parts: readonly string[];
  /** For procedures: step by step, and how their options differ. */
  readonly steps: StepDifferences | null;
  readonly fitted: readonly OptionDifference[];
  /** The option names that conditions of either refer to. */
  readonly options: readonly ProcedureOption[];
}

/** Two documents of one kind, which have passed the schema of that kind. */
export function differencesOf(kind: string, before: object, after: object): Differences {
  if (kind === 'procedure') {
    const [was, is] = [before as Procedure, after as Procedure];
    return {
      facts: [],
      parts: partsThatDiffer(was, is).filter((part) => part !== 'phases' && part !== 'lists'),
      steps: stepDifferences(was, is),
      fitted: ownDifference(was, is).options,
      options: [...(is.options ?? []), ...(was.options ?? [])],
    };
  }
  const found =
    kind === 'field'
      ? fieldDifference(before as Field, after as Field)
      : aircraftDifference(before as Aircraft, after as Aircraft);
  return { ...found, steps: null, fitted: [], options: [] };
}

/**
 * Whether a document is newer or older than another, by what is written in them: the number of the
 * version, or what it was made from. Null if they don't say.
 */
export function ageAgainst(
  other: { readonly hash: string; readonly content: object },
  content: object,
  hash: string,
): 'newer' | 'older' | null {
  const [mine, theirs] = [other.content as Partial<Procedure>, content as Partial<Procedure>];
  if (theirs.basedOn?.hash === other.hash) return 'newer';
  if (mine.basedOn?.hash === hash) return 'older';
  const [was, is] = [mine.edition?.number, theirs.edition?.number];
  if (was === undefined || is === undefined || was === is) return null;
  return is > was ? 'newer' : 'older';
}
