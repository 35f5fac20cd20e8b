/** What a choice of chokes and a dip do in the plan. Invented facts: the study's own are tested beside. */
import { describe, expect, test } from 'vitest';
import type { ChokeChoice, ChokeSetResult, ChosenChoke, FieldFacts } from '../../src/advice/field-facts';
import type { Answers } from '../../src/design/answers';
import { makePlan } from '../../src/plan/make-plan';

const answers: Answers = {
  bands: ['40m'],
  radiator: 'straight-wire',
  fedAt: 'off-centre',
  shackEnd: 'radio-tuner',
  feedLineLengthM: 25,
};
const set = (chokes: readonly ChosenChoke[], worstMa: number): ChokeSetResult => ({
  chokes,
  worstMa,
  worstBand: '40m',
  heatW: 4,
});
const house = set(
  [
    { role: 'antenna', distanceM: 1, ohm: 5000 },
    { role: 'entry', distanceM: 20.7, ohm: 5000 },
  ],
  60,
);
const chosen = set(
  [
    { role: 'antenna', distanceM: 0.3, ohm: 10_000 },
    { role: 'entry', distanceM: 20.7, ohm: 5000 },
    { role: 'further', distanceM: 9, ohm: 1000 },
  ],
  12,
);
const planWith = (chokes: ChokeChoice, bands: FieldFacts['bands'] = {}) =>
  makePlan(answers, { field: { bands, chokes } });
const chokesOf = ({ chain }: ReturnType<typeof makePlan>) => chain.filter(({ device }) => device === 'choke');

describe('chokes that the field chose', () => {
  const plan = planWith({ house, chosen, tenMa: null, goalMet: true });

  test('stand in the chain, in order along the coax, with the ohms they need', () => {
    expect(chokesOf(plan).map(({ distanceM, minimumOhm }) => [distanceM, minimumOhm])).toEqual([
      [0.3, 10_000],
      [9, 1000],
      [20.7, 5000],
    ]);
    const along = plan.chain.map(({ distanceM }) => distanceM ?? 0);
    expect([...along].sort((a, b) => a - b)).toEqual(along);
  });

  test('say why, and that the place was solved', () => {
    const [antenna, further] = chokesOf(plan);
    expect(antenna?.why.map(({ code }) => code)).toContain('choke-ohms-solved');
    expect(Object.values(antenna?.distanceMWorking?.inputs ?? {})).toEqual([{ value: 0.3, unit: 'm', from: 'solved' }]);
    expect(further?.why).toMatchObject([{ code: 'choke-further', source: { id: 'this-antenna-solved' } }]);
  });

  test('stand in the study beside the house’s, with the difference', () => {
    expect(plan.fieldStudy?.chokes?.differenceDb).toBeCloseTo(20 * Math.log10(12 / 60), 9);
    expect(plan.fieldStudy?.chokes?.text[0]).toMatch(/usual chokes would leave about 60 mA.* leave about 10 mA/);
  });

  test('are the house’s, untouched, while these hold', () => {
    const held = chokesOf(planWith({ house, chosen: house, tenMa: null, goalMet: false }));
    expect(held).toEqual(chokesOf(makePlan(answers)));
  });
});

describe('ten mA', () => {
  const built = (worstMa: number) =>
    ({ worstMa, worstBand: '40m', nominalMa: 5, goalMet: true, beforeMa: null }) as const;
  const textOf = (chokes: ChokeChoice): string => planWith(chokes).fieldStudy?.chokes?.text.join(' ') ?? '';

  test.each([
    ['are there by the ohms', { ...house, worstMa: 8 }, null, 8, /below 10 mA/],
    ['are there as wound', { ...house, worstMa: 12 }, null, 9, /below 10 mA/],
    ['would come with other chokes', { ...house, worstMa: 12 }, chosen, 14, /would bring it to about 10 mA/],
    ['come with none that was tried', { ...house, worstMa: 12 }, null, 14, /None of the sets tried/],
  ] as const)('%s', (_what, asked, other, builtMa, expected) => {
    expect(textOf({ house: asked, chosen: asked, tenMa: other, goalMet: true, built: built(builtMa) })).toMatch(
      expected,
    );
  });

  test('that only the spread of rings keeps away are not sold as other chokes', () => {
    const asked = { ...house, worstMa: 8 };
    const text = textOf({ house: asked, chosen: asked, tenMa: asked, goalMet: true, built: built(12) });
    expect(text).toMatch(/rings from the worse end of their tolerance, about 10 mA/);
    expect(text).not.toMatch(/would bring it|below 10 mA|None of the sets/);
  });
});

describe('the dip of a solved sweep', () => {
  /** A dipole-like impedance with its dip at `dipMHz`. */
  const notesWith = (dipMHz: number): string[] => {
    const sweep = Array.from({ length: 21 }, (_, i) => {
      const mhz = 7 + 0.01 * i;
      return { mhz, r: 200, x: 4000 * (mhz - dipMHz) };
    });
    const field: FieldFacts = { bands: { '40m': { feedPoint: { r: 200, x: 0 }, sweep } } };
    return makePlan({ ...answers, focusMHz: { '40m': 7.1 }, feedLineLengthM: 0.5 }, { field }).bands[0]?.notes ?? [];
  };

  test.each([
    [7.1, null],
    [7.17, /lies at 7.17 MHz, above the 7.1 MHz/],
    [7.03, /lies at 7.03 MHz, below the 7.1 MHz/],
    [6.8, /towards the lower end/],
    [7.5, /towards the upper end/],
  ] as const)('at %s MHz is told as what it is', (dipMHz, said) => {
    const dips = notesWith(dipMHz).filter((note) => /dip|lowest SWR/.test(note));
    if (said === null) expect(dips).toEqual([]);
    else expect(dips).toEqual([expect.stringMatching(said)]);
  });
});
