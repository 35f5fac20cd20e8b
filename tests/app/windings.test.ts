import { describe, expect, test } from 'vitest';
import {
  begunWinding,
  countOf,
  isOnRingOfItsOwn,
  momentOf,
  ringsOf,
  type Winding,
  windingJob,
  woundDevices,
} from '../../src/app/jobs/windings';
import { newSavedPlan } from '../../src/design/saved-plan';
import { makePlan } from '../../src/plan/make-plan';

const endFed = makePlan({
  bands: ['40m', '20m', '10m'],
  radiator: 'inverted-v',
  fedAt: 'end',
  shackEnd: 'radio',
});
const offCentre = makePlan({
  bands: ['80m', '40m'],
  radiator: 'inverted-v',
  fedAt: 'off-centre',
  shackEnd: 'radio-tuner',
});

const plain = { strands: 1, tapAt: null, crossAfter: null } as const;
const counted = (windings: readonly Winding[], turns: number) => momentOf(windings, countOf(windings, turns));

describe('what there is to count', () => {
  test('a tapped winding is counted to its last turn, with its tap on the way', () => {
    const transformer = woundDevices(endFed).find(({ item }) => item.device === 'transformer');
    const { turns, secondaryTurns } = transformer!.item.build!;
    expect(transformer!.windings).toEqual([{ turns: secondaryTurns, strands: 1, tapAt: turns, crossAfter: null }]);
  });

  test('wires that go on side by side are counted once', () => {
    const transformer = woundDevices(offCentre).find(({ item }) => item.device === 'transformer');
    const { turns, secondaryTurns, strands } = transformer!.item.build!;
    expect(secondaryTurns).toBe(2 * turns!);
    expect(strands).toBe(2);
    expect(transformer!.windings).toEqual([{ turns, strands: 2, tapAt: null, crossAfter: null }]);
  });

  test('a choke of two rings has two windings, each crossing over at its half', () => {
    const choke = woundDevices(endFed).find(
      ({ item }) => item.build?.secondaryTurns != null && item.device === 'choke',
    );
    const { turns, secondaryTurns } = choke!.item.build!;
    expect(choke!.windings.map((each) => each.turns)).toEqual([turns, secondaryTurns]);
    expect(choke!.windings[0]?.crossAfter).toBe(Math.ceil(turns! / 2));
  });

  test('a transformer goes round its whole stack, each part of a choke round its own', () => {
    const transformer = woundDevices(endFed).find(({ item }) => item.device === 'transformer')!;
    expect(ringsOf(transformer)).toBe(transformer.item.build!.count);
    const choke = woundDevices(endFed).find(({ windings }) => windings.length === 2)!;
    expect(choke.item.device).toBe('choke');
    expect(2 * ringsOf(choke)).toBe(choke.item.build!.count);
    expect(isOnRingOfItsOwn('choke', choke.windings)).toBe(true);
    expect(isOnRingOfItsOwn('choke', transformer.windings)).toBe(false);
    expect(isOnRingOfItsOwn('transformer', choke.windings)).toBe(false);
  });

  test('each device has an address of its own', () => {
    const ids = woundDevices(endFed).map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
    expect(ids).toContain('transformer-feed-point');
  });

  test('a device of other turns is another count', () => {
    const [wound] = woundDevices(endFed);
    const other = { ...wound!, windings: [{ ...wound!.windings[0]!, turns: 99 }] };
    expect(windingJob(other)).not.toBe(windingJob(wound!));
  });
});

describe('a count that was begun', () => {
  const wound = woundDevices(endFed).find(({ item }) => item.device === 'transformer')!;
  const withCount = (job: string, step: string) => ({ ...newSavedPlan('id', 0), progress: { [job]: { step, at: 1 } } });

  test('goes on with the turns it was begun for, tap and all, whatever the plan says meanwhile', () => {
    const then = { ...wound, windings: [{ ...plain, turns: 14, tapAt: 2 }] };
    const begun = begunWinding(withCount(windingJob(then), '11'), wound);
    expect(begun).toMatchObject({ windings: then.windings, isOther: true, count: { done: 11, of: 14 } });
    expect(begunWinding(withCount(windingJob(wound), '4'), wound)).toMatchObject({
      windings: wound.windings,
      isOther: false,
    });
  });

  test('of two windings, and of wires side by side, comes back whole', () => {
    const choke = woundDevices(endFed).find(({ windings }) => windings.length === 2)!;
    expect(begunWinding(withCount(windingJob(choke), '1'), choke)?.windings).toEqual(choke.windings);
    const paired = woundDevices(offCentre).find(({ item }) => item.device === 'transformer')!;
    expect(begunWinding(withCount(windingJob(paired), '1'), paired)?.windings).toEqual(paired.windings);
  });

  test('is none when nothing is on, or when it is another device', () => {
    expect(begunWinding(withCount(windingJob(wound), '0'), wound)).toBeNull();
    expect(begunWinding(withCount(windingJob({ ...wound, id: `${wound.id}-2` }), '4'), wound)).toBeNull();
  });
});

describe('the count', () => {
  const two: readonly Winding[] = [
    { ...plain, turns: 12, crossAfter: 6 },
    { ...plain, turns: 10 },
  ];

  test('goes through one winding and then the next, and a filled one stays in hand until the next turn', () => {
    expect(countOf(two, 0)).toEqual({ winding: 0, done: 0, total: 0, of: 22 });
    expect(countOf(two, 12)).toMatchObject({ winding: 0, done: 12 });
    expect(countOf(two, 13)).toMatchObject({ winding: 1, done: 1 });
    expect(countOf(two, 22)).toMatchObject({ winding: 1, done: 10, total: 22 });
  });

  test('never runs past its ends, whatever was kept', () => {
    expect(countOf(two, 99).total).toBe(22);
    expect(countOf(two, -1).total).toBe(0);
    expect(countOf(two, Number('rubbish')).total).toBe(0);
  });

  test('tells the tap, the crossing, the end of a winding and the end of all', () => {
    const tapped = [{ ...plain, turns: 21, tapAt: 3 }];
    expect([0, 2, 3, 4, 21].map((turns) => counted(tapped, turns))).toEqual([
      'start',
      'winding',
      'tap',
      'winding',
      'all-done',
    ]);
    expect([6, 12, 13, 22].map((turns) => counted(two, turns))).toEqual([
      'cross',
      'winding-done',
      'winding',
      'all-done',
    ]);
  });
});
