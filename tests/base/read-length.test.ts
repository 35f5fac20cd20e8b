import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { METRES_PER_FOOT, METRES_PER_INCH } from '../../src/base/convert';
import { feetInches, metricParts } from '../../src/base/format-length';
import { lengthDoubt } from '../../src/base/length-doubt';
import { isLengthProblem, type LengthUnit, lengthUnits, readLength, withUnit } from '../../src/base/read-length';

const feet = (whole: number, inches = 0): number => whole * METRES_PER_FOOT + inches * METRES_PER_INCH;

describe('lengths as people type them', () => {
  test.each([
    ['13 ft 2 in', feet(13, 2), 'ft'],
    ['13\'2"', feet(13, 2), 'ft'],
    ["13'2", feet(13, 2), 'ft'],
    ['13′ 2″', feet(13, 2), 'ft'],
    ['13’2”', feet(13, 2), 'ft'],
    ["13' 2''", feet(13, 2), 'ft'],
    ['13ft2in', feet(13, 2), 'ft'],
    ['13 ft. 2 in.', feet(13, 2), 'ft'],
    ['13 Feet 2½ inches', feet(13, 2.5), 'ft'],
    ['13\'2 1/2"', feet(13, 2.5), 'ft'],
    ['66 1/2 ft', feet(66.5), 'ft'],
    ['66½ ft', feet(66.5), 'ft'],
    ['66 1⁄2 ft', feet(66.5), 'ft'],
    ['1/2 in', 0.5 * METRES_PER_INCH, 'in'],
    ["5'", feet(5), 'ft'],
    ['11"', feet(0, 11), 'in'],
    ['4.1 m', 4.1, 'm'],
    ['4.1m', 4.1, 'm'],
    ['4,1', 4.1, 'm'],
    ['4.1', 4.1, 'm'],
    ['.5', 0.5, 'm'],
    ['4 m 10 cm', 4.1, 'm'],
    ['410 cm', 4.1, 'cm'],
    ['4100 mm', 4.1, 'mm'],
    ['12,5 m', 12.5, 'm'],
    ['0,125 m', 0.125, 'm'],
    ['1,234.5 m', 1234.5, 'm'],
    ['1.234,5 m', 1234.5, 'm'],
    ['4 100 mm', 4.1, 'mm'],
    ['  20 metres ', 20, 'm'],
  ])('%j', (typed, metres, unit) => {
    const read = readLength(typed, 'm');
    if (isLengthProblem(read)) throw new Error(read.code);
    expect(read.metres).toBeCloseTo(metres, 9);
    expect(read.unit).toBe(unit);
  });

  test.each<[string, LengthUnit, number]>([
    ['66', 'ft', feet(66)],
    ['66½', 'ft', feet(66.5)],
    ['20,2', 'm', 20.2],
    ['20.2 m', 'ft', 20.2],
  ])('%j in a field of %s', (typed, unit, metres) => {
    expect(readLength(typed, unit)).toMatchObject({ metres: expect.closeTo(metres, 9) });
  });

  test.each([
    ['', 'empty'],
    ['   ', 'empty'],
    ['tall', 'not-a-number'],
    ['12 5 m', 'not-a-number'],
    ['1/0 m', 'not-a-number'],
    [`${'9'.repeat(400)} m`, 'not-a-number'],
    ['-4 m', 'negative'],
    ['−4 m', 'negative'],
    ['0', 'zero'],
    ['0 ft 0 in', 'zero'],
    ['1,2,3', 'two-commas'],
    ['4..1 m', 'two-commas'],
    ['4 yards', 'unknown-unit'],
    ['1e5', 'unknown-unit'],
    ['1,234 m', 'comma-doubt'],
    ['13 ft 12 in', 'inches-past-foot'],
    ['4 m 100 cm', 'inches-past-foot'],
    ['13.5 ft 2 in', 'mixed-units'],
    ['13 in 2 ft', 'mixed-units'],
    ['4 m 2 in', 'mixed-units'],
    ['4 m 10', 'mixed-units'],
    ['13 ft 2 in 1', 'mixed-units'],
  ])('%j is refused as %s', (typed, code) => {
    expect(readLength(typed, 'm')).toMatchObject({ code });
  });

  test('one comma before three figures is asked about, with both readings', () => {
    const read = readLength('1,234 ft', 'm');
    expect(read).toMatchObject({ code: 'comma-doubt', data: { decimal: 1.234, thousands: 1234, unit: 'ft' } });
    expect(isLengthProblem(read) && read.candidates.map(({ metres }) => metres)).toEqual([feet(1.234), feet(1234)]);
  });
});

