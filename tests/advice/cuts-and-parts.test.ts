import { describe, expect, test } from 'vitest';
import type { Cut, Part } from '../../src/advice/finding';
import { cutNotes, pieceName, stopRules } from '../../src/words/en/cuts';
import { partFor, partItems, partSubstitutes } from '../../src/words/en/parts';
import { createFormat } from '../../src/words/format';
import { type Message, render } from '../../src/words/message';
import { everyCombination } from './combinations';
import { type GivenAnswers, wholePlan } from './whole-plan';

const cutOf = (given: GivenAnswers, piece: string): Cut => {
  const found = wholePlan(given).cuts.find((cut) => cut.piece === piece);
  if (found === undefined) throw new Error(`no ${piece}`);
  return found;
};
const partOf = (given: GivenAnswers, code: string): Part | undefined =>
  wholePlan(given).parts.find(({ item }) => item.code === code);

describe('cuts', () => {
  // Common practice, no source: cut 2 to 3 % long, fold back through the insulators, measure, trim.
  test('a resonant wire is cut 2 to 3 % long, plus what its two ends fold back', () => {
    const { finishedM, cutM, marksM, stopRule } = cutOf({}, 'wire');
    const spare = (cutM - finishedM - 0.3) / finishedM;
    expect(spare).toBeGreaterThanOrEqual(0.02);
    expect(spare).toBeLessThanOrEqual(0.03);
    expect((marksM[1] ?? 0) - (marksM[0] ?? 0)).toBeCloseTo(finishedM, 6);
    expect(stopRule.code).toBe('stop-at-dip');
  });

  test('a non-resonant wire is not cut long, and may be off by what its window leaves', () => {
    const given: GivenAnswers = { bands: ['80m', '40m', '20m'], lengthChoice: 'non-resonant' };
    const { finishedM, cutM, toleranceM } = cutOf(given, 'wire');
    const [window] = wholePlan(given).dimensions.windows;
    expect(cutM - finishedM).toBeCloseTo(0.3, 6);
    expect(finishedM + toleranceM).toBeLessThanOrEqual((window?.toM ?? 0) + 1e-9);
    expect(finishedM - toleranceM).toBeGreaterThanOrEqual((window?.fromM ?? 0) - 1e-9);
  });

  test('a wire that is there is measured, not cut, and not bought', () => {
    const given: GivenAnswers = { lengthChoice: 'fixed', wireLengthM: 20.2 };
    expect(cutOf(given, 'wire')).toMatchObject({ finishedM: 20.2, cutM: 20.2, note: { code: 'wire-there' } });
    expect(partOf(given, 'wire')).toBeUndefined();
  });

  test('the coax is marked at the choke, at the entry choke and at the entry, counted from the box', () => {
    const { dimensions, cuts } = wholePlan({ feedLineLengthM: 20, entryDistanceM: 16 });
    const marks = cuts.find(({ piece }) => piece === 'coax')?.marksM ?? [];
    const wanted = [dimensions.chokeAt?.metres ?? 0, 15.7, 16];
    expect(marks).toHaveLength(wanted.length);
    for (const [index, mark] of marks.entries()) expect(mark).toBeCloseTo(wanted[index] ?? 0, 1);
  });

  test('parallel dipoles have a pair of legs to cut for each band that needs its own', () => {
    const legs = wholePlan({ bands: ['40m', '20m', '15m'], radiator: 'parallel-wires', fedAt: 'centre' }).cuts;
    const named = legs.filter(({ piece }) => piece.startsWith('leg'));
    expect(named.map(({ piece, count }) => `${count} ${piece}`)).toEqual(['2 leg-40m', '2 leg-20m']);
    // Each shorter one is cut 2 to 5 % long, beside what every wire has for trimming (common practice, no source).
    const spares = named.map(({ working }) => working.inputs.spare?.value);
    expect(spares).toEqual([0.025, expect.closeTo(0.075, 9)]);
  });

  // Arithmetic: up, over and down again is twice the height, and 3 m to tie off (common practice, no source).
  test('ropes follow from heights', () => {
    expect(cutOf({ heightM: 10 }, 'halyard')).toMatchObject({ count: 2, finishedM: 23 });
    expect(cutOf({ radiator: 'inverted-v', fedAt: 'centre', bands: ['40m'], heightM: 9 }, 'tie')).toMatchObject({
      count: 2,
      finishedM: 6,
    });
    expect(wholePlan({ indoors: true }).cuts.some(({ piece }) => piece === 'throw-line')).toBe(false);
  });
});

