/**
 * What a language lacks beside English: files are compared as types (exports, what a sentence is filled with) and as values (every key of
 * every list, since many lists are typed by any key). A file that is not there stays English and is no fault; `many` is a language's own.
 */
import { readdirSync } from 'node:fs';
import { basename, join, resolve } from 'node:path';
import ts from 'typescript';

const english = resolve('src/words/en');
const own = ['many.ts'];
const filesOf = (folder: string): string[] =>
  readdirSync(folder).filter((name) => name.endsWith('.ts') && !own.includes(name));

/** A translation may say other words in every place, and nothing else. */
const like = `type Like<T> = T extends string ? string : T extends (...given: infer G) => infer R ? (...given: G) => Like<R>
  : T extends object ? { readonly [K in keyof T]: Like<T[K]> } : T;`;

const checkOf = (folder: string, name: string): string =>
  `import type * as en from '${english}/${name}'; import type * as own from '${folder}/${name}'; ${like}
   declare const found: typeof own; export const wanted: Like<typeof en> = found;`;

function typeFaults(folder: string, names: readonly string[]): string[] {
  const checks = new Map(names.map((name) => [resolve(folder, `check-${name}`), checkOf(folder, name)]));
  const options: ts.CompilerOptions = {
    strict: true,
    exactOptionalPropertyTypes: true,
    noUncheckedIndexedAccess: true,
    noEmit: true,
    skipLibCheck: true,
    types: [],
    target: ts.ScriptTarget.ES2022,
    lib: ['lib.es2023.d.ts'],
    module: ts.ModuleKind.ESNext,
    moduleResolution: ts.ModuleResolutionKind.Bundler,
    allowImportingTsExtensions: true,
  };
  const host = ts.createCompilerHost(options);
  const { fileExists, readFile, getSourceFile } = host;
  host.fileExists = (path) => checks.has(path) || fileExists(path);
  host.readFile = (path) => checks.get(path) ?? readFile(path);
  host.getSourceFile = (path, ...rest) => {
    const text = checks.get(path);
    return text === undefined ? getSourceFile(path, ...rest) : ts.createSourceFile(path, text, ts.ScriptTarget.ES2022);
  };
  const program = ts.createProgram([...checks.keys()], options, host);
  return ts
    .getPreEmitDiagnostics(program)
    .map(
      ({ file, messageText }) =>
        `${basename(file?.fileName ?? '')}: ${ts.flattenDiagnosticMessageText(messageText, ' ').slice(0, 300)}`,
    );
}

/** Keys that one has and the other lacks, and values of another kind. */
function valueFaults(wanted: unknown, found: unknown, at: string): string[] {
  if (typeof wanted !== typeof found) return [`${at}: ${typeof found} where English has ${typeof wanted}`];
  if (typeof wanted !== 'object' || wanted === null) return [];
  const keys = new Set([...Object.keys(wanted), ...Object.keys(found as object)]);
  return [...keys].flatMap((key) =>
    valueFaults(Reflect.get(wanted, key), Reflect.get(found as object, key), `${at}.${key}`),
  );
}

export async function languageFaults(folder: string): Promise<string[]> {
  const names = filesOf(folder);
  const strange = names.filter((name) => !filesOf(english).includes(name));
  if (strange.length > 0) return strange.map((name) => `${name}: English has no such file`);
  const values: string[] = [];
  for (const name of names) {
    const [wanted, found] = await Promise.all([import(join(english, name)), import(join(folder, name))]);
    values.push(...valueFaults(wanted, found, name));
  }
  return [...values, ...typeFaults(folder, names)];
}
