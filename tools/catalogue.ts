/**
 * Makes `virtual:lapstrip-catalogue` and `virtual:lapstrip-procedures`: the lists of the documents
 * that come with the app, and a loader for each, so that what is not flown today is not downloaded
 * today. The procedures are a list of their own, which the first answer can do without.
 *
 * Every document passes its schema here, once, when the app is built. A document that does not
 * stops the build with its file, the place in it and what is wrong there; the app never meets one.
 */

import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import * as v from 'valibot';
import type { Plugin } from 'vite';
import type { Hash } from '../src/core';
import { aircraftSchema } from '../src/core/aircraft/aircraft.schema';
import { fieldSchema } from '../src/core/airfield/field.schema';
import { languageOf, textIn } from '../src/core/language';
import { procedureSchema } from '../src/core/procedure/procedure.schema';
import { HASH_LENGTH, hashedBytes } from '../src/exchange/hash';
import { faults } from '../src/views/sortie/documentWords.en';

const KINDS = [
  { kind: 'field', folder: 'fields', schema: fieldSchema },
  { kind: 'aircraft', folder: 'aircraft', schema: aircraftSchema },
  { kind: 'procedure', folder: 'procedures', schema: procedureSchema },
] as const;

type Kind = (typeof KINDS)[number]['kind'];
type Checked = v.InferOutput<(typeof KINDS)[number]['schema']>;

/** A document that has passed its schema, and what the catalogue says of it. */
export interface Entry {
  readonly kind: Kind;
  readonly file: string;
  readonly hash: Hash;
  readonly document: Checked;
}

/** The hash as the app works it out at run time, by Node's own SHA-256. */
export function hashAtBuild(document: object): Hash {
  return createHash('sha256').update(hashedBytes(document)).digest('hex').slice(0, HASH_LENGTH);
}

/** Everything wrong with a document: one line each, with the file, the place in it and a sentence. */
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
  return { kind: kind.kind, file, hash: hashAtBuild(document), document };
}

/** The JSON documents in a folder, by code. Two of one kind must not share a code. */
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
const PROCEDURES = 'virtual:lapstrip-procedures';
/** All documents whole, in one file: they come after the first answer, and are stored together. */
const WHOLE = 'virtual:lapstrip-documents';
/** Before a language: what the list says of each field on a page in that language, by the field's code. */
const SENTENCES = 'virtual:lapstrip-sentences/';
/** Before the name of a document without what the first answer can do without: each a file of its own. */
const PLAIN = 'virtual:lapstrip-plain/';

/** A document's module is named for its kind and code, and so is its chunk: `field-xhar`. */
const nameOf = ({ kind, document }: Entry) => `${kind}-${document.code.toLowerCase()}`;

/**
 * What the first answer needs of a document: an aircraft without its physics and its loading, a field
 * without its taxi plan, and of neither what it is about.
 */
function plainOf(document: Checked): object {
  const about = '';
  if ('taxi' in document && 'runways' in document)
    return { ...document, about, taxi: { nodes: [], edges: [] }, translations: undefined };
  if (!('performance' in document || 'load' in document)) return document;
  const { performance: _p, load: _l, translations: _t, ...plain } = document;
  return { ...plain, about };
}

const firstSentence = (text: string): string => text.replace(/\. .*/s, '.');

/** What a field is, in a sentence for a page in a language, and the sentence's own where it is in another. */
function sentenceIn(document: Checked, language: string): object {
  const about = textIn(document, document.about, language);
  const sentence = { about: firstSentence(about.text) };
  return about.language === language ? sentence : { ...sentence, lang: about.language };
}

/** What a list says of a document beside its code and its name. */
function saidOf({ kind, document }: Entry): object {
  // Fields are chosen from a list that says in a sentence what they are.
  if (kind === 'field') return sentenceIn(document, 'en');
  return 'phases' in document
    ? { aircraft: document.aircraft, language: languageOf(document) }
    : {};
}

function listModule(name: string, entries: readonly Entry[]): string {
  const lines = entries.map((entry) => {
    const { kind, hash, document } = entry;
    const shown = {
      ...{ kind, code: document.code, name: document.name, hash },
      ...saidOf(entry),
    };
    const plain = `() => import(${JSON.stringify(PLAIN + nameOf(entry))}).then((m) => m.default)`;
    // A procedure is not asked for before the first answer.
    const loadPlain = kind === 'procedure' ? '' : `, loadPlain: ${plain}`;
    return `{ ...${JSON.stringify(shown)}${loadPlain} },`;
  });
  return `const whole = (listed) => ({
  ...listed,
  load: () => import('${WHOLE}').then((m) => m.default[listed.hash]),
});
export const ${name} = [\n${lines.join('\n')}\n].map(whole);`;
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
    resolveId(id) {
      const isOurs =
        id === LIST ||
        id === PROCEDURES ||
        id === WHOLE ||
        id.startsWith(PLAIN) ||
        id.startsWith(SENTENCES);
      return isOurs ? `\0${id}` : undefined;
    },
    load(id) {
      if (id === `\0${LIST}`) {
        for (const { file } of read()) this.addWatchFile(file);
        const first = read().filter(({ kind }) => kind !== 'procedure');
        return listModule('catalogue', first);
      }
      if (id === `\0${PROCEDURES}`) {
        const procedures = read().filter(({ kind }) => kind === 'procedure');
        return listModule('procedures', procedures);
      }
      if (id === `\0${WHOLE}`) {
        const whole = Object.fromEntries(read().map(({ hash, document }) => [hash, document]));
        return `export default ${JSON.stringify(whole)};`;
      }
      if (id.startsWith(`\0${SENTENCES}`)) {
        const language = id.slice(SENTENCES.length + 1);
        const sentences = read().flatMap(({ kind, document }) =>
          kind === 'field' ? [[document.code, sentenceIn(document, language)]] : [],
        );
        return `export default ${JSON.stringify(Object.fromEntries(sentences))};`;
      }
      const found = read().find((entry) => id === `\0${PLAIN}${nameOf(entry)}`);
      return found && `export default ${JSON.stringify(plainOf(found.document))};`;
    },
    // A document edited while the app is being worked on: read everything again, show it anew.
    handleHotUpdate({ file, server }) {
      if (!file.startsWith(folder)) return;
      entries = null;
      server.moduleGraph.invalidateAll();
      server.ws.send({ type: 'full-reload' });
    },
  };
}
