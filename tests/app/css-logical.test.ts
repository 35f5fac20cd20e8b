import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';

/** Sides by name of the page, where a script written from right to left needs them by reading order: start and end. */
const physical =
  /^\s*((?:margin|padding|border)-(?:left|right)[a-z-]*|left|right|float|border-(?:top|bottom)-(?:left|right)-radius|text-align:\s*(?:left|right))\b/;

const faultsIn = (css: string): string[] => css.split('\n').filter((line) => physical.test(line));

test.each([
  '  left: 0;',
  '  margin-left: auto;',
  '  text-align: right;',
  '  border-left-width: 2px;',
  '  border-top-left-radius: 0;',
])('a side by name is found: %s', (line) => {
  expect(faultsIn(line)).toEqual([line]);
});

test.each(['  inset-inline-start: 0;', '  text-align: start;', '  margin-block: 0;'])(
  'reading order passes: %s',
  (line) => {
    expect(faultsIn(line)).toEqual([]);
  },
);

test('style sheets name sides by reading order', () => {
  const sheets = readdirSync('src/app', { recursive: true, encoding: 'utf8' }).filter((name) => name.endsWith('.css'));
  expect(sheets.length).toBeGreaterThan(8);
  const faults = sheets.flatMap((name) =>
    faultsIn(readFileSync(`src/app/${name}`, 'utf8')).map((line) => `${name}: ${line.trim()}`),
  );
  expect(faults).toEqual([]);
});
