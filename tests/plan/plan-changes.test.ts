import { describe, expect, test } from 'vitest';
import type { Answers } from '../../src/design/answers';
import { makePlan } from '../../src/plan/make-plan';
import { planChanges } from '../../src/plan/plan-changes';
import { powerLineDistanceM, radiatorM } from '../../src/plan/plan-figures';

const answers: Answers = { bands: ['40m', '20m'], radiator: 'straight-wire', fedAt: 'end', shackEnd: 'radio' };
const plan = makePlan(answers);

describe('what changed between two plans', () => {
  test('is nothing between a plan and itself, made again', () => {
    expect(planChanges(plan, makePlan(answers))).toEqual([]);
  });

  test('names another wire with both lengths, the system staying as it was', () => {
    const changes = planChanges(plan, makePlan({ ...answers, wire: 'copper-2.0mm-bare' }));
    const wire = changes.find(({ id }) => id === 'cut:wire');
    expect(wire).toMatchObject({ name: 'Wire', before: { kind: 'length' }, after: { kind: 'length' } });
    // Bare wire hangs longer than insulated wire for the same wave (handbook: insulation shortens by 2 to 5 %).
    const [before, after] = [wire?.before, wire?.after];
    if (before?.kind !== 'length' || after?.kind !== 'length') throw new Error('no lengths');
    expect(after.metres).toBeGreaterThan(before.metres);
    expect(changes.some(({ id }) => id === 'system')).toBe(false);
  });

  test('says what is gone and what is new with another feed point', () => {
    const changes = planChanges(plan, makePlan({ ...answers, fedAt: 'centre' }));
    expect(changes.find(({ id }) => id === 'system')).toMatchObject({
      before: { kind: 'text' },
      after: { kind: 'text' },
    });
    expect(changes.some(({ id, after }) => id.startsWith('device:transformer') && after === null)).toBe(true);
    expect(changes.some(({ id, before }) => id === 'cut:leg' && before === null)).toBe(true);
  });

  test('tells each of several devices of a name by its place', () => {
    const portable: Answers = { ...answers, bands: ['40m', '20m', '10m'], station: 'portable', heightM: 1.2 };
    const names = planChanges(makePlan(portable), makePlan({ ...portable, mode: 'voice' })).map(({ name }) => name);
    const rings = names.filter((name) => /^1:1 choke .*, rings$/.test(name));
    expect(rings.length).toBeGreaterThan(1);
    expect(new Set(rings).size).toBe(rings.length);
  });

  test('mirrors itself when the two are swapped', () => {
    const other = makePlan({ ...answers, heightM: 12 });
    const there = planChanges(plan, other).map(({ id, before, after }) => JSON.stringify([id, before, after]));
    const back = planChanges(other, plan).map(({ id, before, after }) => JSON.stringify([id, after, before]));
    expect(there.length).toBeGreaterThan(0);
    expect([...back].sort()).toEqual([...there].sort());
  });
});

describe('figures that screens lead with', () => {
  test('the wire of a dipole is both its legs', () => {
    const dipole = makePlan({ ...answers, fedAt: 'centre' });
    const leg = dipole.cuts.find(({ piece }) => piece === 'leg');
    expect(radiatorM(dipole)).toBeCloseTo(2 * (leg?.finishedM ?? Number.NaN), 9);
  });

  test('power lines keep their distance in every outdoor plan, and it is at least 6.1 m (20 ft)', () => {
    // 20 ft: the least distance the United States' rule for work near lines up to 350 kV names (29 CFR 1926.1408).
    expect(powerLineDistanceM(plan)).toBeGreaterThanOrEqual(6.1);
  });
});
