/** The systems that answers name, row by row of the data contract, with what each needs and works against when nothing more is told. */
import { describe, expect, it } from 'vitest';
import type { Answers } from '../../src/design/answers';
import { makePlan } from '../../src/plan/make-plan';

type Pair = Pick<Answers, 'radiator' | 'fedAt'> & Partial<Answers>;

interface Row {
  readonly answers: Pair;
  readonly system: string;
  readonly balance: boolean;
  readonly ratio: number | null;
  readonly kind?: 'voltage' | 'current';
  /** What `assumed` says of the return path; absent where it cannot matter. */
  readonly returnPath?: string;
}

const several: Answers['bands'] = ['40m', '20m'];
const wires = ['straight-wire', 'inverted-v', 'sloper'] as const;
const named = { 'straight-wire': 'centre-fed-half-wave', 'inverted-v': 'inverted-v', sloper: 'sloper' } as const;

const wireRows = wires.flatMap((radiator): Row[] => [
  { answers: { radiator, fedAt: 'centre' }, system: named[radiator], balance: true, ratio: null },
  {
    answers: { radiator, fedAt: 'centre', lengthChoice: 'fixed', wireLengthM: 19 },
    system: named[radiator],
    balance: true,
    ratio: null,
  },
  ...(['resonant', 'non-resonant', 'fixed'] as const).map(
    (lengthChoice): Row => ({
      answers: {
        radiator,
        fedAt: 'centre',
        feedLine: 'open-wire',
        shackEnd: 'balanced-tuner',
        lengthChoice,
        wireLengthM: 27,
      },
      system: 'open-wire-doublet',
      balance: true,
      ratio: null,
    }),
  ),
  { answers: { radiator, fedAt: 'off-centre' }, system: 'off-centre-fed', balance: false, ratio: 4, kind: 'voltage' },
  {
    answers: { radiator, fedAt: 'end' },
    system: 'end-fed-half-wave',
    balance: false,
    ratio: 49,
    returnPath: 'coax-shield',
  },
  // 149.9 × 0.95 × 0.975 / 7.1 = 19.56 m: within 5 % on 40 m and, as two half-waves, on 20 m.
  {
    answers: { radiator, fedAt: 'end', bands: several, lengthChoice: 'fixed', wireLengthM: 20 },
    system: 'end-fed-half-wave',
    balance: false,
    ratio: 49,
    returnPath: 'coax-shield',
  },
  {
    answers: { radiator, fedAt: 'end', bands: several, lengthChoice: 'fixed', wireLengthM: 22 },
    system: 'non-resonant-end-fed',
    balance: false,
    ratio: 9,
    returnPath: 'counterpoise-wire',
  },
  {
    answers: { radiator, fedAt: 'end', lengthChoice: 'non-resonant' },
    system: 'non-resonant-end-fed',
    balance: false,
    ratio: 9,
    returnPath: 'counterpoise-wire',
  },
]);

const otherRows: readonly Row[] = [
  {
    answers: { radiator: 'vertical', fedAt: 'base' },
    system: 'quarter-wave-vertical',
    balance: false,
    ratio: null,
    returnPath: 'ground-radials',
  },
  {
    answers: { radiator: 'vertical', fedAt: 'base', heightM: 1 },
    system: 'quarter-wave-vertical',
    balance: false,
    ratio: null,
    returnPath: 'elevated-radials',
  },
  ...(['non-resonant', 'fixed'] as const).map(
    (lengthChoice): Row => ({
      answers: { radiator: 'vertical', fedAt: 'base', lengthChoice, wireLengthM: 12 },
      system: 'non-resonant-vertical',
      balance: false,
      ratio: 4,
      returnPath: 'ground-radials',
    }),
  ),
  {
    answers: { radiator: 'vertical', fedAt: 'end' },
    system: 'end-fed-half-wave',
    balance: false,
    ratio: 49,
    returnPath: 'coax-shield',
  },
  { answers: { radiator: 'vertical', fedAt: 'centre' }, system: 'centre-fed-half-wave', balance: true, ratio: null },
  {
    answers: { radiator: 'inverted-l', fedAt: 'base' },
    system: 'inverted-l',
    balance: false,
    ratio: null,
    returnPath: 'ground-radials',
  },
  ...(['corner', 'side-middle'] as const).flatMap((fedAt): Row[] => [
    { answers: { radiator: 'loop', fedAt }, system: 'full-wave-loop', balance: true, ratio: 2 },
    { answers: { radiator: 'loop', fedAt, bands: several }, system: 'full-wave-loop', balance: true, ratio: 4 },
    {
      answers: { radiator: 'loop', fedAt, bands: several, feedLine: 'window-line', shackEnd: 'wide-tuner' },
      system: 'full-wave-loop',
      balance: true,
      ratio: null,
    },
  ]),
  { answers: { radiator: 'parallel-wires', fedAt: 'centre' }, system: 'parallel-dipoles', balance: true, ratio: null },
  { answers: { radiator: 'linked-wire', fedAt: 'centre' }, system: 'linked-dipole', balance: true, ratio: null },
  { answers: { radiator: 'folded-wire', fedAt: 'centre' }, system: 'folded-dipole', balance: true, ratio: 4 },
  {
    answers: { radiator: 'folded-wire', fedAt: 'centre', feedLine: 'twin-lead' },
    system: 'folded-dipole',
    balance: true,
    ratio: 6,
  },
  { answers: { radiator: 'other', fedAt: 'centre' }, system: 'other', balance: false, ratio: null },
  {
    answers: { radiator: 'other', fedAt: 'end', balanced: true, feedImpedance: { r: 450, x: 0 } },
    system: 'other',
    balance: true,
    ratio: 9,
  },
];

