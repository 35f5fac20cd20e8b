/**
 * What disputed practice comes to on this very antenna: both positions computed side by side. mA and W per 100 W; the rules scale them.
 *
 * D1, D2, D3 on the lowest band, D4 over all, D5 on the band where a reactive choke does worst.
 */

import { isEndFed } from '../../advice/chain/choke-minimum';
import { COUNTERPOISE_WAVES } from '../../advice/choke-distance';
import type { DisputeId } from '../../advice/disputes';
import type { Facts } from '../../advice/facts';
import type { Data, Link } from '../../advice/finding';
import { runOfChain } from '../../advice/line-run';
import { type Complex, complex, scale } from '../../base/complex';
import type { Layout } from '../../geometry/layout';
import { tNetworkLossDb } from '../../physics/t-network';
import { bandShield, type PreparedBand, prepareBand } from './band-study';
import { fieldSite, type PlacedChoke } from './field-site';
import type { FieldInstrument } from './instrument';
import { POWER_W } from './shield-currents';

export interface Studied {
  readonly facts: Facts;
  readonly layout: Layout;
  readonly chain: readonly Link[];
  /** Chokes as planned, the antenna-end one first. */
  readonly planned: readonly PlacedChoke[];
  readonly ready: readonly PreparedBand[];
  /** Solved impedance at the feed point of each band. */
  readonly feedPoints: readonly { readonly mhz: number; readonly z: Complex }[];
}

export type DisputeData = Readonly<Partial<Record<DisputeId, Data>>>;

export async function settleDisputes(studied: Studied, instrument: FieldInstrument): Promise<DisputeData> {
  const { facts } = studied;
  const coax = facts.lineKind === 'coax';
  const found: Partial<Record<DisputeId, Data>> = {};
  const put = (id: DisputeId, data: Data | null): void => {
    if (data !== null) found[id] = { ...data, solvedHere: true };
  };
  if (coax && facts.system === 'off-centre-fed') put('D1', await offCentreType(studied, instrument));
  if (coax && isEndFed(facts.system)) put('D2', await endFedPlaces(studied, instrument));
  if (coax && facts.system === 'end-fed-half-wave') put('D3', shieldAsCounterpoise(studied));
  if (facts.lineKind === 'open-wire') put('D4', fourToOne(studied));
  if (coax) put('D5', resistiveOrReactive(studied));
  return found;
}

const ohms = (distanceM: number, r: number, x = 0): PlacedChoke => ({ distanceM, z: complex(r, x) });

/** The shield of another layout on the lowest band, its ports at these places. */
async function shieldOf(
  { facts }: Studied,
  layout: Layout,
  placesM: readonly number[],
  instrument: FieldInstrument,
): Promise<ReturnType<typeof bandShield> | null> {
  const site = fieldSite(layout, facts.settled.ground, placesM);
  return site === null ? null : bandShield(await prepareBand(instrument, site, facts.bands[0]));
}

/** Common-mode impedance of a usual 4:1 current transformer, and of the chokes compared, Ω. */
const CURRENT_TYPE_OHM = 2500;
const CHOKE_OHM = 5000;

async function offCentreType(studied: Studied, instrument: FieldInstrument): Promise<Data | null> {
  const { facts, layout, planned, ready } = studied;
  const [first, entry] = planned;
  const [lowest] = ready;
  if (!layout.shieldAtMidGap || first === undefined || entry === undefined || lowest === undefined) return null;
  const voltage = bandShield(lowest);
  const current = await shieldOf(studied, { ...layout, shieldAtMidGap: false }, [0, entry.distanceM], instrument);
  const below = ohms(first.distanceM, CHOKE_OHM);
  const house = ohms(entry.distanceM, CHOKE_OHM);
  const inTransformer = ohms(0, CURRENT_TYPE_OHM);
  const [one, both] = [voltage.with([below]), voltage.with([below, house])];
  const [alone, withEntry] = [current?.with([inTransformer]), current?.with([inTransformer, house])];
  if (one === null || both === null || !alone || !withEntry) return null;
  return {
    band: facts.bands[0].band,
    currentAloneMa: alone.entryMa,
    voltageChokeMa: one.entryMa,
    currentEntryMa: withEntry.entryMa,
    voltageEntryMa: both.entryMa,
    transformerHeatW: withEntry.chokes[0]?.heatW ?? 0,
    chokeHeatW: both.chokes[0]?.heatW ?? 0,
  };
}

/** Nearer to the house than this the two chokes of a comparison are one. */
const APART_M = 1;

