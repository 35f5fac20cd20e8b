/** The web app manifest. Paths are relative to the manifest itself, so the app also installs from a sub-path. */
import type { ManifestOptions } from 'vite-plugin-pwa';
import type { Language } from '../words/en/language';
import type { manifestWords } from '../words/en/manifest';

/** Same as the ground of the icon and of the dark theme. */
const ground = '#191510';
const shortcutIcons = [{ src: 'icons/icon-192.png', sizes: '192x192', type: 'image/png' }];

export const webManifest = (
  words: Readonly<Record<keyof typeof manifestWords, string>>,
  { tag, direction }: Language,
): Partial<ManifestOptions> => ({
  id: './',
  name: words.name,
  short_name: words.name,
  description: words.description,
  lang: tag,
  dir: direction,
  start_url: './',
  scope: './',
  display: 'standalone',
  orientation: 'any',
  theme_color: ground,
  background_color: ground,
  categories: ['utilities', 'education'],
  icons: [
    { src: 'icons/icon.svg', sizes: 'any', type: 'image/svg+xml', purpose: 'any' },
    { src: 'icons/icon-192.png', sizes: '192x192', type: 'image/png', purpose: 'any' },
    { src: 'icons/icon-512.png', sizes: '512x512', type: 'image/png', purpose: 'any' },
    { src: 'icons/maskable-512.png', sizes: '512x512', type: 'image/png', purpose: 'maskable' },
  ],
  // A plan sent from another app: the service worker takes it, and no server sees it.
  share_target: {
    action: './handed-in',
    method: 'POST',
    enctype: 'multipart/form-data',
    params: {
      title: 'title',
      text: 'text',
      url: 'url',
      files: [{ name: 'file', accept: ['application/json', '.json'] }],
    },
  },
  file_handlers: [{ action: './', accept: { 'application/json': ['.json'] } }],
  shortcuts: [
    { name: words.newPlan, url: './#/new', icons: shortcutIcons },
    { name: words.onHand, url: './#/on-hand', icons: shortcutIcons },
  ],
});
