/** What a typed text means: a value, or what is wrong with it and the ways out. Words are added on the screen. */

import type { FieldProblem } from '../../words/en/fields';
import type { Data } from '../../words/message';

export type QuantityKind = 'length' | 'frequency' | 'power' | 'share' | 'count';

export interface Quantity {
  readonly kind: QuantityKind;
  /** Metres, megahertz, watts, a part of one, or a number of things. */
  readonly value: number;
}

/** A value to take instead: `mean` another reading of the same digits, `itIs` the unusual one after all, `take` a proposal. */
export interface TakeValue {
  readonly way: 'mean' | 'itIs' | 'take' | 'middle';
  readonly quantity: Quantity;
}

export interface GoodReading {
  readonly quantity: Quantity;
}
export interface BadReading {
  readonly problem: FieldProblem;
  readonly data: Data;
  /** Typing again and "not sure" always stand beside these. */
  readonly take: readonly TakeValue[];
}
export type Reading = GoodReading | BadReading;

export const isGood = (reading: Reading): reading is GoodReading => 'quantity' in reading;
export const good = (kind: QuantityKind, value: number): Reading => ({ quantity: { kind, value } });
export const bad = (problem: FieldProblem, data: Data = {}, take: readonly TakeValue[] = []): Reading => ({
  problem,
  data,
  take,
});
