/** A linked dipole solved band by band, its open pieces hanging on. Invented antennas. */
import { describe, expect, test } from 'vitest';
import { dimensionsOf } from '../../src/advice/dimensions';
import { type Facts, factsOf, isNoSystem } from '../../src/advice/facts';
import type { SolvedLengths } from '../../src/advice/field-facts';
import { linkedLegs } from '../../src/advice/wire-links';
import type { Answers } from '../../src/design/answers';
import { sitesOn } from '../../src/plan/field/sites-on';
import { solveLengths } from '../../src/plan/field/solved-lengths';
import { trialImpedance } from '../../src/plan/field/trial';
import { makePlan } from '../../src/plan/make-plan';
import { instrument } from './field-support';

const level: Answers = {
  bands: ['40m', '20m'],
  radiator: 'linked-wire',
  fedAt: 'centre',
  shackEnd: 'radio',
  heightM: 10,
  endHeightM: 10,
};

function factsFor(answers: Answers): Facts {
  const facts = factsOf(answers);
  if (isNoSystem(facts)) throw new Error('no such feed point');
  return facts;
}

async function solved(facts: Facts): Promise<SolvedLengths> {
  const lengths = await solveLengths(facts, dimensionsOf(facts), instrument);
  if (lengths === null) throw new Error('not solved');
  return lengths;
}

/** Ohms of each band, highest first, with its own links open. */
async function ohmsOf(facts: Facts, lengths: SolvedLengths) {
  const ohms = [];
  for (const at of [...facts.bands].reverse())
    ohms.push(await trialImpedance(facts, lengths, instrument, at, [at.focusMHz * 1e6]));
  return ohms.map((each) => each?.[0] ?? { re: Number.NaN, im: Number.NaN });
}

describe.each<[string, Partial<Answers>]>([
  ['level', {}],
  ['as an inverted V', { endHeightM: 3 }],
])('%s', (_shape, given) => {
  test('every band is resonant with its own links open, near its rule, and near 50 Ω', async () => {
    const facts = factsFor({ ...level, ...given, bands: ['40m', '20m', '15m'] });
    const lengths = await solved(facts);
    for (const { re, im } of await ohmsOf(facts, lengths)) {
      expect(Math.abs(im)).toBeLessThan(1);
      expect(re).toBeGreaterThan(30);
      expect(re).toBeLessThan(80);
    }
    // Print gives its rules ± 3 % for the site; insulation, droop and open pieces come on top.
    for (const { wholeM, ruleM } of Object.values(lengths.pairs))
      expect(Math.abs(wholeM / ruleM - 1)).toBeLessThan(0.05);
    const plan = makePlan(facts.answers, { field: { bands: {}, lengths } });
    expect(plan.cuts.filter(({ legM }) => legM !== null).map(({ legM }) => legM)).toEqual(
      linkedLegs(dimensionsOf(facts, { lengths })).map(({ legM }) => legM),
    );
    expect(plan.fieldStudy?.lengths?.text.join(' ')).toContain('What the open pieces do');
  });

  test('an open piece of half a wave takes part: the wire in use shows another impedance and wants to be longer', async () => {
    const facts = factsFor({ ...level, ...given, bands: ['40m', '15m'] });
    const lengths = await solved(facts);
    expect((lengths.pairs['15m']?.wholeM ?? 0) / (lengths.pairs['15m']?.ruleM ?? 1)).toBeGreaterThan(1.02);
    // The same wire without the pieces: an own solution, compared with an own solution.
    const [with40] = await ohmsOf(facts, lengths);
    const bare = factsFor({ ...facts.answers, bands: ['15m'] });
    const [alone] = await ohmsOf(bare, { ...lengths, radiatorM: lengths.pairs['15m']?.wholeM ?? 0, pairs: {} });
    expect(Math.abs((alone?.im ?? 0) - (with40?.im ?? 0))).toBeGreaterThan(15);
  });
});

test('one link in each leg changes from a band to the next, and the wire is one antenna for every other', () => {
  const facts = factsFor({ ...level, bands: ['40m', '20m', '15m'] });
  const siteOn = sitesOn(facts, dimensionsOf(facts), []);
  const pieces = facts.bands.map((at) => siteOn?.(at).wires.wires.filter(({ id }) => id.includes('-open')).length);
  expect(pieces).toEqual([0, 2, 4]);
  const dipole = factsFor({ ...level, radiator: 'straight-wire' });
  const [first, second] = dipole.bands.map((at) => sitesOn(dipole, dimensionsOf(dipole), [])?.(at).wires.wires);
  expect(first).toEqual(second);
});
