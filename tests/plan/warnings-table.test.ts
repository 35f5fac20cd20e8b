/** Every warning of the data contract, through the whole plan: answers that earn it, with the severity the contract gives it. */
import { describe, expect, it } from 'vitest';
import type { Answers } from '../../src/design/answers';
import { makePlan } from '../../src/plan/make-plan';
import { dipole, doublet, endFed, nonResonant, offCentre, vertical } from '../advice/invented-antennas';

const coil = { part: 'coil', turns: 6, diameterM: 0.2, line: 'rg-58' } as const;

const table: Readonly<Record<string, readonly ['stop' | 'warn' | 'note', Answers]>> = {
  'outside-band': ['stop', { ...dipole, focusMHz: { '40m': 7.25 } }],
  'power-limit-60m': ['warn', { ...dipole, bands: ['60m'], powerW: 100 }],
  'unit-doubt': ['stop', { ...dipole, focusMHz: { '40m': 7100 } }],
  'does-not-fit': ['stop', { ...dipole, spanM: 14 }],
  'band-not-served': ['warn', { ...dipole, bands: ['40m', '20m'] }],
  'wrong-transformer': ['warn', { ...endFed, onHand: [{ part: 'transformer', ratio: 9, kind: 'voltage' }] }],
  'two-in-one-box': ['warn', { ...offCentre, powerW: 400, mode: 'voice', onHand: [{ part: 'two-in-one', ratio: 4 }] }],
  'current-4to1-off-centre': ['warn', { ...offCentre, onHand: [{ part: 'transformer', ratio: 4, kind: 'current' }] }],
  'no-4to1-on-open-wire': ['warn', { ...doublet, shackEnd: 'wide-tuner-4to1' }],
  'open-wire-needs-choke': ['stop', { ...doublet, shackEnd: 'radio' }],
  'wire-near-half-wave': ['warn', { ...nonResonant, lengthChoice: 'fixed', wireLengthM: 38.5 }],
  'tuner-range': ['warn', { ...nonResonant, shackEnd: 'radio-tuner' }],
  'leg-plus-line-half-wave': [
    'warn',
    { ...doublet, bands: ['40m'], lengthChoice: 'fixed', wireLengthM: 27, feedLineLengthM: 6.3 },
  ],
  'off-centre-null': ['warn', { ...offCentre, bands: ['40m', '15m'] }],
  'harmonics-high': ['note', { ...endFed, bands: ['40m', '10m'] }],
  'choke-at-voltage-maximum': ['warn', { ...offCentre, bands: ['80m'], powerW: 400 }],
  'choke-too-small': [
    'warn',
    { ...offCentre, onHand: [{ part: 'choke', core: 'ft140-43', count: 1, turns: 4, line: 'rg-174' }] },
  ],
  'reactive-choke': ['warn', { ...endFed, bands: ['20m'], onHand: [coil] }],
  'core-heat': ['warn', { ...offCentre, bands: ['80m'], powerW: 1500, mode: 'data' }],
  'choke-without-return': ['stop', { ...endFed, returnPath: 'none' }],
  'return-path-needed': ['stop', { ...vertical, returnPath: 'none' }],
  'line-under-wire': ['warn', { ...dipole, feedLineRoute: 'along' }],
  'line-shorter-than-counterpoise': ['warn', { ...endFed, bands: ['80m'], feedLineLengthM: 2, station: 'portable' }],
  'line-overrated': ['warn', { ...dipole, feedLine: 'rg-174', powerW: 1500, mode: 'data' }],
  'line-loss': ['warn', { ...dipole, bands: ['10m'], feedLine: 'rg-174', feedLineLengthM: 30 }],
  'few-radials': ['warn', { ...vertical, returnPath: 'ground-radials', radialCount: 2 }],
  'radial-symmetry': ['note', { ...vertical, returnPath: 'elevated-radials', radialCount: 3 }],
  'low-height': ['warn', { ...dipole, bands: ['80m'], heightM: 4 }],
  'wires-interact': ['note', { ...dipole, radiator: 'parallel-wires', bands: ['40m', '20m'] }],
  'swr-is-not-proof': ['note', { ...dipole, bands: ['40m', '15m'], feedLine: 'rg-174', feedLineLengthM: 40 }],
  'wet-line': ['note', doublet],
  indoors: ['warn', { ...dipole, indoors: true }],
  'static-drain': ['note', dipole],
  'thin-wire': ['note', { ...dipole, wire: 'ptfe-awg22' }],
};

describe('warnings of the contract', () => {
  it('are thirty-four', () => expect(Object.keys(table).length).toBe(34));

  it.each(Object.entries(table))('%s', (id, [severity, answers]) => {
    const found = makePlan(answers).warnings.find((warning) => warning.id === id);
    expect(found?.severity).toBe(severity);
    expect(found?.why.length).toBeGreaterThan(20);
    expect(found?.waysOut.length).toBeGreaterThan(0);
  });

  it('leave national permission at a note', () => {
    const { warnings } = makePlan({ ...dipole, bands: ['160m'], focusMHz: { '160m': 1.9 } });
    expect(warnings.find(({ id }) => id === 'outside-band')?.severity).toBe('note');
  });

  it('stop a portable station too near a power line, and send a home station to the operator', () => {
    const near = { ...dipole, nearestPowerLineM: 20 };
    const idOf = (answers: Answers) => makePlan(answers).warnings.find(({ id }) => id === 'power-line-too-near');
    expect(idOf({ ...near, station: 'portable' })?.severity).toBe('stop');
    expect(idOf(near)?.text).toContain('Do not raise it yet');
  });
});

/** Plain antennas, well built: what they may be told, and nothing beyond it. */
describe('false alarms', () => {
  const good = { wire: 'pvc-awg14', powerW: 100, mode: 'voice', spanM: 60 } as const;
  const told = (answers: Answers): readonly string[] => makePlan({ ...good, ...answers }).warnings.map(({ id }) => id);

  it.each<readonly [string, Answers, readonly string[]]>([
    ['a dipole at 12 m', { ...dipole, heightM: 12 }, ['static-drain']],
    ['an inverted V on 20 m', { ...dipole, bands: ['20m'], radiator: 'inverted-v' }, ['static-drain']],
    ['a vertical on the ground', vertical, ['static-drain']],
    ['an end-fed on one band', endFed, []],
    ['a loop on 20 m', { ...dipole, bands: ['20m'], radiator: 'loop', fedAt: 'corner' }, []],
    ['a folded dipole on coax', { ...dipole, bands: ['20m'], radiator: 'folded-wire' }, []],
    [
      'a folded dipole on 300 Ω line',
      { ...dipole, bands: ['20m'], radiator: 'folded-wire', feedLine: 'twin-lead' },
      ['wet-line'],
    ],
  ])('%s', (_name, answers, expected) => {
    expect(told(answers)).toEqual(expected);
  });
});
