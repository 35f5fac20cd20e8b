/**
 * The ranking of antennas, worked out one candidate at a time so that other plans never wait for more than one of them. The order stays as it was
 * found, whatever the fields say later, until the operator asks for it anew.
 */
import { useEffect, useState } from 'preact/hooks';
import type { Answers, DraftAnswers } from '../../../design/answers';
import { type Candidate, candidateAnswers, rankCandidates } from '../../../plan/candidates';
import type { Plan } from '../../../plan/plan-schema';
import { useSay } from '../../say';
import { studyKey } from '../../stores/field-store';
import { useStores } from '../../stores/stores';

interface Ranking {
  /** Null while they are being worked out. */
  readonly candidates: readonly Candidate[] | null;
  readonly done: number;
  readonly of: number;
  /** Ranks again, with what the fields have said since. */
  readonly again: () => void;
}

const nothing: Omit<Ranking, 'again'> = { candidates: null, done: 0, of: 0 };

/** The answers apart from the antenna, which is what is looked for. */
function siteOf(draft: DraftAnswers): Answers {
  const { radiator: _radiator, fedAt: _fedAt, ...site } = draft;
  return { ...site, bands: draft.bands ?? ['40m', '20m'], shackEnd: draft.shackEnd ?? 'radio' };
}

export function useRanking(draft: DraftAnswers): Ranking {
  const { planner } = useStores();
  const { format } = useSay();
  const [ranking, setRanking] = useState(nothing);
  const [round, setRound] = useState(0);
  const site = siteOf(draft);
  const key = `${studyKey(site)} ${site.units} ${site.powerW}`;

  useEffect(() => {
    let isWanted = true;
    const plans = new Map<Answers, Plan>();
    async function workOut(): Promise<void> {
      const all = candidateAnswers(site);
      for (const each of all) {
        const plan = await planner.planFor(each);
        if (!isWanted) return;
        if (plan === null) return; // the planner says why
        plans.set(each, plan);
        setRanking((was) => ({ ...was, done: plans.size, of: all.length }));
      }
      setRanking({ candidates: rankCandidates(site, plans, format), done: plans.size, of: plans.size });
    }
    void workOut();
    return () => {
      isWanted = false;
    };
    // The key stands for the answers, which are made anew at every drawing.
  }, [planner, key, format, round]);
  return { ...ranking, again: () => setRound(round + 1) };
}
