/** Facts, dimensions and chain of one antenna, as the plan's author puts them together. */
import { type Dimensions, dimensionsOf } from '../../src/advice/dimensions';
import { type Facts, factsOf, isNoSystem } from '../../src/advice/facts';
import type { Link } from '../../src/advice/finding';
import type { Answers } from '../../src/design/answers';
import { chainOfMany } from './designed-chain';

export interface PlanParts {
  readonly facts: Facts;
  readonly dimensions: Dimensions;
  readonly chain: readonly Link[];
}

export function partsOf(answers: Answers): PlanParts {
  const facts = factsOf(answers);
  if (isNoSystem(facts)) throw new Error(`no such feed point: ${answers.radiator} ${answers.fedAt}`);
  const dimensions = dimensionsOf(facts);
  return { facts, dimensions, chain: chainOfMany(facts, dimensions) };
}

export const chokesOf = (chain: readonly Link[]): Link[] => chain.filter(({ device }) => device === 'choke');
export const deviceOf = (chain: readonly Link[], device: Link['device']): Link | undefined =>
  chain.find((link) => link.device === device);
export const devicesOf = (chain: readonly Link[]): string[] =>
  chain.filter(({ device }) => device !== 'line').map(({ device, at }) => `${device} ${at}`);
export const codesOf = (link: Link | undefined): string[] => (link?.why ?? []).map(({ code }) => code);
