/**
 * Rules about the source tree that no compiler option holds. Each is a pure function over files as text and returns the
 * faults it finds, so that architecture.test.ts can show every rule failing on a bad sample before trusting it.
 */
import { posix } from 'node:path';
import ts from 'typescript';

export interface SourceFile {
  /** From the project's root, with forward slashes. */
  readonly path: string;
  readonly text: string;
}
export type Rule = (file: SourceFile) => string[];

interface Allowed {
  /** Folders of src that may be imported. */
  readonly folders: readonly string[];
  /** Folders of which only types may be imported. */
  readonly types?: readonly string[];
  /** Packages that may be imported; undefined means any. */
  readonly packages?: readonly string[];
}

const models = ['base', 'catalog', 'design', 'physics'];
const core = [...models, 'advice', 'geometry', 'words'];
const schemas = ['zod/mini'];

/** Imports point down this list; app is the only folder that knows the others, and nothing knows app or cli. */
const mayImport: Readonly<Record<string, Allowed>> = {
  base: { folders: [], packages: [] },
  catalog: { folders: ['base'], packages: schemas },
  design: { folders: ['base', 'catalog'], packages: schemas },
  physics: { folders: ['base', 'catalog'], packages: [] },
  solver: { folders: ['base', 'catalog', 'physics'], packages: schemas },
  advice: { folders: models, packages: schemas },
  geometry: { folders: ['base', 'catalog', 'design'], types: ['solver'], packages: schemas },
  words: { folders: ['base'], packages: [] },
  plan: { folders: core, types: ['solver'], packages: schemas },
  worker: { folders: [...core, 'plan', 'solver', 'wasm'], packages: [] },
  drawing: { folders: ['base', 'catalog', 'design', 'geometry'], types: ['solver'], packages: ['preact'] },
  storage: { folders: ['base', 'catalog', 'design'], packages: ['idb', ...schemas] },
  sw: { folders: [], packages: ['workbox-precaching', 'workbox-routing'] },
  asm: { folders: [], packages: ['vite', 'assemblyscript/asc'] },
  cli: { folders: [...core, 'plan', 'solver', 'wasm'] },
  app: { folders: [...core, 'plan', 'solver', 'worker', 'drawing', 'storage'] },
};

interface Import {
  readonly specifier: string;
  readonly typeOnly: boolean;
}

const parse = ({ path, text }: SourceFile): ts.SourceFile =>
  ts.createSourceFile(path, text, ts.ScriptTarget.ES2022, true, path.endsWith('x') ? ts.ScriptKind.TSX : undefined);

function walk(node: ts.Node, visit: (node: ts.Node) => void): void {
  visit(node);
  ts.forEachChild(node, (child) => walk(child, visit));
}

const lineOf = (source: ts.SourceFile, node: ts.Node): number =>
  source.getLineAndCharacterOfPosition(node.getStart(source)).line + 1;

function isTypeOnly(node: ts.ImportDeclaration | ts.ExportDeclaration): boolean {
  if (ts.isExportDeclaration(node)) return node.isTypeOnly;
  return node.importClause?.phaseModifier === ts.SyntaxKind.TypeKeyword;
}

function importsOf(file: SourceFile): Import[] {
  const found: Import[] = [];
  walk(parse(file), (node) => {
    if ((ts.isImportDeclaration(node) || ts.isExportDeclaration(node)) && node.moduleSpecifier) {
      if (ts.isStringLiteral(node.moduleSpecifier)) {
        found.push({ specifier: node.moduleSpecifier.text, typeOnly: isTypeOnly(node) });
      }
    } else if (ts.isCallExpression(node) && node.expression.kind === ts.SyntaxKind.ImportKeyword) {
      const [argument] = node.arguments;
      if (argument && ts.isStringLiteral(argument)) found.push({ specifier: argument.text, typeOnly: false });
    } else if (ts.isImportTypeNode(node) && ts.isLiteralTypeNode(node.argument)) {
      const { literal } = node.argument;
      if (ts.isStringLiteral(literal)) found.push({ specifier: literal.text, typeOnly: true });
    }
  });
  return found;
}

const isCode = (path: string): boolean => /\.(ts|tsx|mjs)$/.test(path);
const folderOf = (path: string): string | undefined => /^src\/([^/]+)\//.exec(path)?.[1];

/** Imports point from the upper folders to the lower ones, and packages stay where they belong. */
export const importsPointDown: Rule = (file) => {
  const folder = folderOf(file.path);
  if (folder === undefined || !isCode(file.path)) return [];
  const allowed = mayImport[folder];
  if (!allowed) return [`${file.path}: no rule says what ${folder}/ may import`];
  return importsOf(file).flatMap(({ specifier, typeOnly }) => {
    if (!specifier.startsWith('.')) return packageFault(file.path, folder, specifier, allowed);
    const target = folderOf(posix.join(posix.dirname(file.path), specifier));
    if (target === undefined) return [`${file.path}: imports ${specifier}, which is outside src/`];
    const known = allowed.folders.includes(target) || (typeOnly && allowed.types?.includes(target));
    return target === folder || known ? [] : [`${file.path}: ${folder}/ may not import ${specifier}`];
  });
};

