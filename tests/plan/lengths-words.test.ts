/** What the plan says of lengths that were solved: each beside its rule. Antennas and results are invented. */
import { describe, expect, test } from 'vitest';
import type { SolvedLengths } from '../../src/advice/field-facts';
import type { Answers } from '../../src/design/answers';
import { solvedIn } from '../../src/plan/solved-in';
import { endFed, offCentre, planned, vertical } from './length-antennas';

describe('what is said of lengths', () => {
  const base: SolvedLengths = { radiatorM: 20, ruleM: 20, pairs: {}, by: 'rule', swr: [] };
  const third = { fraction: 1 / 3, ruleFraction: 1 / 3, told: false, swr: [], better: null } as const;
  const swr = [
    { band: '40m', rule: 3, chosen: 2, alone: 1.9 },
    { band: '20m', rule: 2, chosen: 1.8, alone: 1.2 },
  ] as const;
  const radial = (chosenM: number) =>
    ({ piece: 'radial', by: 'resonance', wires: [{ ruleM: 10, chosenM }], heatW: null }) as const;
  const counterpoise = (chosenM: number) =>
    ({
      piece: 'counterpoise',
      by: 'choke-heat',
      wires: [{ ruleM: 4, chosenM }],
      heatW: { rule: 9, chosen: 6 },
    }) as const;
  const twoPairs = (wholeM: number): SolvedLengths => ({
    ...base,
    by: 'resonance',
    pairs: { '20m': { wholeM, ruleM: 10 } },
  });
  const parallel: Answers = { ...offCentre, radiator: 'parallel-wires', fedAt: 'centre', bands: ['40m', '20m'] };
  const ground: Answers = { ...vertical, returnPath: 'ground-radials', heightM: 0.2 };

  const cases: readonly [Answers, SolvedLengths, readonly string[]][] = [
    [offCentre, { ...base, feed: third }, ['A third of the wire']],
    [offCentre, { ...base, feed: { ...third, told: true } }, ['No other place tried']],
    [offCentre, { ...base, feed: { ...third, fraction: 0.4, swr } }, ['Fed at 40 %']],
    [
      offCentre,
      {
        ...base,
        feed: {
          ...third,
          told: true,
          better: { fraction: 0.4, worst: { band: '40m', swr: 2 }, toldWorst: { band: '20m', swr: 9 } },
        },
      },
      ['You feed it at 33 %'],
    ],
    [offCentre, { ...base, by: 'worst-swr', swr }, ['Solved for your site: the', '20 m pays']],
    [offCentre, { ...base, by: 'worst-swr', swr: swr.slice(0, 1), radiatorM: 20.3 }, ['Solved for your site: 20.3']],
    [
      offCentre,
      { ...base, by: 'worst-swr', swr: swr.slice(0, 1), radiatorM: 20.8 },
      ['Solved for your site: 20.8', 'The two differ by 4 %'],
    ],
    [vertical, { ...base, returns: radial(10.2) }, ['Solved at their height']],
    [vertical, { ...base, returns: radial(9.5) }, ['Solved at their height', 'Radials and rule differ by 5 %']],
    [ground, { ...base, by: 'resonance' }, ['Solved for your height', 'Radials on the ground']],
    [endFed, { ...base, returns: counterpoise(4) }, ['The usual counterpoise']],
    [endFed, { ...base, returns: counterpoise(6) }, ['With a counterpoise of 6']],
    [parallel, twoPairs(10.2), ['Solved for your height']],
    [parallel, twoPairs(10.5), ['Solved for your height', 'The pair for 20 m comes out at 10.5']],
  ];

  test.each(cases)('case %#: each beside its rule, and far from it only from 3 % on', (answers, lengths, starts) => {
    const said = planned(answers, lengths).fieldStudy?.lengths?.text ?? [];
    expect(said.map((line, i) => line.replaceAll('\u00a0', ' ').startsWith(starts[i] ?? '-'))).toEqual(
      starts.map(() => true),
    );
    for (const line of said) expect(line).toMatch(/^(?!.*(undefined|NaN|Infinity|null)).{20,}[.]$/);
  });

  test('comes back out of the plan as it went in', () => {
    const whole: SolvedLengths = {
      ...base,
      by: 'worst-swr',
      swr,
      pairs: { '20m': { wholeM: 10, ruleM: 9.9 } },
      dipsMHz: { '40m': 7.1 },
      feed: { ...third, fraction: 0.4, swr: [{ band: '40m', rule: 3, chosen: 2 }] },
      returns: counterpoise(6),
    };
    expect(solvedIn(planned(offCentre, whole)).lengths).toEqual(whole);
  });
});
