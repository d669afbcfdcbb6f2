/**
 * Makes `virtual:lapstrip-catalogue`: the list of documents that come with the app and a loader for
 * each, so that today's flight downloads only what it needs.
 *
 * Each document passes its schema once, here in the build. One that doesn't fails the build with
 * its file, place and fault; the app never meets it.
 */

import { readdirSync, readFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import * as v from 'valibot';
import type { Plugin } from 'vite';
import type { Field, Hash } from '../src/core';
import { aircraftSchema } from '../src/core/aircraft/aircraft.schema';
import { fieldSchema } from '../src/core/airfield/field.schema';
import { whereabouts } from '../src/core/airfield/whereabouts';
import { languageOf } from '../src/core/language';
import { procedureSchema } from '../src/core/procedure/procedure.schema';
import { documentHash } from '../src/exchange/hash';
import { faults } from '../src/parts/problem/words.en';

const KINDS = [
  { kind: 'field', folder: 'fields', schema: fieldSchema },
  { kind: 'aircraft', folder: 'aircraft', schema: aircraftSchema },
  { kind: 'procedure', folder: 'procedures', schema: procedureSchema },
] as const;

type Kind = (typeof KINDS)[number]['kind'];
type Checked = v.InferOutput<(typeof KINDS)[number]['schema']>;

/** A document that passed its schema, and what the catalogue says of it. */
export interface Entry {
  readonly kind: Kind;
  readonly file: string;
  readonly hash: Hash;
  readonly document: Checked;
}

/** Everything wrong with a document, one line each: file, place, sentence. */
function complaints(file: string, issues: readonly v.BaseIssue<unknown>[]): string {
  return issues
    .map(
      (issue) =>
        `${file}: at ${v.getDotPath(issue) ?? 'the top'}: ${faults[issue.message] ?? issue.message}`,
    )
    .join('\n');
}

function readDocument(file: string, kind: (typeof KINDS)[number]): Entry {
  const shown = relative(process.cwd(), file);
  let read: unknown;
  try {
    read = JSON.parse(readFileSync(file, 'utf8'));
  } catch (error) {
    throw new Error(`${shown}: is not JSON: ${error instanceof Error ? error.message : error}`);
  }
  const checked = v.safeParse<v.GenericSchema<unknown, Checked>>(kind.schema, read);
  if (!checked.success) throw new Error(complaints(shown, checked.issues));
  const { $schema: _, ...document } = checked.output;
  return { kind: kind.kind, file, hash: documentHash(document), document };
}

/** The JSON documents in a folder, by code. No two of a kind may share one. */
export function readCatalogue(folder: string): Entry[] {
  return KINDS.flatMap((kind) => {
    const within = join(folder, kind.folder);
    const entries = readdirSync(within)
      .filter((name) => name.endsWith('.json'))
      .map((name) => readDocument(join(within, name), kind))
      .sort((a, b) => (a.document.code < b.document.code ? -1 : 1));
    entries.forEach(({ document, file }, i) => {
      const before = entries[i - 1];
      if (before?.document.code === document.code) {
        throw new Error(
          `${relative(process.cwd(), file)}: code ${document.code} is taken by another ${kind.kind}`,
        );
      }
    });
    return entries;
  });
}

const LIST = 'virtual:lapstrip-catalogue';
/** Prefix of a document's module; each is a file of its own. */
const DOCUMENT = `${LIST}/`;

/** A document's module and file are named for its kind and code: `field-xhar`. */
const nameOf = ({ kind, document }: Entry) => `${kind}-${document.code.toLowerCase()}`;

const firstSentence = (text: string): string => text.replace(/\. .*/s, '.');

/** What a list says of a field: the first sentence about it, in each language it has. */
function aboutOf({ about, language, translations = {} }: Field): object {
  const sentence = firstSentence(about);
  const translated = Object.entries(translations).map(([tag, texts]) => {
    const text = texts[about];
    return [tag, text === undefined ? {} : { [sentence]: firstSentence(text) }];
  });
  return { about: sentence, language, translations: Object.fromEntries(translated) };
}

function listedOf({ kind, hash, document }: Entry): object {
  const { code, name } = document;
  const listed = { kind, code, name, hash };
  if ('runways' in document) {
    return { ...listed, ...aboutOf(document), ...whereabouts(document) };
  }
  return 'phases' in document
    ? { ...listed, aircraft: document.aircraft, language: languageOf(document) }
    : listed;
}

function listModule(entries: readonly Entry[]): string {
  const lines = entries.map((entry) => {
    const file = JSON.stringify(DOCUMENT + nameOf(entry));
    const load = `() => import(${file}).then((module) => module.default)`;
    return `{ ...${JSON.stringify(listedOf(entry))}, load: ${load} },`;
  });
  return `export const catalogue = [\n${lines.join('\n')}\n];`;
}

/** The plugin; `folder` holds `fields/`, `aircraft/` and `procedures/`. */
export function catalogue(folder: string): Plugin {
  let entries: Entry[] | null = null;
  const read = () => {
    entries ??= readCatalogue(folder);
    return entries;
  };
  return {
    name: 'lapstrip-catalogue',
    resolveId: (id) => (id === LIST || id.startsWith(DOCUMENT) ? `\0${id}` : undefined),
    load(id) {
      if (id === `\0${LIST}`) {
        for (const { file } of read()) this.addWatchFile(file);
        return listModule(read());
      }
      const found = read().find((entry) => id === `\0${DOCUMENT}${nameOf(entry)}`);
      return found && `export default ${JSON.stringify(found.document)};`;
    },
    // A document edited during development: read everything again and reload.
    handleHotUpdate({ file, server }) {
      if (!file.startsWith(folder)) return;
      entries = null;
      server.moduleGraph.invalidateAll();
      server.ws.send({ type: 'full-reload' });
    },
  };
}
