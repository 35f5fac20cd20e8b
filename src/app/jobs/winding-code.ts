/**
 * Reads what saved plans keep of what is wound: "21/3" is tapped at 3, "9*2" takes two wires at once, "12+10" are two windings.
 * jobs/windings.ts writes it: the first screen, which must stay small, only reads.
 */
export interface CodedWinding {
  readonly turns: number;
  /** Wires wound as one. */
  readonly strands: number;
  /** Turns from the start where the tap comes out. */
  readonly tapAt: number | null;
}

/** Turns are NaN where the text is none of these. */
export const windingsOfCode = (code: string): readonly CodedWinding[] =>
  code.split('+').map((each) => {
    const [, turns, tap, strands] = /^(\d+)(?:\/(\d+))?(?:\*(\d+))?$/.exec(each) ?? [];
    return { turns: Number(turns), strands: Number(strands ?? 1), tapAt: tap === undefined ? null : Number(tap) };
  });

export const turnsOf = (windings: readonly { readonly turns: number }[]): number =>
  windings.reduce((sum, { turns }) => sum + turns, 0);
