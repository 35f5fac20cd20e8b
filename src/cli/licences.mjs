// What the makers of the libraries and of the typeface ask for: their notices go wherever a copy of their work goes.
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

const isNotice = (/** @type {string} */ name) => /^(licen[cs]e|copying|notice)/i.test(name);

/** Every notice a package brings; its licence by name where it brings none. */
function noticesOf(/** @type {string} */ dir, /** @type {string} */ licence) {
  const files = existsSync(dir) ? readdirSync(dir).filter(isNotice).sort() : [];
  return files.length > 0 ? files.map((name) => readFileSync(join(dir, name), 'utf8').trim()) : [licence];
}

/** The app's own licence, then that of every package the lock file counts to the app and not only to its making. */
export function licenceText(root = '.') {
  /** @type {{ packages: Record<string, { version?: string, license?: string, dev?: boolean }> }} */
  const { packages } = JSON.parse(readFileSync(join(root, 'package-lock.json'), 'utf8'));
  const shipped = Object.entries(packages).filter(([path, { dev }]) => path !== '' && dev !== true);
  const parts = shipped.map(([path, { version = '', license = '' }]) => {
    const name = path.slice(path.lastIndexOf('node_modules/') + 'node_modules/'.length);
    return [`${name} ${version} (${license})`, ...noticesOf(join(root, path), license)].join('\n\n');
  });
  return `${[readFileSync(join(root, 'LICENSE'), 'utf8').trim(), ...parts].join(`\n\n${'-'.repeat(80)}\n\n`)}\n`;
}
