/**
 * Rows of our own table of entry currents (own computation by an independent program, not published: average ground, wire 9 m up, coax 5 to 25 m
 * along the ground, four house ends), reproduced by this solver within 3 dB, which is what the plan claims for them. Rows of the voltage type with
 * two chokes cover runs of up to 20 m: those give its 9 and 7 mA on 80 m and 6 and 4 on 10 m, where 25 m too would give 16 and 8, and 6 and 3.
 * What is different at 25 m stands in the last test. mA per 100 W, worst and median.
 */
import { expect, test, vi } from 'vitest';
import type { Layout } from '../../src/geometry/layout';
import type { PlacedChoke } from '../../src/plan/field/field-site';
import { decibels, entryMa, HOUSE_ENDS, resistive, siteLayout, worstAndMedian } from './field-support';

// Whole antennas are solved here, in plain code.
vi.setConfig({ testTimeout: 120_000 });

type Row = readonly [
  what: string,
  set: (entryM: number) => PlacedChoke[],
  worst: number,
  median: number,
  mostRunM?: number,
];

const none = (): PlacedChoke[] => [];
const at = (distanceM: number, ohm: number) => (): PlacedChoke[] => [resistive(distanceM, ohm)];
const entry =
  (ohm: number) =>
  (entryM: number): PlacedChoke[] => [resistive(entryM, ohm)];
const both =
  (distanceM: number, ohm: number, entryOhm: number) =>
  (entryM: number): PlacedChoke[] => [resistive(distanceM, ohm), resistive(entryM, entryOhm)];

const offCentre: Partial<Layout> = { radiatorM: 41, fedAt: 'off-centre', feedFraction: 1 / 3 };
const voltageType: Partial<Layout> = { ...offCentre, shieldAtMidGap: true };
const endFed: Partial<Layout> = { radiatorM: 41, fedAt: 'end' };

const systems: readonly { name: string; more: Partial<Layout>; mhz: number; runsM: number[]; rows: Row[] }[] = [
  {
    name: 'dipole on 80 m',
    more: { radiatorM: 40 },
    mhz: 3.6,
    runsM: [5, 10, 15, 20, 25],
    rows: [
      ['no choke', none, 228, 100],
      ['1 kΩ at the feed', at(0, 1000), 61, 40],
      ['1 kΩ at both ends', both(0, 1000, 1000), 13, 11],
    ],
  },
  {
    name: 'dipole on 40 m',
    more: { radiatorM: 20.2 },
    mhz: 7.1,
    runsM: [5, 10, 15, 20, 25],
    rows: [
      ['no choke', none, 197, 94],
      ['1 kΩ at the feed', at(0, 1000), 57, 36],
      ['5 kΩ at the feed', at(0, 5000), 15, 10],
      ['5 kΩ at the entry', entry(5000), 10, 8],
      ['1 kΩ at both ends', both(0, 1000, 1000), 15, 12],
    ],
  },
  {
    name: 'off-centre wire, voltage type, on 80 m',
    more: voltageType,
    mhz: 3.6,
    runsM: [10, 15, 20, 25],
    rows: [
      ['no choke', none, 813, 689],
      ['5 kΩ at 1 m', at(1, 5000), 281, 148],
      ['5 kΩ at the entry', entry(5000), 79, 65],
      ['5 kΩ at 1 m and at the entry', both(1, 5000, 5000), 9, 7, 20],
    ],
  },
  {
    name: 'off-centre wire, voltage type, on 40 m',
    more: voltageType,
    mhz: 7.1,
    runsM: [10, 15, 20],
    rows: [['5 kΩ at 1 m and at the entry', both(1, 5000, 5000), 23, 10]],
  },
  {
    name: 'off-centre wire, voltage type, on 10 m',
    more: voltageType,
    mhz: 28.4,
    runsM: [10, 15, 20],
    rows: [['5 kΩ at 1 m and at the entry', both(1, 5000, 5000), 6, 4]],
  },
  {
    name: 'off-centre wire, current type, on 40 m',
    more: offCentre,
    mhz: 7.1,
    runsM: [10, 15, 20, 25],
    rows: [
      ['1 kΩ', at(0, 1000), 254, 211],
      ['2.5 kΩ', at(0, 2500), 205, 150],
      ['2.5 kΩ and 5 kΩ at the entry', both(0, 2500, 5000), 23, 11],
    ],
  },
  {
    name: 'end-fed wire, box at 9 m, on 40 m',
    more: endFed,
    mhz: 7.1,
    runsM: [10, 15, 20, 25],
    rows: [
      ['no choke', none, 373, 224],
      ['5 kΩ at 0.05 λ', at(4.16, 5000), 108, 59],
      ['5 kΩ at 0.1 λ', at(8.33, 5000), 34, 18],
      ['5 kΩ at the entry', entry(5000), 47, 19],
      ['5 kΩ at 0.05 λ and at the entry', both(4.16, 5000, 5000), 7, 5],
    ],
  },
  {
    name: 'end-fed wire, box at 9 m, on 20 m',
    more: endFed,
    mhz: 14.15,
    runsM: [10, 15, 20, 25],
    rows: [
      ['no choke', none, 330, 221],
      ['5 kΩ at 0.05 λ', at(4.16, 5000), 136, 58],
      ['5 kΩ at the entry', entry(5000), 27, 18],
      ['5 kΩ at 0.05 λ and at the entry', both(4.16, 5000, 5000), 6, 4],
    ],
  },
];

