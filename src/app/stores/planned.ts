/**
 * Plans on a screen. Making one takes a moment, in which a screen keeps showing what it showed, whole: answers and the plan made from them, never
 * one of the new and one of the old.
 */
import { useRef } from 'preact/hooks';
import type { Answers } from '../../design/answers';
import type { Plan } from '../../plan/plan-schema';
import { useStores } from './stores';

export interface Planned {
  readonly answers: Answers;
  readonly plan: Plan;
}

/** All of them or null. `of` names what they are about: those of another thing are not kept. The same object until one of the plans is another. */
export function useAllPlanned(asked: readonly Answers[], of: string): readonly Planned[] | null {
  const { planner } = useStores();
  const shown = useRef<{ readonly of: string; readonly all: readonly Planned[] } | null>(null);
  const all = asked.flatMap((answers) => {
    const plan = planner.planOf(answers);
    return plan === null ? [] : [{ answers, plan }];
  });
  const kept = shown.current?.of === of ? shown.current.all : null;
  const isSame = kept?.length === all.length && all.every(({ plan }, index) => plan === kept[index]?.plan);
  if (isSame) return kept;
  const isWhole = all.length === asked.length;
  shown.current = isWhole ? { of, all } : kept === null || planner.failed.value !== null ? null : { of, all: kept };
  return shown.current?.all ?? null;
}

/** One plan; null before there is one. */
export const usePlanned = (answers: Answers | null, of: string): Planned | null =>
  useAllPlanned(answers === null ? [] : [answers], of)?.[0] ?? null;
