import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { wordsFile, wordsFolder } from '../../src/cli/language.mjs';
import { language } from '../../src/words/en/language';
import { writeInventedLanguage } from '../invented-language.mjs';
import { languageFaults } from './language-faults';

const english = resolve('src/words/en');
const languages = readdirSync('src/words', { withFileTypes: true })
  .filter((entry) => entry.isDirectory() && entry.name !== 'en')
  .map(({ name }) => resolve('src/words', name));
let place: string;

beforeAll(() => {
  place = mkdtempSync(join(tmpdir(), 'halyard-words-'));
});
afterAll(() => rmSync(place, { recursive: true, force: true }));

/** Each in a folder of its own: what was imported once is not read again. */
function written(name: string, folder: string): string {
  const path = join(place, folder);
  writeInventedLanguage(name, path);
  return path;
}

describe('a language says what English says, in its own words', () => {
  test('so does every one there is, and each invented one', async () => {
    for (const folder of [...languages, written('longer', 'longer'), written('leftward', 'leftward')])
      expect([folder, await languageFaults(folder)]).toEqual([folder, []]);
  });

  test.each([
    { what: 'lacks', file: 'steps.ts', from: /^ {2}storm: .*\n/m, to: '', told: 'steps.ts.stepNames.storm' },
    {
      what: 'mistypes',
      file: 'catalog-names.ts',
      from: 'coreName(id: string)',
      to: 'coreName(id: number)',
      told: 'check-catalog-names.ts',
    },
  ])('what it $what is found', async ({ what, file, from, to, told }) => {
    const folder = written('longer', what);
    const text = readFileSync(join(folder, file), 'utf8');
    const spoilt = text.replace(from, to);
    expect(spoilt).not.toBe(text);
    writeFileSync(join(folder, file), spoilt);
    expect(await languageFaults(folder)).toContainEqual(expect.stringContaining(told));
  });
});

test('English is written from left to right', () => {
  expect(language).toEqual({ tag: 'en', direction: 'ltr' });
});

test('a language that is not there is told by name, with those that are', () => {
  expect(() => wordsFolder('xx')).toThrow(/HALYARD_LANGUAGE=xx.*There are words for: en/);
  expect(wordsFolder('en')).toBe(english);
});

test('a file that a language lacks stays English', () => {
  writeFileSync(join(place, 'steps.ts'), '');
  expect(wordsFile(place, 'steps.ts')).toBe(join(place, 'steps.ts'));
  expect(wordsFile(place, 'names.ts')).toBe(join(english, 'names.ts'));
});