test.each(systems)('$name: entry currents within 3 dB of our own table', async ({ more, mhz, runsM, rows }) => {
  const found = rows.map((): number[] => []);
  for (const runM of runsM) {
    for (const houseEarth of HOUSE_ENDS) {
      const plain = siteLayout(runM, more);
      const { coax } = plain;
      if (coax === null) throw new Error('no coax');
      const sets = rows.map(([, set]) => set(coax.entryDistanceM));
      const values = await entryMa({ ...plain, coax: { ...coax, houseEarth } }, mhz, sets);
      values.forEach((ma, i) => {
        if (runM <= (rows[i]?.[4] ?? 25)) found[i]?.push(ma);
      });
    }
  }
  const misses = rows.flatMap(([what, , worst, median], i) => {
    const [foundWorst, foundMedian] = worstAndMedian(found[i] ?? []);
    const off = [decibels(foundWorst / worst), decibels(foundMedian / median)];
    return off.every((db) => Math.abs(db) < 3) ? [] : [{ what, off }];
  });
  expect(misses).toEqual([]);
});

/**
 * With 25 m along the ground, 34 m of coax lie between the chokes of the off-centre wire: a half-wave on 80 m, shortened by the ground (41.6 m
 * in the air at 3.6 MHz). It picks up more than shorter coax does, 16 mA for 9, and no choke at the feed point changes that.
 */
test('coax between two chokes that comes near a half-wave carries more, and what it carries was picked up', async () => {
  const entryOf = async (runM: number, mhz: number, feedOhm: number): Promise<number> => {
    const layout = siteLayout(runM, voltageType);
    const entryM = layout.coax?.entryDistanceM ?? 0;
    const [ma = Number.NaN] = await entryMa(layout, mhz, [[resistive(1, feedOhm), resistive(entryM, 5000)]]);
    return ma;
  };
  const over = async (runM: number): Promise<readonly number[]> =>
    Promise.all([3.2, 3.8, 4.4].map((mhz) => entryOf(runM, mhz, 5000)));
  const [below = 0, peak = 0, above = 0] = await over(25);
  expect(peak / below).toBeGreaterThan(1.3);
  expect(peak / above).toBeGreaterThan(1.3);
  // Five metres less of it resonate above the band, fifteen less far above.
  const [low20 = 0, mid20 = 0, high20 = 0] = await over(20);
  expect([low20, mid20, high20].toSorted((a, b) => a - b)).toEqual([low20, mid20, high20]);
  const [low10 = 0, , high10 = 0] = await over(10);
  expect(Math.abs(high10 / low10 - 1)).toBeLessThan(0.1);
  // 10 MΩ at the feed point let nothing out of it.
  const [usual, perfect] = [await entryOf(25, 3.6, 5000), await entryOf(25, 3.6, 1e7)];
  expect(perfect / usual).toBeGreaterThan(0.8);
});
