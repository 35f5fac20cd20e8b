/** The search for an antenna on these answers: started when the list is opened, called off when it is left, kept for when it is opened again. */
import { useEffect } from 'preact/hooks';
import type { Answers, DraftAnswers } from '../../../design/answers';
import { orderCandidates } from '../../../plan/candidate-order';
import { useSay } from '../../say';
import { studyKey } from '../../stores/field-store';
import { createSearchStore, type SearchState } from '../../stores/search-store';
import { fetchPlanning } from '../../stores/stores';

/** One for the page. */
const store = createSearchStore(async () => (await fetchPlanning()).startSearch);

export interface Searching {
  readonly state: SearchState;
  readonly stop: () => void;
  readonly goOn: () => void;
  readonly settle: () => void;
  /** Antennas that would stand elsewhere by what is known now. */
  readonly moves: number;
}

/** The answers apart from the antenna, which is what is looked for. */
function siteOf(draft: DraftAnswers): Answers {
  const { radiator: _radiator, fedAt: _fedAt, ...site } = draft;
  return { ...site, bands: draft.bands ?? ['40m', '20m'], shackEnd: draft.shackEnd ?? 'radio' };
}

export function useSearch(draft: DraftAnswers): Searching {
  const { format } = useSay();
  const site = siteOf(draft);
  const key = `${studyKey(site)} ${site.units} ${site.powerW}`;
  // The key stands for the answers, which are made anew at every drawing.
  useEffect(() => store.look(key, site), [key]);
  const state = store.stateOf(key);
  return {
    state,
    stop: () => store.stop(key),
    goOn: () => store.goOn(key, site),
    settle: () => store.settle(key, (found) => orderCandidates(found, format)),
    moves: store.movesIn(key, (found) => orderCandidates(found, format)),
  };
}
