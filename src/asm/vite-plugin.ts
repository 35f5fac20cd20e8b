/**
 * Compiles the AssemblyScript kernels to WebAssembly, for the build, the dev server, the tests and the headless
 * commands alike; only when a source is newer than what it made.
 *
 * Each source `src/asm/<name>.ts` that is not this plugin or a declaration (what sources share is in parts/) gives two files in src/wasm (not in git):
 * `<name>.wasm` with 128-bit SIMD, and `<name>-relaxed.wasm` with fused multiply-add for engines that have relaxed
 * SIMD. Both come from the same text: a source chooses by the compile-time constant `ASC_FEATURE_RELAXED_SIMD`. The
 * last bits of their results differ, so compare with tolerances.
 *
 * `import bytes from '../wasm/<name>.wasm?bytes'` gives the file as a Uint8Array inside the bundle: the same in a
 * worker, in node and in a test, and never a fetch that could fail offline.
 */
import { existsSync, mkdirSync, readdirSync, readFileSync, renameSync, statSync } from 'node:fs';
import { basename, join } from 'node:path';
import type { Plugin } from 'vite';

const sourceDir = 'src/asm';
const outputDir = 'src/wasm';
const builds = [
  { suffix: '', features: ['simd'] },
  { suffix: '-relaxed', features: ['simd', 'relaxed-simd'] },
];

const sources = (): string[] =>
  readdirSync(sourceDir).filter((name) => /^[a-z0-9-]+\.ts$/.test(name) && name !== 'vite-plugin.ts');

function isOutOfDate(output: string, newestSourceMs: number): boolean {
  return !existsSync(output) || statSync(output).mtimeMs < newestSourceMs;
}

async function compile(): Promise<void> {
  const names = sources();
  // A source may import another or one of parts/, so any newer source makes every output out of date.
  const all = readdirSync(sourceDir, { recursive: true, encoding: 'utf8' }).filter((name) => name.endsWith('.ts'));
  const newestMs = Math.max(...all.map((name) => statSync(join(sourceDir, name)).mtimeMs));
  for (const name of names) {
    for (const { suffix, features } of builds) {
      const output = join(outputDir, `${basename(name, '.ts')}${suffix}.wasm`);
      if (isOutOfDate(output, newestMs)) await compileOne(join(sourceDir, name), output, features);
    }
  }
}

async function compileOne(source: string, output: string, features: readonly string[]): Promise<void> {
  const { default: asc } = await import('assemblyscript/asc');
  mkdirSync(outputDir, { recursive: true });
  // Written beside and then moved, so that a test process running at the same time never reads half a file.
  const partial = `${output}.${process.pid}`;
  const options = ['-O3', '--noAssert', '--runtime', 'stub', ...features.flatMap((name) => ['--enable', name])];
  const { error, stderr } = await asc.main([source, '-o', partial, ...options]);
  if (error) throw new Error(`${source} does not compile:\n${stderr.toString()}`, { cause: error });
  renameSync(partial, output);
}

export function assemblyscript(): Plugin {
  return {
    name: 'assemblyscript',
    enforce: 'pre',
    buildStart: compile,
    load(id) {
      const [file, query] = id.split('?');
      if (query !== 'bytes' || file === undefined) return null;
      const base64 = readFileSync(file).toString('base64');
      return `export default Uint8Array.from(atob('${base64}'), (character) => character.charCodeAt(0));`;
    },
    async handleHotUpdate({ file, server }) {
      if (!file.includes(`${sourceDir}/`)) return;
      await compile();
      server.ws.send({ type: 'full-reload' });
    },
  };
}
