/**
 * Where everything stands on the summary card. Pixels of a picture 1080 wide, as phones send them; its height follows from what it says.
 * Only the measure of a text comes from the browser, so that the layout can be checked without one.
 */
import type { CardContent, CardRow } from './card-content';

export interface TextStyle {
  readonly weight: 450 | 650 | 800;
  readonly size: number;
}
export type Measure = (text: string, style: TextStyle) => number;

export type CardItem =
  | { readonly kind: 'text'; readonly x: number; readonly y: number; readonly text: string; readonly style: TextStyle }
  | { readonly kind: 'rule'; readonly y: number; readonly heavy: boolean }
  | { readonly kind: 'stripes'; readonly y: number; readonly height: number }
  | {
      readonly kind: 'drawing' | 'code';
      readonly x: number;
      readonly y: number;
      readonly width: number;
      readonly height: number;
    };

export interface CardLayout {
  readonly width: number;
  readonly height: number;
  readonly items: readonly CardItem[];
}

export interface CardWords {
  readonly danger: string;
  readonly cut: string;
  readonly chokes: string;
  readonly code: string;
}

export const CARD_WIDTH = 1080;
const MARGIN = 56;
const INNER = CARD_WIDTH - 2 * MARGIN;
const STRIPES = 30;
const CODE = 400;
const LEADING = 1.24;

const title: TextStyle = { weight: 800, size: 64 };
const head: TextStyle = { weight: 800, size: 40 };
const strong: TextStyle = { weight: 650, size: 38 };
const body: TextStyle = { weight: 450, size: 38 };
const key: TextStyle = { weight: 800, size: 44 };

/** Words put into lines no wider than `width`; a single longer word stands alone. */
export function wrapped(text: string, width: number, style: TextStyle, measure: Measure): string[] {
  const lines: string[] = [];
  for (const word of text.split(/[ \n]+/)) {
    const last = lines.at(-1);
    const longer = last === undefined ? word : `${last} ${word}`;
    if (last !== undefined && measure(longer, style) <= width) lines[lines.length - 1] = longer;
    else lines.push(word);
  }
  return lines;
}

/** Grows downwards: each addition moves the pencil to below itself. */
class Pencil {
  readonly items: CardItem[] = [];
  y = MARGIN;
  readonly #measure: Measure;

  constructor(measure: Measure) {
    this.#measure = measure;
  }

  text(text: string, style: TextStyle, x = MARGIN, width = INNER): void {
    for (const line of wrapped(text, width, style, this.#measure)) {
      this.y += style.size * LEADING;
      this.items.push({ kind: 'text', x, y: Math.round(this.y - style.size * 0.3), text: line, style });
    }
  }

  rule(heavy: boolean): void {
    this.y += 18;
    this.items.push({ kind: 'rule', y: Math.round(this.y), heavy });
    this.y += heavy ? 10 : 8;
  }

  /** The length stands at the right edge of its own line, or below the words when both do not fit. */
  row({ what, length }: CardRow): void {
    const wide = this.#measure(length, key);
    const beside = this.#measure(what, body) + 30 + wide <= INNER;
    if (!beside) this.text(what, body);
    const top = this.y;
    this.text(length, key, CARD_WIDTH - MARGIN - wide, wide + 1);
    if (!beside) return;
    const below = this.y;
    this.y = top + (key.size - body.size) * LEADING;
    this.text(what, body);
    this.y = below;
  }
}

export interface CardParts {
  readonly content: CardContent;
  readonly words: CardWords;
  /** Height of the drawing over its width; null without one. */
  readonly drawingShape: number | null;
  readonly hasCode: boolean;
}

export function cardLayout({ content, words, drawingShape, hasCode }: CardParts, measure: Measure): CardLayout {
  const pencil = new Pencil(measure);
  pencil.text(content.name, title);
  pencil.y += 16;
  danger(pencil, content, words);
  pencil.text(content.summary, body);
  if (drawingShape !== null) place(pencil, 'drawing', INNER, INNER * drawingShape);
  rows(pencil, words.cut, content.cuts);
  rows(pencil, words.chokes, content.chokes);
  if (hasCode) {
    place(pencil, 'code', CODE, CODE);
    beside(pencil, words.code);
  }
  return { width: CARD_WIDTH, height: Math.ceil(pencil.y + MARGIN), items: pencil.items };
}

function danger(pencil: Pencil, content: CardContent, words: CardWords): void {
  if (content.danger.length === 0) return;
  pencil.items.push({ kind: 'stripes', y: Math.round(pencil.y), height: STRIPES });
  pencil.y += STRIPES + 4;
  pencil.text(words.danger, head);
  for (const { name, text } of content.danger) pencil.text(`${name}. ${text}`, strong);
  pencil.rule(true);
}

function rows(pencil: Pencil, title_: string, list: readonly CardRow[]): void {
  if (list.length === 0) return;
  pencil.y += 14;
  pencil.text(title_, head);
  pencil.rule(true);
  list.forEach((row, index) => {
    pencil.row(row);
    if (index < list.length - 1) pencil.rule(false);
  });
  pencil.y += 10;
}

/** Beside the code, half way down it. */
function beside(pencil: Pencil, text: string): void {
  const below = pencil.y;
  pencil.y -= CODE / 2 + strong.size * LEADING;
  pencil.text(text, strong, MARGIN + CODE + 30, INNER - CODE - 30);
  pencil.y = Math.max(below, pencil.y);
}

function place(pencil: Pencil, kind: 'drawing' | 'code', width: number, height: number): void {
  pencil.y += 20;
  pencil.items.push({ kind, x: MARGIN, y: Math.round(pencil.y), width, height: Math.round(height) });
  pencil.y += height + 10;
}
