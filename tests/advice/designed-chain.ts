/** The chain as the plan has it: with its devices designed. One designer for a whole test file, so that no search runs twice. */
import { chainOf } from '../../src/advice/chain/chain';
import { chokePlacesOf } from '../../src/advice/chain/choke-places';
import type { ComponentDesigns } from '../../src/advice/chain/component-designs';
import { createDesigner, designParts } from '../../src/advice/chain/design-parts';
import type { Dimensions } from '../../src/advice/dimensions';
import type { Facts } from '../../src/advice/facts';
import { type FieldFacts, fieldOf } from '../../src/advice/field-facts';
import type { Link } from '../../src/advice/finding';
import { needsOf } from '../../src/advice/needs';

const designer = createDesigner();

export function designedChain(facts: Facts, dimensions: Dimensions, field?: FieldFacts): readonly Link[] {
  const solved = fieldOf(field, facts.bands[0].band).feedPoint ?? null;
  return chainOf(facts, dimensions, designParts(facts, dimensions, field, designer), solved);
}

const alike = new Map<string, ComponentDesigns>();

/** The same for thousands of antennas: those that ask for devices alike share the designs of the first, whose load differs a little. */
export function chainOfMany(facts: Facts, dimensions: Dimensions): readonly Link[] {
  const { powerW, mode, feedLine, station, indoors, onHand } = facts.settled;
  const places = chokePlacesOf(facts, dimensions).map(({ role, at, minimumOhm }) => [role, at, minimumOhm]);
  const bands = facts.bands.map(({ band, focusMHz }) => [band, focusMHz]);
  const key = JSON.stringify([
    needsOf(facts),
    facts.system,
    places,
    bands,
    powerW,
    mode,
    feedLine,
    station,
    indoors,
    onHand,
  ]);
  const designs = alike.get(key) ?? designParts(facts, dimensions, undefined, designer);
  alike.set(key, designs);
  return chainOf(facts, dimensions, designs);
}
