/** Screens that come with the first load: the list of plans and the questions. */
import { AskScreen } from './screens/ask/ask-screen';
import { PlansScreen } from './screens/plans/plans-screen';
import type { Screen, ScreenKey } from './screens-later';

const atOnce: Partial<Record<ScreenKey, Screen>> = { plans: PlansScreen, new: AskScreen, ask: AskScreen };
export const screenAtOnce = (name: ScreenKey): Screen | undefined => atOnce[name];
