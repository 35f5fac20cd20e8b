/**
 * Keeps the whole app on the phone: every file of a build is fetched when the worker installs, and all pages are
 * answered from there. A newer worker waits, so that a page never runs with half of another build, until the person
 * says yes and the page sends SKIP_WAITING.
 */
import {
  cleanupOutdatedCaches,
  createHandlerBoundToURL,
  getCacheKeyForURL,
  type PrecacheEntry,
  precacheAndRoute,
} from 'workbox-precaching';
import { NavigationRoute, registerRoute } from 'workbox-routing';

/** The build adds what each file must be; see vite.config.ts. */
type KeptEntry = PrecacheEntry & { readonly sha256?: string };
declare const self: ServiceWorkerGlobalScope & { readonly __WB_MANIFEST: (PrecacheEntry | string)[] };

const files = self.__WB_MANIFEST as KeptEntry[];
precacheAndRoute(files);
cleanupOutdatedCaches();

/** The one page. The app's own addresses come after its `#`, so any other page below the scope leads there. */
const page = createHandlerBoundToURL('index.html');
const pagePaths = ['', 'index.html'].map((name) => new URL(name, self.registration.scope).pathname);
registerRoute(
  new NavigationRoute(async (options) =>
    pagePaths.includes(options.url.pathname) ? page(options) : Response.redirect(self.registration.scope),
  ),
);

/** Another app shares a link or a file to this one: kept for the Receive screen, which takes it. No server ever sees it. */
const handedIn = 'handed-in';
registerRoute(
  ({ url }) => url.pathname === new URL(handedIn, self.registration.scope).pathname,
  async ({ request }) => {
    const form = await request.formData();
    const parts = ['file', 'url', 'text', 'title'].flatMap((name) => form.get(name) ?? []);
    const texts = await Promise.all(parts.map((part) => (typeof part === 'string' ? part : part.text())));
    const cache = await caches.open(handedIn);
    await cache.put(handedIn, new Response(texts.find((text) => text !== '') ?? ''));
    return Response.redirect(new URL(`#/receive/${handedIn}`, self.registration.scope).href, 303);
  },
  'POST',
);

self.addEventListener('message', (event) => {
  if (event.data?.type === 'SKIP_WAITING') void self.skipWaiting();
  // The page looks each of them up itself: a list is no proof that the files are there, and whole.
  if (event.data?.type === 'WHICH_FILES') {
    event.ports[0]?.postMessage(
      files.flatMap(({ url, sha256 }) => (sha256 === undefined ? [] : [{ key: getCacheKeyForURL(url), url, sha256 }])),
    );
  }
});