function packageFault(path: string, folder: string, specifier: string, { packages }: Allowed): string[] {
  if (specifier === 'zod' || specifier.startsWith('zod/v'))
    return [`${path}: import zod/mini, ${specifier} is too big`];
  if (specifier.startsWith('node:')) {
    return folder === 'cli' || folder === 'asm' ? [] : [`${path}: ${folder}/ may not import ${specifier}`];
  }
  return packages === undefined || packages.includes(specifier)
    ? []
    : [`${path}: ${folder}/ may not import the package ${specifier}`];
}

/** A file that only passes on what others export hides where things are. */
export const noReExports: Rule = (file) => {
  if (!/^src\/.*\.tsx?$/.test(file.path)) return [];
  const { statements } = parse(file);
  const passedOn = statements.filter((node) => ts.isExportDeclaration(node) && node.moduleSpecifier);
  return statements.length > 0 && passedOn.length === statements.length ? [`${file.path}: only re-exports`] : [];
};

const mostLines = 400;
export const filesAreShort: Rule = ({ path, text }) => {
  if (!/^src\/.*\.(ts|tsx|mjs|css)$/.test(path)) return [];
  const lines = text.trimEnd().split('\n').length;
  return lines > mostLines ? [`${path}: ${lines} lines; at most ${mostLines}`] : [];
};

export const noAny: Rule = (file) => {
  if (!/^(src|tests)\/.*\.tsx?$/.test(file.path)) return [];
  const source = parse(file);
  const faults: string[] = [];
  walk(source, (node) => {
    if (node.kind === ts.SyntaxKind.AnyKeyword) faults.push(`${file.path}:${lineOf(source, node)}: any`);
  });
  return faults;
};

/** Attributes that hold names, numbers or addresses, never words for a person. */
const codeAttributes = new Set(
  'class className style d viewBox points transform href src rel id for htmlFor type accept role'.split(' '),
);

/**
 * Three words or more in a row, two of them of three letters or more. A formula, path data, a list of codes in capitals
 * and a single class name are none.
 */
function readsAsSentence(text: string): boolean {
  const runs = text.match(/\p{L}+(?:[,;:.’']?\s+\p{L}+){2,}/gu) ?? [];
  return runs.some((run) => (run.match(/\p{L}{2,}\p{Ll}/gu) ?? []).length >= 2);
}

function isForProgrammers(node: ts.Node): boolean {
  for (let at: ts.Node | undefined = node; at; at = at.parent) {
    if (ts.isJsxAttribute(at)) return codeAttributes.has(at.name.getText());
    if (ts.isImportDeclaration(at)) return true;
    // An exception for a broken promise in the code. What a person reads goes by a code of words/ instead.
    if (ts.isNewExpression(at) && /(Error|Fault)$/.test(at.expression.getText())) return true;
  }
  return false;
}

/** Every sentence a person reads stands in words/. */
export const noStraySentences: Rule = (file) => {
  if (!/^src\/(app|advice|plan|drawing|geometry|design|storage)\/.*\.tsx?$/.test(file.path)) return [];
  const source = parse(file);
  const faults: string[] = [];
  walk(source, (node) => {
    const text = literalText(node);
    if (text === undefined || !readsAsSentence(text) || isForProgrammers(node)) return;
    faults.push(`${file.path}:${lineOf(source, node)}: ${JSON.stringify(text.trim().slice(0, 60))} belongs in words/`);
  });
  return faults;
};

function literalText(node: ts.Node): string | undefined {
  if (ts.isStringLiteralLike(node) || ts.isJsxText(node)) return node.text;
  if (!ts.isTemplateExpression(node)) return undefined;
  return [node.head.text, ...node.templateSpans.map((span) => span.literal.text)].join(' 0 ');
}

/** Written in pieces, so that this very file does not hold what it forbids. */
const forbiddenTexts: readonly (readonly [RegExp, string])[] = [
  [new RegExp(`(?<![\\w.~-])/(?:${['work', 'root', 'home', 'tmp'].join('|')})/[a-z]`), 'a path of some machine'],
  [new RegExp(`\\bregistry\\.${'[a-z0-9-]+\\.[a-z]+'}`), 'the host of a package registry'],
  [new RegExp(`\\b(?:${['TO', 'FIX'].join('DO|')}ME)\\b`), 'a note of unfinished work'],
];

export const noForbiddenText: Rule = ({ path, text }) =>
  forbiddenTexts.flatMap(([pattern, what]) => {
    const found = pattern.exec(text);
    return found ? [`${path}: ${what}: ${found[0]}`] : [];
  });