describe('parts', () => {
  test('wire is rounded up to whole metres and counted against what is on hand', () => {
    const { cutM } = cutOf({}, 'wire');
    const wire = partOf({ onHand: [{ part: 'wire', wire: 'pvc-1.5mm2', lengthM: 12 }] }, 'wire');
    expect(wire).toMatchObject({ quantity: Math.ceil(cutM), have: 12, unit: 'metre' });
    expect(partOf({ onHand: [{ part: 'wire', wire: 'copper-2.0mm-bare', lengthM: 50 }] }, 'wire')?.have).toBe(0);
  });

  test('rings on hand are handed out once', () => {
    const plain = wholePlan({}).parts.filter(({ item }) => item.code === 'ring');
    const [first] = plain;
    const core = String(first?.item.data.core);
    const owned = wholePlan({ onHand: [{ part: 'core', core: core as 'ft240-43', count: 1 }] });
    const have = owned.parts.filter(({ item }) => item.code === 'ring').reduce((sum, each) => sum + each.have, 0);
    expect(plain.length).toBeGreaterThan(1);
    expect(have).toBe(1);
  });

  test('a ring names the build of another mix that does as well', () => {
    const { chain, parts } = wholePlan({});
    for (const { item, substitute, for: place } of parts.filter((part) => part.item.code === 'ring')) {
      const link = chain.find(
        ({ device, at, build }) =>
          device === place.data.device && at === place.data.at && build?.core === item.data.core,
      );
      const same = link?.alternatives.find(
        ({ build }) => build.core === substitute.data.core && build.turns === substitute.data.turns,
      );
      expect(substitute.code).toBe('or-other-ring');
      expect(same).toMatchObject({ isEnough: true, isPlanned: false });
      expect(substitute.data.core).not.toBe(item.data.core);
    }
  });

  test('a transformer that fits takes the place of everything it would be wound from', () => {
    const { parts } = wholePlan({ onHand: [{ part: 'transformer', ratio: 49, kind: 'voltage', ratingW: 500 }] });
    expect(parts.find(({ item }) => item.code === 'device-transformer')).toMatchObject({ quantity: 1, have: 1 });
    const wound = parts.filter(({ for: place }) => place.code === 'for-device' && place.data.device === 'transformer');
    expect(wound).toHaveLength(1);
  });

  test('a choke that cannot be wound here is bought ready made, one for each place', () => {
    const { parts, chain } = wholePlan({ bands: ['80m', '10m'], fedAt: 'off-centre', station: 'home', powerW: 400 });
    const chokes = chain.filter(({ device }) => device === 'choke');
    expect(chokes.length).toBeGreaterThan(1);
    expect(chokes.every(({ build }) => build === null)).toBe(true);
    expect(parts.filter(({ item, have }) => item.code === 'device-choke' && have === 0)).toHaveLength(chokes.length);
  });

  test('a home station gets arrester, bond and clamp; a portable one none', () => {
    const codes = (given: GivenAnswers): string[] => wholePlan(given).parts.map(({ item }) => item.code);
    expect(codes({})).toEqual(expect.arrayContaining(['arrester-coax', 'bond-wire', 'earth-clamp']));
    expect(codes({ station: 'portable' })).not.toEqual(expect.arrayContaining(['arrester-coax']));
  });

  test('a box has a post for each wire that comes to it and a socket for each piece of coax', () => {
    /** Sockets and posts of each device by place, antenna first. */
    const ends = (given: GivenAnswers): (readonly [string, number, number])[] => {
      const { chain, parts } = wholePlan(given);
      const count = (code: string, device: string, at: string, distanceM: number): number =>
        parts
          .filter(({ item, for: place }) => item.code === code && place.data.device === device && place.data.at === at)
          .filter(({ for: place }) => place.data.distanceM === distanceM)
          .reduce((sum, { quantity }) => sum + quantity, 0);
      return chain
        .filter(({ build }) => build !== null)
        .map(({ device, at, distanceM }) => {
          const of = (code: string): number => count(code, device, at, distanceM ?? 0);
          return [`${device} ${at}`, of('coax-socket'), of('wire-post')] as const;
        });
    };
    // A dipole's choke has its two legs on one side; the one at the wall stands in the coax.
    expect(ends({ fedAt: 'centre' })).toEqual([
      ['choke feed-point', 1, 2],
      ['choke building-entry', 2, 0],
    ]);
    // An end-fed's transformer has the wire and its return on posts, and one socket.
    expect(ends({}).slice(0, 2)).toEqual([
      ['transformer feed-point', 1, 2],
      ['choke along-line', 2, 0],
    ]);
    expect(ends({ fedAt: 'centre', feedLine: 'window-line', shackEnd: 'wide-tuner' })).toEqual([
      ['choke building-entry', 1, 2],
    ]);
  });

  test('above 100 W no BNC stands in for a socket', () => {
    expect(partOf({ powerW: 100 }, 'coax-socket')?.substitute.code).toBe('or-bnc');
    expect(partOf({ powerW: 400 }, 'coax-socket')?.substitute.code).toBe('or-large-socket');
  });

  test('a wire with no path to ground gets a drain, one behind a transformer none', () => {
    expect(partOf({ fedAt: 'centre' }, 'drain-resistor')?.quantity).toBe(3);
    expect(partOf({}, 'drain-resistor')).toBeUndefined();
  });
});

