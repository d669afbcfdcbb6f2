/** An aircraft without a procedure: one is written, one is copied, or it is flown without. */

import { computed } from '@preact/signals';
import {
  type Aircraft,
  adapted,
  type Hash,
  loadDocumentReader,
  type Naming,
  type Procedure,
  type StarterWords,
  starter,
  textIn,
} from '../../core';
import { kept } from '../../device/kept';
import { pageLanguage } from '../../device/pageLanguage';
import { sortie } from '../board';
import { all, listedAircraft } from '../documents/documents';
import { aircraft, chosenProcedure } from '../documents/inUse';
import { keepOwn } from '../documents/ownDocuments';
import { setInputs } from '../record/choices';

/** The codes of the aircraft that the pilot chose to fly without a procedure. */
const without = kept('withoutProcedure', (stored): readonly string[] =>
  Array.isArray(stored) ? stored.filter((code) => typeof code === 'string').slice(0, MOST) : [],
);

/** More than anyone has aircraft. */
const MOST = 200;

/**
 * The aircraft in use if it has no procedure; null while that isn't known yet, because what the
 * pilot owns is still being listed.
 */
export const unproceduredAircraft = computed((): Aircraft | null => {
  const { aircraft: chosen } = sortie.value.inputs;
  const isListed = listedAircraft.value.some(({ hash }) => hash === chosen);
  return isListed && chosenProcedure.value === null ? aircraft.value : null;
});

/** Whether the pilot chose to fly the aircraft without one. */
export const isFlownWithout = computed(
  () =>
    unproceduredAircraft.value !== null && without.value.includes(unproceduredAircraft.value.code),
);

/** Flies the aircraft in use without a procedure. */
export function flyWithout(): void {
  const code = unproceduredAircraft.value?.code;
  if (code === undefined || without.value.includes(code)) return;
  without.value = [...without.value, code].slice(-MOST);
}

/** A short procedure for the aircraft in use, stored and chosen; null if there is no such thing. */
export async function writeFirst(words: StarterWords, name: string): Promise<Hash | null> {
  const to = aircraft.value;
  return to === null ? null : take(firstFor(to, words, name));
}

/** A first procedure for any aircraft, in the language of the page. */
export function firstFor(to: Aircraft, words: StarterWords, name: string): Procedure {
  const language = pageLanguage();
  const stop = to.stop.map((text) => textIn(to, text, language).text);
  return starter(to, stop, words, language, naming(to, name));
}

/**
 * Another aircraft's procedure, adapted to the one in use, stored and chosen; null if it isn't
 * available. Rejects if it can't be loaded.
 */
export async function copyFirst(hash: Hash, name: string): Promise<Hash | null> {
  const to = aircraft.value;
  const listed = all.value.find((one) => one.hash === hash);
  if (to === null || listed?.kind !== 'procedure') return null;
  const source = await listed.load();
  const from = listedAircraft.value.find(({ code }) => code === source.aircraft);
  return take(adapted(source, (await from?.load()) ?? null, to, naming(to, name)));
}

/** The longest code and name that a document may have, characters. */
const LONGEST_CODE = 24;
const LONGEST_NAME = 80;

/** A name no other procedure has the code of. */
function naming({ code }: Aircraft, name: string): Naming {
  const taken = new Set(all.value.map((listed) => listed.code));
  for (let number = 1; ; number++) {
    const end = number === 1 ? '-own' : `-own-${number}`;
    const own = `${code.slice(0, LONGEST_CODE - end.length)}${end}`;
    if (!taken.has(own)) return { code: own, name: name.slice(0, LONGEST_NAME) };
  }
}

/** Stores a procedure; null if its schema doesn't accept it. */
export async function keepFirst(made: Procedure): Promise<Hash | null> {
  const read = (await loadDocumentReader())(JSON.stringify(made));
  if (read.document?.kind !== 'procedure') return null;
  return keepOwn({ kind: 'procedure', content: read.document.content, from: 'written' });
}

/** Stores it, and flies it. */
async function take(made: Procedure): Promise<Hash | null> {
  const hash = await keepFirst(made);
  if (hash !== null) setInputs({ procedure: hash });
  return hash;
}
