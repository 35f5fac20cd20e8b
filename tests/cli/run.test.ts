import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { expect, onTestFinished, test } from 'vitest';

/** The commands as a person calls them; the first call may build them. */
const patientMs = 60_000;

test('npm run --silent writes the answer alone to standard output', { timeout: patientMs }, () => {
  const { status, stdout } = spawnSync('npm run --silent schema', { shell: true, encoding: 'utf8' });
  expect(status).toBe(0);
  expect(Object.keys(JSON.parse(stdout))).toEqual(expect.arrayContaining(['answers', 'plan', 'geometry', 'solution']));
});

test('who reads the answer may stop early', { timeout: patientMs }, () => {
  const { stdout, stderr } = spawnSync('npm run --silent schema | head -c 1', { shell: true, encoding: 'utf8' });
  expect({ stdout, stderr }).toEqual({ stdout: '{', stderr: '' });
});

test('a file is found from the folder the person is in', { timeout: patientMs }, () => {
  const cwd = mkdtempSync(join(tmpdir(), 'halyard-'));
  onTestFinished(() => rmSync(cwd, { recursive: true }));
  // Invented station.
  const answers = { bands: ['40m'], radiator: 'inverted-v', fedAt: 'centre', shackEnd: 'radio' };
  writeFileSync(join(cwd, 'answers.json'), JSON.stringify(answers));
  const run = resolve('src/cli/run.mjs');
  const { status, stdout } = spawnSync(process.execPath, [run, 'plan', '--fast', 'answers.json'], {
    cwd,
    encoding: 'utf8',
    env: { ...process.env, npm_lifecycle_event: undefined },
  });
  expect(status).toBe(0);
  expect(JSON.parse(stdout)).toMatchObject({ chain: expect.any(Array), cautions: expect.any(Array) });
});

test('an unknown command ends with 2 and says which there are', { timeout: patientMs }, () => {
  const { status, stdout, stderr } = spawnSync(process.execPath, ['src/cli/run.mjs', 'draw'], { encoding: 'utf8' });
  expect({ status, stdout }).toEqual({ status: 2, stdout: '' });
  expect(stderr).toMatch(/command: "draw" is not known; allowed: .*plan.*schema.*solve/);
});