describe('every combination', () => {
  const plans = everyCombination().map((answers) => wholePlan(answers));
  const formats = [createFormat('metric'), createFormat('imperial')];
  const worded = (catalogue: Readonly<Record<string, Message>>, code: string, data: Cut['note']['data']): void => {
    const message = catalogue[code];
    if (message === undefined) throw new Error(`no sentence for ${code}`);
    for (const format of formats) {
      const text = render(message, data, format);
      expect(text, code).not.toMatch(/NaN|undefined|null|Infinity/);
      expect(text.length, code).toBeGreaterThan(2);
    }
  };

  test('cuts are finite, above zero, never shorter than finished, and in words', () => {
    const seen = new Map<string, Cut>();
    for (const { cuts } of plans) {
      expect(cuts.length).toBeGreaterThan(0);
      for (const cut of cuts) {
        const numbers = [cut.finishedM, cut.cutM, cut.toleranceM, ...cut.marksM];
        if (!numbers.every((n) => Number.isFinite(n) && n > 0)) throw new Error(JSON.stringify(cut));
        if (cut.cutM < cut.finishedM - 1e-9) throw new Error(JSON.stringify(cut));
        if (cut.marksM.some((mark) => mark > cut.cutM + 1e-9)) throw new Error(JSON.stringify(cut));
        seen.set(`${cut.piece} ${cut.note.code} ${cut.stopRule.code}`, cut);
      }
    }
    for (const { piece, note, stopRule } of seen.values()) {
      expect(pieceName(piece)).not.toContain('undefined');
      worded(cutNotes, note.code, note.data);
      worded(stopRules, stopRule.code, stopRule.data);
    }
    const reached = (pick: (cut: Cut) => string): string[] => [...new Set([...seen.values()].map(pick))].sort();
    expect(reached(({ note }) => note.code)).toEqual(Object.keys(cutNotes).sort());
    expect(reached(({ stopRule }) => stopRule.code)).toEqual(Object.keys(stopRules).sort());
  });

  test('parts are whole numbers, in words, and no sentence is left unused', () => {
    const seen = new Map<string, Part>();
    for (const { parts } of plans)
      for (const part of parts) {
        if (!Number.isInteger(part.quantity) || part.quantity < 1) throw new Error(JSON.stringify(part));
        if (!Number.isInteger(part.have) || part.have < 0 || part.have > part.quantity)
          throw new Error(JSON.stringify(part));
        seen.set(`${part.item.code} ${part.for.code} ${part.substitute.code}`, part);
      }
    for (const { item, for: place, substitute } of seen.values()) {
      worded(partItems, item.code, item.data);
      worded(partFor, place.code, place.data);
      worded(partSubstitutes, substitute.code, substitute.data);
    }
    const reached = (pick: (part: Part) => string): string[] => [...new Set([...seen.values()].map(pick))].sort();
    // a transformer ready made appears only when the operator owns it
    expect(reached(({ item }) => item.code)).toEqual(
      Object.keys(partItems)
        .filter((code) => code !== 'device-transformer')
        .sort(),
    );
    expect(reached(({ for: place }) => place.code)).toEqual(Object.keys(partFor).sort());
    const designed = ['or-mix-31', 'or-mix-43-transformer']; // rings that only a design for this antenna chooses: tested above
    expect(reached(({ substitute }) => substitute.code)).toEqual(
      Object.keys(partSubstitutes)
        .filter((code) => !designed.includes(code))
        .sort(),
    );
  });
});
