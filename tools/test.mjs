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

/** More failures than this are no accident of a busy machine: none is asked again. */
const MOST_ASKED_AGAIN = 6;

/** Runs a project's tests; what its report says of each, by file, or null if there is none. */
function report(title, project, workers, ...options) {
  const file = join(reports, `${project}.json`);
  rmSync(file, { force: true });
  const output = ['--reporter=dot', '--reporter=json', `--outputFile.json=${file}`];
  const wanted = ['run', '--project', project, ...output, `--maxWorkers=${workers}`, ...options];
  const content = run(title, VITEST, ...wanted);
  try {
    return { content, files: JSON.parse(readFileSync(file, 'utf8')).testResults };
  } catch {
    return { content, files: null };
  }
}

/** The tests of a report that failed, each with its file. */
const fallen = (files) =>
  files.flatMap(({ name, assertionResults }) =>
    assertionResults
      .filter(({ status }) => status === 'failed')
      .map(({ fullName }) => ({ name, fullName })),
  );

/**
 * Runs the few tests that failed once more, one after the other, and says which passed: a test that
 * drives a browser may fail where six browsers share two cores, a fault fails again. Gives how
 * many passed.
 */
function askAgain(project, failed) {
  const names = failed.map(({ fullName }) => fullName.replace(/[.*+?^${}()|[\]\\]/g, '\\$&'));
  const { files } = report(
    `${project} tests that failed, alone`,
    project,
    1,
    ...new Set(failed.map(({ name }) => name)),
    ...['--testNamePattern', `^(${names.join('|')})$`],
  );
  const passed = (files ?? [])
    .flatMap(({ assertionResults }) => assertionResults)
    .filter(({ status }) => status === 'passed');
  for (const { fullName } of passed) console.log(`passed only at the second try: ${fullName}`);
  return passed.length;
}

/** Adds up vitest's report. An unreadable file counts as one failure. */
function tests(project, { workers = availableParallelism(), again = false } = {}) {
  // The number of workers is said: vitest's default leaves one core free.
  const { content, files } = report(`${project} tests`, project, workers);
  if (files === null) {
    count.failed += 1;
    return;
  }
  const failed = fallen(files);
  let others = 0;
  for (const { status, assertionResults } of files) {
    for (const test of assertionResults) {
      if (test.status === 'passed') count.passed += 1;
      if (test.status !== 'skipped' && test.status !== 'pending') continue;
      console.log(`skipped: ${test.title}`);
      count.skipped += 1;
    }
    if (status === 'failed' && !assertionResults.some((test) => test.status === 'failed')) {
      others += 1;
    }
  }
  const isFew = failed.length > 0 && failed.length <= MOST_ASKED_AGAIN;
  const passed = again && isFew ? askAgain(project, failed) : 0;
  count.passed += passed;
  count.failed += failed.length - passed + others;
  // Unhappy without a failed test: an error outside any test, or no tests at all.
  if (!content && failed.length + others === 0) count.failed += 1;
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
  tests('browser', { workers: availableParallelism() + 1, again: true });
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
  tests('engines', { again: true });
} else count.failed += 1;

rmSync(reports, { recursive: true, force: true });
const skipped = count.skipped === 0 ? '' : `, ${count.skipped} skipped`;
console.log(`\n${count.passed} passed, ${count.failed} failed${skipped}`);
process.exitCode = count.failed === 0 ? 0 : 1;
