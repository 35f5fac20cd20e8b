/**
 * Every state of the app has an address: the part after `#`, so that links work below any path, without a server and when handed over.
 * A hash that does not start with `#/` is a place on the page and no address.
 */
export type JobScreen = 'plan' | 'cut' | 'shop' | 'raise' | 'trim';
export const jobScreens: readonly JobScreen[] = ['plan', 'shop', 'cut', 'raise', 'trim'];

/** What is done with one device of an antenna at the table. */
export type BenchScreen = 'wind' | 'box-test';

export type Route =
  | { readonly screen: 'plans' }
  | { readonly screen: 'new'; readonly unsure: boolean }
  | { readonly screen: 'on-hand' }
  | { readonly screen: 'settings' }
  | { readonly screen: 'why'; readonly rest: readonly string[] }
  | { readonly screen: 'receive'; readonly code: string }
  | { readonly screen: 'ask'; readonly planId: string; readonly question: string; readonly unsure: boolean }
  | { readonly screen: 'surer'; readonly planId: string }
  | { readonly screen: 'which'; readonly planId: string; readonly question: string }
  | { readonly screen: 'share' | 'sheet' | 'record' | 'card'; readonly planId: string }
  | { readonly screen: BenchScreen; readonly planId: string; readonly device: string }
  | { readonly screen: 'stand'; readonly planId: string; readonly band: string }
  | { readonly screen: 'scan' }
  | { readonly screen: JobScreen; readonly planId: string; readonly rest: readonly string[] };

export type ScreenName = Route['screen'];
/** The screens of one antenna. */
export type JobRoute = Extract<Route, { readonly screen: JobScreen }>;
export type BenchRoute = Extract<Route, { readonly screen: BenchScreen }>;
export type StandRoute = Extract<Route, { readonly screen: 'stand' }>;
/** Any screen that belongs to one antenna. */
export type PlanRoute = Extract<Route, { readonly planId: string }>;

export function parseRoute(hash: string): Route {
  const [first = '', second = '', third = '', ...rest] = hash.replace(/^#\/?/, '').split('/');
  switch (first) {
    case 'new':
      return { screen: first, unsure: second === 'not-sure' };
    case 'on-hand':
    case 'settings':
    case 'scan':
      return { screen: first };
    case 'why':
      return { screen: 'why', rest: [second, third, ...rest].filter((part) => part !== '') };
    case 'receive':
      return { screen: 'receive', code: second };
    case 'ask':
      return { screen: 'ask', planId: second, question: third, unsure: rest[0] === 'not-sure' };
    case 'plan':
      return planRoute(second, third, rest);
    default:
      return { screen: 'plans' };
  }
}

function planRoute(planId: string, job: string, rest: readonly string[]): Route {
  if (job === 'surer' || job === 'share' || job === 'sheet') return { screen: job, planId };
  if (job === 'record' || job === 'card') return { screen: job, planId };
  if (job === 'wind' || job === 'box-test') return { screen: job, planId, device: rest[0] ?? '' };
  if (job === 'stand') return { screen: job, planId, band: rest[0] ?? '' };
  if (job === 'which') return { screen: job, planId, question: rest[0] ?? '' };
  const screen = jobScreens.find((name) => name === job);
  return screen === undefined
    ? { screen: 'plan', planId, rest: job === '' ? [] : [job, ...rest] }
    : { screen, planId, rest };
}

export const to = {
  plans: '#/',
  newPlan: '#/new',
  unsureAtOnce: '#/new/not-sure',
  onHand: '#/on-hand',
  settings: '#/settings',
  why: '#/why',
  scan: '#/scan',
  receive: (code = ''): string => (code === '' ? '#/receive' : `#/receive/${code}`),
  ask: (planId: string, question: string): string => `#/ask/${planId}/${question}`,
  unsure: (planId: string, question: string): string => `#/ask/${planId}/${question}/not-sure`,
  surer: (planId: string): string => `#/plan/${planId}/surer`,
  which: (planId: string, question = ''): string => `#/plan/${planId}/which${question === '' ? '' : `/${question}`}`,
  plan: (planId: string): string => `#/plan/${planId}`,
  share: (planId: string): string => `#/plan/${planId}/share`,
  sheet: (planId: string): string => `#/plan/${planId}/sheet`,
  record: (planId: string): string => `#/plan/${planId}/record`,
  wind: (planId: string, device: string): string => `#/plan/${planId}/wind/${device}`,
  boxTest: (planId: string, device: string): string => `#/plan/${planId}/box-test/${device}`,
  stand: (planId: string, band = ''): string => `#/plan/${planId}/stand/${band}`,
  card: (planId: string): string => `#/plan/${planId}/card`,
  job: (planId: string, job: JobScreen, ...rest: readonly string[]): string =>
    ['#', 'plan', planId, ...(job === 'plan' ? [] : [job]), ...rest].join('/'),
} as const;
