import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readLengthField } from '../../src/app/fields/length-field';
import {
  readCountField,
  readFrequencyField,
  readOhms,
  readPowerField,
  readShareField,
} from '../../src/app/fields/number-fields';
import { fieldText, quantityText } from '../../src/app/fields/quantity-text';
import { isGood, type Reading } from '../../src/app/fields/reading';
import { createFormat } from '../../src/words/format';

const format = createFormat('metric');
const value = (reading: Reading): number | string => (isGood(reading) ? reading.quantity.value : reading.problem);
const span = (typed: string, expectedM?: number) =>
  readLengthField(typed, { key: 'spanM', unit: 'm', format, ...(expectedM === undefined ? {} : { expectedM }) });
const height = (typed: string) => readLengthField(typed, { key: 'heightM', unit: 'm', format });

describe('lengths of the questions', () => {
  test('a height may be zero, room may not', () => {
    expect(value(height('0'))).toBe(0);
    expect(value(span('0'))).toBe('zero');
  });

  test('a usual length is taken as it is, whatever its unit', () => {
    expect(value(span('24'))).toBe(24);
    expect(value(span('24 ft'))).toBeCloseTo(7.3152, 9); // 1 ft is 0.3048 m by definition
  });

  test('an unusual one is asked about and can be confirmed', () => {
    const reading = height('90');
    expect(reading).toMatchObject({ problem: 'length-doubt' });
    expect(isGood(reading) ? [] : reading.take.map(({ way }) => way)).toContain('itIs');
  });

  test('66 m is asked about where 66 ft is what the wire needs', () => {
    const reading = span('66', 20.1);
    expect(reading).toMatchObject({ problem: 'length-doubt', take: [{ way: 'itIs' }, { way: 'mean' }] });
    expect(isGood(reading) ? 0 : reading.take[1].quantity.value).toBeCloseTo(20.1168, 9);
  });

  test('what a field shows of an answer reads back as that answer, to the figures shown', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 2.5, max: 350, noNaN: true }),
        fc.constantFrom('metric', 'imperial'),
        (metres, units) => {
          const text = fieldText({ kind: 'length', value: metres }, units as 'metric', format);
          const read = value(span(text));
          // Shown to three figures or to the inch: half of either, 1.3 cm, or 0.5 % of the length.
          expect(Math.abs(Number(read) - metres)).toBeLessThanOrEqual(Math.max(0.013, metres * 0.005));
        },
      ),
    );
  });
});

describe('frequencies', () => {
  const forty = { bandName: '40 m', edges: { lowMHz: 7, highMHz: 7.2 } };
  test.each([
    ['7.1', 7.1],
    ['7,1', 7.1],
    ['7100 kHz', 7.1],
    ['7100', 'frequency-doubt'],
    ['14.2', 'not-on-band'],
    ['', 'empty'],
    ['seven', 'not-a-number'],
  ])('%s', (typed, expected) => {
    const read = value(readFrequencyField(typed, forty));
    if (typeof expected === 'number') expect(read).toBeCloseTo(expected, 9);
    else expect(read).toBe(expected);
  });

  test('7100 offers 7.1 MHz', () => {
    const reading = readFrequencyField('7100', forty);
    const offered = isGood(reading) ? [] : reading.take.map(({ quantity }) => quantity.value);
    expect(offered).toEqual([expect.closeTo(7.1, 9)]);
  });
});

describe('power, shares, counts and ohms', () => {
  test.each([
    ['100', 100],
    ['100 W', 100],
    ['1.5 kW', 1500],
    ['1,500', 'power-doubt'],
    ['5 kW', 'too-much-power'],
    ['0', 'zero'],
    ['-5', 'negative'],
    ['5 hp', 'unknown-unit'],
  ])('power %s', (typed, expected) => expect(value(readPowerField(typed))).toBe(expected));

  test.each([
    ['50', 0.5],
    ['50 %', 0.5],
    ['0.5', 0.5],
    ['1/3', 1 / 3],
    ['1', 'share-doubt'],
    ['150', 'share-range'],
  ])('share %s', (typed, expected) => expect(value(readShareField(typed, { least: 0, most: 1 }))).toBe(expected));

  test.each([
    ['16', 16],
    ['2.5', 'not-whole'],
    ['121', 'too-many'],
    ['four', 'not-a-number'],
  ])('count %s', (typed, expected) => expect(value(readCountField(typed, { least: 0, most: 120 }))).toBe(expected));

  test('a reactance may be below zero, a resistance may not', () => {
    expect(readOhms('-120', true)).toBe(-120);
    expect(readOhms('−120', true)).toBe(-120);
    expect(readOhms('-120', false)).toMatchObject({ problem: 'negative' });
  });
});

test('quantities read with their unit', () => {
  expect(quantityText({ kind: 'frequency', value: 7.1 }, format)).toBe('7.1\u00a0MHz');
  expect(quantityText({ kind: 'share', value: 1 / 3 }, format)).toBe('33.3 %');
});
