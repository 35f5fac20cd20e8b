// Installs the packages when the lock file changed since the last time. Runs before any package exists, so it imports
// from node alone. Everything is written to stderr: a headless command's answer must stand alone on stdout.
import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('..', import.meta.url));
const stamp = join(root, 'node_modules', '.stamp');

function fail(/** @type {string} */ reason) {
  process.stderr.write(`${reason}\n`);
  process.exit(1);
}

function lockHash() {
  // The platform is part of it: some packages bring a binary for the machine they were installed on.
  const machine = `${process.version} ${process.platform} ${process.arch}`;
  return createHash('sha256')
    .update(readFileSync(join(root, 'package-lock.json')))
    .update(machine)
    .digest('hex');
}

const [major = 0, minor = 0] = process.versions.node.split('.').map(Number);
if (major < 20 || (major === 20 && minor < 19)) fail(`Node 20.19 or newer is needed; this is ${process.version}.`);

const wanted = lockHash();
if (!existsSync(stamp) || readFileSync(stamp, 'utf8') !== wanted) {
  process.stderr.write('Installing packages, once for this lock file.\n');
  // One string through the shell: on Windows npm is a .cmd file, which only a shell can start.
  const { status } = spawnSync('npm ci --no-audit --no-fund --ignore-scripts --loglevel=error', {
    cwd: root,
    shell: true,
    stdio: ['ignore', 2, 2],
  });
  if (status !== 0) fail('The packages could not be installed; npm says why above.');
  writeFileSync(stamp, wanted);
}
