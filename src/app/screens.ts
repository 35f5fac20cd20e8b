/** Screens that come with the first load: the list of plans and the questions. */
import type { ScreenName } from './routes';
import { AskScreen } from './screens/ask/ask-screen';
import { PlansScreen } from './screens/plans/plans-screen';
import type { Screen } from './screens-later';

const atOnce: Partial<Record<ScreenName, Screen>> = { plans: PlansScreen, new: AskScreen, ask: AskScreen };
export const screenAtOnce = (name: ScreenName): Screen | undefined => atOnce[name];
