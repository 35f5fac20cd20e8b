/**
 * Dead code: what a file of src exports while no other file imports it and its own file does not use it either. A test
 * counts as a use: a formula checked against print is kept for that. A file imported whole (`import *`, `import()`)
 * counts as used.
 */
import { posix } from 'node:path';
import ts from 'typescript';
import type { SourceFile } from './architecture-rules';

const isCode = (path: string): boolean => /\.tsx?$/.test(path) && !path.endsWith('.d.ts');
const withoutExtension = (path: string): string => path.replace(/\.(tsx?|mjs)$/, '');
const whole = '*';

interface Module {
  /** Exported and used nowhere else in its own file. */
  readonly exported: string[];
  /** Pairs of the module imported from, without extension, and the name, or `*` for all of it. */
  readonly imported: (readonly [string, string])[];
}

function declaredNames(node: ts.Statement): string[] {
  if (ts.isVariableStatement(node)) {
    return node.declarationList.declarations.flatMap(({ name }) => (ts.isIdentifier(name) ? [name.text] : []));
  }
  const { name } = node as ts.Statement & { name?: ts.Node };
  return name && ts.isIdentifier(name) ? [name.text] : [];
}

const isExported = (node: ts.Statement): boolean =>
  ts.canHaveModifiers(node) &&
  (ts.getModifiers(node) ?? []).some((modifier) => modifier.kind === ts.SyntaxKind.ExportKeyword);

function namesTaken(node: ts.ImportDeclaration | ts.ExportDeclaration): string[] {
  const bindings = ts.isImportDeclaration(node) ? node.importClause?.namedBindings : node.exportClause;
  if (bindings && (ts.isNamedImports(bindings) || ts.isNamedExports(bindings))) {
    return bindings.elements.map((element) => (element.propertyName ?? element.name).text);
  }
  return [whole];
}

function read({ path, text }: SourceFile): Module {
  const source = ts.createSourceFile(path, text, ts.ScriptTarget.ES2022, true);
  const imported: (readonly [string, string])[] = [];
  const mentions = new Map<string, number>();
  const take = (specifier: ts.Node | undefined, names: string[]): void => {
    if (!specifier || !ts.isStringLiteral(specifier) || !specifier.text.startsWith('.')) return;
    const target = withoutExtension(posix.join(posix.dirname(path), specifier.text.replace(/\?.*$/, '')));
    for (const name of names) imported.push([target, name]);
  };
  const visit = (node: ts.Node): void => {
    if (ts.isIdentifier(node)) mentions.set(node.text, (mentions.get(node.text) ?? 0) + 1);
    if (ts.isImportDeclaration(node) || ts.isExportDeclaration(node)) take(node.moduleSpecifier, namesTaken(node));
    if (ts.isCallExpression(node) && node.expression.kind === ts.SyntaxKind.ImportKeyword) {
      take(node.arguments[0], [whole]);
    }
    if (ts.isImportTypeNode(node) && ts.isLiteralTypeNode(node.argument)) take(node.argument.literal, [whole]);
    ts.forEachChild(node, visit);
  };
  visit(source);
  // A schema and the type inferred from it share a name and stand or fall together.
  const names = [...new Set(source.statements.filter(isExported).flatMap(declaredNames))];
  return { exported: names.filter((name) => mentions.get(name) === 1), imported };
}

/** `used` are files that something other than an import asks for. */
export function unusedExports(files: readonly SourceFile[], used: readonly RegExp[]): string[] {
  const modules = files.filter(({ path }) => isCode(path)).map((file) => ({ path: file.path, ...read(file) }));
  const taken = new Set(modules.flatMap(({ imported }) => imported.map(([target, name]) => `${target} ${name}`)));
  return modules
    .filter(({ path }) => path.startsWith('src/') && !used.some((pattern) => pattern.test(path)))
    .flatMap(({ path, exported }) => {
      const module = withoutExtension(path);
      if (taken.has(`${module} ${whole}`)) return [];
      return exported
        .filter((name) => !taken.has(`${module} ${name}`))
        .map((name) => `${path}: ${name} is used by nothing`);
    });
}
