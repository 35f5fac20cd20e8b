// Finds a Chromium for the tests, in this order: CHROMIUM_PATH; the one inside the npm package @sparticuz/chromium
// (Linux on x64; unpacked here with its own libraries and fonts, so a machine needs nothing but node and npm); one
// installed on the system. Each is started once to see that it runs. If none does, the reasons are told.
import { spawnSync } from 'node:child_process';
import {
  chmodSync,
  createReadStream,
  createWriteStream,
  existsSync,
  mkdirSync,
  readFileSync,
  renameSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { createRequire } from 'node:module';
import { delimiter, dirname, join } from 'node:path';
import { pipeline } from 'node:stream/promises';
import { fileURLToPath } from 'node:url';
import { brotliDecompressSync, createBrotliDecompress } from 'node:zlib';

/** @typedef {{ executablePath: string, env: Record<string, string>, from: string }} Browser */
/** @typedef {import('playwright-core').BrowserContextOptions & { args?: string[] }} BrowserOptions `args` come after our own */

const root = fileURLToPath(new URL('..', import.meta.url));
const block = 512; // a tar archive is made of blocks of this many bytes

/** Writes the files, folders and links of a tar archive. */
function untar(/** @type {Buffer} */ archive, /** @type {string} */ dir) {
  for (let at = 0; at + block <= archive.length && archive[at] !== 0; ) {
    const header = archive.subarray(at, at + block);
    const text = (/** @type {number} */ from, /** @type {number} */ length) =>
      header
        .subarray(from, from + length)
        .toString()
        .replace(/\0.*$/s, '');
    const size = Number.parseInt(text(124, 12), 8) || 0;
    const prefix = text(345, 155);
    const target = join(dir, prefix ? `${prefix}/${text(0, 100)}` : text(0, 100));
    const kind = text(156, 1) || '0';
    at += block;
    if (kind === '5') mkdirSync(target, { recursive: true });
    if (kind === '0' || kind === '2') mkdirSync(dirname(target), { recursive: true });
    if (kind === '0') {
      writeFileSync(target, archive.subarray(at, at + size));
      chmodSync(target, Number.parseInt(text(100, 8), 8) & 0o777);
    }
    if (kind === '2') {
      rmSync(target, { force: true });
      symlinkSync(text(157, 100), target);
    }
    at += Math.ceil(size / block) * block;
  }
}

/** The folder of an installed package, whatever its `exports` hide. */
function packageDir(/** @type {string} */ name) {
  for (const path of createRequire(join(root, 'package.json')).resolve.paths(name) ?? []) {
    if (existsSync(join(path, name, 'package.json'))) return join(path, name);
  }
  throw new Error(`the package ${name} is not installed`);
}

/** Private fonts, so that pictures are the same on every machine. The second family has arrows, ticks and a monospace. */
function fontConfig(/** @type {string} */ dir) {
  const dirs = [join(dir, 'fonts/fonts'), join(packageDir('dejavu-fonts-ttf'), 'ttf')];
  /** @type {Record<string, string>} */
  const families = {
    'sans-serif': 'Open Sans',
    serif: 'Open Sans',
    'system-ui': 'Open Sans',
    monospace: 'DejaVu Sans Mono',
  };
  const aliases = Object.entries(families).map(
    ([family, font]) =>
      `<alias binding="strong"><family>${family}</family><prefer><family>${font}</family></prefer></alias>`,
  );
  return [
    '<?xml version="1.0"?><!DOCTYPE fontconfig SYSTEM "fonts.dtd"><fontconfig>',
    ...dirs.map((path) => `<dir>${path}</dir>`),
    `<cachedir>${join(dir, 'fontcache')}</cachedir>`,
    ...aliases,
    '</fontconfig>',
  ].join('\n');
}

/** Unpacks the npm package's browser once for each of its versions. @returns {Promise<Browser>} */
async function npmChromium() {
  if (process.platform !== 'linux' || process.arch !== 'x64') {
    throw new Error(`the npm browser is for Linux on x64 only, this is ${process.platform} on ${process.arch}`);
  }
  const source = packageDir('@sparticuz/chromium');
  const { version } = JSON.parse(readFileSync(join(source, 'package.json'), 'utf8'));
  const packed = [join(source, 'bin'), join(source, 'bin', process.arch)].find((path) =>
    existsSync(join(path, 'chromium.br')),
  );
  if (!packed) throw new Error('the npm package holds no packed browser');
  const dir = join(root, 'node_modules/.cache', `chromium-${version}`);
  if (!existsSync(join(dir, 'chromium'))) await unpack(packed, dir);
  const fonts = join(dir, 'fonts.conf');
  writeFileSync(fonts, fontConfig(dir)); // each time, since it holds absolute paths and the project may have moved
  const libraries = [join(dir, 'al2023/lib'), process.env.LD_LIBRARY_PATH].filter(Boolean).join(delimiter);
  return {
    executablePath: join(dir, 'chromium'),
    env: { LD_LIBRARY_PATH: libraries, FONTCONFIG_FILE: fonts },
    from: `npm package, version ${version}`,
  };
}

async function unpack(/** @type {string} */ packed, /** @type {string} */ dir) {
  const partial = `${dir}.${process.pid}`; // moved into place when whole: an interrupted run leaves nothing usable
  mkdirSync(partial, { recursive: true });
  await pipeline(
    createReadStream(join(packed, 'chromium.br')),
    createBrotliDecompress({ chunkSize: 1 << 20 }),
    createWriteStream(join(partial, 'chromium'), { mode: 0o755 }),
  );
  const extras = { 'fonts.tar.br': 'fonts', 'al2023.tar.br': 'al2023', 'swiftshader.tar.br': '' };
  for (const [archive, folder] of Object.entries(extras)) {
    untar(brotliDecompressSync(readFileSync(join(packed, archive))), join(partial, folder));
  }
  try {
    renameSync(partial, dir);
  } catch (error) {
    rmSync(partial, { recursive: true, force: true });
    if (!existsSync(join(dir, 'chromium'))) throw error; // otherwise another run was quicker
  }
}

/** @returns {Browser} */
function systemChromium() {
  const names = ['chromium', 'chromium-browser', 'chromium-headless-shell', 'google-chrome', 'google-chrome-stable'];
  const dirs = (process.env.PATH ?? '').split(delimiter);
  const found = dirs.flatMap((dir) => names.map((name) => join(dir, name))).find((path) => existsSync(path));
  if (!found) throw new Error(`none of ${names.join(', ')} is in PATH`);
  return { executablePath: found, env: {}, from: 'installed on this system' };
}

/** @returns {Browser} */
function givenChromium() {
  const given = process.env.CHROMIUM_PATH;
  if (!given) throw new Error('CHROMIUM_PATH is not set');
  return { executablePath: given, env: {}, from: 'CHROMIUM_PATH' };
}

function checkThatItRuns(/** @type {Browser} */ { executablePath, env }) {
  const { status, stderr, error } = spawnSync(executablePath, ['--no-sandbox', '--version'], {
    env: { ...process.env, ...env },
    encoding: 'utf8',
    timeout: 30_000,
  });
  if (status !== 0) throw new Error(`${executablePath} does not start: ${error?.message ?? stderr.trim()}`);
}

/** The first browser that runs. @returns {Promise<Browser>} */
export async function findBrowser() {
  const reasons = [];
  // A browser somebody named is used or complained about, never silently replaced by another.
  const ways = process.env.CHROMIUM_PATH ? [givenChromium] : [npmChromium, systemChromium];
  for (const way of ways) {
    try {
      const browser = await way();
      checkThatItRuns(browser);
      return browser;
    } catch (error) {
      reasons.push(`- ${error instanceof Error ? error.message : error}`);
    }
  }
  throw new Error(
    [
      'No browser for the tests:',
      ...reasons,
      'Install one (Debian, Ubuntu: apt-get install chromium) or set CHROMIUM_PATH to the program of a Chromium or Chrome.',
    ].join('\n'),
  );
}

/**
 * Opens a browser on a folder that keeps its storage.
 * @param {Browser} browser
 * @param {string} profile
 * @param {BrowserOptions} options
 */
export async function openContext({ executablePath, env }, profile, options) {
  const { chromium } = await import('playwright-core');
  return chromium.launchPersistentContext(profile, {
    ...options,
    executablePath,
    env: { ...process.env, ...env },
    // Without a locale a machine with no LANG gives "en-US@posix", which Intl refuses.
    locale: 'en-US',
    args: [
      '--no-sandbox',
      '--headless=shell',
      '--disable-background-networking',
      '--disable-component-update',
      '--no-first-run',
      ...(options.args ?? []),
    ],
  });
}
