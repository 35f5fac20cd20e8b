import { expect, test } from 'vitest';
import { disputeIds, disputesOf } from '../../src/advice/disputes';
import { figureBand, roughly } from '../../src/advice/field-figures';
import { bandIds } from '../../src/catalog/band-ids';
import type { Answers } from '../../src/design/answers';
import { disputes } from '../../src/words/en/disputes';
import { createFormat } from '../../src/words/format';
import { render } from '../../src/words/message';
import { partsOf } from './build-plan-parts';
import { everyCombination } from './combinations';

const base: Answers = { bands: ['80m'], shackEnd: 'radio' };
const ids = (answers: Partial<Answers>): string[] =>
  disputesOf(partsOf({ ...base, ...answers }).facts).map(({ id }) => id);

test.each([
  ['off-centre', { radiator: 'straight-wire', fedAt: 'off-centre' }, ['D1', 'D5', 'D7']],
  ['end-fed half-wave', { radiator: 'straight-wire', fedAt: 'end' }, ['D2', 'D3', 'D5', 'D7']],
  ['non-resonant end-fed', { radiator: 'sloper', fedAt: 'end', lengthChoice: 'non-resonant' }, ['D2', 'D5', 'D7']],
  ['doublet', { radiator: 'inverted-v', fedAt: 'centre', feedLine: 'open-wire' }, ['D4', 'D5', 'D6']],
  [
    'doublet to a balanced tuner',
    { radiator: 'straight-wire', fedAt: 'centre', feedLine: 'open-wire', shackEnd: 'balanced-tuner' },
    ['D4'],
  ],
  ['dipole in the field', { radiator: 'straight-wire', fedAt: 'centre', station: 'portable' }, ['D5']],
] satisfies [string, Partial<Answers>, string[]][])('%s: the disputes that touch it', (_title, answers, expected) => {
  expect(ids(answers)).toEqual(expected);
});

test('figures grow with power as they must, and say no more than a digit and a half', () => {
  const at = (powerW: number) =>
    disputesOf(partsOf({ ...base, radiator: 'straight-wire', fedAt: 'off-centre', powerW }).facts)[0]!.data;
  // Own field solutions, 41 m wire on 80 m, worst case: 281 mA and 25 W per 100 W with 5 kΩ at 1 m.
  expect(at(100)).toMatchObject({ voltageChokeMa: 300, chokeHeatW: 25, currentEntryMa: 15, voltageEntryMa: 9 });
  expect(at(400).voltageChokeMa).toBe(550);
  expect(at(400).chokeHeatW).toBe(100);
  expect([281, 23, 9.4, 0.62, 0].map(roughly)).toEqual([300, 25, 9.5, 0.6, 0]);
});

test('every band has a solved one to lean on', () => {
  expect(new Set(bandIds.map(figureBand))).toEqual(new Set(['80m', '40m', '20m', '10m']));
});

test('every dispute is reached and worded, both positions and the house position last', () => {
  const reached = new Set<string>();
  const format = createFormat('metric');
  for (const { facts } of everyCombination().map(partsOf))
    for (const { id, data } of disputesOf(facts)) {
      if (reached.has(`${id}${facts.system}`)) continue;
      reached.add(`${id}${facts.system}`).add(id);
      const words = disputes[id]!;
      expect(Object.keys(words)).toEqual(['question', 'one', 'other', 'decides', 'house']);
      for (const sentence of Object.values(words))
        expect(render(sentence, data, format)).toMatch(/^(?!.*(undefined|NaN)).{10,}/);
    }
  expect(disputeIds.every((id) => reached.has(id))).toBe(true);
  expect(Object.keys(disputes)).toEqual([...disputeIds]);
});
