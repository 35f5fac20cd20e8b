import { describe, expect, test } from 'vitest';
import { bandsOf } from '../../src/advice/bands';
import { chainOf } from '../../src/advice/chain/chain';
import { dimensionsOf } from '../../src/advice/dimensions';
import { exposureOf } from '../../src/advice/exposure';
import { type Facts, factsOf, isNoSystem } from '../../src/advice/facts';
import type { BandFinding } from '../../src/advice/finding';
import { warningsOf } from '../../src/advice/warnings/warnings-of';
import { complex } from '../../src/base/complex';
import type { Answers } from '../../src/design/answers';
import { swr } from '../../src/physics/line';
import { bandNotes } from '../../src/words/en/bands';
import { warningWords } from '../../src/words/en/warnings';
import { createFormat } from '../../src/words/format';
import { render } from '../../src/words/message';
import { everyCombination } from './combinations';

function found(answers: Answers, beside: Parameters<typeof bandsOf>[3] = {}): BandFinding[] {
  const facts = factsOf(answers) as Facts;
  const dimensions = dimensionsOf(facts);
  return bandsOf(facts, dimensions, chainOf(facts, dimensions), beside);
}

const focusMHz = {
  '80m': 3.6,
  '40m': 7.1,
  '30m': 10.1,
  '20m': 14.15,
  '17m': 18.1,
  '15m': 21.2,
  '12m': 24.9,
  '10m': 28.4,
};
const wire: Answers = {
  bands: ['80m'],
  radiator: 'straight-wire',
  fedAt: 'end',
  shackEnd: 'wide-tuner',
  lengthChoice: 'fixed',
  heightM: 9,
  wire: 'copper-2.0mm-bare',
  focusMHz,
};

// The model's few free numbers were chosen against these rows: they hold it there, and prove nothing elsewhere.
// Own field solutions (coax in place, choke in place, average ground): SWR behind the usual transformer. Compared within a factor.
const solved: readonly { answers: Partial<Answers>; ohm: number; swrs: Readonly<Record<string, number>> }[] = [
  {
    answers: { fedAt: 'off-centre', wireLengthM: 41, bands: ['80m', '40m', '20m', '17m', '12m', '10m'] },
    ohm: 200,
    swrs: { '80m': 2.5, '40m': 1.3, '20m': 2.6, '17m': 1.1, '12m': 3.3, '10m': 3.5 },
  },
  { answers: { wireLengthM: 41, bands: ['80m', '40m', '20m'] }, ohm: 2450, swrs: { '80m': 4, '40m': 1.2, '20m': 2.8 } },
  {
    answers: { wireLengthM: 21.75, bands: ['80m', '40m', '30m', '20m', '17m', '15m', '12m', '10m'] },
    ohm: 450,
    swrs: { '80m': 8.7, '40m': 10.8, '30m': 1.5, '20m': 5.6, '17m': 2.9, '15m': 3.5, '12m': 2.2, '10m': 2.9 },
  },
];

const rows = solved.flatMap(({ answers, ohm, swrs }) =>
  Object.entries(swrs).map(([band, expected]) => ({ answers, ohm, band, expected })),
);

test.each(rows)(
  '$answers.wireLengthM m on $ohm Ω: $band shows the solved SWR $expected within a factor 1.6',
  ({ answers, ohm, band, expected }) => {
    const finding = found({ ...wire, ...answers }).find((each) => each.band === band);
    const z = finding?.feedPoint as { r: number; x: number };
    const ratio = swr(complex(z.r, z.x), ohm) / expected;
    expect(Math.max(ratio, 1 / ratio)).toBeLessThan(1.6);
  },
);

describe('what each system shows at its own resonance', () => {
  // Handbook values (memory): 50 to 75 Ω, 36 Ω and ground loss, 100 to 130 Ω, four times a dipole, 2 to 5 kΩ.
  test.each([
    { radiator: 'straight-wire', fedAt: 'centre', from: 50, to: 85 },
    { radiator: 'inverted-v', fedAt: 'centre', from: 40, to: 65 },
    { radiator: 'vertical', fedAt: 'base', from: 36, to: 75 },
    { radiator: 'loop', fedAt: 'corner', from: 100, to: 130 },
    { radiator: 'parallel-wires', fedAt: 'centre', from: 50, to: 85 },
    { radiator: 'folded-wire', fedAt: 'centre', from: 200, to: 340 },
    { radiator: 'straight-wire', fedAt: 'end', from: 2000, to: 5000 },
  ] as const)('$radiator fed at $fedAt', ({ radiator, fedAt, from, to }) => {
    const [finding] = found({
      bands: ['40m'],
      radiator,
      fedAt,
      shackEnd: 'radio',
      heightM: radiator === 'vertical' ? 0.2 : 10,
    });
    expect(finding.feedPoint?.r).toBeGreaterThan(from);
    expect(finding.feedPoint?.r).toBeLessThan(to);
    expect(finding.swrAtRadio).toBeLessThan(2);
    expect(finding.tunerNeeded).toBe(false);
  });
});

