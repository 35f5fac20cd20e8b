import { expect, test } from 'vitest';
import { spokenLength } from '../../src/base/format-length';
import { spokenLengthText } from '../../src/words/en/job-screens';

test.each([
  [20.8, 'twenty point eight metres, sixty-eight feet three'],
  [2.11, 'two point one one metres, six feet eleven'],
  [20.04, 'twenty metres, sixty-five feet nine'],
  [0.32, 'thirty-two centimetres, one foot and half an inch'],
  [1, 'one metre, three feet three and a half'],
  [129, 'one hundred twenty-nine metres, four hundred twenty-three feet three'],
])('%f m is said "%s"', (metres, text) => {
  expect(spokenLengthText(spokenLength(metres), 'metric')).toBe(text);
});

test('feet first where feet are first', () => {
  expect(spokenLengthText(spokenLength(20.8), 'imperial')).toBe('sixty-eight feet three, twenty point eight metres');
});
