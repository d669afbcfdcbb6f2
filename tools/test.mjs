/**
 * The whole check: `npm test`. Types, lint, core, reference, build, what was built, browser, engines; a
 * stage that fails does not stop the next, and the last line is `N passed, N failed`, with `N skipped`
 * behind it where an engine is not here and may not be installed. Types count one for each of their
 * three worlds, lint and build count one, and every test counts itself.
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

/** Runs one of the installed tools, letting it speak for itself; true where it was content. */
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

/** Adds up what vitest reports. A file that could not even be read counts as one failure. */
function tests(project, workers = availableParallelism()) {
  const report = join(reports, `${project}.json`);
  const options = [
    ...['--reporter=dot', '--reporter=json', `--outputFile.json=${report}`],
    // By itself it leaves one core free.
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
  // Not content though no test failed: an error outside any test, or no tests at all.
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
  // One more than there are cores: a seventh of the time a test waits, as a hand would.
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
