// What a build weighs, as a host that compresses with brotli would send it.
import { readdirSync, readFileSync } from 'node:fs';
import { extname, join } from 'node:path';
import { brotliCompressSync, constants } from 'node:zlib';

/** @typedef {{ file: string, imports?: string[], css?: string[], isEntry?: boolean }} Chunk as Vite's manifest lists it */

/** Already compressed: a host sends them as they are. */
const compressed = new Set(['.png', '.woff2']);

export function sentBytes(/** @type {string} */ path) {
  const body = readFileSync(path);
  if (compressed.has(extname(path))) return body.length;
  return brotliCompressSync(body, { params: { [constants.BROTLI_PARAM_QUALITY]: 11 } }).length;
}

/** Files that a first visit needs before it shows anything: the entry, what it imports statically, and their styles. */
export function firstScreenFiles(/** @type {string} */ dir) {
  /** @type {Record<string, Chunk>} */
  const manifest = JSON.parse(readFileSync(join(dir, '.vite/manifest.json'), 'utf8'));
  /** @type {Set<string>} */
  const files = new Set();
  const visited = new Set();
  const visit = (/** @type {string} */ key) => {
    const chunk = manifest[key];
    if (!chunk || visited.has(key)) return;
    visited.add(key);
    for (const file of [chunk.file, ...(chunk.css ?? [])]) files.add(file);
    for (const next of chunk.imports ?? []) visit(next);
  };
  if (!manifest['index.html']?.isEntry) throw new Error(`no entry index.html in the manifest of ${dir}`);
  visit('index.html');
  return [...files];
}

/** Every file the service worker keeps, as paths in the build. */
export function precachedFiles(/** @type {string} */ dir) {
  const worker = readFileSync(join(dir, 'service-worker.js'), 'utf8');
  const urls = [...worker.matchAll(/["']?url["']?:\s*["'`]([^"'`]+)["'`]/g)].flatMap(([, url]) => url ?? []);
  return [...new Set(urls)];
}

/** Every file of a build that a browser may ask for. */
export function servedFiles(/** @type {string} */ dir) {
  const notAsked = /^(service-worker\.js|robots\.txt|licences\.txt|\.vite\/.*)$/;
  return readdirSync(dir, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) =>
      join(entry.parentPath, entry.name)
        .slice(dir.length + 1)
        .replaceAll('\\', '/'),
    )
    .filter((name) => !notAsked.test(name));
}

export function sizes(/** @type {string} */ dir) {
  const sum = (/** @type {string[]} */ files) => files.reduce((total, file) => total + sentBytes(join(dir, file)), 0);
  return { firstScreenBytes: sum(firstScreenFiles(dir)), precacheBytes: sum(precachedFiles(dir)) };
}
