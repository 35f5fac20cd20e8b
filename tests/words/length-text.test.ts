import { expect, test } from 'vitest';
import { feetInchesText, metresText } from '../../src/words/length-text';

const plain = (text: string): string => text.replaceAll('\u00a0', ' ');

test.each([
  [4.2, '4.20 m', '13 ft 9 in'],
  [9.996, '10.0 m', '32 ft 10 in'],
  [20.249, '20.2 m', '66 ft 5 in'],
  [0.0127, '0.01 m', '½ in'],
  [1.2827, '1.28 m', '4 ft 2½ in'],
  [0.6223, '0.62 m', '2 ft ½ in'],
  [3.6576, '3.66 m', '12 ft'],
  [1234, '1230 m', '4048 ft 7 in'],
])('%d m reads %j and %j', (metres, metric, imperial) => {
  expect(plain(metresText(metres))).toBe(metric);
  expect(plain(feetInchesText(metres))).toBe(imperial);
});
