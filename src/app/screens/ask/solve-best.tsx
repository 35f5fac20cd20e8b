/** The fields of the best candidates, solved one after the other while the list is looked at; can be stopped, and what is known stays. */
import { useEffect, useState } from 'preact/hooks';
import type { Answers } from '../../../design/answers';
import type { Candidate } from '../../../plan/candidates';
import type { Plan } from '../../../plan/plan-schema';
import { which } from '../../../words/en/which';
import { useSay } from '../../say';
import { studyKey } from '../../stores/field-store';
import { useStores } from '../../stores/stores';

const SOLVED = 3;

interface SolveProps {
  readonly candidates: readonly Candidate[];
  readonly onAgain: () => void;
}

export function SolveBest({ candidates, onAgain }: SolveProps) {
  const say = useSay();
  const { field } = useStores();
  const [stopped, stop] = useState(false);
  const best = candidates.filter(({ score }) => score.stops === 0).slice(0, SOLVED);
  const next = best.find(({ answers }) => ['idle', 'working'].includes(field.stateOf(answers).kind))?.answers;
  const key = next === undefined || stopped ? null : studyKey(next);
  // The key stands for the answers, which are made anew at every ranking.
  useEffect(() => (next === undefined || stopped ? undefined : field.follow(next)), [field, key]);
  if (best.length === 0) return null;
  return (
    <section role="status">
      {next === undefined ? <p>{say(which.allSolved)}</p> : !stopped && <p>{say(which.solving)}</p>}
      <div class="ways">
        {next === undefined ? (
          <button type="button" class="btn tall" onClick={onAgain}>
            {say(which.again)}
          </button>
        ) : (
          <button type="button" class="btn tall" onClick={() => stop(!stopped)}>
            {say(stopped ? which.goOnSolving : which.stopSolving)}
          </button>
        )}
      </div>
    </section>
  );
}

/** What the field says of one candidate, once it does. */
export function SolvedFigures({ answers }: { readonly answers: Answers }) {
  const say = useSay();
  const { field, planner } = useStores();
  const { kind } = field.stateOf(answers);
  if (kind === 'working') return <p>{say(which.solvingOne)}</p>;
  if (kind === 'failed') return <p>{say(which.notSolved)}</p>;
  if (kind !== 'solved') return null;
  const lines = sentences(planner.planOf(answers), say);
  return lines.length === 0 ? null : (
    <section class="solved">
      <h3>{say(which.solvedHead)}</h3>
      {lines.map((line) => (
        <p key={line}>{line}</p>
      ))}
    </section>
  );
}

function sentences(plan: Plan | null, say: ReturnType<typeof useSay>): string[] {
  const bands = plan?.bands ?? [];
  const swr = bands.flatMap(({ swrAtRadio }) => (swrAtRadio === null ? [] : [swrAtRadio]));
  const entry = bands.flatMap(({ entryCurrentMa }) => (entryCurrentMa === null ? [] : [entryCurrentMa]));
  const short = (value: number): string => say.format.number(value, 2);
  const mostMa = Math.max(...entry);
  return [
    ...(swr.length === 0 ? [] : [say(which.swr, { least: short(Math.min(...swr)), most: short(Math.max(...swr)) })]),
    ...(entry.length === 0 ? [] : [mostMa < 1 ? say(which.hardlyEntry) : say(which.entry, { ma: short(mostMa) })]),
  ];
}
