/** The chain as the plan has it: with its devices designed. One designer for a whole test file, so that no search runs twice. */
import { chainOf } from '../../src/advice/chain/chain';
import { createDesigner, designParts } from '../../src/advice/chain/design-parts';
import type { Dimensions } from '../../src/advice/dimensions';
import type { Facts } from '../../src/advice/facts';
import type { FieldFacts } from '../../src/advice/field-facts';
import { fieldOf } from '../../src/advice/field-facts';
import type { Link } from '../../src/advice/finding';

const designer = createDesigner();

export function designedChain(facts: Facts, dimensions: Dimensions, field?: FieldFacts): readonly Link[] {
  const solved = fieldOf(field, facts.bands[0].band).feedPoint ?? null;
  return chainOf(facts, dimensions, designParts(facts, dimensions, field, designer), solved);
}
