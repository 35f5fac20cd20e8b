import { expect, test } from 'vitest';
import { nearestTradeRatio, needsOf, swrBehind } from '../../src/advice/needs';
import type { Answers } from '../../src/design/answers';
import { partsOf } from './build-plan-parts';

const base: Answers = { bands: ['40m'], shackEnd: 'radio' };
const several: Partial<Answers> = { bands: ['80m', '40m', '20m', '10m'] };

// House positions and the trade's table of feed points; common practice, no one source.
const table: [title: string, answers: Partial<Answers>, balance: boolean, ratio: number | null][] = [
  ['straight wire, centre', { radiator: 'straight-wire', fedAt: 'centre' }, true, null],
  ['inverted V, centre', { radiator: 'inverted-v', fedAt: 'centre' }, true, null],
  ['sloper, centre', { radiator: 'sloper', fedAt: 'centre' }, true, null],
  ['straight wire, off centre', { radiator: 'straight-wire', fedAt: 'off-centre', ...several }, false, 4],
  ['straight wire, end, resonant', { radiator: 'straight-wire', fedAt: 'end' }, false, 49],
  ['sloper, end, non-resonant', { radiator: 'sloper', fedAt: 'end', lengthChoice: 'non-resonant' }, false, 9],
  ['vertical, base', { radiator: 'vertical', fedAt: 'base' }, false, null],
  ['vertical, base, non-resonant', { radiator: 'vertical', fedAt: 'base', lengthChoice: 'non-resonant' }, false, 4],
  ['vertical, end', { radiator: 'vertical', fedAt: 'end' }, false, 49],
  ['vertical, centre', { radiator: 'vertical', fedAt: 'centre' }, true, null],
  ['inverted L', { radiator: 'inverted-l', fedAt: 'base' }, false, null],
  ['loop, one band', { radiator: 'loop', fedAt: 'corner' }, true, 2],
  ['loop, several bands', { radiator: 'loop', fedAt: 'side-middle', ...several }, true, 4],
  ['loop on open-wire line', { radiator: 'loop', fedAt: 'corner', feedLine: 'window-line', ...several }, true, null],
  ['parallel wires', { radiator: 'parallel-wires', fedAt: 'centre', ...several }, true, null],
  ['folded wire on coax', { radiator: 'folded-wire', fedAt: 'centre' }, true, 4],
  [
    'folded wire on twin lead to a socket',
    { radiator: 'folded-wire', fedAt: 'centre', feedLine: 'twin-lead' },
    true,
    6,
  ],
  ['doublet on open wire', { radiator: 'inverted-v', fedAt: 'centre', feedLine: 'open-wire' }, true, null],
];

test.each(table)('%s', (_title, answers, balance, ratio) => {
  const { facts } = partsOf({ ...base, ...answers });
  expect(needsOf(facts)).toEqual({
    balance,
    transformation: ratio === null ? null : { ratio },
    isolation: true,
  });
});

test('a tuner at the feed point transforms, so nothing else does', () => {
  const { facts } = partsOf({ ...base, radiator: 'straight-wire', fedAt: 'end', shackEnd: 'feed-point-tuner' });
  expect(needsOf(facts).transformation).toBeNull();
});

test('open-wire line into a balanced tuner needs no isolation, into any other end it does', () => {
  const answers = { ...base, radiator: 'straight-wire', fedAt: 'centre', feedLine: 'open-wire' } as const;
  expect(needsOf(partsOf({ ...answers, shackEnd: 'balanced-tuner' }).facts).isolation).toBe(false);
  expect(needsOf(partsOf({ ...answers, shackEnd: 'wide-tuner' }).facts).isolation).toBe(true);
});

test.each([
  // SWR from Γ = (Z − Z0) / (Z + Z0), Pozar, Microwave Engineering, 4th ed., eq. 2.35 and 2.41: a resistance above Z0 gives R / Z0.
  { r: 50, ratio: 1 },
  { r: 110, ratio: 2 },
  { r: 200, ratio: 4 },
  { r: 290, ratio: 6 },
  { r: 450, ratio: 9 },
  { r: 2450, ratio: 49 },
  { r: 3300, ratio: 64 },
])('$r Ω on 50 Ω coax asks for $ratio:1', ({ r, ratio }) => {
  expect(nearestTradeRatio({ r, x: 0 }, 50)).toBe(ratio);
  const through = r / ratio;
  expect(swrBehind({ r, x: 0 }, ratio, 50)).toBeCloseTo(Math.max(through / 50, 50 / through), 9);
});

test('the antenna of your own takes its ratio from what was told, an inverted L from what was solved', () => {
  const other = { ...base, radiator: 'other', fedAt: 'end' } as const;
  expect(needsOf(partsOf(other).facts).transformation).toBeNull();
  expect(needsOf(partsOf({ ...other, feedImpedance: { r: 440, x: 10 } }).facts).transformation).toEqual({ ratio: 9 });
  expect(needsOf(partsOf({ ...other, balanced: true }).facts).balance).toBe(true);
  const { facts } = partsOf({ ...base, radiator: 'inverted-l', fedAt: 'base' });
  expect(needsOf(facts, { r: 24, x: 0 }).transformation).toEqual({ ratio: 0.5 });
  expect(needsOf(facts, { r: 45, x: 0 }).transformation).toBeNull();
});
