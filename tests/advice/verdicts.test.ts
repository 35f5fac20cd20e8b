import { expect, test } from 'vitest';
import { verdictCodes } from '../../src/advice/verdict-codes';
import { verdictsOf } from '../../src/advice/verdicts';
import type { Answers, PartOnHand } from '../../src/design/answers';
import { verdictNames, verdicts } from '../../src/words/en/verdicts';
import { createFormat } from '../../src/words/format';
import { render } from '../../src/words/message';
import { partsOf } from './build-plan-parts';
import { everyCombination } from './combinations';

const base: Answers = { bands: ['80m', '40m', '20m'], shackEnd: 'radio', mode: 'voice' };
const judge = (part: PartOnHand, answers: Partial<Answers>) => {
  const { facts, chain, dimensions } = partsOf({ ...base, ...answers, onHand: [part] });
  return verdictsOf(facts, chain, dimensions)[0]!;
};
const verdictOf = (part: PartOnHand, answers: Partial<Answers>) => judge(part, answers).verdict;
const codeOf = (part: PartOnHand, answers: Partial<Answers>) => judge(part, answers).code;

const dipole = { radiator: 'straight-wire', fedAt: 'centre' } as const;
const offCentre = { radiator: 'straight-wire', fedAt: 'off-centre' } as const;
const endFed = { radiator: 'sloper', fedAt: 'end' } as const;
const nonResonant = { ...endFed, lengthChoice: 'non-resonant' } as const;
const transformer = (ratio: number, kind: 'voltage' | 'current' = 'voltage', ratingW?: number): PartOnHand =>
  ratingW === undefined ? { part: 'transformer', ratio, kind } : { part: 'transformer', ratio, kind, ratingW };

// House positions: 49:1 takes 56 and 64; 4:1 off-centre is a voltage type; no ratio on open wire or at a centre. Common practice.
test.each([
  [transformer(49), endFed, 'fits'],
  [transformer(56), endFed, 'fits'],
  [transformer(64), endFed, 'fits'],
  [transformer(9), endFed, 'wrong'],
  [transformer(9), nonResonant, 'fits'],
  [transformer(49), nonResonant, 'wrong'],
  [transformer(4), offCentre, 'fits'],
  [transformer(4, 'current'), offCentre, 'wrong'],
  [transformer(4), dipole, 'wrong'],
  [transformer(4), { ...dipole, feedLine: 'window-line', shackEnd: 'wide-tuner' }, 'wrong'],
  [transformer(4, 'current'), { radiator: 'loop', fedAt: 'corner' }, 'fits'],
  [transformer(1, 'current'), dipole, 'fits'],
  [transformer(1, 'voltage'), dipole, 'wrong'],
] satisfies [PartOnHand, Partial<Answers>, string][])('%j at %j: %s', (part, answers, verdict) => {
  expect(verdictOf(part, answers)).toBe(verdict);
});

test('the wrong ratio is judged by the SWR it leaves', () => {
  // Trade figures, common practice: 9:1 on a half-wave SWR above 5.
  expect(judge(transformer(9), endFed).data.swr).toBeCloseTo(49 / 9, 6);
});

test('a rating for voice is not enough for steady modes', () => {
  // 100 W of data averages 100 W; a part sold for voice stands a fifth of its rating (US exposure bulletin, table 2: voice 0.2).
  expect(verdictOf(transformer(49, 'voltage', 100), { ...endFed, mode: 'voice' })).toBe('fits');
  expect(codeOf(transformer(49, 'voltage', 100), { ...endFed, mode: 'data' })).toBe('transformer-rating');
  expect(verdictOf(transformer(49, 'voltage', 500), { ...endFed, mode: 'data' })).toBe('fits');
});

