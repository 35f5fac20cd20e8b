/**
 * What an operator has answered about one antenna. Types, saved records, links and imported files all follow from this schema.
 * Units stand in the keys. An absent key means "not sure" and takes its default (settle.ts).
 */
import * as z from 'zod/mini';
import { bandIds } from '../catalog/band-ids';
import { coreIds } from '../catalog/core-ids';
import { groundIds } from '../catalog/ground-ids';
import { feedLineIds, lineIds } from '../catalog/line-ids';
import { modeIds } from '../catalog/modes';
import { wireIds } from '../catalog/wire-ids';
import {
  feedPositionIds,
  houseEarthIds,
  lengthChoiceIds,
  radiatorIds,
  returnPathIds,
  ruleSetIds,
  shackEndIds,
} from './choices';

/** Newest version of the answers record; answers-history.ts brings older ones up to it. */
export const answersVersion = 1;

const positive = (most: number) => z.number().check(z.positive(), z.lte(most));
const atLeastZero = (most: number) => z.number().check(z.gte(0), z.lte(most));
const count = (least: number, most: number) => z.int().check(z.gte(least), z.lte(most));
const length = positive(10_000);
const height = atLeastZero(300);

export const PartOnHand = z.discriminatedUnion('part', [
  z.strictObject({
    part: z.literal('transformer'),
    ratio: positive(200),
    kind: z.enum(['voltage', 'current']),
    ratingW: z.optional(positive(10_000)),
  }),
  z.strictObject({ part: z.literal('two-in-one'), ratio: positive(200), ratingW: z.optional(positive(10_000)) }),
  z.strictObject({
    part: z.literal('choke'),
    core: z.enum(coreIds),
    count: count(1, 20),
    turns: count(1, 60),
    line: z.enum(lineIds),
  }),
  z.strictObject({ part: z.literal('beads'), count: count(1, 200), line: z.enum(lineIds) }),
  z.strictObject({ part: z.literal('coil'), turns: count(1, 60), diameterM: positive(2), line: z.enum(lineIds) }),
  z.strictObject({ part: z.literal('core'), core: z.enum(coreIds), count: count(1, 50) }),
  z.strictObject({ part: z.literal('wire'), wire: z.enum(wireIds), lengthM: length }),
  z.strictObject({ part: z.literal('line'), line: z.enum(lineIds), lengthM: length }),
]);
export type PartOnHand = z.infer<typeof PartOnHand>;

export const Ohms = z.strictObject({ r: atLeastZero(100_000), x: z.number().check(z.gte(-100_000), z.lte(100_000)) });
export type Ohms = z.infer<typeof Ohms>;

export const Answers = z.strictObject({
  schema: z.optional(count(1, answersVersion)),
  name: z.optional(z.string().check(z.minLength(1), z.maxLength(80))),
  units: z.optional(z.enum(['metric', 'imperial'])),
  region: z.optional(z.literal([1, 2, 3])),
  country: z.optional(z.string().check(z.regex(/^[A-Z]{2}$/))),
  ruleSet: z.optional(z.enum(ruleSetIds)),
  station: z.optional(z.enum(['home', 'portable'])),
  indoors: z.optional(z.boolean()),
  bands: z.array(z.enum(bandIds)).check(z.minLength(1), z.maxLength(bandIds.length)),
  focusMHz: z.optional(z.partialRecord(z.enum(bandIds), positive(1_000_000_000))),
  powerW: z.optional(positive(3000)),
  mode: z.optional(z.enum(modeIds)),
  transmitShare: z.optional(atLeastZero(1)),
  radiator: z.optional(z.enum(radiatorIds)),
  fedAt: z.optional(z.enum(feedPositionIds)),
  feedFraction: z.optional(z.number().check(z.gte(0.02), z.lte(0.5))),
  lengthChoice: z.optional(z.enum(lengthChoiceIds)),
  wireLengthM: z.optional(length),
  loopShape: z.optional(z.enum(['square', 'triangle'])),
  loopPlane: z.optional(z.enum(['upright', 'flat'])),
  feedImpedance: z.optional(Ohms),
  balanced: z.optional(z.boolean()),
  spanM: z.optional(length),
  heightM: z.optional(height),
  endHeightM: z.optional(height),
  supportHeightM: z.optional(height),
  wire: z.optional(z.enum(wireIds)),
  ground: z.optional(z.enum(groundIds)),
  returnPath: z.optional(z.enum(returnPathIds)),
  radialCount: z.optional(count(0, 120)),
  radialLengthM: z.optional(length),
  counterpoiseM: z.optional(length),
  feedLine: z.optional(z.enum(feedLineIds)),
  feedLineLengthM: z.optional(length),
  feedLineRoute: z.optional(z.enum(['square', 'along'])),
  runHeightM: z.optional(height),
  entryDistanceM: z.optional(atLeastZero(10_000)),
  houseEarth: z.optional(z.enum(houseEarthIds)),
  shackEnd: z.enum(shackEndIds),
  onHand: z.optional(z.array(PartOnHand).check(z.maxLength(200))),
  rfInShack: z.optional(z.boolean()),
  nearestPersonM: z.optional(atLeastZero(10_000)),
  nearestPowerLineM: z.optional(atLeastZero(10_000)),
});
export type Answers = z.infer<typeof Answers>;
export const AnswerKey = z.keyof(Answers);
export type AnswerKey = z.infer<typeof AnswerKey>;
export const isAnswerKey = (text: string): text is AnswerKey => Object.hasOwn(Answers.shape, text);

/** Answers while they are being given: nothing is required yet. */
export const DraftAnswers = z.partial(Answers);
export type DraftAnswers = z.infer<typeof DraftAnswers>;