describe('laws of reading', () => {
  const unit = fc.constantFrom(...lengthUnits);

  test('any text gives a finite positive length or a reason, never NaN', () => {
    const typed = fc.oneof(fc.string(), fc.string({ unit: fc.constantFrom(...'0123456789.,/ -½\'"′″ftinmc') }));
    fc.assert(
      fc.property(typed, unit, (text, field) => {
        const read = readLength(text, field);
        if (isLengthProblem(read)) expect(read.code).not.toBe('');
        else expect(Number.isFinite(read.metres) && read.metres > 0).toBe(true);
      }),
    );
  });

  test('a length written with its unit means the same in every field', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 999_999 }), unit, unit, unit, (hundredths, own, here, there) => {
        const typed = `${(hundredths / 100).toFixed(2)} ${own}`;
        expect(readLength(typed, here)).toEqual(readLength(typed, there));
      }),
    );
  });

  test('digits typed keep their meaning when the unit of the field is switched', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 99_999 }), unit, unit, (tenths, before, after) => {
        const typed = (tenths / 10).toFixed(1);
        const kept = withUnit(typed, before);
        expect(kept.startsWith(typed)).toBe(true);
        expect(readLength(kept, after)).toEqual(readLength(typed, before));
        expect(withUnit(kept, after)).toBe(kept);
      }),
    );
  });

  test('what is shown in metres reads back within half of its last figure', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.01, max: 999, noNaN: true }), (metres) => {
        const shown = metricParts(metres);
        const read = readLength(`${shown.metres.toFixed(shown.decimals)} m`, 'ft');
        if (isLengthProblem(read)) throw new Error(read.code);
        expect(Math.abs(read.metres - metres)).toBeLessThanOrEqual(0.5 * 10 ** -shown.decimals + 1e-9);
      }),
    );
  });

  test('what is shown in feet and inches reads back within half of its step', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.01, max: 999, noNaN: true }), (metres) => {
        const { feet: whole, inches, half } = feetInches(metres);
        const read = readLength(`${whole}' ${inches}${half ? '½' : ''}"`, 'm');
        if (isLengthProblem(read)) throw new Error(read.code);
        const stepM = (metres < 3 ? 0.5 : 1) * METRES_PER_INCH;
        expect(Math.abs(read.metres - metres)).toBeLessThanOrEqual(stepM / 2 + 1e-9);
      }),
    );
  });
});

describe('lengths that look like another unit', () => {
  test('66 m in a 20 m garden may be 66 ft', () => {
    expect(lengthDoubt(66, 'm', { leastM: 1, mostM: 22, expectedM: 20 })[0]).toMatchObject({ unit: 'ft' });
  });

  test('410 m may be 410 cm', () => {
    expect(lengthDoubt(410, 'm', { leastM: 1, mostM: 100 }).map(({ unit }) => unit)).toContain('cm');
  });

  test('66 m of wire, allowed by the site, is still asked about where half a wave is 20 m', () => {
    expect(lengthDoubt(66, 'm', { leastM: 1, mostM: 200, expectedM: 20.2 })).toMatchObject([{ unit: 'ft' }]);
  });

  test('a length that fits is left alone, and so is one that fits in no unit', () => {
    expect(lengthDoubt(20, 'm', { leastM: 1, mostM: 60, expectedM: 20.2 })).toEqual([]);
    expect(lengthDoubt(5e6, 'm', { leastM: 1, mostM: 60 })).toEqual([]);
  });
});
