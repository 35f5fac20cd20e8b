/** `plan`: an answers record in, the plan as JSON out. The same code as the app. `--fast` leaves the field solver out. */
import type { Answers } from '../design/answers';
import { readAnswers } from '../design/read-answers';
import { orderCandidates } from '../plan/candidate-order';
import { searchCandidates } from '../plan/candidate-search';
import { studyField } from '../plan/field-study';
import { makePlan } from '../plan/make-plan';
import type { Plan } from '../plan/plan-schema';
import { missingFile, unexpectedWords } from '../words/en/commands';
import { problemLine } from '../words/en/problems';
import { createFormat } from '../words/format';
import type { CommandIo } from './command';
import { directInstrument } from './field-instrument';
import { readJson } from './read-json';
import { startKernels } from './start-kernels';

const record = 'answers';

export async function run(args: readonly string[], io: CommandIo): Promise<number> {
  const unknown = args.filter((arg) => arg.startsWith('-') && arg !== '-' && arg !== '--fast');
  const [path, ...more] = args.filter((arg) => arg === '-' || !arg.startsWith('-'));
  const unexpected = [...unknown, ...more];
  if (path === undefined || unexpected.length > 0) {
    io.err(`${unexpected.length > 0 ? unexpectedWords('plan', unexpected) : missingFile('plan')}\n`);
    return 2;
  }
  const json = await readJson(path, io);
  const read = 'raw' in json ? readAnswers(json.raw) : json;
  if ('problems' in read) {
    for (const problem of read.problems) io.err(`${problemLine(problem, record)}\n`);
    return 2;
  }
  const plan = args.includes('--fast') ? makePlan(read.answers) : await solvedPlan(read.answers);
  io.out(`${JSON.stringify(plan, null, 2)}\n`);
  return 0;
}

/** With the fields of the chosen antenna, or of every one to choose from. */
async function solvedPlan(answers: Answers): Promise<Plan> {
  const instrument = directInstrument(await startKernels());
  if (answers.radiator === undefined) {
    const found = await searchCandidates(answers, instrument);
    return makePlan(answers, { candidates: orderCandidates(found, createFormat(answers.units ?? 'metric')) });
  }
  const field = await studyField(answers, instrument);
  return makePlan(answers, field === null ? {} : { field });
}
