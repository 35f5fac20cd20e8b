/**
 * What the operator is told. A number that is not known (yet) is null, never missing; a number somebody acts on has its working beside it.
 */
import * as z from 'zod/mini';
import { stepIds } from '../advice/steps';
import { bandIds } from '../catalog/band-ids';
import { provenances } from '../catalog/sourced';
import { Answers, DraftAnswers, Ohms } from '../design/answers';
import { antennaParts, peoplePlaces } from '../design/antenna-part';
import { ruleSetIds, systemIds } from '../design/choices';
import { Alternative, Build, Figures } from './device-schema';
import { FieldStudy } from './field-schema';
import { MechanicsPlan, VoltagePlan } from './mechanics-schema';
import { Source, Working } from './working-schema';

const text = z.string();
const maybe = z.nullable(z.number());

const why = z.array(z.strictObject({ code: text, text, source: Source }));
const port = z.enum(['balanced', 'unbalanced']);

export const ChainItem = z.strictObject({
  device: z.enum(['transformer', 'choke', 'line', 'tuner', 'arrester', 'radio']),
  at: z.enum(['feed-point', 'along-line', 'building-entry', 'radio']),
  distanceM: maybe,
  distanceMWorking: z.nullable(Working),
  ratio: maybe,
  kind: z.nullable(z.enum(['voltage', 'current'])),
  ports: z.nullable(z.strictObject({ in: port, out: port })),
  minimumOhm: maybe,
  minimumOhmBand: z.nullable(z.enum(bandIds)),
  line: z.nullable(text),
  lengthM: maybe,
  name: text,
  why,
  build: z.nullable(Build),
  figures: z.nullable(Figures),
  alternatives: z.array(Alternative),
  buy: text,
});
export type ChainItem = z.infer<typeof ChainItem>;

