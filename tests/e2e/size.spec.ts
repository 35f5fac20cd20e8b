import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, inject, test } from 'vitest';
import { firstScreenFiles, precachedFiles, servedFiles, sizes } from '../sizes.mjs';

/** Common practice, no source: about one second on the slow edge of mobile data. */
const firstScreenLimitBytes = 45_000;

test('the first screen needs no more than the limit', () => {
  expect(sizes(inject('builtDir')).firstScreenBytes).toBeLessThanOrEqual(firstScreenLimitBytes);
});

test('mathjs stays out of the first screen', () => {
  // A text of the library every mathjs function is made with; it survives minifying.
  const marker = 'Unexpected type of argument';
  expect(readFileSync('node_modules/typed-function/lib/esm/typed-function.mjs', 'utf8')).toContain(marker);
  const dir = inject('builtDir');
  const scripts = firstScreenFiles(dir).filter((file) => file.endsWith('.js'));
  expect(scripts.length).toBeGreaterThan(0);
  for (const file of scripts) expect(readFileSync(join(dir, file), 'utf8'), file).not.toContain(marker);
});

test('every file of the build is kept for offline use, and no other', () => {
  const dir = inject('builtDir');
  expect(precachedFiles(dir).sort()).toEqual(servedFiles(dir).sort());
});