test('a two-in-one box serves to 25 W average, and never where the coax is the counterpoise', () => {
  const box: PartOnHand = { part: 'two-in-one', ratio: 4 };
  expect(verdictOf(box, { ...offCentre, powerW: 100 })).toBe('fits');
  expect(verdictOf(box, { ...offCentre, powerW: 200 })).toBe('too-small');
  expect(verdictOf(box, dipole)).toBe('wrong');
  // Own field solutions: a choke at an end-fed's box without a counterpoise takes 60 to 90 % of the power.
  const endFedBox: PartOnHand = { part: 'two-in-one', ratio: 49 };
  expect(codeOf(endFedBox, endFed)).toBe('two-in-one-no-return');
  expect(verdictOf(endFedBox, { ...endFed, returnPath: 'counterpoise-wire' })).toBe('fits');
});

// Measured chokes of 12 to 17 turns on a 61 mm mix-31 ring have 5 kΩ and more on the bands they are made for; eight coils of coax are
// nearly all reactance and have a few hundred ohms on the low bands. Common practice, after published measurements.
test.each([
  [{ part: 'choke', core: 'ft240-31', count: 1, turns: 12, line: 'rg-400' }, { ...dipole, bands: ['40m'] }, 'fits'],
  [{ part: 'choke', core: 'ft240-31', count: 1, turns: 14, line: 'rg-400' }, endFed, 'fits'],
  [{ part: 'choke', core: 'ft240-31', count: 1, turns: 12, line: 'rg-400' }, endFed, 'fits-elsewhere'],
  [{ part: 'choke', core: 'ft240-31', count: 1, turns: 4, line: 'rg-400' }, endFed, 'too-small'],
  [{ part: 'choke', core: 'ft140-31', count: 1, turns: 14, line: 'rg-400' }, endFed, 'wrong'],
  [{ part: 'choke', core: 'ft240-31', count: 1, turns: 4, line: 'twin-lead' }, endFed, 'wrong'],
  [{ part: 'coil', turns: 8, diameterM: 0.15, line: 'rg-213' }, dipole, 'too-small'],
  [{ part: 'beads', count: 10, line: 'rg-58' }, dipole, 'too-small'],
  [{ part: 'beads', count: 100, line: 'rg-58' }, dipole, 'fits'],
  [{ part: 'core', core: 'ft240-31', count: 2 }, endFed, 'fits'],
  [{ part: 'core', core: 'ft240-43', count: 1 }, endFed, 'fits'],
  [{ part: 'core', core: 'ft50-43', count: 2 }, endFed, 'too-small'],
] satisfies [PartOnHand, Partial<Answers>, string][])('%j at %j: %s', (part, answers, verdict) => {
  expect(verdictOf(part, answers)).toBe(verdict);
});

test('a coil is refused for what it is, not only for its ohms', () => {
  expect(codeOf({ part: 'coil', turns: 8, diameterM: 0.15, line: 'rg-213' }, endFed)).toBe('choke-reactive');
  expect(codeOf({ part: 'core', core: 'ft240-43', count: 1 }, endFed)).toBe('core-for-transformer');
});

test('wire and line are judged by length and kind', () => {
  const wire = (lengthM: number): PartOnHand => ({ part: 'wire', wire: 'pvc-1.5mm2', lengthM });
  const line = (id: 'rg-58' | 'rg-213' | 'window-line' | 'rg-174', lengthM: number): PartOnHand => ({
    part: 'line',
    line: id,
    lengthM,
  });
  const long = { ...dipole, bands: ['40m'] as Answers['bands'] };
  expect([100, 12, 5].map((lengthM) => verdictOf(wire(lengthM), long))).toEqual(['fits', 'fits', 'too-small']);
  expect(codeOf({ part: 'wire', wire: 'copper-2.0mm-bare', lengthM: 100 }, long)).toBe('wire-other-kind');
  expect(codeOf(line('rg-58', 20), long)).toBe('line-fits');
  expect(codeOf(line('rg-58', 10), long)).toBe('line-too-short');
  expect(codeOf(line('window-line', 20), long)).toBe('line-open-for-coax');
  expect(codeOf(line('rg-174', 20), { ...long, powerW: 400, mode: 'fm' })).toBe('line-power');
  const doublet = { ...long, feedLine: 'window-line', shackEnd: 'wide-tuner' } as const;
  expect(codeOf(line('rg-213', 20), doublet)).toBe('line-for-jumper');
  expect(codeOf(line('rg-174', 20), doublet)).toBe('line-coax-for-open');
});