export const Plan = z.strictObject({
  schema: z.literal(1),
  system: z.nullable(z.enum(systemIds)),
  summary: text,
  /** Straight run the antenna asks of the site, m. */
  runM: maybe,
  /** Height the radiator itself takes up, from its lowest to its highest point, m. */
  riseM: maybe,
  needs: z.strictObject({
    balance: z.boolean(),
    transformation: z.nullable(z.strictObject({ ratio: z.number() })),
    isolation: z.boolean(),
  }),
  chain: z.array(ChainItem),
  notNeeded: z.array(z.strictObject({ device: text, why: text, code: text, source: Source })),
  verdicts: z.array(
    z.strictObject({ part: z.number(), verdict: z.enum(['fits', 'fits-elsewhere', 'too-small', 'wrong']), why: text }),
  ),
  /** Transformer and choke in one box, as shops offer it: whether it would do here. */
  offeredBox: z.nullable(
    z.strictObject({ ratio: z.number(), verdict: z.enum(['fits', 'fits-elsewhere', 'too-small', 'wrong']), why: text }),
  ),
  cuts: z.array(
    z.strictObject({
      piece: text,
      name: text,
      count: z.number(),
      finishedM: z.number(),
      /** One leg of a linked wire from the feed point to the outer end of this piece; null for every other. */
      legM: maybe,
      cutM: z.number(),
      toleranceM: z.number(),
      marksM: z.array(z.number()),
      stopRule: text,
      note: text,
      working: Working,
    }),
  ),
  parts: z.array(
    z.strictObject({
      /** What sort of thing it is, whatever its size: the code of its item. */
      kind: text,
      /** What it is, size and all, but not how much of it. Ticks are kept under it. */
      id: text,
      item: text,
      /** The item without its length. */
      name: text,
      quantity: z.number(),
      unit: z.enum(['piece', 'metre', 'set', 'pair', 'roll']),
      have: z.number(),
      /** All there is of it on hand, where several plans are shopped for. */
      owned: z.number(),
      for: text,
      /** What it is for without the place of that in the chain. */
      use: text,
      substitute: text,
      /** One does for all antennas that are put up one after the other. */
      again: z.boolean(),
      where: z.enum(['wire-and-rope', 'electrical', 'radio', 'hardware', 'made']),
    }),
  ),
  bands: z.array(
    z.strictObject({
      band: z.enum(bandIds),
      atMHz: z.number(),
      feedPoint: z.nullable(Ohms),
      swrAtFeedPoint: maybe,
      swrAtRadio: maybe,
      lineLossDb: maybe,
      deviceLossDb: maybe,
      entryCurrentMa: maybe,
      shieldCurrentDb: maybe,
      /** SWR at the radio over the band. */
      swrSweep: z.nullable(z.array(z.strictObject({ mhz: z.number(), swr: z.number() }))),
      tunerNeeded: z.nullable(z.boolean()),
      notes: z.array(text),
    }),
  ),
  warnings: z.array(
    z.strictObject({
      id: text,
      severity: z.enum(['stop', 'warn', 'note']),
      text,
      why: text,
      waysOut: z.array(text),
      /** For each way out the one answer it changes, with its new value; null where it is no change of an answer. */
      wayAnswers: z.array(z.nullable(DraftAnswers)),
      bands: z.array(z.enum(bandIds)),
    }),
  ),
  cautions: z.array(
    z.strictObject({
      id: text,
      lines: z.array(z.number()),
      before: z.enum(['site', 'up', 'launch', 'raise', 'transmit', 'links', 'leave', 'storm']),
      text,
      why: text,
      /** Each line on its own, for ticking. */
      lineTexts: z.array(z.strictObject({ act: text, reason: text, source: Source })),
      source: Source,
      distanceM: maybe,
      distanceMWorking: z.nullable(Working),
    }),
  ),
  exposure: z.array(
    z.strictObject({
      band: z.enum(bandIds),
      knowingM: maybe,
      knowingMWorking: z.nullable(Working),
      publicM: maybe,
      publicMWorking: z.nullable(Working),
      /** On the ground, seen from above: from where on a standing body meets the limits; 0 where it does everywhere. */
      groundKnowingM: maybe,
      groundKnowingMWorking: z.nullable(Working),
      groundPublicM: maybe,
      groundPublicMWorking: z.nullable(Working),
      ruleSet: z.enum(ruleSetIds),
      method: z.enum(['solved', 'screen', 'common-practice', 'refused']),
      decidedBy: text,
      decidedByCode: text,
      /** The part that decides for the public, and each part's own distance. */
      part: z.nullable(z.enum(antennaParts)),
      parts: z.array(
        z.strictObject({
          part: z.enum(antennaParts),
          knowingM: z.number(),
          knowingMWorking: Working,
          publicM: z.number(),
          publicMWorking: Working,
        }),
      ),
      /** Where people may be: the field as a part of its limit, 1 at the limit, and the peak power that brings it there. */
      places: z.array(
        z.strictObject({
          place: z.enum(peoplePlaces),
          knowingPart: z.number(),
          knowingMostW: z.number(),
          knowingMostWWorking: Working,
          publicPart: z.number(),
          publicMostW: z.number(),
          publicMostWWorking: Working,
        }),
      ),
      /** Each limit that was asked, V/m, A/m or W/m²; averagingMin 0: the crest. */
      limits: z.array(
        z.strictObject({
          tier: z.enum(['knowing', 'public']),
          kind: z.enum(['electric', 'magnetic', 'power']),
          limit: z.number(),
          averagingMin: z.number(),
          provenance: z.enum(provenances),
          source: Source,
        }),
      ),
      nearestPersonOk: z.nullable(z.boolean()),
      powerAtNearestPersonW: maybe,
      powerAtNearestPersonWWorking: z.nullable(Working),
    }),
  ),
  /** Null where nothing hangs outdoors. */
  mechanics: z.nullable(MechanicsPlan),
  voltages: z.array(VoltagePlan),
  steps: z.array(z.strictObject({ id: z.enum(stepIds), text, outdoor: z.boolean(), cautions: z.array(text) })),
  assumed: z.array(
    z.strictObject({
      key: text,
      value: z.union([z.string(), z.number(), z.boolean()]),
      why: text,
      effect: z.enum(['large', 'middle', 'small']),
    }),
  ),
  disputes: z.array(
    z.strictObject({ id: text, question: text, one: text, other: text, decides: text, house: text, source: Source }),
  ),
  /** Null in a plan from closed forms alone. */
  fieldStudy: z.nullable(FieldStudy),
  candidates: z.optional(
    z.array(
      z.strictObject({
        system: z.enum(systemIds),
        answers: Answers,
        rank: z.number(),
        /** Its fields were solved at this place; otherwise the score is the rules', and provisional. */
        solved: z.boolean(),
        score: z.strictObject({
          stops: z.number(),
          /** Height of the support it asks for, m. */
          supportM: z.number(),
          tooHigh: z.boolean(),
          bandsServed: z.number(),
          /** Bands served that need no tuner, and those that the tuner at hand does not reach. */
          bandsWithoutTuner: z.number(),
          bandsBeyondTuner: z.number(),
          /** Bands beyond the first that are set by hand at the wire. */
          bandsByHand: z.number(),
          /** Mean over the bands served of the power towards useful heights, dB on 100 W spread evenly over a sphere; null until solved. */
          usefulDb: maybe,
          /** On its worst band: part of the radio's power that is radiated; that leaves the feed line, until solved. */
          radiatedShare: maybe,
          /** On its worst band, rms per 100 W. */
          entryCurrentMa: maybe,
          partsToBuy: z.number(),
          /** One is about 1 dB: what is radiated less what tuners, current at the house and shopping cost. */
          points: z.number(),
        }),
        bands: z.array(
          z.strictObject({
            band: z.enum(bandIds),
            /** False where nothing at the radio end mends what the antenna shows. */
            served: z.boolean(),
            swrAtRadio: maybe,
            radiatedW: maybe,
            usefulDb: maybe,
            entryCurrentMa: maybe,
          }),
        ),
        /** Why it stands behind the one before it; of the first, before the next. */
        place: text,
        reasons: z.array(text),
      }),
    ),
  ),
});
export type Plan = z.infer<typeof Plan>;
