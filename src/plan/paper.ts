/** A paper to keep and print: a title, then parts of lines and tables. As plain text its headings stand in capitals, lists have hyphens. */
export interface PaperTable {
  readonly caption: string;
  readonly head: readonly string[];
  /** The first cell of a row names it. */
  readonly rows: readonly (readonly string[])[];
}

export interface PaperPart {
  readonly heading: string | null;
  readonly lines: readonly string[];
  readonly isList: boolean;
  /** They stand above the lines. */
  readonly tables: readonly PaperTable[];
}

export interface Paper {
  readonly title: string;
  /** What stands under the title. */
  readonly lead: readonly string[];
  readonly parts: readonly PaperPart[];
}

export const listOf = (heading: string, lines: readonly string[]): PaperPart => ({
  heading,
  lines,
  isList: true,
  tables: [],
});
export const textOf = (heading: string | null, lines: readonly string[]): PaperPart => ({
  heading,
  lines,
  isList: false,
  tables: [],
});
export const tablesOf = (
  heading: string,
  tables: readonly PaperTable[],
  lines: readonly string[],
  isList = false,
): PaperPart => ({ heading, lines, isList, tables });

export function paperText({ title, lead, parts }: Paper): string {
  const blocks = [
    [title.toUpperCase(), ...lead],
    ...parts.map(({ heading, lines, isList, tables }) => [
      ...(heading === null ? [] : [heading.toUpperCase()]),
      ...tables.flatMap((table) => [...tableText(table), '']),
      ...lines.map((line) => (isList ? `- ${line}` : line)),
    ]),
  ];
  return `${blocks.map((lines) => lines.join('\n').trimEnd()).join('\n\n')}\n`;
}

/** Columns as wide as their widest cell. */
function tableText({ caption, head, rows }: PaperTable): string[] {
  const widths = head.map((title, column) => Math.max(title.length, ...rows.map((row) => row[column]?.length ?? 0)));
  const line = (cells: readonly string[]): string =>
    cells
      .map((cell, column) => cell.padEnd(widths[column] ?? 0))
      .join('  ')
      .trimEnd();
  return [caption, line(head), ...rows.map(line)];
}
