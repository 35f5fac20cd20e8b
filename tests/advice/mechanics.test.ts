import { describe, expect, test } from 'vitest';
import { chainOf } from '../../src/advice/chain/chain';
import { dimensionsOf } from '../../src/advice/dimensions';
import { type Facts, factsOf } from '../../src/advice/facts';
import { type Mechanics, mechanicsOf } from '../../src/advice/mechanics';
import { wireIds } from '../../src/catalog/wire-ids';
import type { Answers } from '../../src/design/answers';
import { createSpeaker } from '../../src/plan/speaker';
import { stateMechanics } from '../../src/plan/state-mechanics';
import { partItems } from '../../src/words/en/parts';
import { steps } from '../../src/words/en/steps';
import { createFormat } from '../../src/words/format';
import { render } from '../../src/words/message';
import { expectWorkingHolds } from '../fixtures/evaluate-working';
import { wholePlan } from './whole-plan';

const endFed: Answers = { bands: ['80m'], radiator: 'straight-wire', fedAt: 'end', shackEnd: 'radio', heightM: 10 };

function mechanicsFor(answers: Answers): Mechanics {
  const facts = factsOf(answers) as Facts;
  const dimensions = dimensionsOf(facts);
  return mechanicsOf(facts, dimensions, chainOf(facts, dimensions)) as Mechanics;
}

// Common practice: 40 m of 2 mm copper with 1 m of sag pulls with about 55 N. 2.5 % of the span is that sag.
test('an 80 m end-fed of 2 mm copper hangs with a fortieth of its span and pulls with some 55 N', () => {
  const [span] = mechanicsFor({ ...endFed, wire: 'copper-2.0mm-bare' }).spans;
  expect(span.sag.metres / span.spanM).toBeCloseTo(0.025, 6);
  expect(Math.abs(span.rest.newton / (55 * (span.spanM / 40)) - 1)).toBeLessThan(0.02);
  expect((span.exactSagM as number) / span.sag.metres).toBeCloseTo(1, 2);
});

describe('whatever the wire', () => {
  test.each(wireIds)('%s pulls with at most a tenth of its breaking load at rest, and every working holds', (wire) => {
    for (const more of [{}, { fedAt: 'centre' as const, heightM: 20, feedLineLengthM: 30 }]) {
      for (const { rest, wind, ice, sag } of mechanicsFor({ ...endFed, ...more, wire }).spans) {
        expect(rest.factor).toBeGreaterThanOrEqual(10 - 1e-9);
        expect(wind.newton).toBeGreaterThan(rest.newton);
        expect(ice.newton).toBeGreaterThan(rest.newton);
        for (const working of [sag.working, rest.working, wind.working, ice.working]) expectWorkingHolds(working);
      }
    }
  });
});

test('line and box hung from the middle add to the pull; on a support they do not', () => {
  const hung = mechanicsFor({ ...endFed, fedAt: 'centre' }).spans[0];
  const held = mechanicsFor({ ...endFed, radiator: 'inverted-v', fedAt: 'centre' }).spans[0];
  expect(hung.centreN).toBeGreaterThan(3);
  expect(held.centreN).toBe(0);
  expect(hung.exactSagM).toBeNull();
});

// NFPA 70, table 810.52: 14 AWG to 45 m, hard-drawn or copper-clad; 810.11 leaves soft copper to short lead-ins.
test('the code is met by size and by metal, and each is told', () => {
  expect(mechanicsFor({ ...endFed, wire: 'copper-2.0mm-bare' }).code).toMatchObject({
    askedAwg: 14,
    sizeMeets: true,
    metalMeets: true,
  });
  expect(mechanicsFor({ ...endFed, wire: 'pvc-1.5mm2' }).code).toMatchObject({ sizeMeets: false, metalMeets: false });
  expect(mechanicsFor({ ...endFed, bands: ['160m'], wire: 'copper-2.5mm-bare' }).code).toMatchObject({
    askedAwg: 10,
    sizeMeets: true,
  });
});

test('an upright wire has guys and no span, a loft neither', () => {
  const upright = mechanicsFor({ bands: ['20m'], radiator: 'vertical', fedAt: 'base', shackEnd: 'radio' });
  expect([upright.spans.length, upright.guys?.count, upright.rope]).toEqual([0, 3, null]);
  expect(mechanicsFor({ ...endFed, indoors: true })).toBeNull();
});

test('the rope stands five times the pull in wind, and trees may sway a tenth of the span', () => {
  const { rope, spans } = mechanicsFor(endFed);
  expect(rope?.breakN).toBeGreaterThanOrEqual(5 * spans[0].wind.newton);
  expect(rope?.swayM).toBeCloseTo(spans[0].spanM / 10, 9);
});

test('the raising step and the shopping list carry the sag, the rope and the weight that were worked out', () => {
  // Invented: a flat wire over branches, then the same as an upright one on a pole, which neither sags nor hangs on a tree.
  const flat = wholePlan({ radiator: 'straight-wire', fedAt: 'centre' });
  const raise = flat.steps.find(({ id }) => id === 'raise');
  const [span] = flat.mechanics?.spans ?? [];
  expect(raise?.data.sagM).toBe(span?.sag.metres);
  expect(raise?.data.weightKg).toBe(flat.mechanics?.rope?.weightKg);
  const format = createFormat('metric');
  expect(render(steps[raise?.code ?? ''] ?? '', raise?.data ?? {}, format)).toContain(
    format.length(span?.sag.metres ?? 0),
  );
  const item = (code: string) => flat.parts.find((part) => part.item.code === code)?.item;
  expect(item('rope')?.data.diameterMm).toBe(1000 * Number(flat.mechanics?.rope?.diameterM));
  expect(render(partItems['end-weight'] ?? '', item('end-weight')?.data ?? {}, format)).toMatch(/^weight of [\d.]+ kg/);

  const upright = wholePlan({ radiator: 'vertical', fedAt: 'base' });
  expect(upright.steps.find(({ id }) => id === 'raise')?.data.sagM).toBeUndefined();
});

test('heavy coax in the middle of thin wire is told of, light coax is not', () => {
  const told = (feedLine: 'rg-213' | 'rg-174'): string =>
    stateMechanics(
      mechanicsFor({ ...endFed, fedAt: 'centre', heightM: 12, feedLineLengthM: 25, feedLine }),
      createSpeaker('metric'),
    )?.text.join(' ') ?? '';
  expect(told('rg-213')).toContain('hang from its middle');
  expect(told('rg-174')).not.toContain('hang from its middle');
});
