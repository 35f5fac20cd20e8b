/** Placing what the operator owns: against every order of the parts, tried one by one, and with more parts than can be. Invented parts. */
import { expect, test } from 'vitest';
import { factsOf, isNoSystem } from '../../src/advice/facts';
import type { PartOnHand } from '../../src/design/answers';
import type { PreparedBand } from '../../src/plan/field/band-study';
import { fieldSite } from '../../src/plan/field/field-site';
import { bestPlacement, type OwnedChoke, ownedChokes, placements } from '../../src/plan/field/owned-chokes';
import { operate } from '../../src/plan/field/shield-currents';
import { openCoax, siteLayout } from './field-support';

const facts = factsOf({ bands: ['40m'], radiator: 'straight-wire', fedAt: 'end', shackEnd: 'radio' });
if (isNoSystem(facts)) throw new Error('no system');
const [at] = facts.bands;
const layout = siteLayout(12, { radiatorM: 20.4, fedAt: 'end' });
const entryM = layout.coax?.entryDistanceM ?? 0;
const placesM = [4.2, 12, entryM];
const site = fieldSite(layout, 'average', placesM);
if (site === null) throw new Error('no shape');
const bands: readonly PreparedBand[] = [{ at, coax: await openCoax(site, at.focusMHz) }];

const choke = (part: number, re: number, im = 0): OwnedChoke => ({
  part,
  kind: `${re} ${im}`,
  zAt: () => ({ re, im }),
});

/** Entry current with one part of the list in each place, mA. */
const entryMa = (parts: readonly OwnedChoke[]): number =>
  operate(
    (bands[0] as PreparedBand).coax,
    parts.map(({ zAt }, i) => ({ distanceM: placesM[i] ?? 0, z: zAt(7.1e6) })),
  ).shield?.entryMa ?? Number.NaN;

const orders = (parts: readonly OwnedChoke[], places: number): readonly (readonly OwnedChoke[])[] =>
  places === 0
    ? [[]]
    : parts.flatMap((first) =>
        orders(
          parts.filter((each) => each !== first),
          places - 1,
        ).map((rest) => [first, ...rest]),
      );

test('the placing told is the best of all orders, with parts that are alike taken for one kind', () => {
  const parts = [
    choke(0, 300),
    choke(1, 300),
    choke(2, 2000, 1500),
    choke(3, 900, -2500),
    choke(4, 5000),
    choke(5, 300),
  ];
  const best = bestPlacement(bands, parts, placesM);
  const all = orders(parts, 3);
  expect(all).toHaveLength(120);
  const byPlace = placesM.map((metres) => best?.placed.find(({ distanceM }) => distanceM === metres));
  expect(entryMa(byPlace.flatMap((placed) => parts[placed?.part ?? -1] ?? []))).toBeCloseTo(
    Math.min(...all.map(entryMa)),
    9,
  );
  expect(best?.untried).toBe(0);
  // Four kinds, of one of which three: 4·3·2 ways with three kinds, 3·3 with two alike, 1 with three alike.
  expect(placements(parts, placesM)).toHaveLength(34);
});

test('fewer parts than places are tried in every place', () => {
  const one = bestPlacement(bands, [choke(7, 5000)], placesM);
  const worst = placesM.map((distanceM) =>
    operate((bands[0] as PreparedBand).coax, [{ distanceM, z: { re: 5000, im: 0 } }]),
  );
  const [least] = worst.map(({ shield }, i) => [shield?.entryMa ?? 0, placesM[i]] as const).sort((a, b) => a[0] - b[0]);
  expect(one?.placed.map(({ part, distanceM }) => [part, distanceM])).toEqual([[7, least?.[1]]]);
});

test('of too many kinds those with the most ohms are tried, and the number of the others is told', () => {
  const drawer = Array.from({ length: 40 }, (_, i) => choke(i, 100 * (i + 1)));
  const best = bestPlacement(bands, drawer, placesM);
  expect(best?.untried).toBe(31);
  for (const { part } of best?.placed ?? []) expect(part).toBeGreaterThanOrEqual(31);
  const alike = Array.from({ length: 40 }, (_, i) => choke(i, 1000));
  expect(bestPlacement(bands, alike, placesM)?.untried).toBe(0);
});

test('nothing owned that chokes, or no place for it, is no placing', () => {
  expect(bestPlacement(bands, [], placesM)).toBeNull();
  expect(bestPlacement(bands, [choke(0, 1000)], [])).toBeNull();
});

test('all parts that choke are taken from the list, and equal ones are alike', () => {
  const ring: PartOnHand = { part: 'choke', core: 'ft240-31', count: 1, turns: 12, line: 'rg-400' };
  const onHand: PartOnHand[] = [
    ring,
    { part: 'core', core: 'ft240-31', count: 2 },
    ring,
    { part: 'beads', count: 20, line: 'rg-58' },
    { part: 'coil', turns: 8, diameterM: 0.15, line: 'rg-58' },
    { ...ring, turns: 10 },
    { ...ring, turns: 11 },
  ];
  const found = ownedChokes({ ...facts, settled: { ...facts.settled, onHand } });
  expect(found.map(({ part }) => part)).toEqual([0, 2, 3, 4, 5, 6]);
  expect(new Set(found.map(({ kind }) => kind)).size).toBe(5);
});
