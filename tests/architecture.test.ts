import { readdirSync, readFileSync } from 'node:fs';
import { join, relative, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import {
  filesAreShort,
  importsPointDown,
  noAny,
  noForbiddenText,
  noReExports,
  noStraySentences,
  type Rule,
  type SourceFile,
} from './architecture-rules';
import { unusedExports } from './unused-exports';

const root = fileURLToPath(new URL('..', import.meta.url));
const notOurs = new Set(['node_modules', 'dist', '.git', 'artefacts', '.npm-cache', 'wasm']);
const binary = /\.(png|woff2|wasm|ico|tsbuildinfo)$/;

/** The project's own files; the same as those in git, but found without it, since not every machine has git. */
function projectFiles(dir = root): SourceFile[] {
  return readdirSync(dir, { withFileTypes: true }).flatMap((entry) => {
    if (notOurs.has(entry.name)) return [];
    const path = join(dir, entry.name);
    if (entry.isDirectory()) return projectFiles(path);
    if (binary.test(entry.name) || !entry.isFile()) return [];
    return [{ path: relative(root, path).split(sep).join('/'), text: readFileSync(path, 'utf8') }];
  });
}

/** Each with samples it must find at fault and samples it must let through. */
const rules: { title: string; rule: Rule; bad: SourceFile[]; good: SourceFile[] }[] = [
  {
    title: 'imports point down',
    rule: importsPointDown,
    bad: [
      { path: 'src/base/a.ts', text: "import { b } from '../catalog/b';" },
      { path: 'src/base/a.ts', text: "import * as z from 'zod/mini';" },
      { path: 'src/advice/a.ts', text: "import { solve } from '../solver/solve';" },
      { path: 'src/advice/a.ts', text: "import type { Field } from '../solver/field';" },
      { path: 'src/geometry/a.ts', text: "import { solve } from '../solver/solve';" },
      { path: 'src/plan/a.ts', text: "export { a } from '../app/a';" },
      { path: 'src/plan/a.ts', text: "const a = await import('../cli/main');" },
      { path: 'src/words/a.ts', text: "type A = import('../plan/a').A;" },
      { path: 'src/app/a.tsx', text: "import { z } from 'zod';" },
      { path: 'src/app/a.tsx', text: "import { main } from '../cli/main';" },
      { path: 'src/app/a.tsx', text: "import { a } from '../../tests/a';" },
      { path: 'src/storage/a.ts', text: "import { readFileSync } from 'node:fs';" },
      { path: 'src/unheard-of/a.ts', text: 'export const a = 1;' },
    ],
    good: [
      { path: 'src/catalog/a.ts', text: "import { b } from '../base/b'; import { c } from './c';" },
      { path: 'src/geometry/a.ts', text: "import type { Wire } from '../solver/wire';" },
      { path: 'src/app/screens/a.tsx', text: "import { b } from '../../plan/b'; import { render } from 'preact';" },
    ],
  },
  {
    title: 'no file only re-exports',
    rule: noReExports,
    bad: [{ path: 'src/base/index.ts', text: "export * from './a'; export { b } from './b';" }],
    good: [{ path: 'src/base/a.ts', text: 'export const a = 1;' }],
  },
  {
    title: 'files are short',
    rule: filesAreShort,
    bad: [{ path: 'src/base/a.ts', text: 'export {};\n'.repeat(401) }],
    good: [{ path: 'src/base/a.ts', text: 'export {};\n'.repeat(400) }],
  },
  {
    title: 'nothing is typed any',
    rule: noAny,
    bad: [
      { path: 'src/base/a.ts', text: `export const a: ${'any'} = 1;` },
      { path: 'tests/base/a.test.ts', text: `const a = 1 as ${'any'};` },
    ],
    good: [{ path: 'src/base/a.ts', text: "export const many: unknown = 'any';" }],
  },
  {
    title: 'sentences stand in words/',
    rule: noStraySentences,
    bad: [
      { path: 'src/app/a.tsx', text: 'export const A = () => <p>Keep the wire away</p>;' },
      { path: 'src/app/a.tsx', text: 'export const A = () => <img alt="Keep the wire away" />;' },
      { path: 'src/advice/a.ts', text: "export const a = 'Keep the wire away';" },
      { path: 'src/plan/a.ts', text: ['export const a = (m: number) => `Keep the wire $', '{m} away`;'].join('') },
      { path: 'src/drawing/a.tsx', text: 'export const A = () => <text>{"keep it away"}</text>;' },
      { path: 'src/app/a.tsx', text: "export const a = 'Use a choke.';" },
    ],
    good: [
      { path: 'src/app/a.tsx', text: 'export const A = () => <p class="tag wide chosen">{words.keepAway}</p>;' },
      { path: 'src/drawing/a.tsx', text: 'export const A = () => <path d="M 0 0 L 10 10 ZZ AA BB" />;' },
      { path: 'src/plan/a.ts', text: "throw new Error('this cannot happen here');" },
      { path: 'src/words/a.ts', text: "export const a = 'Keep the wire away';" },
      { path: 'src/advice/a.ts', text: "export const a = 'choke-at-feed-point';" },
      { path: 'src/advice/a.ts', text: "export const a = 'min(0.05 * speedOfLight / frequency, line)';" },
      { path: 'src/advice/a.ts', text: "export const a = 'AT BE BG HR CY';" },
    ],
  },
  {
    title: 'no machine, no registry and no unfinished work is mentioned',
    rule: noForbiddenText,
    bad: [
      { path: 'README.md', text: `See ${['', 'home', 'someone', 'notes'].join('/')}.` },
      { path: 'package-lock.json', text: `"https://${['registry', 'example', 'org'].join('.')}/a.tgz"` },
      { path: 'src/base/a.ts', text: `// ${'TO'}${'DO'}: later` },
    ],
    good: [{ path: 'README.md', text: 'See ./home/page and https://example.org/home/page.' }],
  },
];

describe.each(rules)('$title', ({ rule, bad, good }) => {
  test.each(bad)('a bad sample is found: $text', (file) => {
    expect(rule(file)).not.toEqual([]);
  });

  test.each(good)('a good sample passes: $text', (file) => {
    expect(rule(file)).toEqual([]);
  });

  test('holds for the whole project', () => {
    expect(projectFiles().flatMap(rule)).toEqual([]);
  });
});

test('the rules see the project: its sources, its tests and its lock file', () => {
  const paths = projectFiles().map(({ path }) => path);
  expect(paths).toContain('package-lock.json');
  expect(paths).toContain('tests/architecture.test.ts');
  expect(paths).toContain('src/base/constants.ts');
  expect(paths).toContain('src/sw/service-worker.ts');
  expect(paths.filter((path) => path.startsWith('src/')).length).toBeGreaterThan(30);
});

describe('no dead code', () => {
  const exporting = { path: 'src/base/a.ts', text: 'export const a = 1; export const b = a; export type C = number;' };
  const importing = (text: string): SourceFile => ({ path: 'src/catalog/b.ts', text });

  test('what nothing uses is found', () => {
    expect(unusedExports([exporting], [])).toEqual([
      'src/base/a.ts: b is used by nothing',
      'src/base/a.ts: C is used by nothing',
    ]);
  });

  test.each([
    "import { b, type C } from '../base/a';",
    "import * as all from '../base/a';",
    "const all = await import('../base/a');",
    "export { b, C } from '../base/a';",
  ])('what another file takes passes: %s', (text) => {
    expect(unusedExports([exporting, importing(text)], [])).toEqual([]);
  });

  test('holds for the whole project', () => {
    // Asked for by the build configuration and by src/cli/main.ts, which takes every file of that name.
    const used = [
      /^src\/asm\//,
      /^src\/app\/web-manifest\.ts$/,
      /^src\/words\/en\/manifest\.ts$/,
      /-command\.ts$/,
      /cli\/main\.ts$/,
    ];
    expect(unusedExports(projectFiles(), used)).toEqual([]);
  });
});
