import { expect, test } from 'vitest';
import { keptTogether } from '../../src/words/kept-together';

test.each([
  ['40 m', '40\u00a0m'],
  ['On 40 m, 80 m and 160 m.', 'On 40\u00a0m, 80\u00a0m and 160\u00a0m.'],
  ['26 to 100 W', '26 to 100\u00a0W'],
  ['7.1 MHz; 2.2 kΩ, 450 Ω', '7.1\u00a0MHz; 2.2\u00a0kΩ, 450\u00a0Ω'],
  ['0.75 mm² wire, 14 AWG', '0.75\u00a0mm² wire, 14\u00a0AWG'],
  ['3 % of 20 °C', '3\u00a0% of 20\u00a0°C'],
  ['−1.2 dB (0.3 A)', '−1.2\u00a0dB (0.3\u00a0A)'],
  ['(FT240-31), T200-2', '(FT240\u2060-\u206031), T200\u2060-\u20602'],
  ['5 mm coax (RG-58 size)', '5\u00a0mm coax (RG\u2060-\u206058 size)'],
  ['40 m רוחב', '40\u00a0m רוחב'],
])('"%s" keeps its numbers and units together', (text, kept) => {
  expect(keptTogether(text)).toBe(kept);
});

test.each(['4 metres', '2 supports', '40 more', '3 in the air', 'mix 43 of it', 'A W', '2026-11-30', '1 to 4'])(
  '"%s" stays as it is',
  (text) => {
    expect(keptTogether(text)).toBe(text);
  },
);

test('done twice it changes nothing more', () => {
  const kept = keptTogether('61 mm ring (FT240-43) at 100 W');
  expect(keptTogether(kept)).toBe(kept);
});
