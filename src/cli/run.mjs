// Runs a headless command: `node src/cli/run.mjs plan answers.json`. Node cannot read the sources themselves, so they are
// built into node_modules/.cache first, again whenever one of them changed. Set-up and build write to stderr only.
import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readdirSync, renameSync, rmSync, statSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { join, resolve } from 'node:path';
import { text } from 'node:stream/consumers';
import { fileURLToPath, pathToFileURL } from 'node:url';

const root = fileURLToPath(new URL('../..', import.meta.url));
const cache = join(root, 'node_modules/.cache/cli');
/** Folders of src that no headless command reaches; `wasm` is made by the build itself. */
const unused = new Set(['app', 'drawing', 'storage', 'sw', 'wasm', 'worker']);

function toStderr(/** @type {string[]} */ args, /** @type {NodeJS.ProcessEnv} */ env = process.env) {
  const { status } = spawnSync(process.execPath, args, { cwd: root, env, stdio: ['ignore', 2, 2] });
  if (status !== 0) process.exit(1);
}

/** Stands for the sources as they are now: any file added, removed or changed gives another. */
function fingerprint() {
  const hash = createHash('sha256');
  const add = (/** @type {string} */ path) => {
    const { mtimeMs, size } = statSync(path);
    hash.update(`${path} ${mtimeMs} ${size}\n`);
  };
  hash.update(`${process.env.HALYARD_LANGUAGE ?? ''}\n`); // a build holds the words of one language
  for (const name of ['vite.config.ts', 'package.json', 'package-lock.json']) add(join(root, name));
  for (const folder of readdirSync(join(root, 'src'), { withFileTypes: true })) {
    if (!folder.isDirectory() || unused.has(folder.name)) continue;
    const dir = join(root, 'src', folder.name);
    const files = readdirSync(dir, { recursive: true, encoding: 'utf8' }).map((name) => join(dir, name));
    for (const file of files.filter((path) => statSync(path).isFile()).sort()) add(file);
  }
  return hash.digest('hex').slice(0, 16);
}

/** The built commands' entry file. */
function builtFile() {
  const dir = join(cache, fingerprint());
  const file = join(dir, 'main.mjs');
  if (existsSync(file)) return file;
  const partial = `${dir}.${process.pid}`; // moved into place when whole, so two commands at once do no harm
  const env = { ...process.env, NODE_ENV: 'production', HALYARD_OUT_DIR: partial };
  mkdirSync(cache, { recursive: true });
  toStderr(['node_modules/vite/bin/vite.js', 'build', '--mode', 'cli', '--logLevel', 'error'], env);
  const older = readdirSync(cache).filter((name) => !name.includes('.'));
  try {
    renameSync(partial, dir);
    for (const name of older) rmSync(join(cache, name), { recursive: true, force: true });
  } catch (error) {
    rmSync(partial, { recursive: true, force: true });
    if (!existsSync(file)) throw error; // otherwise another command was quicker
  }
  return file;
}

toStderr([join(root, 'tests/setup.mjs')]);
const { main } = await import(pathToFileURL(builtFile()).href);
/** npm changes to the project's folder; a person's path counts from where they were. */
const from = process.env.npm_lifecycle_event ? (process.env.INIT_CWD ?? process.cwd()) : process.cwd();

/** Who reads may have seen enough, as `head` does. */
process.stdout.on('error', (/** @type {NodeJS.ErrnoException} */ error) => {
  if (error.code !== 'EPIPE') throw error;
  process.exit();
});

process.exitCode = await main(process.argv.slice(2), {
  readStdin: () => text(process.stdin),
  readFile: (/** @type {string} */ path) => readFile(resolve(from, path), 'utf8'),
  out: (/** @type {string} */ words) => process.stdout.write(words),
  err: (/** @type {string} */ words) => process.stderr.write(words),
});
