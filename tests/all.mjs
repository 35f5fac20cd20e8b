// `npm test`: set-up, type check, lint, the tests that need no browser, then the built app in a real browser. Everything
// runs even when something before it failed, and the last line counts it all: `N passed, N failed`.
import { spawnSync } from 'node:child_process';
import { mkdirSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { findBrowser } from './browser.mjs';
import { count } from './count-report.mjs';

/** @typedef {{ name: string, passed: number, failed: number }} Outcome */

const root = fileURLToPath(new URL('..', import.meta.url));
const reports = join(root, 'node_modules/.cache/test-reports');

function node(/** @type {string[]} */ ...args) {
  const { status } = spawnSync(process.execPath, args, { cwd: root, stdio: 'inherit' });
  return status === 0;
}

/** A tool that only says yes or no counts as one test. @returns {Outcome} */
function check(/** @type {string} */ name, /** @type {string[]} */ ...args) {
  process.stdout.write(`\n== ${name}\n`);
  const good = node(...args);
  process.stdout.write(good ? 'no complaint\n' : '');
  return { name, passed: good ? 1 : 0, failed: good ? 0 : 1 };
}

/** @returns {Outcome} */
function vitest(/** @type {string} */ name, /** @type {string[]} */ ...args) {
  process.stdout.write(`\n== ${name}\n`);
  const file = join(reports, `${name.replaceAll(' ', '-')}.json`);
  const good = node(
    'node_modules/vitest/vitest.mjs',
    'run',
    '--reporter=default',
    '--reporter=json',
    `--outputFile.json=${file}`,
    ...args,
  );
  try {
    return { name, ...count(JSON.parse(readFileSync(file, 'utf8')), good) };
  } catch {
    process.stdout.write(`${name}: ended without a report\n`);
    return { name, passed: 0, failed: 1 };
  }
}

/** Without a browser these tests fail, never pass unseen; the reason is the last thing told. @returns {Promise<Outcome>} */
async function browserTests() {
  const name = 'tests in a browser';
  try {
    await findBrowser();
  } catch (error) {
    process.stdout.write(`\n== ${name}\n${error instanceof Error ? error.message : error}\n`);
    return { name, passed: 0, failed: 1 };
  }
  return vitest(name, '--config', 'tests/e2e/vitest.config.ts');
}

async function runAll() {
  await import('./setup.mjs');
  rmSync(reports, { recursive: true, force: true });
  mkdirSync(reports, { recursive: true });
  const outcomes = [
    check('type check', 'node_modules/ts7/bin/tsc', '-b', 'src'),
    check('lint', 'node_modules/@biomejs/biome/bin/biome', 'check', '--error-on-warnings', '.'),
    vitest('tests without a browser'),
    await browserTests(),
  ];
  process.stdout.write('\n');
  for (const { name, passed, failed } of outcomes) {
    process.stdout.write(`${name}: ${passed} passed, ${failed} failed\n`);
  }
  const sum = (/** @type {'passed' | 'failed'} */ key) => outcomes.reduce((total, outcome) => total + outcome[key], 0);
  process.stdout.write(`${sum('passed')} passed, ${sum('failed')} failed\n`);
  process.exitCode = sum('failed') === 0 ? 0 : 1;
}

await runAll();
