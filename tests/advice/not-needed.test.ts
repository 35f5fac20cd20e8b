import { expect, test } from 'vitest';
import { notNeededCodes, notNeededOf } from '../../src/advice/not-needed';
import type { Answers } from '../../src/design/answers';
import { notNeeded, notNeededDevices } from '../../src/words/en/not-needed';
import { createFormat } from '../../src/words/format';
import { render } from '../../src/words/message';
import { partsOf } from './build-plan-parts';
import { everyCombination } from './combinations';

const base: Answers = { bands: ['40m'], shackEnd: 'radio' };
const codes = (answers: Partial<Answers>): string[] => {
  const { facts, chain } = partsOf({ ...base, ...answers });
  return notNeededOf(facts, chain).map(({ code }) => code);
};

// House positions and common practice, no one source.
test.each([
  [
    'a dipole',
    { radiator: 'straight-wire', fedAt: 'centre' },
    ['transformer-centre', 'counterpoise-balanced', 'tuner-resonant'],
  ],
  [
    'an end-fed half-wave',
    { radiator: 'sloper', fedAt: 'end' },
    ['transformer-9-on-half-wave', 'counterpoise-wire-end-fed'],
  ],
  [
    'a non-resonant end-fed',
    { radiator: 'sloper', fedAt: 'end', lengthChoice: 'non-resonant' },
    ['transformer-49-on-non-resonant'],
  ],
  [
    'a doublet on open wire',
    { radiator: 'inverted-v', fedAt: 'centre', feedLine: 'open-wire', shackEnd: 'wide-tuner-4to1' },
    ['transformer-on-open-wire', 'built-in-4to1', 'choke-at-open-wire-feed-point', 'counterpoise-balanced'],
  ],
  [
    'a doublet to a balanced tuner',
    { radiator: 'inverted-v', fedAt: 'centre', feedLine: 'open-wire', shackEnd: 'balanced-tuner' },
    ['choke-before-balanced-tuner'],
  ],
  ['an off-centre-fed wire', { radiator: 'straight-wire', fedAt: 'off-centre' }, ['counterpoise-off-centre']],
  [
    'a portable wire',
    { radiator: 'sloper', fedAt: 'end', station: 'portable' },
    ['arrester-portable', 'choke-second-portable'],
  ],
] satisfies [string, Partial<Answers>, string[]][])('%s needs none of what is named', (_title, answers, expected) => {
  expect(codes(answers)).toEqual(expect.arrayContaining([...expected, 'rf-earth']));
});

test('coax too short to be the counterpoise does not do away with the wire', () => {
  const endFed = { radiator: 'sloper', fedAt: 'end', station: 'portable' } as const;
  expect(codes({ ...endFed, feedLineLengthM: 2.2 })).toContain('counterpoise-wire-end-fed'); // λ/20 is 2.11 m
  expect(codes({ ...endFed, feedLineLengthM: 2 })).not.toContain('counterpoise-wire-end-fed');
});

test('RF in the shack takes back that no choke is needed at the radio', () => {
  const dipole = { radiator: 'straight-wire', fedAt: 'centre' } as const;
  expect(codes(dipole)).toContain('choke-at-radio');
  expect(codes({ ...dipole, rfInShack: true })).not.toContain('choke-at-radio');
});

test('no combination leaves out a device that its chain holds, and every reason is reached and worded', () => {
  const reached = new Set<string>();
  const format = createFormat('imperial');
  for (const { facts, chain } of everyCombination().map(partsOf)) {
    const left = notNeededOf(facts, chain);
    const devices = new Set(left.map(({ device }) => device));
    expect(devices.size).toBe(left.length);
    for (const device of ['choke', 'tuner', 'transformer', 'arrester'] as const)
      if (devices.has(device)) expect(chain.some((link) => link.device === device)).toBe(false);
    for (const { code, data, device } of left) {
      if (!reached.has(code)) {
        expect(render(notNeeded[code] ?? '', data, format)).toMatch(/^(?!.*(undefined|NaN)).{20,}/);
        expect(notNeededDevices[device]).toMatch(/\w/);
      }
      reached.add(code);
    }
  }
  expect([...reached].sort()).toEqual([...notNeededCodes].sort());
  expect(Object.keys(notNeeded).sort()).toEqual([...notNeededCodes].sort());
});
