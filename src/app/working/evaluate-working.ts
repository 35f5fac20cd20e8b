/**
 * Evaluates the text of a working with its inputs as quantities with units, so that the formula on screen is the one computed. In a chunk
 * of its own: only who opens a working waits for it.
 */
import {
  absDependencies,
  acosDependencies,
  acoshDependencies,
  addDependencies,
  asinDependencies,
  atanDependencies,
  ceilDependencies,
  cosDependencies,
  create,
  divideDependencies,
  evaluateDependencies,
  expDependencies,
  type FactoryFunctionMap,
  floorDependencies,
  log10Dependencies,
  logDependencies,
  maxDependencies,
  minDependencies,
  multiplyDependencies,
  piDependencies,
  powDependencies,
  roundDependencies,
  sinDependencies,
  sqrtDependencies,
  subtractDependencies,
  tanDependencies,
  type Unit,
  unaryMinusDependencies,
  unitDependencies,
} from 'mathjs';
import type { Plan } from '../../plan/plan-schema';

export type ShownWorking = Plan['cuts'][number]['working'];

const parts = {
  absDependencies,
  acosDependencies,
  acoshDependencies,
  addDependencies,
  asinDependencies,
  atanDependencies,
  ceilDependencies,
  cosDependencies,
  divideDependencies,
  evaluateDependencies,
  expDependencies,
  floorDependencies,
  log10Dependencies,
  logDependencies,
  maxDependencies,
  minDependencies,
  multiplyDependencies,
  piDependencies,
  powDependencies,
  roundDependencies,
  sinDependencies,
  sqrtDependencies,
  subtractDependencies,
  tanDependencies,
  unaryMinusDependencies,
  unitDependencies,
};

// Each part may be missing by its type alone: the package always brings them.
const math = create(parts as FactoryFunctionMap);

/** The result in the unit of the working. Throws where dimensions do not fit or the text cannot be read. */
export function evaluateWorking({ formula, inputs, result }: ShownWorking): number {
  const scope = Object.fromEntries(
    Object.entries(inputs).map(([name, { value, unit }]) => [name, unit === '' ? value : math.unit(value, unit)]),
  );
  const answer: unknown = math.evaluate(formula, scope);
  return typeof answer === 'number' ? answer : (answer as Unit).toNumber(result.unit);
}
