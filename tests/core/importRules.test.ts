/**
 * The walls between the parts of the program are kept by the linter. Each wall is tried here with an
 * import planted on the wrong side of it, and with a neighbouring one that is fine.
 */

import { execFileSync } from 'node:child_process';
import { copyFileSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { basename, dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));
const BIOME = join(ROOT, 'node_modules/@biomejs/biome/bin/biome');

/** Where the import stands, what it says, and whether the rules allow it. */
const PLANTED: readonly [file: string, code: string, allowed: boolean][] = [
  ['src/core/a.ts', "import { x } from './units'; x();", true],
  ['src/core/a.ts', "import { x } from 'suncalc'; x();", true],
  ['src/core/a.ts', "import { x } from 'idb'; x();", false],
  ['src/core/a.ts', "import { x } from 'node:fs'; x();", false],
  ['src/core/a.ts', "import { x } from 'preact'; x();", false],
  ['src/core/a.ts', "import { x } from '../record/list'; x();", false],
  ['src/core/weather/a.ts', "import { x } from '../earth/sun'; x();", true],
  ['src/core/weather/a.ts', "import { x } from '../../record/list'; x();", false],
  ['src/core/weather/a.ts', "export { x } from '../../device/storage';", false],
  [
    'src/core/weather/a.ts',
    "export type X = 1; import type {} from '../../views/wind/Wind';",
    false,
  ],
  ['src/core/weather/a.ts', "export const x = () => import('../../record/list');", false],
  ['src/core/weather/deep/a.ts', "import { x } from '../../angle'; x();", true],
  ['src/core/weather/deep/a.ts', "import { x } from '../../../record/list'; x();", false],

  ['src/core/weather/a.schema.ts', "import * as v from 'valibot'; v.string();", true],
  ['src/core/weather/a.ts', "import * as v from 'valibot'; v.string();", false],
  ['src/core/weather/a.ts', "import { string } from 'valibot'; string();", false],
  [
    'src/core/weather/a.ts',
    "import type { InferOutput } from 'valibot'; export type A = InferOutput<never>;",
    true,
  ],

  ['src/a.tsx', "import { x } from './core'; x();", true],
  ['src/a.tsx', "import { x } from './core/angle'; x();", false],
  ['src/a.tsx', "export const x = () => import('./core/angle');", false],
  ['src/shell/a.tsx', "import { x } from '../core/angle'; x();", false],
  ['src/exchange/a.ts', "import { x } from '../core/index'; x();", true],
  ['src/exchange/a.ts', "import { x } from '../core/angle'; x();", false],
  ['src/exchange/a.ts', "import { x } from '../views/log/Log'; x();", false],
  ['src/device/a.ts', "import { x } from '../core/angle'; x();", false],
  ['src/device/a.ts', "import { x } from '../shell/Strip'; x();", false],

  ['src/record/a.ts', "import { x } from 'idb'; x();", true],
  ['src/record/a.ts', "import { x } from '../core/angle'; x();", false],
  ['src/record/a.ts', "import { x } from 'preact'; x();", false],
  ['src/record/a.ts', "import { x } from 'preact/hooks'; x();", false],
  ['src/record/a.ts', "import { x } from '../board/board'; x();", false],

  ['src/board/a.ts', "import { x } from '../record/list'; x();", true],
  ['src/board/a.ts', "import { x } from '../device/wakeLock'; x();", true],
  ['src/board/a.ts', "import { x } from '../core/angle'; x();", false],
  ['src/board/wind/a.ts', "import { x } from '../../core'; x();", true],
  ['src/board/wind/a.ts', "import { x } from '../../core/angle'; x();", false],
  ['src/board/a.ts', "import { x } from '../views/wind/Wind'; x();", false],
  ['src/board/a.ts', "import { x } from '../parts/Dial'; x();", false],

  ['src/parts/a.tsx', "import { x } from '../core'; x();", true],
  ['src/parts/a.tsx', "import { x } from '../core/angle'; x();", false],
  ['src/parts/a.tsx', "import { x } from '../board/board'; x();", false],
  ['src/parts/dial/a.tsx', "import { x } from '../../views/wind/Wind'; x();", false],
  ['src/parts/dial/a.tsx', "import { x } from '../../shell/Strip'; x();", false],

  ['src/views/wind/a.tsx', "import { x } from './words.en'; x();", true],
  ['src/views/wind/a.tsx', "import { x } from '../../parts/Dial'; x();", true],
  ['src/views/wind/a.tsx', "import { x } from '../../board/board'; x();", true],
  ['src/views/wind/a.tsx', "import { x } from '../../core/angle'; x();", false],
  ['src/views/wind/a.tsx', "import { x } from '../taxi/Taxi'; x();", false],
  ['src/views/wind/entry/a.tsx', "import { x } from '../words'; x();", true],
  ['src/views/wind/entry/a.tsx', "import { x } from '../../../core/angle'; x();", false],
  ['src/views/wind/entry/a.tsx', "import { x } from '../../taxi/Taxi'; x();", false],
  ['src/views/wind/a.tsx', "import { x } from '../taxi'; x();", false],
  ['src/views/wind/a.tsx', "import '../taxi/taxi.module.css';", false],
  ['src/views/wind/a.tsx', "export const x = () => import('../taxi/Taxi');", false],
  ['src/views/wind/a.tsx', "import { x } from '../../shell/Strip'; x();", false],
];

describe('the walls between the parts', () => {
  let folder = '';
  const refused = new Set<string>();

  const fileOf = (file: string, index: number) =>
    join(dirname(file), basename(file).replace(/^a/, `planted${index}`));

  beforeAll(() => {
    folder = mkdtempSync(join(tmpdir(), 'lapstrip-walls-'));
    copyFileSync(join(ROOT, 'biome.json'), join(folder, 'biome.json'));
    PLANTED.forEach(([file, code], index) => {
      const path = join(folder, fileOf(file, index));
      mkdirSync(dirname(path), { recursive: true });
      writeFileSync(path, `${code}\n`);
    });
    for (const path of filesRefused(folder)) refused.add(path);
  });

  afterAll(() => rmSync(folder, { recursive: true, force: true }));

  test.each(PLANTED.map((planted, index) => [...planted, index] as const))(
    '%s: %s',
    (file, _code, allowed, index) => {
      expect(refused.has(fileOf(file, index))).toBe(!allowed);
    },
  );
});

/** The planted files in which the linter finds an import that its rules restrict. */
function filesRefused(folder: string): string[] {
  const options = ['lint', '--vcs-enabled=false', '--max-diagnostics=none', '--reporter=json', '.'];
  let report: string;
  try {
    report = execFileSync(process.execPath, [BIOME, ...options], {
      cwd: folder,
      encoding: 'utf8',
      stdio: ['ignore', 'pipe', 'ignore'],
    });
  } catch (error) {
    // It exits with 1 when it has found something, which is what is wanted here.
    report = String((error as { stdout: unknown }).stdout);
  }
  const { diagnostics } = JSON.parse(report) as {
    diagnostics: { category: string; location: { path: string } }[];
  };
  return diagnostics
    .filter(({ category }) => category === 'lint/style/noRestrictedImports')
    .map(({ location }) => location.path);
}
