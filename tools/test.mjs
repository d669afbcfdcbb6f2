/**
 * The whole check, `npm test`: types, lint, core, reference, build, built, browser, engines. A
 * failed stage doesn't stop the next. The last line is `N passed, N failed`, plus `N skipped` if an
 * engine is missing and may not be installed. Types count one for each of three worlds, lint and
 * build one each, and every test itself.
 */

import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { availableParallelism, tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { findChromium } from './chromium.mjs';

const ROOT = fileURLToPath(new URL('..', import.meta.url));
const TSC = 'typescript/bin/tsc';
const BIOME = '@biomejs/biome/bin/biome';
const VITE = 'vite/bin/vite.js';
const VITEST = 'vitest/vitest.mjs';

const env = { ...process.env, VITE_CONFIG_NATIVE_IGNORE_WARNING: 'true' };
const reports = mkdtempSync(join(tmpdir(), 'lapstrip-test-'));
const count = { passed: 0, failed: 0, skipped: 0 };

/** Runs an installed tool with its own output; true if it succeeded. */
function run(title, tool, ...args) {
  console.log(`\n— ${title}`);
  const script = join(ROOT, 'node_modules', tool);
  const { status } = spawnSync(process.execPath, [script, ...args], {
    cwd: ROOT,
    env,
    stdio: 'inherit',
  });
  return status === 0;
}

function check(title, tool, ...args) {
  const passed = run(title, tool, ...args);
  count[passed ? 'passed' : 'failed'] += 1;
  return passed;
}

/** Adds up vitest's report. An unreadable file counts as one failure. */
function tests(project, workers = availableParallelism()) {
  const report = join(reports, `${project}.json`);
  const options = [
    ...['--reporter=dot', '--reporter=json', `--outputFile.json=${report}`],
    // Its default leaves one core free.
    `--maxWorkers=${workers}`,
  ];
  const content = run(`${project} tests`, VITEST, 'run', '--project', project, ...options);
  let failed = 0;
  try {
    for (const file of JSON.parse(readFileSync(report, 'utf8')).testResults) {
      const states = file.assertionResults.map(({ status }) => status);
      const fell = states.filter((status) => status === 'failed').length;
      count.passed += states.filter((status) => status === 'passed').length;
      for (const { title, status } of file.assertionResults) {
        if (status !== 'skipped' && status !== 'pending') continue;
        console.log(`skipped: ${title}`);
        count.skipped += 1;
      }
      failed += fell || (file.status === 'failed' ? 1 : 0);
    }
  } catch {
    failed = 1;
  }
  // Unhappy without a failed test: an error outside any test, or no tests at all.
  count.failed += failed || (content ? 0 : 1);
}

function browserTests() {
  try {
    env.LAPSTRIP_CHROMIUM = findChromium();
  } catch (error) {
    console.log(`\n— browser tests\n${error.message}`);
    count.failed += 1;
    return;
  }
  // One more than cores: a test waits a seventh of its time, as a hand would.
  tests('browser', availableParallelism() + 1);
}

check('types of core', TSC, '-p', 'src/core');
check('types of the app', TSC, '-p', '.');
check('types of the tests', TSC, '-p', 'tests');
check('lint', BIOME, 'check', '--error-on-warnings');
tests('core');
tests('reference');
const built = check('build', VITE, 'build', '--logLevel', 'warn');
if (built) {
  tests('built');
  browserTests();
  tests('engines');
} else count.failed += 1;

rmSync(reports, { recursive: true, force: true });
const skipped = count.skipped === 0 ? '' : `, ${count.skipped} skipped`;
console.log(`\n${count.passed} passed, ${count.failed} failed${skipped}`);
process.exitCode = count.failed === 0 ? 0 : 1;
