/**
 * How a number came about: a formula as text that mathjs evaluates, its inputs with units, and the result. Opening a working on screen
 * evaluates this very text, so the shown formula is the computed one.
 */
export interface WorkingInput {
  readonly value: number;
  /** A unit mathjs knows (m, MHz, W, ohm, V, A, deg …); empty for a plain number. */
  readonly unit: string;
  readonly from: 'answer' | 'assumed' | 'catalogue' | 'solved';
}

export interface Working {
  readonly formula: string;
  readonly inputs: Readonly<Record<string, WorkingInput>>;
  readonly result: { readonly value: number; readonly unit: string };
  /** A key of catalog/sources.ts. */
  readonly source: string;
}

/** A length somebody acts on, with its working. */
export interface Dimension {
  readonly metres: number;
  readonly working: Working;
}