describe('from answers to a system', () => {
  it.each([...wireRows, ...otherRows])(
    '$answers is $system',
    ({ answers, system, balance, ratio, kind, returnPath }) => {
      const plan = makePlan({ bands: ['40m'], shackEnd: 'radio', ...answers });
      expect(plan.system).toBe(system);
      expect(plan.needs.balance).toBe(balance);
      expect(plan.needs.transformation).toEqual(ratio === null ? null : { ratio });
      expect(plan.needs.isolation).toBe(answers.shackEnd !== 'balanced-tuner');
      const transformer = plan.chain.find(({ device }) => device === 'transformer');
      expect(transformer?.ratio ?? null).toBe(ratio);
      if (kind !== undefined) expect(transformer?.kind).toBe(kind);
      expect(plan.assumed.find(({ key }) => key === 'returnPath')?.value).toBe(returnPath);
    },
  );

  it('puts one side of a 49:1 and a 9:1 on the shield, and both sides of a loop alike', () => {
    const portsOf = (answers: Pair) =>
      makePlan({ bands: ['40m'], shackEnd: 'radio', ...answers }).chain.find(({ device }) => device === 'transformer')
        ?.ports;
    const onShield = { in: 'unbalanced', out: 'unbalanced' };
    const acrossGap = { in: 'balanced', out: 'unbalanced' };
    expect(portsOf({ radiator: 'straight-wire', fedAt: 'end' })).toEqual(onShield);
    expect(portsOf({ radiator: 'straight-wire', fedAt: 'end', lengthChoice: 'non-resonant' })).toEqual(onShield);
    expect(portsOf({ radiator: 'straight-wire', fedAt: 'off-centre' })).toEqual(acrossGap);
    expect(portsOf({ radiator: 'loop', fedAt: 'corner' })).toEqual(acrossGap);
    expect(portsOf({ radiator: 'folded-wire', fedAt: 'centre' })).toEqual(acrossGap);
  });
});

/** Choke minimum and place of the data contract; λ/20 of 80 m (3.65 MHz) is 299.8 / 3.65 / 20 = 4.11 m. */
describe('the choke at the antenna end', () => {
  const chokeOf = (answers: Pair) =>
    makePlan({ bands: ['80m', '10m'], shackEnd: 'radio', ...answers }).chain.find(({ device }) => device === 'choke');

  it.each([
    [{ radiator: 'straight-wire', fedAt: 'centre' }, 1000, 0, 0.3],
    [{ radiator: 'inverted-v', fedAt: 'centre' }, 1000, 0, 0.3],
    [{ radiator: 'straight-wire', fedAt: 'off-centre' }, 5000, 0.3, 1],
    [{ radiator: 'straight-wire', fedAt: 'end' }, 5000, 4.1, 4.12],
    [{ radiator: 'straight-wire', fedAt: 'end', returnPath: 'counterpoise-wire' }, 5000, 4.1, 4.12],
    [{ radiator: 'straight-wire', fedAt: 'end', lengthChoice: 'non-resonant' }, 5000, 0, 0],
    [{ radiator: 'vertical', fedAt: 'base' }, 1000, 0, 0.3],
  ] as const)('for %o asks for %i ohm, %d to %d m down', (answers, ohm, fromM, toM) => {
    const choke = chokeOf(answers);
    expect(choke?.minimumOhm).toBe(ohm);
    expect(choke?.distanceM).toBeGreaterThanOrEqual(fromM);
    expect(choke?.distanceM).toBeLessThanOrEqual(toM);
  });

  it('asks 5 kΩ at the entry and 1 kΩ at the radio', () => {
    const { chain } = makePlan({ bands: ['40m'], radiator: 'straight-wire', fedAt: 'end', shackEnd: 'radio' });
    const chokes = chain.filter(({ device }) => device === 'choke');
    expect(chokes.map(({ at, minimumOhm }) => [at, minimumOhm])).toEqual([
      ['along-line', 5000],
      ['building-entry', 5000],
      ['radio', 1000],
    ]);
  });
});
