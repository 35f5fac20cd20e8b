import { describe, expect, test } from 'vitest';
import { type Facts, factsOf, isNoSystem } from '../../src/advice/facts';
import { type ChokeSpot, lookUpIds, lookUpsOf } from '../../src/advice/look-ups';
import type { Answers } from '../../src/design/answers';
import { lookUpSteps, lookUps } from '../../src/words/en/look-ups';
import { createFormat } from '../../src/words/format';
import { render } from '../../src/words/message';
import { everyCombination } from './combinations';

const base: Answers = { bands: ['80m', '40m'], radiator: 'straight-wire', fedAt: 'centre', shackEnd: 'radio' };
const chokes: readonly ChokeSpot[] = [
  { at: 'feed-point', distanceM: 0 },
  { at: 'building-entry', distanceM: 11 },
];
const factsIn = (answers: Answers): Facts => {
  const facts = factsOf(answers);
  if (isNoSystem(facts)) throw new Error('no such feed point');
  return facts;
};
const found = (answers: Partial<Answers> = {}, spots = chokes) =>
  Object.fromEntries(lookUpsOf(factsIn({ ...base, ...answers }), spots).map(({ id, steps }) => [id, steps]));
const codes = (id: string, answers: Partial<Answers> = {}, spots = chokes) =>
  found(answers, spots)[id]!.map(({ code }) => code);
const said = (id: string, answers: Partial<Answers> = {}, spots = chokes): string => {
  const format = createFormat(answers.units ?? 'metric');
  return found(answers, spots)
    [id]!.flatMap(({ code, data }) =>
      [lookUpSteps[code]!.act, lookUpSteps[code]!.means].map((each) => render(each, data, format)),
    )
    .join(' ')
    .replaceAll('\u00a0', ' ');
};

describe('a radio that plays up', () => {
  // Order of cures, 10 W, 8 to 12 turns on a 36 mm ring of mix 31: handbooks and common practice, no source.
  test('is sent with 10 W first, then chokes are looked for, entry before antenna, and leads come last', () => {
    expect(codes('radio-upset')).toEqual([
      'upset-little-power',
      'upset-move-coax',
      'upset-entry-choke',
      'upset-antenna-choke',
      'upset-leads',
    ]);
    expect(said('radio-upset')).toMatch(/Send with 10 W.*8 to 12 turns.*36 mm.*mix 31/);
    expect(said('radio-upset', { powerW: 5 })).toContain('Send with 2.5 W.');
  });

  test('of an end-fed gets a twentieth of the longest wave to push against, or a look at the wires it has', () => {
    const endFed = { radiator: 'inverted-v', fedAt: 'end' } as const;
    // 299.8 / 3.65 MHz × 0.05: a twentieth of the wave is 4.1 m.
    expect(said('radio-upset', { ...endFed, returnPath: 'coax-shield' })).toMatch(/Clip 4\.\d+ m .*of wire/);
    expect(said('radio-upset', { ...endFed, returnPath: 'coax-shield' })).toContain('ground terminal of the box');
    expect(said('radio-upset', { ...endFed, returnPath: 'none', shackEnd: 'feed-point-tuner' })).toContain(
      'ground terminal of the tuner',
    );
    expect(codes('radio-upset', { ...endFed, returnPath: 'counterpoise-wire' })).toContain('upset-counterpoise-there');
    expect(codes('radio-upset')).not.toContain('upset-counterpoise-try');
  });

  test('is sent to no choke that the plan does not have', () => {
    expect(codes('radio-upset', {}, [])).toEqual(['upset-little-power', 'upset-move-coax', 'upset-leads']);
  });

  test('finds a choke down the coax by its distance, in both units', () => {
    expect(said('radio-upset', {}, [{ at: 'along-line', distanceM: 2.1 }])).toMatch(/2\.1\d* m \(6 ft 10/);
    expect(said('radio-upset', { units: 'imperial' }, [{ at: 'along-line', distanceM: 2.1 }])).toMatch(
      /6 ft 10½ in \(2\.1/,
    );
  });
});

describe('noise', () => {
  test('is told apart by unplugging, by taking the wire off, by switching the house off', () => {
    expect(codes('noise')).toEqual(['noise-note', 'noise-unplug', 'noise-wire-off', 'noise-house-off', 'noise-chokes']);
    expect(codes('noise', { station: 'portable' })).toEqual([
      'noise-note',
      'noise-unplug',
      'noise-wire-off',
      'noise-things-off',
    ]);
  });

  test('from the house falls by what was computed for coax at right angles or under the wire', () => {
    // Own field solutions, both chokes of 5 kΩ, medians over runs and house ends.
    expect(said('noise')).toContain('20 to 40 dB');
    expect(said('noise', { feedLineRoute: 'along' })).toContain('12 to 24 dB');
    expect(found().noise!.at(-1)?.source).toBe('own-field-solutions');
  });
});

test('a radio that turns down is measured at its own end first, and the sweep is doubted last', () => {
  expect(codes('folds-back')).toEqual([
    'folds-at-radio',
    'folds-case',
    'folds-little-power',
    'folds-up',
    'folds-sweep-again',
  ]);
  expect(codes('folds-back', { feedLine: 'open-wire' })).not.toContain('folds-case');
});

test('a pole that conducts is kept half a metre off, and carries no upright wire', () => {
  expect(codes('conducting-pole')).toContain('pole-along');
  expect(found({ indoors: true })['conducting-pole']).toBeUndefined();
  // Half a metre, and the last 1 to 2 m of glass fibre: common practice, no source.
  expect(said('conducting-pole')).toMatch(/0\.50 m .*1\.00 m .*2\.00 m /);
  expect(said('conducting-pole', { radiator: 'vertical', fedAt: 'base' })).toContain('Carbon is no support');
});

test('every look-up of every antenna has its words, is short, and says nothing twice', () => {
  const reached = new Set<string>();
  const format = createFormat('metric');
  for (const answers of everyCombination().filter((_, index) => index % 9 === 0)) {
    for (const { id, steps } of lookUpsOf(factsIn(answers), chokes)) {
      expect(steps.length).toBeGreaterThan(2);
      expect(steps.length).toBeLessThan(8);
      expect(new Set(steps.map(({ code }) => code)).size).toBe(steps.length);
      expect(render(lookUps[id].title, {}, format)).not.toBe('');
      for (const { code, data } of steps) {
        reached.add(code);
        const { act, means } = lookUpSteps[code]!;
        expect([act, means].map((each) => render(each, data, format)).join(' ')).not.toMatch(/NaN|undefined/);
      }
    }
  }
  expect([...reached].sort()).toEqual(Object.keys(lookUpSteps).sort());
  expect(Object.keys(lookUps).sort()).toEqual([...lookUpIds].sort());
});