const everything: PartOnHand[] = [
  ...[1, 4, 9, 49].flatMap((ratio) => [transformer(ratio), transformer(ratio, 'current')]),
  transformer(6),
  transformer(64, 'voltage', 20),
  { part: 'two-in-one', ratio: 49 },
  { part: 'two-in-one', ratio: 4 },
  { part: 'choke', core: 'ft240-31', count: 1, turns: 12, line: 'rg-400' },
  { part: 'choke', core: 'ft240-31', count: 2, turns: 16, line: 'rg-316' },
  { part: 'choke', core: 'ft240-43', count: 1, turns: 5, line: 'rg-58' },
  { part: 'choke', core: 'ft140-43', count: 1, turns: 14, line: 'rg-213' },
  { part: 'choke', core: 'ft140-43', count: 1, turns: 4, line: 'open-wire' },
  { part: 'beads', count: 4, line: 'rg-58' },
  { part: 'beads', count: 200, line: 'rg-58' },
  { part: 'coil', turns: 8, diameterM: 0.15, line: 'rg-213' },
  { part: 'coil', turns: 8, diameterM: 0.15, line: 'twin-lead' },
  { part: 'core', core: 'ft50-31', count: 1 },
  { part: 'core', core: 'ft240-31', count: 2 },
  { part: 'core', core: 'ft240-43', count: 4 },
  { part: 'core', core: 'ft140-61', count: 1 },
  { part: 'core', core: 'ft140-31', count: 2 },
  { part: 'wire', wire: 'pvc-1.5mm2', lengthM: 200 },
  { part: 'wire', wire: 'copper-2.0mm-bare', lengthM: 200 },
  { part: 'wire', wire: 'pvc-1.5mm2', lengthM: 12 },
  { part: 'wire', wire: 'pvc-1.5mm2', lengthM: 6 },
  { part: 'wire', wire: 'pvc-1.5mm2', lengthM: 1 },
  { part: 'line', line: 'rg-58', lengthM: 20 },
  { part: 'line', line: 'rg-213', lengthM: 20 },
  { part: 'line', line: 'rg-6', lengthM: 20 },
  { part: 'line', line: 'rg-174', lengthM: 20 },
  { part: 'line', line: 'window-line', lengthM: 20 },
  { part: 'line', line: 'window-line', lengthM: 1 },
];

test('every part gets a verdict at every antenna, every code is reached, worded and filled', () => {
  const format = createFormat('metric');
  const reached = new Set<string>();
  const some: Answers[] = [{ ...base, ...endFed, mode: 'data' }, ...everyCombination().filter((_, n) => n % 31 === 0)];
  // One ring of a kind of which a choke takes two.
  const kit: Answers = { ...base, ...endFed, bands: ['40m', '20m', '10m'], mode: 'data' };
  const one: PartOnHand[] = [
    { part: 'core', core: 'ft240-43', count: 1 },
    { part: 'core', core: 'ft240-31', count: 1 },
  ];
  const asked = [{ ...kit, onHand: one }, ...some.map((answers) => ({ ...answers, onHand: everything }))];
  for (const answers of asked) {
    const { facts, chain, dimensions } = partsOf(answers);
    const found = verdictsOf(facts, chain, dimensions);
    expect(found.map(({ part }) => part)).toEqual(answers.onHand.map((_, index) => index));
    for (const { code, data, verdict } of found) {
      if (reached.has(code)) continue;
      reached.add(code);
      expect(verdictNames[verdict]).toMatch(/\w/);
      expect(render(verdicts[code] ?? '', data, format)).toMatch(/^(?!.*(undefined|NaN|Infinity)).{20,}/);
    }
  }
  expect([...reached].sort()).toEqual([...verdictCodes].sort());
  expect(Object.keys(verdicts).sort()).toEqual([...verdictCodes].sort());
});