test('15 m of 5 mm coax on a dipole for 40 m loses what the maker says', () => {
  // Maker's sheet as in the catalogue: 1.36 √7.1 + 0.0252 · 7.1 = 3.80 dB in 100 m, 0.57 dB in 15 m; SWR 1.4 adds a few hundredths.
  const [finding] = found({
    bands: ['40m'],
    radiator: 'straight-wire',
    fedAt: 'centre',
    shackEnd: 'radio',
    feedLineLengthM: 15,
  });
  expect(finding.lineLossDb as number).toBeGreaterThan(0.5);
  expect(finding.lineLossDb as number).toBeLessThan(0.75);
});

test('a folded dipole on 300 Ω line is matched, though the transformer stands at the far end of the line', () => {
  // About 280 Ω by 6:1, the step from 300 to 50 Ω: SWR below 1.5 (handbooks on antennas).
  const [finding] = found({
    bands: ['40m'],
    radiator: 'folded-wire',
    fedAt: 'centre',
    feedLine: 'twin-lead',
    shackEnd: 'radio',
    heightM: 12,
  });
  expect(finding.swrAtFeedPoint as number).toBeLessThan(1.5);
  expect(finding.swrAtRadio as number).toBeLessThan(1.6);
});

test('a field solution replaces the closed form', () => {
  const field = {
    bands: { '80m': { feedPoint: { r: 2450, x: 0 }, entryCurrentMa: 8, shieldCurrentDb: -40 } },
  } as const;
  const [finding] = found({ ...wire, lengthChoice: 'resonant' }, { field });
  expect(finding.feedPoint).toEqual({ r: 2450, x: 0 });
  expect(finding.swrAtFeedPoint).toBeCloseTo(1, 6);
  expect([finding.entryCurrentMa, finding.shieldCurrentDb]).toEqual([8, -40]);
  // Nothing is designed here, so nobody knows what the devices lose.
  expect(finding.deviceLossDb).toBeNull();
  expect(finding.notes.map(({ code }) => code)).not.toContain('closed-form');
});

test('an unknown antenna gives no numbers, only what to do', () => {
  const [finding] = found({ bands: ['40m'], radiator: 'other', fedAt: 'end', shackEnd: 'radio' });
  expect([finding.feedPoint, finding.swrAtRadio, finding.lineLossDb, finding.tunerNeeded]).toEqual([
    null,
    null,
    null,
    null,
  ]);
  expect(finding.notes.map(({ code }) => code)).toEqual(['impedance-unknown']);
});

test('every combination of answers gives finite numbers and sentences without gaps', () => {
  const format = createFormat('imperial');
  const finite = (value: unknown): boolean => typeof value !== 'number' || Number.isFinite(value);
  for (const answers of everyCombination()) {
    const facts = factsOf({ ...answers, nearestPersonM: 4 });
    if (isNoSystem(facts)) throw new TypeError('combinations hold only feed points that exist');
    const dimensions = dimensionsOf(facts);
    const chain = chainOf(facts, dimensions);
    const bands = bandsOf(facts, dimensions, chain);
    const faults: unknown[] = [];
    for (const band of bands) {
      faults.push(...Object.values(band).filter((value) => !finite(value)));
      if (band.feedPoint !== null && !(band.feedPoint.r > 0 && finite(band.feedPoint.x))) faults.push(band.feedPoint);
      if (band.swrAtRadio !== null && band.swrAtRadio < 1) faults.push(band.swrAtRadio);
      for (const { code, data } of band.notes)
        faults.push(...gapsIn(render(bandNotes[code as keyof typeof bandNotes], data, format)));
    }
    for (const each of exposureOf(facts, dimensions, bands))
      faults.push(...Object.values(each).filter((value) => !finite(value)));
    for (const { code, data, waysOut, severity } of warningsOf(facts, dimensions, chain, bands)) {
      const words = warningWords[code];
      faults.push(...Object.values(data).filter((value) => !finite(value)));
      faults.push(...gapsIn(render(words.text, data, format)), ...gapsIn(render(words.why, data, format)));
      for (const way of waysOut) faults.push(...gapsIn(render(words.waysOut[way.code], way.data, format)));
      if (severity === 'stop' && waysOut.length < 2) faults.push(code);
    }
    if (faults.length > 0) expect({ answers, faults }).toEqual({ answers, faults: [] });
  }
}, 120_000);

const gapsIn = (sentence: string): string[] =>
  /undefined|NaN|null|Infinity|\[object|∞/.test(sentence) ? [sentence] : [];
