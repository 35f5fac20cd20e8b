/** `schema`: JSON Schema of every record that goes in or comes out. */
import * as z from 'zod/mini';
import { Answers } from '../design/answers';
import { Plan } from '../plan/plan-schema';
import { Geometry, Solution } from '../solver/geometry-schema';
import type { CommandIo } from './command';

export function run(_args: readonly string[], io: CommandIo): Promise<number> {
  const schemas = { answers: Answers, plan: Plan, geometry: Geometry, solution: Solution };
  const printed = Object.fromEntries(Object.entries(schemas).map(([name, schema]) => [name, z.toJSONSchema(schema)]));
  io.out(`${JSON.stringify(printed, null, 2)}\n`);
  return Promise.resolve(0);
}
