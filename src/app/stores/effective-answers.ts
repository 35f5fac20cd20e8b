/** What a plan is made from: the answers, with what the operator has set once for all plans where the plan itself says nothing. */
import { completeAnswers, feedPointOf, safeDefault } from '../../advice/route';
import type { Answers, DraftAnswers } from '../../design/answers';
import type { OwnedPart } from '../../design/owned-part';
import type { Settings } from '../../design/settings';
import { useStores } from './stores';

/** Gives the answers of a plan with what is set now; read in a drawing it is drawn again when that changes. */
export function useEffective(): (answers: DraftAnswers) => DraftAnswers {
  const { settings, parts } = useStores();
  return (answers) => effectiveDraft(answers, settings.settings.value, parts.parts.value);
}

function effectiveDraft(draft: DraftAnswers, settings: Settings, owned: readonly OwnedPart[]): DraftAnswers {
  const { region, country, ruleSet } = settings;
  return {
    ...(region === undefined ? {} : { region }),
    ...(country === undefined ? {} : { country }),
    ...(ruleSet === undefined ? {} : { ruleSet }),
    ...(owned.length === 0 ? {} : { onHand: owned.map(({ part }) => part) }),
    ...draft,
    units: settings.units ?? draft.units ?? 'metric',
  };
}

/** Whole answers for a provisional plan: what is still open takes its stand-in. Null before the radiator is known. */
export function provisionalAnswers(draft: DraftAnswers): Answers | null {
  if (draft.bands === undefined || draft.radiator === undefined) return null;
  const fedAt = feedPointOf(draft) ?? safeDefault('fedAt', draft).fedAt;
  return completeAnswers({
    ...draft,
    ...(fedAt === undefined ? {} : { fedAt }),
    shackEnd: draft.shackEnd ?? 'radio',
  });
}
