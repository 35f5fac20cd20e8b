/** Which classes the elements of a file can have, read from its `class` attributes. */
import ts from 'typescript';
import type { SourceFile } from '../architecture-rules';

/** What one `class` attribute can hold. */
export interface Attribute {
  readonly classes: Set<string>;
  /** Beginnings of classes whose end is put in at run time. */
  readonly beginnings: Set<string>;
  /** Holds something that is not written in the file, such as a property handed to the component. */
  isOpen: boolean;
}

export interface Given {
  readonly attributes: readonly Attribute[];
  /** Words handed to components as properties: what an open attribute may be given. */
  readonly handed: ReadonlySet<string>;
}

type Constants = ReadonlyMap<string, ts.Expression>;

function walk(node: ts.Node, visit: (node: ts.Node) => void): void {
  visit(node);
  ts.forEachChild(node, (child) => walk(child, visit));
}

const wordsOf = (text: string): string[] => text.split(/\s+/).filter((word) => word !== '');

function takeTemplate(node: ts.TemplateExpression, constants: Constants, into: Attribute): void {
  const pieces = [node.head, ...node.templateSpans.map(({ literal }) => literal)];
  for (const piece of pieces) {
    const words = piece.text.split(/\s+/);
    const beginning = ts.isTemplateTail(piece) ? '' : (words.pop() ?? '');
    if (beginning !== '') into.beginnings.add(beginning);
    for (const word of words) if (word !== '') into.classes.add(word);
  }
  for (const { expression } of node.templateSpans) take(expression, constants, into);
}

/** Takes whatever an expression can come to. */
function take(node: ts.Expression, constants: Constants, into: Attribute): void {
  if (ts.isStringLiteralLike(node)) {
    for (const word of wordsOf(node.text)) into.classes.add(word);
  } else if (ts.isTemplateExpression(node)) {
    takeTemplate(node, constants, into);
  } else if (ts.isConditionalExpression(node)) {
    take(node.whenTrue, constants, into);
    take(node.whenFalse, constants, into);
  } else if (ts.isIdentifier(node)) {
    const constant = constants.get(node.text);
    if (constant) take(constant, constants, into);
    else if (node.text !== 'undefined') into.isOpen = true;
  } else {
    into.isOpen = true;
  }
}

function constantsOf(source: ts.SourceFile): Constants {
  const constants = new Map<string, ts.Expression>();
  walk(source, (node) => {
    if (ts.isVariableDeclaration(node) && ts.isIdentifier(node.name) && node.initializer) {
      constants.set(node.name.text, node.initializer);
    }
  });
  return constants;
}

export function givenClasses({ path, text }: SourceFile): Given {
  const source = ts.createSourceFile(path, text, ts.ScriptTarget.ES2022, true, ts.ScriptKind.TSX);
  const constants = constantsOf(source);
  const attributes: Attribute[] = [];
  const handed = new Set<string>();
  walk(source, (node) => {
    if (!ts.isJsxAttribute(node) || !node.initializer) return;
    const value = ts.isJsxExpression(node.initializer) ? node.initializer.expression : node.initializer;
    if (node.name.getText(source) !== 'class') {
      if (value && ts.isStringLiteral(value)) handed.add(value.text);
      return;
    }
    const attribute: Attribute = { classes: new Set(), beginnings: new Set(), isOpen: false };
    if (value) take(value as ts.Expression, constants, attribute);
    attributes.push(attribute);
  });
  return { attributes, handed };
}

/** Whether an attribute holds a class as the file writes it. */
export const holds = ({ classes, beginnings }: Attribute, name: string): boolean =>
  classes.has(name) || [...beginnings].some((beginning) => name.startsWith(beginning));
