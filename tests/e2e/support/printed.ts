/** What stands on the pages of a PDF as our browser writes it: the text of each page, how large, and where. Other writers' files are not read. */
import { inflateSync } from 'node:zlib';

interface Glyph {
  readonly text: string;
  readonly sizePt: number;
  /** From the page's left and lower edge, points. */
  readonly xPt: number;
  readonly yPt: number;
}

export interface PrintedPage {
  /** In the margin, below. */
  readonly foot: string;
  readonly glyphs: readonly Glyph[];
  /** What lies outside is cut off: left, lower, right and upper edge, points. */
  readonly box: readonly [number, number, number, number];
}

type Objects = ReadonlyMap<string, string>;
type Matrix = readonly [number, number, number, number, number, number];

const objectsOf = (pdf: Buffer): Objects =>
  new Map(
    [...pdf.toString('latin1').matchAll(/(\d+) 0 obj\s([\s\S]*?)endobj/g)].map(([, id = '', body = '']) => [id, body]),
  );

function streamOf(body: string): string {
  const start = /stream\r?\n/.exec(body);
  if (start === null) return '';
  const length = Number(/\/Length (\d+)/.exec(body)?.[1]);
  const from = start.index + start[0].length;
  const data = Buffer.from(body.slice(from, from + length), 'latin1');
  return (/FlateDecode/.test(body) ? inflateSync(data) : data).toString('latin1');
}

const utf16 = (hex: string): string =>
  String.fromCharCode(...(hex.match(/.{4}/g) ?? []).map((unit) => Number.parseInt(unit, 16)));

/** Glyph numbers of a font, as written, to characters. */
function lettersOf(cmap: string): ReadonlyMap<string, string> {
  const letters = new Map<string, string>();
  for (const [, list = ''] of cmap.matchAll(/beginbfchar([\s\S]*?)endbfchar/g)) {
    for (const [, glyph = '', text = ''] of list.matchAll(/<(\w+)> <(\w+)>/g)) letters.set(glyph, utf16(text));
  }
  for (const [, list = ''] of cmap.matchAll(/beginbfrange([\s\S]*?)endbfrange/g)) {
    for (const [, first = '', last = '', text = ''] of list.matchAll(/<(\w+)> <(\w+)> <(\w+)>/g)) {
      const start = Number.parseInt(first, 16);
      for (let at = start; at <= Number.parseInt(last, 16); at++) {
        const glyph = at.toString(16).toUpperCase().padStart(first.length, '0');
        letters.set(glyph, String.fromCharCode(Number.parseInt(text, 16) + at - start));
      }
    }
  }
  return letters;
}

/** First `inner`, then `outer`. */
const times = ([a, b, c, d, e, f]: Matrix, [A, B, C, D, E, F]: Matrix): Matrix => [
  a * A + b * C,
  a * B + b * D,
  c * A + d * C,
  c * B + d * D,
  e * A + f * C + E,
  e * B + f * D + F,
];

const token =
  /<(\w+)>\s*Tj|\/(\w+) ([\d.]+) Tf|((?:-?[\d.]+ ){6})(cm|Tm)|((?:-?[\d.]+ ){4})re\s+W|(-?[\d.]+) (-?[\d.]+) Td|\b([qQ])\b/g;

function read(content: string, fonts: ReadonlyMap<string, ReadonlyMap<string, string>>): PrintedPage {
  let now: Matrix = [1, 0, 0, 1, 0, 0];
  let line = now;
  let letters: ReadonlyMap<string, string> = new Map();
  let size = 0;
  let box: PrintedPage['box'] | null = null;
  const kept: Matrix[] = [];
  const margin: Glyph[] = [];
  const glyphs: Glyph[] = [];
  const numbers = (text: string): number[] => text.trim().split(' ').map(Number);
  for (const [, hex, font, tf, six, operator, rect, dx, dy, saved] of content.matchAll(token)) {
    if (saved === 'q') kept.push(now);
    else if (saved === 'Q') now = kept.pop() ?? now;
    else if (font !== undefined) [letters, size] = [fonts.get(font) ?? letters, Number(tf)];
    else if (operator === 'cm') now = times(numbers(six ?? '') as unknown as Matrix, now);
    else if (operator === 'Tm') line = numbers(six ?? '') as unknown as Matrix;
    else if (dx !== undefined) line = times([1, 0, 0, 1, Number(dx), Number(dy)], line);
    else if (rect !== undefined && box === null) {
      const [x = 0, y = 0, width = 0, height = 0] = numbers(rect);
      const [left, upper] = times([1, 0, 0, 1, x, y], now).slice(4) as [number, number];
      box = [left, upper + height * now[3], left + width * now[0], upper];
    } else if (hex !== undefined) {
      const [, , , d, xPt, yPt] = times(line, now);
      const digits = [...letters.keys()][0]?.length ?? 4;
      for (const glyph of hex.match(new RegExp(`.{${digits}}`, 'g')) ?? []) {
        (box === null ? margin : glyphs).push({ text: letters.get(glyph) ?? '', sizePt: size * Math.abs(d), xPt, yPt });
      }
    }
  }
  return { foot: margin.map(({ text }) => text).join(''), glyphs, box: box ?? [0, 0, 0, 0] };
}

export function printedPages(pdf: Buffer): PrintedPage[] {
  const objects = objectsOf(pdf);
  const object = (id: string | undefined): string => objects.get(id ?? '') ?? '';
  return [...objects.values()]
    .filter((body) => /\/Type\s*\/Page\b(?!s)/.test(body))
    .map((page) => {
      const fonts = [...page.matchAll(/\/(F\d+) (\d+) 0 R/g)].map(
        ([, name = '', id]) => [name, lettersOf(streamOf(object(/\/ToUnicode (\d+)/.exec(object(id))?.[1])))] as const,
      );
      return read(streamOf(object(/\/Contents (\d+)/.exec(page)?.[1])), new Map(fonts));
    });
}
