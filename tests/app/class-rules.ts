/**
 * Classes in style sheets. The sheet of a screen stays loaded when the screen is left, so whatever it says about a class
 * that another screen has too is said there as well. Pure functions over files as text, which give the faults found.
 */
import { posix } from 'node:path';
import type { SourceFile } from '../architecture-rules';
import { type Given, givenClasses, holds } from './given-classes';

/** Folders whose sheets are for every screen. */
const shared: readonly string[] = ['src/app/styles', 'src/app/jobs'];
const folderOf = ({ path }: SourceFile): string => posix.dirname(path);
const isSheet = ({ path }: SourceFile): boolean => path.endsWith('.css');
const isCode = ({ path }: SourceFile): boolean => /\.tsx?$/.test(path);

const classesIn = (selector: string): string[] =>
  [...selector.matchAll(/\.([a-z][\w-]*)/gi)].flatMap(([, name]) => name ?? []);

/** Cuts at a character wherever it stands outside brackets. */
function cutOutside(text: string, at: RegExp): string[] {
  const parts = [''];
  let depth = 0;
  for (const character of text) {
    if (character === '(' || character === '[') depth++;
    if (character === ')' || character === ']') depth--;
    if (depth === 0 && at.test(character)) parts.push('');
    else parts[parts.length - 1] += character;
  }
  return parts.map((part) => part.trim()).filter((part) => part !== '');
}

/** Every selector of a sheet, those in lists one by one. */
function selectorsIn({ text }: SourceFile): string[] {
  const bare = text.replace(/\/\*[\s\S]*?\*\//g, '').replace(/(['"]).*?\1/g, '""');
  return [...bare.matchAll(/([^{};]+)\{/g)]
    .map(([, prelude = '']) => prelude.trim())
    .filter((prelude) => !prelude.startsWith('@'))
    .flatMap((prelude) => cutOutside(prelude, /,/));
}

/** A selector's parts, each of one element. */
const partsOf = (selector: string): string[] => cutOutside(selector, /[\s>+~]/);

/** What one of several alternatives, or the absence of something, would satisfy. */
const alternatives = /:(?:not|is|where)\([^()]*(?:\([^()]*\)[^()]*)*\)/g;

/** Classes without which a rule does not hold: those of its first part that has any, and those of the element it is about. */
function boundTo(selector: string): string[] {
  const parts = partsOf(selector).map((part) => classesIn(part.replace(alternatives, '')));
  return [...(parts.find((classes) => classes.length > 0) ?? []), ...(parts.at(-1) ?? [])];
}

/** The folders whose files ask for a sheet themselves: their screens are made with it. */
function foldersWith(sheet: SourceFile, files: readonly SourceFile[]): Set<string> {
  const asks = ({ path, text }: SourceFile): boolean =>
    [...text.matchAll(/import '(\.[^']+\.css)'/g)].some(
      ([, from = '']) => posix.join(posix.dirname(path), from) === sheet.path,
    );
  return new Set([sheet, ...files.filter(isCode).filter(asks)].map(folderOf));
}

/**
 * Rules of a screen's sheet that would hold on other screens too, for want of a class of its own. Own is a class that neither
 * the sheets nor the elements of other folders name, but for those that ask for the sheet.
 */
export function leaks(files: readonly SourceFile[]): string[] {
  const sheets = files.filter(isSheet);
  const code = files.filter(isCode).map((file) => ({ folder: folderOf(file), ...givenClasses(file) }));
  return sheets
    .filter((sheet) => !shared.includes(folderOf(sheet)))
    .flatMap((sheet) => {
      const folders = foldersWith(sheet, files);
      const otherSheets = sheets.filter((other) => !folders.has(folderOf(other)));
      const styled = new Set(otherSheets.flatMap(selectorsIn).flatMap(classesIn));
      const given = code.filter(({ folder }) => !folders.has(folder)).flatMap(({ attributes }) => attributes);
      const isOwn = (name: string): boolean => !styled.has(name) && !given.some((attribute) => holds(attribute, name));
      return selectorsIn(sheet)
        .filter((selector) => !boundTo(selector).some(isOwn))
        .map((selector) => `${sheet.path}: ${selector}`);
    });
}

/** Whether some element can have all these classes at once. */
function canBe(classes: readonly string[], given: readonly Given[], handed: ReadonlySet<string>): boolean {
  return given.some(({ attributes }) =>
    attributes.some((attribute) =>
      classes.every((name) => holds(attribute, name) || (attribute.isOpen && handed.has(name))),
    ),
  );
}

/** Selectors that ask for a class, or for several on one element, which no element is ever given. */
export function unmet(files: readonly SourceFile[]): string[] {
  const given = files.filter(isCode).map(givenClasses);
  const handed = new Set(given.flatMap((each) => [...each.handed]));
  const isMet = (part: string): boolean => {
    const outside = classesIn(part.replace(/\(.*\)/gs, ''));
    const inside = classesIn(part).filter((name) => !outside.includes(name));
    return canBe(outside, given, handed) && inside.every((name) => canBe([name], given, handed));
  };
  return files.filter(isSheet).flatMap((sheet) =>
    selectorsIn(sheet)
      .filter((selector) => !partsOf(selector).every((part) => classesIn(part).length === 0 || isMet(part)))
      .map((selector) => `${sheet.path}: ${selector}`),
  );
}

/** Files that give classes in a way the other rules do not see. */
export const otherWays = (files: readonly SourceFile[]): string[] =>
  files.flatMap(({ path, text }) =>
    isCode({ path, text }) && /\bclass(?:Name\b|List\b)|Attribute\('class'/.test(text) ? [path] : [],
  );
