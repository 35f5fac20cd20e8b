import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';

/** Sides by name of the page, where a script written from right to left needs them by reading order: start and end. */
const physical =
  /^\s*((?:margin|padding|border)-(?:left|right)[a-z-]*|left|right|float:\s*(?:left|right)|border-(?:top|bottom)-(?:left|right)-radius|text-align:\s*(?:left|right))\b/;

/** Four values, of which the right and the left one differ. A calculation counts as one value. */
function hasUnlikeSides(line: string): boolean {
  const values = /^\s*(?:margin|padding|inset|border-width): (.*);/.exec(line)?.[1] ?? '';
  const parts = values.replace(/\((?:[^()]|\([^()]*\))*\)/g, (inside) => inside.replaceAll(' ', '')).split(/\s+/);
  return parts.length === 4 && parts[1] !== parts[3];
}

/** A cut-out of the screen is where it is, whichever way one reads. */
const ofTheScreen = /env\(safe-area-inset-/;

const faultsIn = (css: string): string[] =>
  css.split('\n').filter((line) => (physical.test(line) || hasUnlikeSides(line)) && !ofTheScreen.test(line));

test.each([
  '  left: 0;',
  '  margin-left: auto;',
  '  text-align: right;',
  '  float: left;',
  '  border-left-width: 2px;',
  '  border-top-left-radius: 0;',
  '  padding: 1px var(--s2) 1px 3rem;',
  '  margin: 0 0 calc(1px + 2px) min(3rem, 14vw);',
])('a side by name is found: %s', (line) => {
  expect(faultsIn(line)).toEqual([line]);
});

test.each([
  '  inset-inline-start: 0;',
  '  text-align: start;',
  '  float: inline-start;',
  '  margin-block: 0;',
  '  padding: 1px 2px 3px 2px;',
  '  padding: 0 max(1px, env(safe-area-inset-right)) 0 max(1px, env(safe-area-inset-left));',
])('reading order passes: %s', (line) => {
  expect(faultsIn(line)).toEqual([]);
});

test('style sheets name sides by reading order', () => {
  const sheets = readdirSync('src/app', { recursive: true, encoding: 'utf8' }).filter((name) => name.endsWith('.css'));
  expect(sheets.length).toBeGreaterThan(8);
  const faults = sheets.flatMap((name) =>
    faultsIn(readFileSync(`src/app/${name}`, 'utf8')).map((line) => `${name}: ${line.trim()}`),
  );
  expect(faults).toEqual([]);
});
