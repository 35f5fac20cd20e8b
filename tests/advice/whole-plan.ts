/** Everything that is cut, bought, done and heeded for one antenna. */

import { cautionsOf } from '../../src/advice/cautions';
import { cutsOf } from '../../src/advice/cuts';
import { dimensionsOf } from '../../src/advice/dimensions';
import { factsOf, isNoSystem } from '../../src/advice/facts';
import { mechanicsOf } from '../../src/advice/mechanics';
import { partsOf } from '../../src/advice/parts';
import { stepsOf } from '../../src/advice/steps';
import type { Answers } from '../../src/design/answers';
import { chainOfMany } from './designed-chain';

export type GivenAnswers = Partial<Answers>;

/** Invented: a wire end-fed on 40 m unless told otherwise. */
export function wholePlan(given: GivenAnswers, keepOutM: number | null = 4) {
  const answers: Answers = { bands: ['40m'], radiator: 'straight-wire', fedAt: 'end', shackEnd: 'radio', ...given };
  const facts = factsOf(answers);
  if (isNoSystem(facts)) throw new Error(`no such feed point: ${answers.radiator} ${answers.fedAt}`);
  const dimensions = dimensionsOf(facts);
  const chain = chainOfMany(facts, dimensions);
  const cuts = cutsOf(facts, dimensions, chain);
  const mechanics = mechanicsOf(facts, dimensions, chain);
  const parts = partsOf(facts, dimensions, chain, cuts, mechanics);
  const cautions = cautionsOf(facts, dimensions, cuts, keepOutM);
  const steps = stepsOf(facts, dimensions, chain, cuts, cautions, mechanics);
  return { facts, dimensions, chain, cuts, parts, cautions, steps, mechanics };
}
