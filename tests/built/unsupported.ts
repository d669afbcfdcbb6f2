/**
 * What a script or a style sheet uses that the oldest browsers named do not have, by MDN's
 * compatibility data. It goes by names, since a built file has no types: a global and what is asked
 * of it (`Array.fromAsync`), and a method that is called by a name which no built-in object of those
 * browsers has (`.union()`). Names that the file declares itself are its own.
 */

import bcd, {
  type Identifier,
  type SupportStatement,
} from '@mdn/browser-compat-data/forLegacyNode';
import * as css from 'css-tree';
import { parseAst } from 'vite';

/** The oldest version of each browser, as the data calls them: `{ chrome: '111' }`. */
export type Oldest = Readonly<Partial<Record<keyof typeof bcd.browsers, string>>>;

const isOlderOrSame = (version: string, than: string): boolean => {
  const [a, b] = [version, than].map((text) => text.replace('≤', '').split('.').map(Number));
  for (let i = 0; i < 3; i++) {
    const difference = (a?.[i] ?? 0) - (b?.[i] ?? 0);
    if (difference !== 0) return difference < 0;
  }
  return true;
};

function isIn(statement: SupportStatement | undefined, version: string, prefixed: boolean) {
  const statements = [statement ?? []].flat();
  return statements.some(
    ({ version_added: added, version_removed: removed, flags, prefix, alternative_name: other }) =>
      typeof added === 'string' &&
      added !== 'preview' &&
      isOlderOrSame(added, version) &&
      (!removed || !isOlderOrSame(String(removed), version)) &&
      flags === undefined &&
      (prefixed || (prefix === undefined && other === undefined)),
  );
}

/** The browsers that lack a feature; none where the data do not say. */
function lacking(feature: Identifier | undefined, oldest: Oldest, prefixed = false): string[] {
  const compat = feature?.__compat;
  if (compat === undefined) return [];
  return Object.entries(oldest).flatMap(([browser, version]) => {
    const statement = compat.support[browser as keyof typeof compat.support];
    return isIn(statement, version, prefixed) ? [] : [`${browser} ${version}`];
  });
}

/** What an entry of the data holds by name, without what it says of itself. */
const heldBy = (entry: Identifier | undefined): [name: string, held: Identifier][] =>
  Object.entries(entry ?? {}).flatMap(([name, held]) =>
    // By its type only `__compat` is anything else.
    name === '__compat' ? [] : [[name, held as Identifier]],
  );

const within = (at: Identifier | undefined, name: string): Identifier | undefined =>
  at !== undefined && Object.hasOwn(at, name)
    ? heldBy({ [name]: at[name] } as Identifier)[0]?.[1]
    : undefined;

const say = (what: string, lack: readonly string[]): string[] =>
  lack.length > 0 ? [`${what}: not in ${lack.join(', ')}`] : [];

/** Objects whose members are listed under the name of their interface. */
const INSTANCES: Readonly<Record<string, string>> = {
  navigator: 'Navigator',
  document: 'Document',
  window: 'Window',
  globalThis: 'Window',
  self: 'Window',
};

const { builtins } = bcd.javascript;

/** The members of all built-in objects by name. Those of the page's are too many, and called like the app's own. */
const members = new Map<string, Identifier[]>();
for (const [, owner] of heldBy(builtins)) {
  for (const [name, member] of heldBy(owner)) {
    members.set(name, [...(members.get(name) ?? []), member]);
  }
}

interface Node {
  readonly type: string;
  readonly [key: string]: unknown;
}

const isNode = (value: unknown): value is Node =>
  typeof value === 'object' && value !== null && 'type' in value && typeof value.type === 'string';

const nameOf = (node: unknown): string | null =>
  isNode(node) && node.type === 'Identifier' && typeof node.name === 'string' ? node.name : null;

function visit(node: Node, see: (node: Node, parent: Node | null) => void, parent: Node | null) {
  see(node, parent);
  for (const value of Object.values(node)) {
    for (const child of Array.isArray(value) ? value : [value]) {
      if (isNode(child)) visit(child, see, node);
    }
  }
}

