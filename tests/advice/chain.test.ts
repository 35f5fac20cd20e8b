import { describe, expect, test } from 'vitest';
import { chainOf } from '../../src/advice/chain/chain';
import { chokePlacesOf } from '../../src/advice/chain/choke-places';
import { whyCodes } from '../../src/advice/chain/why-codes';
import { needsOf } from '../../src/advice/needs';
import type { Answers } from '../../src/design/answers';
import { boxNames, builds, buy, deviceNames } from '../../src/words/en/devices';
import { why } from '../../src/words/en/why';
import { createFormat } from '../../src/words/format';
import { render } from '../../src/words/message';
import { chokesOf, codesOf, deviceOf, devicesOf, partsOf } from './build-plan-parts';
import { everyCombination } from './combinations';

const home: Answers = { bands: ['40m'], shackEnd: 'radio' };
const wide: Answers['bands'] = ['80m', '40m', '20m', '15m', '10m'];
const chainFor = (answers: Partial<Answers>) => partsOf({ ...home, ...answers }).chain;

describe('house positions', () => {
  test('centre-fed: 1 kΩ at the feed point, 5 kΩ before the building, nothing else', () => {
    const chain = chainFor({ radiator: 'straight-wire', fedAt: 'centre' });
    expect(devicesOf(chain)).toEqual([
      'choke feed-point',
      'arrester building-entry',
      'choke building-entry',
      'radio radio',
    ]);
    expect(chokesOf(chain).map(({ minimumOhm }) => minimumOhm)).toEqual([1000, 5000]);
  });

  test('off-centre: 4:1 voltage type, 5 kΩ 0.3 to 1 m below it', () => {
    const chain = chainFor({ radiator: 'straight-wire', fedAt: 'off-centre', bands: wide });
    expect(chain[0]).toMatchObject({
      device: 'transformer',
      ratio: 4,
      kind: 'voltage',
      at: 'feed-point',
      distanceM: 0,
    });
    const [antenna] = chokesOf(chain);
    expect(antenna).toMatchObject({ minimumOhm: 5000, at: 'along-line', minimumOhmBand: '80m' });
    expect(antenna!.distanceM).toBeGreaterThanOrEqual(0.3);
    expect(antenna!.distanceM).toBeLessThanOrEqual(1);
  });

  test('end-fed half-wave: 49:1, 5 kΩ a twentieth of the wave down, entry, and one at the radio', () => {
    // 4.2 m (13 ft 8 in) for 80 m, 2.1 m for 40 m: common practice, no source.
    const chain = chainFor({ radiator: 'sloper', fedAt: 'end', bands: wide, focusMHz: { '80m': 3.6 } });
    expect(chain[0]).toMatchObject({
      device: 'transformer',
      ratio: 49,
      ports: { in: 'unbalanced', out: 'unbalanced' },
    });
    const [antenna, entry, radio] = chokesOf(chain);
    expect(antenna!.distanceM).toBeCloseTo(4.16, 2);
    expect(antenna!.distanceMWorking!.result.value).toBe(antenna!.distanceM);
    expect(entry).toMatchObject({ at: 'building-entry', minimumOhm: 5000 });
    expect(radio).toMatchObject({ at: 'radio', minimumOhm: 1000 });
    expect(codesOf(chain[1])).toContain('line-is-counterpoise');
  });

  test('non-resonant end-fed: 9:1, 5 kΩ at the box with a counterpoise wire, and a wide-range tuner even when it is missing', () => {
    const chain = chainFor({ radiator: 'sloper', fedAt: 'end', lengthChoice: 'non-resonant', bands: wide });
    expect(chain[0]).toMatchObject({ device: 'transformer', ratio: 9 });
    expect(chokesOf(chain)[0]).toMatchObject({ at: 'feed-point', distanceM: 0, minimumOhm: 5000 });
    expect(codesOf(deviceOf(chain, 'tuner'))).toEqual(['tuner-missing']);
  });

  test('vertical: 1 kΩ at the base, no transformer', () => {
    const chain = chainFor({ radiator: 'vertical', fedAt: 'base' });
    expect(deviceOf(chain, 'transformer')).toBeUndefined();
    expect(chokesOf(chain)[0]).toMatchObject({ at: 'feed-point', minimumOhm: 1000 });
  });

  test.each(['wide-tuner', 'wide-tuner-4to1', 'radio', 'radio-tuner'] as const)(
    'open-wire line to %s: one 1:1 choke, a tuner, never a 4:1',
    (shackEnd) => {
      const chain = chainFor({ radiator: 'inverted-v', fedAt: 'centre', feedLine: 'window-line', shackEnd });
      expect(devicesOf(chain)).toEqual([
        'arrester building-entry',
        'choke building-entry',
        'tuner radio',
        'radio radio',
      ]);
      expect(chokesOf(chain)[0]).toMatchObject({ ports: { in: 'balanced', out: 'unbalanced' }, kind: 'current' });
    },
  );

  test('open-wire line to a balanced tuner: no choke at all', () => {
    const chain = chainFor({
      radiator: 'inverted-v',
      fedAt: 'centre',
      feedLine: 'open-wire',
      shackEnd: 'balanced-tuner',
    });
    expect(devicesOf(chain)).toEqual(['arrester building-entry', 'tuner radio', 'radio radio']);
    const troubled = chainFor({
      radiator: 'inverted-v',
      fedAt: 'centre',
      feedLine: 'open-wire',
      shackEnd: 'balanced-tuner',
      rfInShack: true,
    });
    expect(devicesOf(troubled).slice(-3)).toEqual(['tuner radio', 'choke radio', 'radio radio']);
  });

  test('twin lead from a folded dipole meets 50 Ω through 6:1 and then a choke', () => {
    const chain = chainFor({ radiator: 'folded-wire', fedAt: 'centre', feedLine: 'twin-lead' });
    expect(chain.filter(({ device }) => device !== 'line').map(({ device, ratio }) => [device, ratio])).toEqual([
      ['arrester', null],
      ['transformer', 6],
      ['choke', null],
      ['radio', null],
    ]);
    // No tuner is there, nothing on it is mismatched, and the choke stands in coax.
    const why = chain.flatMap(codesOf);
    expect(why).toEqual(
      expect.arrayContaining(['line-twin-matched', 'choke-behind-transformer', 'line-jumper-matched']),
    );
    expect(why).not.toEqual(expect.arrayContaining(['line-jumper']));
    expect(why).not.toEqual(expect.arrayContaining(['never-4to1']));
    expect(chain.find(({ device }) => device === 'choke')?.build?.conductor).toBe('rg-400');
  });

  test('a choke that no coax of the list can be wound for says so', () => {
    const chain = chainFor({ radiator: 'straight-wire', fedAt: 'centre', powerW: 1500, mode: 'data' });
    for (const choke of chokesOf(chain)) {
      expect(choke.build).toBeNull();
      expect(codesOf(choke)).toContain('choke-no-cable');
    }
  });

  test('a tuner at the feed point takes the place of the transformer, with the choke below it', () => {
    const chain = chainFor({ radiator: 'straight-wire', fedAt: 'end', shackEnd: 'feed-point-tuner' });
    expect(devicesOf(chain)[0]).toBe('tuner feed-point');
    expect(chokesOf(chain)[0]!.distanceM).toBeGreaterThan(2);
    expect(deviceOf(chain, 'transformer')).toBeUndefined();
  });

  test('portable: the entry choke stands before the radio and is the only one there', () => {
    const chain = chainFor({ radiator: 'sloper', fedAt: 'end', station: 'portable', rfInShack: true });
    const [, entry, ...more] = chokesOf(chain);
    expect(entry).toMatchObject({ at: 'radio', minimumOhm: 5000 });
    expect(more).toEqual([]);
    expect(deviceOf(chain, 'arrester')).toBeUndefined();
  });

  test('RF in the shack: every choke 5 kΩ, and one more at the radio', () => {
    const chain = chainFor({ radiator: 'straight-wire', fedAt: 'centre', rfInShack: true });
    expect(chokesOf(chain).map(({ minimumOhm, at }) => [minimumOhm, at])).toEqual([
      [5000, 'feed-point'],
      [5000, 'building-entry'],
      [5000, 'radio'],
    ]);
  });

  test('coax shorter than the counterpoise: one choke, not two in the same place', () => {
    const chain = chainFor({
      radiator: 'sloper',
      fedAt: 'end',
      bands: ['80m'],
      station: 'portable',
      feedLineLengthM: 2,
    });
    expect(chokesOf(chain)).toHaveLength(1);
    expect(codesOf(chokesOf(chain)[0])).toContain('choke-is-both');
    expect(codesOf(chokesOf(chain)[0])).toContain('choke-end-fed-short-line');
  });

  test('a vertical without radials is a non-resonant one that needs 5 kΩ', () => {
    const answers = {
      radiator: 'vertical',
      fedAt: 'base',
      lengthChoice: 'non-resonant',
      returnPath: 'counterpoise-wire',
    } as const;
    expect(chokesOf(chainFor(answers))[0]!.minimumOhm).toBe(5000);
  });
});

