/**
 * What each wanted band will show: impedance, standing-wave ratio, line loss, and whether a tuner is needed. Closed forms first; what a field
 * solution or the components tell replaces the rule's value or fills what the rules cannot know.
 */
import { type Complex, complex } from '../base/complex';
import type { System } from '../design/choices';
import { swr } from '../physics/line';
import { throughIdeal } from '../physics/transformer';
import type { Dimensions } from './dimensions';
import type { BandFacts, Facts } from './facts';
import { feedPointOf } from './feed-impedance';
import { type FieldFacts, fieldOf } from './field-facts';
import type { BandFinding, Link, Said } from './finding';
import { deviceLossOn, REACH, runOfChain, SYSTEM_OHM } from './line-run';

export interface Known {
  readonly field?: FieldFacts | undefined;
}

const MOST_SWR = 999;

/** A ratio beyond any meter's scale is kept as 999, so that a plan holds only numbers. */
const stated = (value: number): number => Math.min(value, MOST_SWR);

export function bandsOf(
  facts: Facts,
  dimensions: Dimensions,
  chain: readonly Link[],
  { field }: Known = {},
): BandFinding[] {
  return facts.bands.map((at) => bandOf(facts, dimensions, chain, at, field));
}

function bandOf(
  facts: Facts,
  dimensions: Dimensions,
  chain: readonly Link[],
  at: BandFacts,
  field: FieldFacts | undefined,
): BandFinding {
  const solved = fieldOf(field, at.band);
  const byRule = feedPointOf(facts, at, dimensions);
  const z = solved.feedPoint === undefined ? (byRule?.z ?? null) : complex(solved.feedPoint.r, solved.feedPoint.x);
  const head = { band: at.band, atMHz: at.focusMHz };
  const currents = {
    entryCurrentMa: solved.entryCurrentMa ?? null,
    shieldCurrentDb: solved.shieldCurrentDb ?? null,
  };
  if (z === null || !(z.re > 0)) {
    const nothing = { feedPoint: null, swrAtFeedPoint: null, swrAtRadio: null, lineLossDb: null, deviceLossDb: null };
    return {
      ...head,
      ...nothing,
      ...currents,
      swrSweep: null,
      tunerNeeded: null,
      notes: [{ code: 'impedance-unknown', data: {} }],
    };
  }
  const run = runOfChain(chain, z, at.focusMHz);
  const swrAtFeedPoint = stated(swr(atLineEnd(chain, z) ?? run.afterTransformer, SYSTEM_OHM));
  const swrAtRadio = stated(swr(run.atRadio, SYSTEM_OHM));
  const swrSweep = solved.sweep?.map((point) => swrAtShack(chain, point)) ?? null;
  const tunesThere = chain.some(({ device, at: place }) => device === 'tuner' && place === 'feed-point');
  return {
    ...head,
    feedPoint: { r: z.re, x: z.im },
    swrAtFeedPoint,
    swrAtRadio,
    lineLossDb: run.lossDb,
    deviceLossDb: deviceLossOn(chain, at.band),
    ...currents,
    swrSweep,
    tunerNeeded: tunesThere ? swrAtFeedPoint > REACH.none : swrAtRadio > REACH.none,
    notes: notesOf(
      at,
      solved.feedPoint !== undefined,
      byRule?.rough === true,
      swrAtRadio,
      dimensions,
      hasDips(facts) ? swrSweep : null,
    ),
  };
}

/** What a transformer at the far end of a line that fits the antenna makes of it: there the line's own ohms are the match. Null without one. */
function atLineEnd(chain: readonly Link[], z: Complex): Complex | null {
  const transformer = chain.find(({ device, at }) => device === 'transformer' && at !== 'feed-point');
  return transformer?.ratio == null ? null : throughIdeal(z, transformer.ratio);
}

/** Where a tuner works on every band whatever the wire's resonances, a dip is nothing to look for. */
const withoutDips: readonly System[] = ['open-wire-doublet', 'non-resonant-end-fed', 'non-resonant-vertical'];
const hasDips = ({ system }: Facts): boolean => !withoutDips.includes(system);

/** A dip this near the focus is no news, as part of it. */
const DIP_ON_FOCUS = 0.005;

/** Where the dip of a solved sweep lies; at the edge of the band it may lie anywhere beyond. */
function dipNotes({ focusMHz }: BandFacts, swrSweep: NonNullable<BandFinding['swrSweep']>): Said[] {
  const dip = swrSweep.reduce((least, point) => (point.swr < least.swr ? point : least), {
    mhz: focusMHz,
    swr: MOST_SWR,
  });
  const data = { resonanceMHz: dip.mhz, focusMHz };
  if (dip.mhz === swrSweep[0]?.mhz) return [{ code: 'dip-below-band', data }];
  if (dip.mhz === swrSweep.at(-1)?.mhz) return [{ code: 'dip-above-band', data }];
  if (Math.abs(dip.mhz / focusMHz - 1) <= DIP_ON_FOCUS) return [];
  return [{ code: dip.mhz > focusMHz ? 'dip-solved-above' : 'dip-solved-below', data }];
}

/** Line and transformer make another SWR of the feed point's at every frequency. */
function swrAtShack(chain: readonly Link[], { mhz, r, x }: { mhz: number; r: number; x: number }) {
  return { mhz, swr: stated(swr(runOfChain(chain, complex(r, x), mhz).atRadio, SYSTEM_OHM)) };
}

function notesOf(
  at: BandFacts,
  isSolved: boolean,
  isRough: boolean,
  swrAtRadio: number,
  dimensions: Dimensions,
  swrSweep: BandFinding['swrSweep'],
): Said[] {
  const notes: Said[] = [];
  if (!isSolved) notes.push({ code: isRough ? 'order-of-size' : 'closed-form', data: {} });
  if (swrAtRadio > REACH.none) notes.push({ code: 'above-limit', data: { swr: swrAtRadio, limit: REACH.none } });
  if (swrSweep !== null) return [...notes, ...dipNotes(at, swrSweep)];
  const harmonic = dimensions.harmonics.find(({ band }) => band === at.band);
  if (harmonic !== undefined && Math.abs(harmonic.offset) > 0.005) {
    const { resonanceMHz, offset } = harmonic;
    notes.push({ code: offset > 0 ? 'dip-above' : 'dip-below', data: { resonanceMHz, focusMHz: at.focusMHz } });
  }
  return notes;
}
