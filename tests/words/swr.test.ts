import { expect, test } from 'vitest';
import { swrText } from '../../src/words/en/swr';

test.each([
  [1.06, '1.1'],
  [1.96, '2.0'],
  [2, '2.0'],
  [2.04, '2.04'],
  [2.06, '2.1'],
  [9.9, '9.9'],
  [45.2, '45'],
  [120, 'over 99'],
])('%d reads as %s: what needs a tuner never reads as the 2 that needs none', (swr, text) => {
  expect(swrText(swr)).toBe(text);
});
