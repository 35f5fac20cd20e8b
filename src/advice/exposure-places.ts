/**
 * The places of this site where people may be: at the radio, along the coax, under the wire, at its ends, by counterpoise and radials. At each,
 * the strongest field over the height of a body as a part of its limit, and the power that would bring it there.
 */
import { type ExposureTest, type Tier, testsFor } from './exposure-tests';
import { statedWatts, type Watts, wattsAtLimit } from './exposure-working';
import type { BandFacts, Facts } from './facts';
import type { NearField } from './field-facts';
import type { ExposurePlace } from './finding';
import { FIELD_MARGIN, FIELD_POWER_W } from './near-field';

type PlaceField = NearField['places'][number];

interface AtPlace {
  readonly part: number;
  readonly most: Watts;
}

export const exposurePlaces = (facts: Facts, at: BandFacts, { places }: NearField): ExposurePlace[] =>
  places.flatMap((field) => {
    const knowing = atPlace(facts, at, field, 'knowing');
    const everyone = atPlace(facts, at, field, 'public');
    if (knowing === null || everyone === null) return [];
    return [
      {
        place: field.place,
        knowingPart: knowing.part,
        knowingMostW: knowing.most.watts,
        knowingMostWWorking: knowing.most.working,
        publicPart: everyone.part,
        publicMostW: everyone.most.watts,
        publicMostWWorking: everyone.most.working,
      },
    ];
  });

/** The limit that the field of a place comes nearest to; null where a rule set has none for fields. */
function atPlace(facts: Facts, at: BandFacts, field: PlaceField, tier: Tier): AtPlace | null {
  const judged = testsFor(facts.settled.ruleSet, tier, at.focusMHz).flatMap((test) =>
    test.kind === 'power' ? [] : [{ test, part: partOfLimit(facts, test, field[test.kind]), value: field[test.kind] }],
  );
  const [first] = judged;
  if (first === undefined) return null;
  const { test, part, value } = judged.reduce((worst, each) => (each.part > worst.part ? each : worst), first);
  const unit = test.kind === 'electric' ? 'V/m' : 'A/m';
  const inputs = { F1: { value, unit, from: 'solved' } } as const;
  return { part, most: statedWatts(wattsAtLimit(facts, test, { value, formula: 'F1', inputs })) };
}

/** Field as a part of its limit, margin included: 1 at the limit. */
function partOfLimit({ averageFactor, settled }: Facts, { onCrest, limit }: ExposureTest, field: number): number {
  const share = onCrest ? 1 : averageFactor * settled.transmitShare;
  return (FIELD_MARGIN * field * Math.sqrt((settled.powerW * share) / FIELD_POWER_W)) / limit;
}