function globalFeature(name: string): Identifier | undefined {
  return within(builtins, name) ?? within(bcd.api, name) ?? within(bcd.api?.Window, name);
}

function memberFeature(owner: string, name: string): Identifier | undefined {
  const instance = INSTANCES[owner];
  if (instance === 'Window') return globalFeature(name);
  if (instance !== undefined) return within(bcd.api?.[instance], name);
  return within(within(builtins, owner), name) ?? within(within(bcd.api, owner), `${name}_static`);
}

/** What a script uses that some of the browsers lack, one line each. */
export function unsupportedScript(code: string, oldest: Oldest): string[] {
  const program = parseAst(code) as unknown as Node;
  const declared = new Set<string>();
  const used: { what: string; feature: Identifier | undefined; name: string }[] = [];
  const called = new Set<string>();
  visit(
    program,
    (node, parent) => {
      if (['VariableDeclarator', 'FunctionDeclaration', 'ClassDeclaration'].includes(node.type)) {
        const name = nameOf(node.id);
        if (name !== null) declared.add(name);
      }
      if (node.type === 'MemberExpression' && node.computed !== true) {
        const owner = nameOf(node.object);
        const name = nameOf(node.property);
        if (name === null) return;
        const feature = owner === null ? undefined : memberFeature(owner, name);
        if (owner !== null && feature)
          used.push({ what: `${owner}.${name}`, feature, name: owner });
        else if (parent?.type === 'CallExpression' && parent.callee === node) called.add(name);
      }
      const isReference =
        (parent?.type === 'NewExpression' || parent?.type === 'CallExpression') &&
        parent.callee === node;
      const name = isReference ? nameOf(node) : null;
      if (name !== null) used.push({ what: name, feature: globalFeature(name), name });
    },
    null,
  );
  const globals = used
    .filter(({ name }) => !declared.has(name))
    .flatMap(({ what, feature }) => say(what, lacking(feature, oldest)));
  const methods = [...called].flatMap((name) => {
    const lacks = (members.get(name) ?? []).map((feature) => lacking(feature, oldest));
    // One object that has it is enough: which of them is meant is not known.
    return lacks.every((lack) => lack.length > 0) ? say(`.${name}()`, lacks[0] ?? []) : [];
  });
  return [...new Set([...globals, ...methods])].sort();
}

/** Functions in values, such as `light-dark()`, wherever the data list them. */
const functions = new Map<string, Identifier>();
function collect(at: Identifier | undefined): void {
  for (const [name, feature] of heldBy(at)) {
    functions.set(name.replace(/_function$/, ''), feature);
    collect(feature);
  }
}
collect(bcd.css.types);

/** What a style sheet uses that some of the browsers lack, one line each. */
export function unsupportedStyle(code: string, oldest: Oldest): string[] {
  const found: string[] = [];
  const note = (what: string, feature: Identifier | undefined, prefixed = false) =>
    found.push(...say(what, lacking(feature, oldest, prefixed)));
  css.walk(css.parse(code), function (node) {
    if (node.type === 'Atrule') {
      note(`@${node.name}`, within(bcd.css['at-rules'], node.name));
      if (node.name !== 'supports') return;
      // What is asked for before it is used is the sheet's own care.
      return this.skip;
    }
    if (node.type === 'NestingSelector') note('nested rules', bcd.css.selectors?.nesting);
    if (node.type === 'PseudoClassSelector' || node.type === 'PseudoElementSelector') {
      note(`:${node.name}`, within(bcd.css.selectors, node.name));
    }
    if (node.type === 'Declaration' && !/^-/.test(node.property)) {
      const { property } = node;
      const feature = within(bcd.css.properties, property);
      // Written twice, once with a browser's own prefix, it is there for all.
      note(property, feature, new RegExp(`-(webkit|moz)-${property}:`).test(code));
      css.walk(node.value, (part) => {
        if (part.type === 'Identifier') {
          note(`${property}: ${part.name}`, within(feature, part.name));
        }
        if (part.type === 'Function') {
          note(`${part.name}()`, functions.get(part.name));
        }
      });
    }
    return undefined;
  });
  return [...new Set(found)].sort();
}
