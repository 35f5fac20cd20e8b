import { describe, expect, test } from 'vitest';
import { readDip } from '../../src/app/screens/trim/read-dip';
import { dipNow, verdictOn, wireField, wireInUseM } from '../../src/app/screens/trim/trim-state';
import { trimTargets } from '../../src/app/screens/trim/trim-targets';
import type { Answers } from '../../src/design/answers';
import { applyEdit } from '../../src/design/plan-edit';
import { newSavedPlan } from '../../src/design/saved-plan';
import { makePlan } from '../../src/plan/make-plan';

const endFed: Answers = { bands: ['40m', '20m', '10m'], radiator: 'inverted-v', fedAt: 'end', shackEnd: 'radio' };
const targetsOf = (answers: Answers) => trimTargets(answers, makePlan(answers));
const targets = targetsOf(endFed);
const [forty, twenty] = targets;
const saved = newSavedPlan('00000000-0000-4000-8000-000000000000', 1000, endFed);

describe('what can be trimmed', () => {
  test('an end-fed half-wave: every multiple, one end, one wire', () => {
    expect(targets.map(({ band, ends, wire }) => [band, ends, wire])).toEqual([
      ['40m', 1, 'wire'],
      ['20m', 1, 'wire'],
      ['10m', 1, 'wire'],
    ]);
  });

  test('there is one aim to a band: the dip that the cut list names, which for one band alone lies where one works', () => {
    const [lowest] = makePlan(endFed).cuts.filter(({ piece }) => piece === 'wire');
    expect(lowest?.stopRule).toContain(forty.aimMHz.toPrecision(4));
    expect(forty.aimMHz).toBeLessThan(forty.workMHz);
    const [only] = targetsOf({ ...endFed, fedAt: 'centre', bands: ['40m'] });
    expect(only.aimMHz / only.workMHz).toBeCloseTo(1, 6);
  });

  test('a dip that the cut list calls done is done on Trim, on every band of the wire', () => {
    for (const target of targets)
      expect(verdictOn(target, { id: 'a', at: 1, band: target.band, dipMHz: target.aimMHz * 1.009 })).toBe('stop');
    expect(verdictOn(forty, { id: 'a', at: 1, band: '40m', dipMHz: forty.workMHz * 1.02 })).toBe('go-on');
  });

  test('a dipole: its lowest band, both ends', () => {
    const [only, ...rest] = targetsOf({ ...endFed, fedAt: 'centre' });
    expect([only.band, only.ends, rest.length]).toEqual(['40m', 2, 0]);
  });

  test('parallel dipoles: a wire for each band', () => {
    const pairs = targetsOf({ ...endFed, bands: ['40m', '20m'], radiator: 'parallel-wires', fedAt: 'centre' });
    expect(new Set(pairs.map(({ wire }) => wire)).size).toBe(pairs.length);
    expect(pairs.length).toBe(2);
  });

  test('an off-centre wire keeps its proportion', () => {
    const [first] = targetsOf({ ...endFed, bands: ['80m', '40m'], fedAt: 'off-centre' });
    expect(first.shortShare).toBeCloseTo(1 / 3, 6);
  });

  test('a wire of no resonance: nothing', () => {
    const random: Answers = { ...endFed, lengthChoice: 'non-resonant', shackEnd: 'wide-tuner' };
    expect(targetsOf(random)).toEqual([]);
  });
});

describe('a typed dip', () => {
  test.each(['6.88', '6,88', ' 6.88 MHz', '6880 kHz'])('%s is 6.88 MHz', (typed) => {
    const read = readDip(typed, forty, targets);
    expect(read.kind === 'dip' ? read.megahertz : read.kind).toBeCloseTo(6.88, 9);
  });

  test('6880 is asked about, as kilohertz', () => {
    expect(readDip('6880', forty, targets)).toEqual({ kind: 'unit', megahertz: [6.88] });
  });

  test('a dip of another band is asked about, with that band named', () => {
    const read = readDip('14.2', forty, targets);
    expect(read.kind === 'far' && read.onBand?.band).toBe('20m');
  });

  test.each([
    ['', 'empty'],
    ['seven', 'not-a-number'],
    ['-7', 'not-a-number'],
  ])('"%s" is %s', (typed, kind) => {
    expect(readDip(typed, forty, targets).kind).toBe(kind);
  });
});

describe('where the dips are', () => {
  const measured = applyEdit(saved, {
    kind: 'measured',
    at: 2000,
    measurement: { id: 'a', at: 2000, band: '40m', dipMHz: 6.88, wireM: 20 },
  });

  test('the wire in use is the planned one, then the measured one, then what was told', () => {
    expect(wireInUseM(saved, forty, targets)).toBe(forty.plannedM);
    expect(wireInUseM(measured, twenty, targets)).toBe(20);
    const told = applyEdit(measured, { kind: 'typed', at: 3000, field: wireField(forty), text: '19.7' });
    expect(wireInUseM(told, forty, targets)).toBe(19.7);
  });

  test('a band that was not measured follows from the one that was', () => {
    expect(dipNow(measured, forty, targets)).toEqual({ megahertz: 6.88, measured: true });
    const other = dipNow(measured, twenty, targets);
    expect(other?.measured).toBe(false);
    // Multiples fall at (n - 0.05) / (m - 0.05): the rule that the wire was cut by, tests/physics/lengths.
    expect(other?.megahertz).toBeCloseTo((6.88 * 1.95) / 0.95, 6);
  });

  test('after a fold the dip is worked out until it is measured again', () => {
    const folded = applyEdit(measured, { kind: 'typed', at: 3000, field: wireField(forty), text: '19' });
    expect(dipNow(folded, forty, targets)).toEqual({ megahertz: (6.88 * 20) / 19, measured: false });
  });

  test('nothing is known before the first measurement', () => {
    expect(dipNow(saved, forty, targets)).toBeNull();
  });
});
