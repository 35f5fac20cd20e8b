/**
 * The turns of each winding, from the text that jobs/windings.ts keeps: "21/3" is tapped at 3, "9*2" takes two wires at once, "12+10" are two
 * windings. The first screen, which must stay small, reads no more of it. NaN where the text is none of these.
 */
export const turnsOfCode = (code: string): readonly number[] =>
  code.split('+').map((each) => Number.parseInt(each, 10));

export const sumOf = (turns: readonly number[]): number => turns.reduce((sum, each) => sum + each, 0);
