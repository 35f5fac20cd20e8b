/** What the field solution of this very antenna says, as it stands in the plan. Currents are rms mA per 100 W accepted at the feed point. */
import * as z from 'zod/mini';
import { bandIds } from '../catalog/band-ids';

const text = z.string();
const maybe = z.nullable(z.number());
const band = z.enum(bandIds);
const chokeDuty = z.strictObject({ distanceM: z.number(), ohm: z.number(), voltageV: z.number(), heatW: z.number() });
/** Outside of the coax, rms per 100 W accepted; decibels relative to the feed current. */
const shieldState = {
  entryMa: z.number(),
  entryDb: z.number(),
  radioMa: z.number(),
  radioDb: maybe,
  /** Outdoors, at the foot of the drop. */
  footMa: maybe,
  chokes: z.array(chokeDuty),
};
const chokeSet = z.strictObject({
  chokes: z.array(
    z.strictObject({
      role: z.enum(['antenna', 'entry', 'radio', 'line-end', 'further']),
      distanceM: z.number(),
      ohm: z.number(),
    }),
  ),
  worstMa: z.number(),
  worstBand: band,
  heatW: z.number(),
});
const worst = z.strictObject({ band, swr: z.number() });
/** Shorter arm as part of the whole wire. */
const solvedFeed = z.strictObject({
  fraction: z.number(),
  ruleFraction: z.number(),
  told: z.boolean(),
  swr: z.array(z.strictObject({ band, rule: z.number(), chosen: z.number() })),
  better: z.nullable(z.strictObject({ fraction: z.number(), worst, toldWorst: worst })),
});
/** Heat per 100 W in the hottest choke on the worst band. */
const solvedReturn = z.strictObject({
  piece: z.enum(['radial', 'counterpoise']),
  by: z.enum(['resonance', 'choke-heat']),
  wires: z.array(z.strictObject({ ruleM: z.number(), chosenM: z.number() })),
  heatW: z.nullable(z.strictObject({ rule: z.number(), chosen: z.number() })),
});
/** Less noise at the receiver than with no choke, dB; below 0 more. */
const reception = z.nullable(z.strictObject({ fromHouseDb: z.number(), outdoorsDb: maybe }));
const spoke = z.strictObject({ deg: z.number(), db: z.number() });

export const FieldStudy = z.strictObject({
  bands: z.array(
    z.strictObject({
      band,
      feedCurrentA: maybe,
      noChoke: z.nullable(z.strictObject(shieldState)),
      planned: z.nullable(z.strictObject(shieldState)),
      owned: z.nullable(
        z.strictObject({
          ...shieldState,
          places: z.array(z.strictObject({ part: z.number(), distanceM: z.number() })),
        }),
      ),
      reception,
      receptionOwned: reception,
      efficiency: maybe,
      gainDbi: maybe,
      takeOffDeg: maybe,
      /** Radiated of 100 W that leave the radio, after line, transformer and chokes; a tuner's own loss is left out. */
      radiatedW: maybe,
      /** Part of what is radiated up to 15°, 15 to 35°, 35 to 60° and above. */
      elevationShares: z.nullable(z.array(z.number())),
      elevation: z.nullable(z.array(spoke)),
      azimuth: z.nullable(z.array(spoke)),
      errorEstimate: maybe,
      text: z.array(text),
    }),
  ),
  lengths: z.nullable(
    z.strictObject({
      ruleM: z.number(),
      chosenM: z.number(),
      /** (chosen − rule) / rule. */
      difference: z.number(),
      by: z.enum(['resonance', 'worst-swr', 'told', 'rule']),
      pairs: z.array(z.strictObject({ band, ruleM: z.number(), chosenM: z.number(), rideSwr: z.nullable(z.number()) })),
      /** `alone`: the lowest SWR on that band at any length near this one. */
      swr: z.array(z.strictObject({ band, rule: z.number(), chosen: z.number(), alone: maybe })),
      /** Where the SWR of a wire for several bands dips. */
      dips: z.array(z.strictObject({ band, mhz: z.number() })),
      feed: z.nullable(solvedFeed),
      returns: z.nullable(solvedReturn),
      text: z.array(text),
    }),
  ),
  chokes: z.nullable(
    z.strictObject({
      goalMa: z.number(),
      goalMet: z.boolean(),
      house: chokeSet,
      chosen: chokeSet,
      tenMa: z.nullable(chokeSet),
      /** Chosen against house at the entry, dB; negative is less current. */
      differenceDb: z.number(),
      /** The chosen ones as wound: with cores from the worse end of their tolerance, and with the maker's figures. */
      built: z.nullable(
        z.strictObject({
          worstMa: z.number(),
          worstBand: band,
          nominalMa: z.number(),
          goalMet: z.boolean(),
          /** With the usual ohms, where more were asked for because of it. */
          beforeMa: maybe,
        }),
      ),
      /** Owned chokes that were not tried in every place. */
      ownedUntried: z.number(),
      text: z.array(text),
    }),
  ),
  confidence: z.array(text),
});
export type FieldStudy = z.infer<typeof FieldStudy>;
