/** What decided a keep-out distance. Never that a place is without danger. */
import type { Message } from '../message';

const field = (kind: unknown): string =>
  kind === 'electric' ? 'electric field' : kind === 'magnetic' ? 'magnetic field' : 'power density';
const unit = (kind: unknown): string => (kind === 'electric' ? 'V/m' : kind === 'magnetic' ? 'A/m' : 'W/m²');

const partNames: Readonly<Record<string, string>> = {
  radiator: 'the wire',
  'feed-point': 'the feed point',
  'wire-end': 'the end of the wire',
  counterpoise: 'the counterpoise',
  radials: 'the radials',
  coax: 'the outside of the coax',
  house: 'the earth and mains leads',
};

/** A part of the antenna, as a sentence's subject. */
export const partName = (part: unknown): string => partNames[String(part)] ?? 'the antenna';

export const exposureWords = {
  screen: (d, f) =>
    `Decided by the ${field(d.kind)}, limit ${f.number(Number(d.limit))} ${unit(d.kind)}, on average power, with the published far-field formula.`,
  'screen-on-crest': (d, f) =>
    `Decided by the ${field(d.kind)}, limit ${f.number(Number(d.limit))} ${unit(d.kind)}, on the crest of your transmission: pauses and mode give no relief here.`,
  'near-wire': (d, f) =>
    `The far-field formula gives ${f.length(Number(d.screenM))}, but nearer than ${f.length(Number(d.farM))} it is no final answer. Until the field close to the wire is computed, the distance of common practice for ${f.number(Number(d.powerW))} W stands.`,
  'end-of-near-field': (d, f) =>
    `The far-field formula gives ${f.length(Number(d.screenM))}, but it holds only from ${f.length(Number(d.farM))} outward, so that distance stands until the field close to the wire is computed.`,
  solved: (d, f) =>
    `Computed from the currents on this antenna: ${partName(d.part)} decides, by its ${field(d.kind)} against ${f.number(Number(d.limit))} ${unit(d.kind)}, on average power.`,
  'solved-on-crest': (d, f) =>
    `Computed from the currents on this antenna: ${partName(d.part)} decides, by its ${field(d.kind)} against ${f.number(Number(d.limit))} ${unit(d.kind)}, on the crest of your transmission: pauses and mode give no relief here.`,
  'solved-touching': (d, f) =>
    `Computed from the currents on this antenna: every limit is met within reach of an arm already (${partName(d.part)} comes nearest, ${f.number(Number(d.percent), 2)} % of the limit for the ${field(d.kind)}). The distance stands because nobody may touch any part.`,
  'small-loop': (d, f) =>
    `A loop of ${f.length(Number(d.roundM))} round is less than half a wave. The far-field formula gives distances that are too short for it, so no distance is given: have it assessed with your national method.`,
} as const satisfies Readonly<Record<string, Message>>;

/** For people who stand on the ground, which is often much less than from the wire itself. */
export const onTheGround: Message = (d, f) =>
  Number(d.groundPublicM) === 0
    ? 'Standing on the ground, more than an arm’s reach from every part, everybody is within the limits.'
    : `Standing on the ground, seen from above: people who know ${f.length(Number(d.groundKnowingM))}, everybody else ${f.length(Number(d.groundPublicM))}.`;
