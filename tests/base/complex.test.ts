import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  add,
  type Complex,
  complex,
  conjugate,
  cosh,
  divide,
  exponential,
  magnitude,
  multiply,
  reciprocal,
  scale,
  sinh,
  squareRoot,
  subtract,
} from '../../src/base/complex';

const part = (most: number) => fc.double({ min: -most, max: most, noNaN: true });
const number = fc.record({ re: part(1e4), im: part(1e4) });
const small = fc.record({ re: part(5), im: part(5) });
const nonZero = number.filter((z) => magnitude(z) > 1e-3);

function expectNear(a: Complex, b: Complex, size = magnitude(b)): void {
  expect(magnitude(subtract(a, b))).toBeLessThanOrEqual(1e-9 * Math.max(size, 1));
}

test('dividing undoes multiplying, and a reciprocal is one over it', () => {
  fc.assert(
    fc.property(number, nonZero, (a, b) => {
      expectNear(divide(multiply(a, b), b), a);
      expectNear(multiply(b, reciprocal(b)), complex(1));
    }),
  );
});

test('division keeps its figures at sizes whose squares overflow', () => {
  expect(divide({ re: 1e200, im: 1e200 }, { re: 1e200, im: 1e200 })).toEqual({ re: 1, im: 0 });
});

test('adding undoes subtracting, and a number times its conjugate is its magnitude squared', () => {
  fc.assert(
    fc.property(number, number, (a, b) => {
      expectNear(add(subtract(a, b), b), a, 1e4);
      expectNear(multiply(a, conjugate(a)), complex(magnitude(a) ** 2));
      expectNear(scale(a, -1), subtract(complex(0), a));
    }),
  );
});

test('a square root squares back and never points to the left', () => {
  fc.assert(
    fc.property(number, (a) => {
      const root = squareRoot(a);
      expect(root.re).toBeGreaterThanOrEqual(0);
      expectNear(multiply(root, root), a);
    }),
  );
  expect(squareRoot({ re: -4, im: 0 })).toEqual({ re: 0, im: 2 });
});

test('cosh and sinh are half the sum and difference of exponentials', () => {
  fc.assert(
    fc.property(small, (z) => {
      const [up, down] = [exponential(z), exponential(scale(z, -1))];
      expectNear(cosh(z), scale(add(up, down), 0.5), Math.exp(5));
      expectNear(sinh(z), scale(subtract(up, down), 0.5), Math.exp(5));
    }),
  );
});
