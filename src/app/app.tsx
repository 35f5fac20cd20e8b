/** The frame around every screen: skip link, notices, the screen of the address, the bar. Focus goes to the heading of what was opened. */
import { signal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { shell } from '../words/en/screens';
import { focusOnHeading } from './kept-focus';
import { Bar } from './parts/bar';
import { titleByHeading } from './parts/page-title';
import { applyUpdate, updateReady } from './pwa';
import { route, visits } from './router';
import { useSay } from './say';
import { screenAtOnce } from './screens';
import { fetchScreen, type Screen, type ScreenKey, screenKeyOf } from './screens-later';
import { useStores } from './stores/stores';

/** Screens fetched so far; `failed` for one that could not be had. */
const fetched = signal<ReadonlyMap<ScreenKey, Screen | 'failed'>>(new Map());

async function fetchInto(name: ScreenKey): Promise<void> {
  const found = await fetchScreen(name).catch(() => 'failed' as const);
  if (found !== undefined) fetched.value = new Map(fetched.value).set(name, found);
}

export function App() {
  const say = useSay();
  const here = route.value;
  const key = screenKeyOf(here);
  const screen = screenAtOnce(key) ?? fetched.value.get(key);

  useEffect(() => {
    if (screen === undefined) void fetchInto(key);
  }, [key, screen]);

  useEffect(() => {
    if (screen === undefined) return;
    titleByHeading(say);
    if (visits.value === 0) return; // the first page of a visit is read from its top
    scrollTo(0, 0);
    const heading = focusOnHeading();
    if (heading?.hasAttribute('data-focus')) heading.scrollIntoView({ block: 'center' });
  }, [visits.value, screen]);

  return (
    <>
      <button type="button" class="skip" onClick={skip}>
        {say(shell.skip)}
      </button>
      <UpdateNotice />
      {screen === 'failed' ? <Failed name={key} /> : <Shown screen={screen} />}
      <Bar route={here} />
    </>
  );
}

function Shown({ screen: Found }: { screen: Screen | undefined }) {
  if (Found === undefined) return <main id="main" aria-busy="true" />;
  return <Found route={route.value as never} />;
}

function Failed({ name }: { name: ScreenKey }) {
  const say = useSay();
  return (
    <main id="main">
      <section class="stop">
        <h1 tabIndex={-1}>{say(shell.appName)}</h1>
        <p>{say(shell.chunkFailed)}</p>
        <div class="ways">
          <button type="button" class="btn tall" onClick={() => void fetchInto(name)}>
            {say(shell.tryAgain)}
          </button>
          <a class="btn tall" href="#/">
            {say(shell.allPlans)}
          </a>
        </div>
      </section>
    </main>
  );
}

/** The address stays as it is: what stands after `#` is where the app is, not a place on the page. */
function skip(): void {
  const main = document.getElementById('main');
  main?.setAttribute('tabindex', '-1');
  main?.focus();
}

function UpdateNotice() {
  const say = useSay();
  const { library } = useStores();
  if (!updateReady.value) return null;
  return (
    <div class="notice" role="status">
      <p>{say(shell.updateReady)}</p>
      <button type="button" class="btn" onClick={() => void library.flush().then(applyUpdate)}>
        {say(shell.update)}
      </button>
    </div>
  );
}
