import { describe, expect, test } from 'vitest';
import type { FieldFacts } from '../../src/advice/field-facts';
import type { Answers } from '../../src/design/answers';
import { makePlan } from '../../src/plan/make-plan';

function transformerOf(answers: Answers, field?: FieldFacts) {
  const found = makePlan(answers, field === undefined ? {} : { field }).chain.find(
    ({ device }) => device === 'transformer',
  );
  if (found?.build == null || found.figures === null) throw new Error('no wound transformer');
  return { build: found.build, figures: found.figures, ratio: found.ratio! };
}

const endFed = transformerOf({
  bands: ['40m', '20m', '10m'],
  radiator: 'inverted-v',
  fedAt: 'end',
  shackEnd: 'radio',
});
const offCentre = transformerOf({
  bands: ['80m', '40m'],
  radiator: 'inverted-v',
  fedAt: 'off-centre',
  shackEnd: 'radio-tuner',
});

describe('a transformer tried out with a resistor', () => {
  test('takes 2.4 kilohms on a 49:1 and 200 ohms on a 4:1', () => {
    expect([endFed.ratio, endFed.figures.test?.resistorOhm]).toEqual([49, 2400]);
    expect([offCentre.ratio, offCentre.figures.test?.resistorOhm]).toEqual([4, 200]);
  });

  test.each([endFed, offCentre])('tells an SWR for each wanted band that its own limit allows', ({ figures }) => {
    expect(figures.test!.bands.map(({ band }) => band)).toEqual(figures.bands.map(({ band }) => band));
    for (const { swr } of figures.test!.bands) {
      expect(swr).toBeGreaterThanOrEqual(1);
      if (!figures.isEnough) continue;
      // Not more than the limit of the design, and what 2.4 kilohms differ from 2.45.
      expect(swr).toBeLessThanOrEqual(figures.test!.goodSwr * (2450 / 2400));
    }
  });

  test('takes a low one where the antenna has the lower impedance, and is expected well matched there too', () => {
    const { ratio, figures } = transformerOf(
      { bands: ['80m'], radiator: 'inverted-l', fedAt: 'base', shackEnd: 'radio', heightM: 0.2 },
      { bands: { '80m': { feedPoint: { r: 14, x: 0 } } } },
    );
    expect([ratio, figures.test?.resistorOhm]).toEqual([0.25, 13]);
    const [{ swr } = { swr: 0 }] = figures.test!.bands;
    // 13 Ω stand in for 12.5: that much no box takes away.
    expect(swr).toBeGreaterThan(1);
    expect(swr).toBeLessThan(1.5);
  });

  test('is told of no choke', () => {
    const dipole: Answers = { bands: ['40m'], radiator: 'inverted-v', fedAt: 'centre', shackEnd: 'radio' };
    const choke = makePlan(dipole).chain.find(({ device }) => device === 'choke');
    expect(choke?.figures).not.toBeNull();
    expect(choke?.figures?.test).toBeNull();
  });
});
