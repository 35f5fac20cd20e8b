/** Every pair of text and ground of the two themes, from the style sheet itself: 7:1 or more, as WCAG 2.2 asks at level AAA (1.4.6). */
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';

const sheet = readFileSync('src/app/styles/tokens.css', 'utf8');
/** The colours of the first rule that opens so. */
function coloursOf(opening: string): Readonly<Record<string, string>> {
  const from = sheet.indexOf(opening);
  if (from < 0) throw new Error(`no rule ${opening}`);
  const rule = sheet.slice(from, sheet.indexOf('}', from));
  return Object.fromEntries(
    [...rule.matchAll(/--([\w-]+): (#[0-9a-f]{6});/g)].map(([, name, colour]) => [name, colour]),
  );
}
const day = coloursOf(':root {');
const nightByPhone = coloursOf(":root:not([data-light='day']) {");
const nightByChoice = coloursOf(":root[data-light='night'] {");

/** WCAG 2.2, "relative luminance" and "contrast ratio". */
const linear = (channel: number): number => (channel <= 0.04045 ? channel / 12.92 : ((channel + 0.055) / 1.055) ** 2.4);
function luminance(colour: string): number {
  const [r = 0, g = 0, b = 0] = [1, 3, 5].map((at) => linear(Number.parseInt(colour.slice(at, at + 2), 16) / 255));
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}
function ratio(one: string, other: string): number {
  const [light = 0, dark = 0] = [luminance(one), luminance(other)].sort((a, b) => b - a);
  return (light + 0.05) / (dark + 0.05);
}

const pairs = [...sheet.matchAll(/^ {5}([\w-]+) on ([\w-]+) +([\d.]+) +([\d.]+)$/gm)].map(
  ([, ink, ground, ...told]) => ({
    ink: ink ?? '',
    ground: ground ?? '',
    told: told.map(Number),
  }),
);

test('the ratio itself: black on white is 21, and #767676 on white the well-known 4.54', () => {
  expect(ratio('#000000', '#ffffff')).toBeCloseTo(21, 6);
  expect(ratio('#767676', '#ffffff')).toBeCloseTo(4.54, 2);
});

test('all of the inks and grounds are in the list', () => {
  expect(pairs.length).toBeGreaterThanOrEqual(16);
  expect(nightByChoice).toEqual(nightByPhone);
});

describe.each(pairs)('$ink on $ground', ({ ink, ground, told }) => {
  test.each([
    ['day', day, told[0]],
    ['night', nightByPhone, told[1]],
  ] as const)('%s', (_light, colours, said) => {
    const found = ratio(colours[ink] ?? '', colours[ground] ?? '');
    expect(found).toBeGreaterThanOrEqual(7);
    expect(found).toBeCloseTo(said ?? 0, 1); // the list in the file is given to a tenth
  });
});