async function endFedPlaces(studied: Studied, instrument: FieldInstrument): Promise<Data | null> {
  const { facts, layout, planned } = studied;
  const entryM = planned.find(({ distanceM }) => distanceM > 1)?.distanceM;
  const lastM = planned.at(1)?.distanceM ?? entryM;
  if (lastM === undefined) return null;
  const [{ band, wavelengthM }] = facts.bands;
  const twentiethM = COUNTERPOISE_WAVES * wavelengthM;
  if (twentiethM > lastM - APART_M) return null;
  const wires = layout.counterpoisesM.length > 0 ? layout.counterpoisesM : [twentiethM];
  const withWires: Layout = { ...layout, returnPath: 'counterpoise-wire', counterpoisesM: wires };
  const bare: Layout = { ...layout, returnPath: 'coax-shield', counterpoisesM: [] };
  const wired = await shieldOf(studied, withWires, [0, lastM], instrument);
  const alone = await shieldOf(studied, bare, [0, twentiethM, lastM], instrument);
  const ma = (shield: typeof wired, ...chokes: PlacedChoke[]): number | undefined => shield?.with(chokes)?.entryMa;
  const box = ohms(0, CHOKE_OHM);
  const house = ohms(lastM, CHOKE_OHM);
  const twentieth = ohms(twentiethM, CHOKE_OHM);
  const boxShare = (alone?.with([box])?.chokes[0]?.heatW ?? Number.NaN) / 100;
  const figures = {
    wiresMa: ma(wired),
    wiresBoxMa: ma(wired, box),
    wiresBothMa: ma(wired, box, house),
    boxMa: ma(wired, box),
    twentiethMa: ma(alone, twentieth),
    houseMa: ma(alone, house),
    bothMa: ma(alone, twentieth, house),
  };
  const known = Object.entries(figures).flatMap(([key, value]) => (value === undefined ? [] : [[key, value] as const]));
  if (known.length < Object.keys(figures).length || !Number.isFinite(boxShare)) return null;
  return { band, distanceM: twentiethM, boxShare, wireM: layout.radiatorM, ...Object.fromEntries(known) };
}

/** What leaves the wire's end by the shield: the feed current itself, and what of it enters. */
function shieldAsCounterpoise({ facts, planned, ready, feedPoints }: Studied): Data | null {
  const [lowest] = ready;
  const [feedPoint] = feedPoints;
  if (lowest === undefined || feedPoint === undefined) return null;
  const shield = bandShield(lowest);
  const [none, both] = [shield.with([]), shield.with(planned)];
  if (none === null || both === null) return null;
  const endCurrentMa = 1000 * Math.sqrt(POWER_W / feedPoint.z.re);
  return { band: facts.bands[0].band, endCurrentMa, houseMa: none.entryMa, bothMa: both.entryMa };
}

/** Tuner loss with the line's end as it is and through an ideal 4:1, over the wanted bands. */
function fourToOne({ facts, chain, feedPoints }: Studied): Data | null {
  const line = chain.filter((link) => link.device === 'line' && link.line === facts.settled.feedLine);
  const bands = feedPoints.map(({ mhz, z }, i) => {
    const end = runOfChain(line, z, mhz).atRadio;
    const [one, four] = [end, scale(end, 1 / 4)].map((load) => tNetworkLossDb(load, mhz * 1e6));
    return { band: facts.bands[i]?.band ?? '', one: one ?? null, four: four ?? null };
  });
  const both = bands.flatMap(({ band, one, four }) =>
    one === null || four === null ? [] : [{ band, one, four, gain: one - four }],
  );
  const most = (sign: 1 | -1) =>
    both.reduce<(typeof both)[number] | null>(
      (best, each) => (sign * each.gain > Math.max(0, best === null ? 0 : sign * best.gain) ? each : best),
      null,
    );
  const [better, worse] = [most(1), most(-1)];
  return {
    cases: bands.length,
    ...(better === null ? {} : { gainBand: better.band, gainOneDb: better.one, gainFourDb: better.four }),
    ...(worse === null ? {} : { costBand: worse.band, costOneDb: worse.one, costFourDb: worse.four }),
    outOfReachOne: bands.filter(({ one }) => one === null).length,
    outOfReachFour: bands.filter(({ four }) => four === null).length,
  };
}

const COMPARED_OHM = 1000;

/** 1 kΩ of each kind in the antenna-end place, alone, on the band where the reactive ones raise the entry current most. */
function resistiveOrReactive({ planned, ready }: Studied): Data | null {
  const [first] = planned;
  if (first === undefined) return null;
  const bands = ready.flatMap((band) => {
    const shield = bandShield(band);
    const ma = (chokes: readonly PlacedChoke[]): number => shield.with(chokes)?.entryMa ?? Number.NaN;
    const kind = (r: number, x: number): number => ma([ohms(first.distanceM, r, x)]);
    const none = ma([]);
    const found = {
      band: band.at.band,
      comparedOhm: COMPARED_OHM,
      noneMa: none,
      resistiveMa: kind(COMPARED_OHM, 0),
      inductiveMa: kind(0, COMPARED_OHM),
      capacitiveMa: kind(0, -COMPARED_OHM),
    };
    return none > 0 ? [found] : [];
  });
  const raised = (each: (typeof bands)[number]): number => Math.max(each.inductiveMa, each.capacitiveMa) / each.noneMa;
  const [start, ...others] = bands;
  return start === undefined
    ? null
    : others.reduce((worst, each) => (raised(each) > raised(worst) ? each : worst), start);
}
