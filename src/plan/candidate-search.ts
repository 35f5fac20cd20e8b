/**
 * Which antenna? Every candidate planned by the rules and put in order, then solved, the best first, a few at a time. Each result is handed out
 * when it is there; the order stays until whoever asked puts them in order again.
 */
import { createDesigner, type Designer } from '../advice/chain/design-parts';
import type { Answers } from '../design/answers';
import { createFormat, type Format } from '../words/format';
import type { Candidate } from './candidate-points';
import { candidatesByRule, judgedCandidate } from './candidates';
import { type ShortStudy, studyCandidate } from './field/candidate-study';
import type { FieldInstrument } from './field/instrument';
import { orNull } from './field/watched';
import { makePlan } from './make-plan';

export interface SearchOptions {
  readonly designer?: Designer;
  /** Studies under way together: one more than there are solvers, and none waits. */
  readonly atOnce?: number;
  /** What an earlier search of the same answers solved; it is not solved again. */
  readonly known?: readonly Candidate[];
  /** The candidates so far, always in the order of the rules; `done` of all are solved, or found to be beyond the solver. */
  readonly onPartial?: (candidates: readonly Candidate[], done: number) => void;
  /** A search called off throws InputError 'cancelled'. */
  readonly isCancelled?: () => boolean;
}

/** In the order of the rules, solved as far as they can be; candidate-order puts them in their own. */
export async function searchCandidates(
  answers: Answers,
  instrument: FieldInstrument,
  options: SearchOptions = {},
): Promise<readonly Candidate[]> {
  const { onPartial, isCancelled, known = [], atOnce = 1 } = options;
  const designer = options.designer ?? createDesigner();
  const format = createFormat(answers.units ?? 'metric');
  const found = candidatesByRule(answers, (chosen) => makePlan(chosen, { designer }), format);
  const solvedBefore = new Map(known.filter((each) => each.solved).map((each) => [JSON.stringify(each.answers), each]));
  found.forEach((candidate, index) => {
    const before = solvedBefore.get(JSON.stringify(candidate.answers));
    if (before !== undefined) found[index] = { ...before, rank: candidate.rank, place: candidate.place };
  });
  const queue = found
    .map((candidate, index) => ({ candidate, index }))
    .filter(({ candidate }) => !candidate.solved && isBuildable(candidate));
  let done = found.length - queue.length;
  onPartial?.([...found], done);
  const solveNext = async (): Promise<void> => {
    for (let next = queue.shift(); next !== undefined; next = queue.shift()) {
      const { candidate, index } = next;
      const study = await orNull(studyCandidate(candidate.answers, instrument, isCancelled ? { isCancelled } : {}));
      await instrument.rest?.();
      if (study !== null) found[index] = solved(candidate, study, designer, format);
      done++;
      onPartial?.([...found], done);
    }
  };
  await Promise.all(Array.from({ length: atOnce }, solveNext));
  return found;
}

const isBuildable = ({ score }: Candidate): boolean => score.stops === 0;

function solved(before: Candidate, study: ShortStudy, designer: Designer, format: Format): Candidate {
  const plan = makePlan(before.answers, { designer, field: study.field });
  const after = judgedCandidate(before.answers, plan, study, format);
  return after === null ? before : { ...after, rank: before.rank, place: before.place };
}
