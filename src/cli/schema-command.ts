/** `schema`: JSON Schema of every record that goes in or comes out. */
import * as z from 'zod/mini';
import { Answers } from '../design/answers';
import { Plan } from '../plan/plan-schema';
import { Geometry, Solution } from '../solver/geometry-schema';
import { unexpectedWords } from '../words/en/commands';
import type { CommandIo } from './command';

export async function run(args: readonly string[], io: CommandIo): Promise<number> {
  if (args.length > 0) {
    io.err(`${unexpectedWords('schema', args)}\n`);
    return 2;
  }
  const schemas = { answers: Answers, plan: Plan, geometry: Geometry, solution: Solution };
  const printed = Object.fromEntries(Object.entries(schemas).map(([name, schema]) => [name, z.toJSONSchema(schema)]));
  io.out(`${JSON.stringify(printed, null, 2)}\n`);
  return 0;
}
