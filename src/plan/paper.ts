/** A paper to keep and print: a title, then parts of lines. As plain text its headings stand in capitals and its lists have hyphens. */
export interface PaperPart {
  readonly heading: string | null;
  readonly lines: readonly string[];
  readonly isList: boolean;
}

export interface Paper {
  readonly title: string;
  /** What stands under the title. */
  readonly lead: readonly string[];
  readonly parts: readonly PaperPart[];
}

export const listOf = (heading: string, lines: readonly string[]): PaperPart => ({ heading, lines, isList: true });
export const textOf = (heading: string | null, lines: readonly string[]): PaperPart => ({
  heading,
  lines,
  isList: false,
});

export function paperText({ title, lead, parts }: Paper): string {
  const blocks = [
    [title.toUpperCase(), ...lead],
    ...parts.map(({ heading, lines, isList }) => [
      ...(heading === null ? [] : [heading.toUpperCase()]),
      ...lines.map((line) => (isList ? `- ${line}` : line)),
    ]),
  ];
  return `${blocks.map((lines) => lines.join('\n')).join('\n\n')}\n`;
}
