import { expect, test } from 'vitest';
import { withRings } from '../../src/app/screens/plan/with-rings';
import type { PartOnHand } from '../../src/design/answers';

const rings = (core: 'ft240-31' | 'ft240-43' | 'ft240-52', count: number): PartOnHand => ({
  part: 'core',
  core,
  count,
});

test('rings that are taken join the parts on hand', () => {
  const planned = { core: 'ft240-31', count: 2 };
  expect(withRings([], planned, { core: 'ft240-43', count: 2 })).toEqual([rings('ft240-43', 2)]);
});

test('another choice takes the place of the one before, and leaves what else is owned', () => {
  const owned = [rings('ft240-43', 3), rings('ft240-52', 1)];
  const taken = withRings(owned, { core: 'ft240-43', count: 2 }, { core: 'ft240-31', count: 2 });
  expect(taken).toEqual([rings('ft240-43', 1), rings('ft240-52', 1), rings('ft240-31', 2)]);
});

test('what is on no ring changes nothing', () => {
  const owned = [rings('ft240-43', 1)];
  expect(withRings(owned, { core: null, count: null }, { core: null, count: null })).toEqual(owned);
});
