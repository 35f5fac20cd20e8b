import { effect } from '@preact/signals';
import { render } from 'preact';
import { shell } from '../words/en/screens';
import { App } from './app';
import { takeOpenedFiles } from './handed-in';
import { keepFocus } from './kept-focus';
import { fetchParts } from './later';
import { startPwa } from './pwa';
import { startRouter } from './router';
import { blockedByOtherTab, createStores, StoresContext } from './stores/stores';
import { keepTextsTogether } from './texts-kept-together';
import './styles/font.css';
import './styles/tokens.css';
import './styles/base.css';
import './styles/frame.css';
import './styles/parts.css';
import './styles/drawing.css';

async function start(root: HTMLElement): Promise<void> {
  keepTextsTogether();
  effect(() => {
    if (blockedByOtherTab.value) render(<Blocked />, root);
  });
  const stores = await createStores();
  effect(() => {
    const { light, hand } = stores.settings.settings.value;
    setOrRemove(document.documentElement, 'data-light', light);
    setOrRemove(document.documentElement, 'data-hand', hand);
  });
  startRouter();
  keepFocus();
  takeOpenedFiles();
  render(
    <StoresContext.Provider value={stores}>
      <App />
    </StoresContext.Provider>,
    root,
  );
  await stores.planner.fetch();
  await fetchParts();
}

const Blocked = () => (
  <main id="main">
    <section class="stop">
      <h1>{shell.appName}</h1>
      <p>{shell.blocked}</p>
    </section>
  </main>
);

function setOrRemove(element: HTMLElement, name: string, value: string | undefined): void {
  if (value === undefined) element.removeAttribute(name);
  else element.setAttribute(name, value);
}

const root = document.getElementById('app');
if (root) void start(root);
void startPwa();
