/** Every number that somebody acts on has a working, and its formula evaluates, units and all, to the stated result. */
import { compile, type EvalFunction, unit } from 'mathjs';
import { describe, expect, it } from 'vitest';
import type { Answers } from '../../src/design/answers';
import type { Plan } from '../../src/plan/plan-schema';
import type { StatedWorking } from '../../src/plan/word-sources';
import { everyAnswer, planFor } from './every-answer';

const all = everyAnswer();
const some = all.filter((_, n) => n % 5 === 0).map((answers) => [answers, planFor(answers)] as const);

interface Stated {
  readonly of: string;
  readonly value: number | null;
  readonly working: StatedWorking | null;
}

/** Numbers to act on beside their workings. A choke at either end of the told line needs none: there is nothing to measure. */
const actedOn = ([{ feedLineLengthM = 15 }, plan]: readonly [Answers, Plan]): readonly Stated[] => [
  ...plan.cuts.map(({ cutM, working }) => ({ of: 'cut', value: cutM, working })),
  ...plan.chain
    .filter(({ device, distanceM }) => device === 'choke' && (distanceM ?? 0) > 0 && (distanceM ?? 0) < feedLineLengthM)
    .map(({ at, distanceM, distanceMWorking }) => ({ of: `choke ${at}`, value: distanceM, working: distanceMWorking })),
  ...plan.chain.flatMap(({ device, figures }) =>
    figures === null
      ? []
      : [
          { of: `${device} rise`, value: figures.riseK, working: figures.riseKWorking },
          { of: `${device} rise at worst`, value: figures.riseWorstK, working: figures.riseWorstKWorking },
          { of: `${device} most power`, value: figures.mostW, working: figures.mostWWorking },
          { of: `${device} peak voltage`, value: figures.peakV, working: figures.peakVWorking },
        ],
  ),
  ...plan.cautions
    .filter(({ distanceM }) => distanceM !== null)
    .map(({ id, distanceM, distanceMWorking }) => ({ of: id, value: distanceM, working: distanceMWorking })),
  ...plan.exposure.flatMap((entry) => [
    { of: 'knowing', value: entry.knowingM, working: entry.knowingMWorking },
    { of: 'public', value: entry.publicM, working: entry.publicMWorking },
    { of: 'knowing on the ground', value: entry.groundKnowingM, working: entry.groundKnowingMWorking },
    { of: 'public on the ground', value: entry.groundPublicM, working: entry.groundPublicMWorking },
    { of: 'nearest person', value: entry.powerAtNearestPersonW, working: entry.powerAtNearestPersonWWorking },
  ]),
];

const compiled = new Map<string, EvalFunction>();
function evaluated({ formula, inputs, result }: StatedWorking): number {
  const code = compiled.get(formula) ?? compile(formula);
  compiled.set(formula, code);
  const scope = Object.fromEntries(
    Object.entries(inputs).map(([name, input]) => [
      name,
      input.unit === '' ? input.value : unit(input.value, input.unit),
    ]),
  );
  const value = code.evaluate(scope);
  return result.unit === '' ? value : value.toNumber(result.unit);
}

describe('workings', () => {
  const stated = some.flatMap(actedOn);

  it('stand beside every number to act on', () => {
    expect(stated.length).toBeGreaterThan(5000);
    const without = stated.filter(({ value, working }) => value !== null && working === null).map(({ of }) => of);
    expect([...new Set(without)]).toEqual([]);
  });

  it('state the very number beside them', () => {
    const other = stated.flatMap(({ of, value, working }) =>
      working !== null && value !== null && Math.abs(working.result.value - value) > 1e-9 * Math.max(1, value)
        ? [`${of}: ${value} beside ${working.result.value}`]
        : [],
    );
    expect([...new Set(other)].slice(0, 10)).toEqual([]);
  });

  it('evaluate with their units to their result', () => {
    const seen = new Map<string, StatedWorking>();
    for (const { working } of stated)
      if (working !== null) seen.set(JSON.stringify([working.formula, working.inputs]), working);
    expect(seen.size).toBeGreaterThan(300);
    const wrong = [...seen.values()].flatMap((working) => {
      const value = evaluated(working);
      const near = Math.abs(value - working.result.value) <= 1e-6 * Math.max(1, Math.abs(working.result.value));
      return near ? [] : [`${working.formula} = ${value}, stated ${working.result.value}`];
    });
    expect(wrong).toEqual([]);
  });

  it('name where each input comes from, and a source', () => {
    for (const { working } of stated) {
      if (working === null) continue;
      expect(working.source.title).not.toBe('');
      expect(Object.keys(working.inputs).length).toBeGreaterThan(0);
    }
  });
});
