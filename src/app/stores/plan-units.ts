import { useLayoutEffect } from 'preact/hooks';
import type { DraftAnswers } from '../../design/answers';
import { useStores } from './stores';

/** As long as a plan is in sight, lengths stand in the order its answers ask for, unless this phone has an order of its own. */
export function usePlanUnits({ units }: DraftAnswers): void {
  const { settings } = useStores();
  useLayoutEffect(() => settings.standIn(units), [settings, units]);
}