describe('every combination', () => {
  const format = createFormat('metric');
  const all = everyCombination().map(partsOf);
  const written = (sentence: string): void => {
    expect(sentence).not.toMatch(/undefined|NaN|Infinity|null/);
    expect(sentence.length).toBeGreaterThan(2);
  };

  test('ends in the radio, and stands in order along the line', () => {
    expect(all.length).toBeGreaterThan(7000);
    for (const { chain, facts } of all) {
      expect(chain.at(-1)).toMatchObject({ device: 'radio', at: 'radio' });
      const places = chain.map(({ distanceM }) => distanceM ?? -1);
      expect([...places].sort((a, b) => a - b)).toEqual(places);
      const lineM = chain.reduce((sum, { device, lengthM }) => sum + (device === 'line' ? (lengthM ?? 0) : 0), 0);
      expect(lineM).toBeCloseTo(places.at(-1)!, 1);
      if (facts.lineKind === 'none') expect(lineM).toBe(0);
    }
  });

  test('holds the transformer that is needed and no other, and a choke wherever isolation is needed', () => {
    for (const { chain, facts, dimensions } of all) {
      const { transformation, isolation } = needsOf(facts);
      expect(deviceOf(chain, 'transformer')?.ratio ?? null).toBe(transformation?.ratio ?? null);
      expect(chokesOf(chain).length > 0).toBe(isolation);
      expect(chokesOf(chain)).toHaveLength(chokePlacesOf(facts, dimensions).length);
    }
  });

  test('every coax-fed chain has a choke before the building, portable before the radio', () => {
    for (const { chain, facts } of all.filter(({ facts: { lineKind } }) => lineKind === 'coax')) {
      const at = facts.settled.station === 'home' ? 'building-entry' : 'radio';
      expect(chokesOf(chain).some((choke) => choke.at === at && choke.minimumOhm === 5000)).toBe(true);
    }
  });

  test('every reason is reached, has a sentence and fills it', () => {
    const reached = new Set<string>();
    for (const { chain, facts } of all) {
      for (const reason of chain.flatMap((link) => link.why)) {
        if (reached.has(reason.code) && facts.settled.powerW !== 1500) continue;
        reached.add(reason.code);
        written(render(why[reason.code] ?? '', reason.data, format));
      }
    }
    const solved = partsOf({ ...home, radiator: 'inverted-l', fedAt: 'base' });
    const [first] = chainOf(solved.facts, solved.dimensions, {}, { r: 24, x: 3 });
    const offCentre = partsOf({ ...home, radiator: 'straight-wire', fedAt: 'off-centre' });
    const chosenChokes = [
      { role: 'antenna', distanceM: 1, ohm: 10_000 },
      { role: 'further', distanceM: 8, ohm: 1000 },
    ] as const;
    const searched = chainOf(offCentre.facts, { ...offCentre.dimensions, chosenChokes });
    for (const { code, data } of [...first!.why, ...chokesOf(searched).flatMap((choke) => choke.why)]) {
      reached.add(code);
      written(render(why[code] ?? '', data, format));
    }
    expect([...reached].sort()).toEqual([...whyCodes].sort());
    expect(Object.keys(why).sort()).toEqual([...whyCodes].sort());
  });

  test('every device has a name, a shop sentence and a winding instruction', () => {
    const seen = { buy: new Set<string>(), build: new Set<string>() };
    for (const link of all.flatMap(({ chain }) => chain)) {
      seen.buy.add(link.buy.code);
      written(render(buy[link.buy.code] ?? '', link.buy.data, format));
      written(render(deviceNames[link.device] ?? '', { ratio: link.ratio ?? 0, line: link.line ?? '' }, format));
      if (link.build === null) continue;
      seen.build.add(link.build.code);
      expect(boxNames[link.build.box]).toMatch(/\w/);
      written(render(builds[link.build.code] ?? '', link.build.data, format));
    }
    expect([...seen.buy].sort()).toEqual(Object.keys(buy).sort());
    expect([...seen.build].sort()).toEqual(Object.keys(builds).sort());
  });
});
