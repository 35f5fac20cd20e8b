/** Screens that are fetched when they are first opened (the service worker keeps them for that moment), and which screens there are. */
import type { ComponentType } from 'preact';
import { isFirstQuestion } from '../words/en/first-questions';
import type { Route, ScreenName } from './routes';

/** Each screen takes its own kind of route; the table pairs them by name, so a caller hands the present route over as it is. */
export type Screen = ComponentType<{ route: never }>;

const atOnce: readonly ScreenName[] = ['plans', 'new', 'ask'];

/** The later questions are a screen of their own to fetch, though their addresses are like those of the first four. */
export type ScreenKey = ScreenName | 'ask-surer';
export const screenKeyOf = (route: Route): ScreenKey =>
  route.screen === 'ask' && !isFirstQuestion(route.question) ? 'ask-surer' : route.screen;

const later: Partial<Record<ScreenKey, () => Promise<Screen>>> = {
  plan: async () => (await import('./screens/plan/plan-screen')).PlanScreen,
  shop: async () => (await import('./screens/shop/shop-screen')).ShopScreen,
  cut: async () => (await import('./screens/cut/cut-screen')).CutScreen,
  raise: async () => (await import('./screens/raise/raise-screen')).RaiseScreen,
  wind: async () => (await import('./screens/wind/wind-screen')).WindScreen,
  'box-test': async () => (await import('./screens/box-test/box-test-screen')).BoxTestScreen,
  stand: async () => (await import('./screens/stand/stand-screen')).StandScreen,
  trim: async () => (await import('./screens/trim/trim-screen')).TrimScreen,
  why: async () => (await import('./screens/why/why-screen')).WhyScreen,
  'ask-surer': async () => (await import('./screens/ask/surer-question-screen')).SurerQuestionScreen,
  which: async () => (await import('./screens/ask/which-screen')).WhichScreen,
  surer: async () => (await import('./screens/ask/surer-screen')).SurerScreen,
  'on-hand': async () => (await import('./screens/on-hand/on-hand-screen')).OnHandScreen,
  settings: async () => (await import('./screens/settings/settings-screen')).SettingsScreen,
  share: async () => (await import('./screens/share/share-screen')).ShareScreen,
  sheet: async () => (await import('./screens/sheet/sheet-screen')).SheetScreen,
  record: async () => (await import('./screens/record/record-screen')).RecordScreen,
  card: async () => (await import('./screens/record/card-screen')).CardScreen,
  scan: async () => (await import('./screens/scan/scan-screen')).ScanScreen,
  receive: async () => (await import('./screens/plans/receive-screen')).ReceiveScreen,
};

/** No link leads to a screen that is not there. */
export const hasScreen = (name: ScreenName): boolean => atOnce.includes(name) || name in later;

export async function fetchScreen(name: ScreenKey): Promise<Screen | undefined> {
  const fetch = later[name];
  if (fetch === undefined) return undefined;
  // The shared styles are asked for first: a screen's own ones come after them and count for more.
  const [, screen] = await Promise.all([import('./later-styles'), fetch()]);
  return screen;
}
