// Languages that are none, as folders of words for the switch of the build (src/cli/language.mjs): the whole English catalogue, every word changed.
//   longer    each word two fifths longer, as German or Finnish would be
//   leftward  in Hebrew letters, written from right to left
// `node tests/invented-language.mjs longer <folder>` writes one; the browser tests build the app with it and look at every screen.
import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join, relative, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import ts from 'typescript';

const words = fileURLToPath(new URL('../src/words', import.meta.url));
const GROWN = 0.4;
/** Letters for letters, by their place in the alphabet; no meaning, and hardly a sound. */
const hebrew = 'אבגדהוזחטיכלמנסעפצקרשתךםןף';

/** Figures, units and single letters stay; so do the escapes of a source text. */
const eachWord = (/** @type {string} */ text, /** @type {(word: string) => string} */ change) =>
  text.replace(/\\u[0-9a-f]{4}|\\.|\p{L}{3,}/gu, (found) => (found.startsWith('\\') ? found : change(found)));

/** "Which bands?" becomes "Whichwh bandsba?". */
const longer = (/** @type {string} */ word) => word + word.slice(0, Math.ceil(word.length * GROWN)).toLowerCase();
const leftward = (/** @type {string} */ word) =>
  word.toLowerCase().replace(/[a-z]/g, (letter) => hebrew[letter.charCodeAt(0) - 97] ?? letter);

/** @type {Readonly<Record<string, { change: (word: string) => string, tag: string, direction: 'ltr' | 'rtl' }>>} */
const inventions = {
  longer: { change: longer, tag: 'en-XA', direction: 'ltr' },
  leftward: { change: leftward, tag: 'en-XB', direction: 'rtl' },
};

/** The text of a call's name. */
const callee = (/** @type {ts.CallExpression} */ { expression }) => expression.getText();

/** Where a text is a key, a type, a comparison or the name of a file, and no words. */
function isCode(/** @type {ts.StringLiteralLike} */ node) {
  const { parent, text } = node;
  if (ts.isPropertyAssignment(parent)) return parent.name === node;
  if (ts.isBinaryExpression(parent)) return parent.operatorToken.kind !== ts.SyntaxKind.PlusToken;
  if (ts.isCallExpression(parent)) return !/\s/.test(text) && !['many', 'plural'].includes(callee(parent));
  if (ts.isArrayLiteralExpression(parent)) return !/\s/.test(text);
  return (
    ts.isElementAccessExpression(parent) ||
    ts.isParameter(parent) ||
    ts.isCaseClause(parent) ||
    ts.isImportDeclaration(parent) ||
    ts.isLiteralTypeNode(parent)
  );
}

/** The source of one file of words with all its words changed. */
function changed(/** @type {string} */ text, /** @type {(word: string) => string} */ change) {
  const source = ts.createSourceFile('words.ts', text, ts.ScriptTarget.ES2022, true);
  /** @type {ts.Node[]} */
  const found = [];
  const visit = (/** @type {ts.Node} */ node) => {
    const isWords = (ts.isStringLiteral(node) || ts.isNoSubstitutionTemplateLiteral(node)) && !isCode(node);
    if (isWords || ts.isTemplateHead(node) || ts.isTemplateMiddleOrTemplateTail(node)) found.push(node);
    ts.forEachChild(node, visit);
  };
  visit(source);
  return found.reduceRight((made, node) => {
    const from = node.getStart(source);
    return made.slice(0, from) + eachWord(made.slice(from, node.end), change) + made.slice(node.end);
  }, text);
}

/** Writes a folder of words. What its files import from above words/en is found from the new place too. */
export function writeInventedLanguage(/** @type {string} */ name, /** @type {string} */ folder) {
  const invention = inventions[name];
  if (invention === undefined)
    throw new Error(`no invented language "${name}"; there are ${Object.keys(inventions).join(', ')}`);
  const above = relative(folder, words).split('\\').join('/');
  mkdirSync(folder, { recursive: true });
  for (const file of readdirSync(join(words, 'en'))) {
    const text = readFileSync(join(words, 'en', file), 'utf8');
    const made =
      file === 'language.ts'
        ? text.replace(/\{ tag: .* \}/, JSON.stringify({ tag: invention.tag, direction: invention.direction }))
        : changed(text, invention.change);
    writeFileSync(join(folder, file), made.replaceAll("from '../", `from '${above}/`));
  }
}

const [, script, name, folder] = process.argv;
if (script !== undefined && resolve(script) === fileURLToPath(import.meta.url)) {
  if (name === undefined || folder === undefined) throw new Error('say which invented language and where it goes');
  writeInventedLanguage(name, resolve(folder));
}
