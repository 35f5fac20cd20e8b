/** At most four places, always in reach of a thumb. On a plan's own screens it holds the jobs of that antenna instead. */
import { shell } from '../../words/en/screens';
import { type JobScreen, type Route, type ScreenName, to } from '../routes';
import { useSay } from '../say';
import { hasScreen } from '../screens-later';
import { Icon, type IconName } from './icon';

interface Place {
  readonly screen: ScreenName;
  readonly href: string;
  readonly icon: IconName;
  readonly words: string;
}

const places: readonly Place[] = [
  { screen: 'plans', href: to.plans, icon: 'plans', words: shell.plans },
  { screen: 'on-hand', href: to.onHand, icon: 'onHand', words: shell.onHand },
  { screen: 'why', href: to.why, icon: 'why', words: shell.why },
  { screen: 'settings', href: to.settings, icon: 'settings', words: shell.settings },
];

const jobs: readonly { screen: JobScreen & IconName; words: string }[] = [
  { screen: 'shop', words: shell.shop },
  { screen: 'cut', words: shell.cut },
  { screen: 'raise', words: shell.raise },
  { screen: 'trim', words: shell.trim },
];

function placesFor(route: Route): { readonly label: string; readonly list: readonly Place[] } {
  const onPlan = 'planId' in route && route.screen !== 'ask' && route.screen !== 'surer';
  if (!onPlan) return { label: shell.places, list: places };
  const list = jobs.map(
    ({ screen, words }): Place => ({ screen, href: to.job(route.planId, screen), icon: screen, words }),
  );
  return { label: shell.jobs, list };
}

export function Bar({ route }: { route: Route }) {
  const say = useSay();
  // One question at a time: nothing stands below the actions there.
  if (route.screen === 'ask' || route.screen === 'new' || route.screen === 'which') return null;
  const { label, list } = placesFor(route);
  return (
    <nav class="bar" aria-label={say(label)}>
      {list
        .filter(({ screen }) => hasScreen(screen))
        .map(({ screen, href, icon, words }) => (
          <a key={screen} href={href} aria-current={route.screen === screen ? 'page' : undefined}>
            <Icon name={icon} />
            <span>{words}</span>
          </a>
        ))}
    </nav>
  );
}
