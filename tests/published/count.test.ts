import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { published, publishedFiles } from '../fixtures/published-checks';

const checks = publishedFiles().flatMap((name) => published(name));
const readInSource = checks.filter(({ provenance }) => provenance === 'found').length;

test(`${checks.length} published checks, ${readInSource} of them read in their source: 105 at least`, () => {
  expect(checks.length).toBeGreaterThanOrEqual(105);
});

test('each has an id of its own, a source, a provenance from outside, and a reasoned tolerance', () => {
  expect(new Set(checks.map(({ id }) => id)).size).toBe(checks.length);
  for (const { id, source, provenance, why, tolerance, expected } of checks) {
    expect([id, ['found', 'memory'].includes(provenance)]).toEqual([id, true]);
    expect([id, source.length > 3 && why.length > 3 && expected.length > 0]).toEqual([id, true]);
    expect([id, tolerance.value > 0]).toEqual([id, true]);
  }
});

test('a published test reads every file of them', () => {
  const tests = readdirSync(new URL('.', import.meta.url))
    .filter((name) => name.endsWith('.test.ts'))
    .map((name) => readFileSync(new URL(name, import.meta.url), 'utf8'));
  for (const name of publishedFiles())
    expect([name, tests.some((text) => text.includes(`'${name}'`))]).toEqual([name, true]);
});
