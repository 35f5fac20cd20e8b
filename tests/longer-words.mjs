// Builds the app in a language that is none: every word of the English catalogue grown by two fifths, as German or Finnish would.
// `node tests/longer-words.mjs <folder>`; the browser tests use it to see that no screen breaks.
import { build } from 'vite';

/** @typedef {{ type: string, start: number, end: number } & Record<string, unknown>} Node */

const GROWN = 0.4;

/** "Which bands?" becomes "Whichwh bandsba?"; figures, units and single letters stay. */
export const grown = (/** @type {string} */ text) =>
  text.replace(/\p{L}{3,}/gu, (word) => word + word.slice(0, Math.ceil(word.length * GROWN)).toLowerCase());

/** Where a text is a key, a comparison or the name of a file, and no words. */
function isCode(/** @type {Node} */ node, /** @type {Node} */ parent, /** @type {string} */ key) {
  const text = String(node.value);
  switch (parent.type) {
    case 'Property':
      return key === 'key';
    case 'BinaryExpression':
      return parent.operator !== '+';
    case 'MemberExpression':
    case 'SwitchCase':
    case 'ImportDeclaration':
    case 'ExportNamedDeclaration':
      return true;
    case 'CallExpression':
      return !/\s/.test(text) && !isPlural(/** @type {Node} */ (parent.callee));
    case 'ArrayExpression':
      return !/\s/.test(text);
    default:
      return false;
  }
}

const isPlural = (/** @type {Node} */ callee) => callee.name === 'many' || callee.name === 'plural';

/** Every string and piece of a template, with what stands round it. */
function visit(/** @type {Node} */ node, /** @type {(node: Node, parent: Node, key: string) => void} */ see) {
  for (const [key, value] of Object.entries(node)) {
    for (const child of Array.isArray(value) ? value : [value]) {
      if (typeof child?.type !== 'string') continue;
      see(child, node, key);
      visit(child, see);
    }
  }
}

/** @returns {import('vite').Plugin} */
const longerWords = () => ({
  name: 'longer-words',
  enforce: 'post',
  transform(code, id) {
    if (!/\/src\/words\/en\/[^/]+\.ts$/.test(id)) return null;
    /** @type {{ start: number, end: number, text: string }[]} */
    const changes = [];
    visit(/** @type {Node} */ (/** @type {unknown} */ (this.parse(code))), (node, parent, key) => {
      const isText = node.type === 'Literal' && typeof node.value === 'string' && !isCode(node, parent, key);
      if (!isText && node.type !== 'TemplateElement') return;
      changes.push({ start: node.start, end: node.end, text: grown(code.slice(node.start, node.end)) });
    });
    changes.sort((a, b) => b.start - a.start);
    return changes.reduce((text, { start, end, text: words }) => text.slice(0, start) + words + text.slice(end), code);
  },
});

const [, script, outDir] = process.argv;
if (script !== undefined && import.meta.url.endsWith(script.split(/[\\/]/).at(-1) ?? '') && outDir !== undefined) {
  await build({ logLevel: 'error', plugins: [longerWords()], build: { outDir } });
}
