// Imports carry their extension here, so that Vite can hand this file to node as it is.
import { createHash } from 'node:crypto';
import { cpSync, mkdirSync, readdirSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { type Plugin, runnerImport } from 'vite';
import { VitePWA } from 'vite-plugin-pwa';
import { defineConfig, type ViteUserConfig } from 'vitest/config';
import { webManifest } from './src/app/web-manifest.ts';
import { assemblyscript } from './src/asm/vite-plugin.ts';
import { wordsFile, wordsFolder, wordsFrom } from './src/cli/language.mjs';
import { licenceText } from './src/cli/licences.mjs';
import { contentSecurityPolicy, securityHeaders } from './src/cli/security-headers.mjs';
import type { Language, language } from './src/words/en/language.ts';
import type { manifestWords } from './src/words/en/manifest.ts';

const { version } = JSON.parse(readFileSync('package.json', 'utf8')) as { version: string };
const appVersion = process.env.HALYARD_VERSION ?? version;

/** The page carries its own policy, for hosts that send no headers. Not in dev, where Vite injects inline styles. */
const policyInPage: Plugin = {
  name: 'policy-in-page',
  apply: 'build',
  transformIndexHtml: {
    order: 'post',
    handler: () => [
      {
        tag: 'meta',
        attrs: { 'http-equiv': 'Content-Security-Policy', content: contentSecurityPolicy },
        injectTo: 'head-prepend',
      },
    ],
  },
};

/** What of the words the page and the home screen need before any script runs. */
interface FirstWords {
  readonly language: Language;
  readonly manifest: Readonly<Record<keyof typeof manifestWords, string>>;
}

async function firstWords(folder: string): Promise<FirstWords> {
  const load = async <T>(name: string): Promise<T> =>
    (await runnerImport<T>(wordsFile(folder, name), { configFile: false, plugins: [wordsFrom(folder)] })).module;
  const [{ language: spoken }, { manifestWords: manifest }] = await Promise.all([
    load<{ language: typeof language }>('language.ts'),
    load<{ manifestWords: typeof manifestWords }>('manifest.ts'),
  ]);
  return { language: spoken, manifest };
}

/** Which build a page is, what it is for and in which language. */
const pageHead = ({ language: { tag, direction }, manifest }: FirstWords): Plugin => ({
  name: 'page-head',
  transformIndexHtml: (html) => ({
    html: html.replace('<html lang="en">', `<html lang="${tag}" dir="${direction}">`),
    tags: [
      { tag: 'meta', attrs: { name: 'description', content: manifest.description }, injectTo: 'head' },
      { tag: 'meta', attrs: { name: 'version', content: appVersion }, injectTo: 'head' },
    ],
  }),
});

/** icons/ stands at the top of the project and is served as /icons/, in dev and from the build. */
function icons(): Plugin {
  let outDir = '';
  return {
    name: 'icons',
    configResolved(config) {
      outDir = resolve(config.root, config.build.outDir);
    },
    configureServer(server) {
      server.middlewares.use('/icons', (request, response, next) => {
        const name = (request.url ?? '').split('?')[0]?.slice(1) ?? '';
        if (!readdirSync('icons').includes(name)) return next();
        response.setHeader('Content-Type', name.endsWith('.svg') ? 'image/svg+xml' : 'image/png');
        response.end(readFileSync(join('icons', name)));
      });
    },
    writeBundle() {
      mkdirSync(join(outDir, 'icons'), { recursive: true });
      for (const name of readdirSync('icons').filter((file) => /\.(svg|png)$/.test(file))) {
        cpSync(join('icons', name), join(outDir, 'icons', name));
      }
    },
  };
}

/** Beside the app, not kept on the phone: the notices of all that is built into it. */
const licences: Plugin = {
  name: 'licences',
  apply: 'build',
  generateBundle() {
    this.emitFile({ type: 'asset', fileName: 'licences.txt', source: licenceText() });
  },
};

const outDir = process.env.HALYARD_OUT_DIR ?? '../dist';

/** What each kept file must be, so that the page can check what is on the phone byte for byte (app/offline-check.ts). */
const withDigests = (entries: readonly { url: string; revision: string | null; size: number }[]) => ({
  manifest: entries.map((entry) => {
    const file = readFileSync(resolve('src', outDir, entry.url));
    return { ...entry, sha256: createHash('sha256').update(file).digest('hex') };
  }),
});

const pwa = ({ language: spoken, manifest }: FirstWords) =>
  VitePWA({
    strategies: 'injectManifest',
    srcDir: 'sw',
    filename: 'service-worker.ts',
    registerType: 'prompt',
    injectRegister: false,
    manifest: webManifest(manifest, spoken),
    includeManifestIcons: false,
    injectManifest: {
      globPatterns: ['**/*.{js,css,html,svg,png,wasm,woff2,webmanifest}'],
      manifestTransforms: [withDigests],
      maximumFileSizeToCacheInBytes: 4e6,
    },
  });

const app = (folder: string, words: FirstWords): ViteUserConfig => ({
  root: 'src',
  publicDir: '../public',
  // Relative, so that one build works at the top of a host and below any path; the app's own addresses are hashes.
  base: './',
  define: { __APP_VERSION__: JSON.stringify(appVersion) },
  build: {
    outDir,
    emptyOutDir: true,
    target: 'es2022',
    modulePreload: { polyfill: false },
    assetsInlineLimit: 0,
    manifest: true,
    // What the first screen needs comes in one piece: it compresses better than in a dozen, and nothing waits for another request.
    rolldownOptions: {
      output: {
        codeSplitting: { groups: [{ name: 'first', tags: ['$initial'] }] },
        // That piece lists the names of all others: the hashes are as short as the bundler lets them be.
        chunkFileNames: 'assets/[name]-[hash:7].js',
        assetFileNames: 'assets/[name]-[hash:7].[ext]',
      },
    },
  },
  worker: { format: 'es', plugins: () => [wordsFrom(folder), assemblyscript()] },
  preview: { headers: securityHeaders },
  plugins: [wordsFrom(folder), assemblyscript(), icons(), licences, pageHead(words), policyInPage, pwa(words)],
  test: { root: '.', include: ['tests/**/*.test.{ts,tsx}'], testTimeout: 120_000 },
});

/** The headless commands, one file for node; built on demand by src/cli/run.mjs. */
const cli = (folder: string): ViteUserConfig => ({
  root: 'src',
  publicDir: false,
  build: {
    ssr: 'cli/main.ts',
    outDir: process.env.HALYARD_OUT_DIR ?? '../node_modules/.cache/cli/by-hand',
    emptyOutDir: true,
    target: 'node20',
    rolldownOptions: { output: { entryFileNames: 'main.mjs' } },
  },
  ssr: { noExternal: true },
  plugins: [wordsFrom(folder), assemblyscript()],
});

export default defineConfig(async ({ mode }) => {
  const folder = wordsFolder();
  return mode === 'cli' ? cli(folder) : app(folder, await firstWords(folder));
});
