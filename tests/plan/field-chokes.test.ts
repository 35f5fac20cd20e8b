/** The search for chokes, on shields of our own making: a rule to search by, not a solver. Each choke in series lowers the current. */
import { describe, expect, test } from 'vitest';
import type { ChosenChoke } from '../../src/advice/field-facts';
import { magnitude } from '../../src/base/complex';
import { type BandShield, chooseChokes } from '../../src/plan/field/choke-search';

const antenna: ChosenChoke = { role: 'antenna', distanceM: 4, ohm: 5000 };
const entry: ChosenChoke = { role: 'entry', distanceM: 20, ohm: 5000 };
const places = { antennaM: [8], furtherM: [12] };

/** `perChoke`: mA left by a choke of 5 kΩ at a distance; more ohms leave less, in proportion. All chokes multiply. */
const shield = (openMa: number, left: (distanceM: number) => number, heatW = 5): BandShield => ({
  band: '40m',
  with: (chokes) => ({
    entryMa: chokes.reduce((ma, { distanceM, z }) => ma * Math.min(1, (left(distanceM) * 5000) / magnitude(z)), openMa),
    entryDb: -20,
    radioMa: 1,
    radioDb: -60,
    chokes: chokes.map(({ distanceM, z }) => ({ distanceM, ohm: magnitude(z), voltageV: 100, heatW })),
  }),
});

const chosenBy = (openMa: number, left: (distanceM: number) => number) => {
  const choice = chooseChokes([antenna, entry], places, [shield(openMa, left)]);
  if (choice === null) throw new Error('no coax');
  return choice;
};

describe('the chokes chosen', () => {
  test('are the house’s while these meet 30 mA, and 10 mA is told as what more could do', () => {
    const { chosen, house, tenMa, goalMet } = chosenBy(2500, () => 0.1); // 25 mA
    expect(chosen).toBe(house);
    expect(goalMet).toBe(true);
    expect(tenMa?.worstMa).toBeLessThanOrEqual(10);
    expect(tenMa).not.toBe(house);
  });

  test('have more ohms where that is enough', () => {
    const { chosen } = chosenBy(5000, () => 0.1); // 50 mA with the house set
    expect(chosen.chokes.map(({ distanceM }) => distanceM)).toEqual([4, 20]);
    expect(Math.max(...chosen.chokes.map(({ ohm }) => ohm))).toBe(10_000);
  });

  test('are one more where ohms alone do not do', () => {
    const { chosen, goalMet } = chosenBy(50_000, () => 0.1); // 125 mA with 10 kΩ twice
    expect(goalMet).toBe(true);
    expect(chosen.chokes.map(({ role }) => role)).toEqual(['antenna', 'entry', 'further']);
  });

  test('stand elsewhere where the usual place does nothing', () => {
    const { chosen } = chosenBy(300, (distanceM) => (distanceM === 8 ? 0.05 : 1));
    expect(chosen.chokes[0]).toEqual({ ...antenna, distanceM: 8 });
  });

  test('are the best that was tried where nothing meets the goal, and that is said', () => {
    const { chosen, house, goalMet, tenMa } = chosenBy(1000, () => 0.9);
    expect(goalMet).toBe(false);
    expect(tenMa).toBeNull();
    expect(chosen.worstMa).toBeLessThan(house.worstMa);
  });

  test('never fall below the house’s ohms', () => {
    for (const openMa of [100, 3000, 9000, 90_000]) {
      for (const { role, ohm } of chosenBy(openMa, () => 0.1).chosen.chokes) {
        if (role !== 'further') expect(ohm).toBeGreaterThanOrEqual(5000);
      }
    }
  });
});

test('a set that runs hotter than the house’s and than 10 W is not chosen', () => {
  const hot: BandShield = {
    band: '40m',
    with: (chokes) => {
      const more = chokes.length > 2;
      return {
        entryMa: more ? 5 : 60,
        entryDb: -20,
        radioMa: 1,
        radioDb: null,
        chokes: chokes.map(({ distanceM, z }) => ({ distanceM, ohm: magnitude(z), voltageV: 1, heatW: more ? 40 : 3 })),
      };
    },
  };
  expect(chooseChokes([antenna, entry], places, [hot])?.goalMet).toBe(false);
});

test('without coax there is nothing to choose', () => {
  expect(chooseChokes([], places, [{ band: '40m', with: () => null }])).toBeNull();
});
