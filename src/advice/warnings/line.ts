/** The feed line: ratings, loss, weather, and what a low SWR hides. */
import { complex } from '../../base/complex';
import { lines } from '../../catalog/lines';
import { screwPlugPeakV } from '../../catalog/screw-plug';
import { lineDataOf, lineLimitsOf } from '../../physics/catalogue-line';
import { lineConstants, swr } from '../../physics/line';
import { lineStress, lineUse } from '../../physics/line-stress';
import { throughIdeal } from '../../physics/transformer';
import type { BandFacts } from '../facts';
import type { BandFinding, Warning } from '../finding';
import { type LineSection, runOfChain, SYSTEM_OHM } from '../line-run';
import { bandPairs, type Judged, type Rule, type Way, warn } from './warning';

interface Use {
  readonly at: BandFacts;
  readonly line: string;
  readonly what: 'voltage' | 'current' | 'power' | 'plug';
  readonly use: number;
}

function usesOf({ facts, chain }: Judged, at: BandFacts, finding: BandFinding): Use[] {
  if (finding.feedPoint === null) return [];
  const run = runOfChain(chain, complex(finding.feedPoint.r, finding.feedPoint.x), at.focusMHz);
  // What the sections nearer to the radio lose never reaches the ones behind them: judged as if it did, on the careful side.
  return run.sections.flatMap((section) =>
    sectionUses(section, at, facts.settled.powerW, facts.averageW / facts.settled.powerW),
  );
}

function sectionUses({ line, lengthM, load }: LineSection, at: BandFacts, powerW: number, averageShare: number): Use[] {
  const entry = lines[line];
  const data = lineDataOf(entry);
  const hz = at.focusMHz * 1e6;
  const stress = lineStress(lineConstants(data, hz), lengthM, load, powerW);
  const use = lineUse(data, lineLimitsOf(entry), stress, hz, averageShare);
  const plug = entry.kind === 'coax' ? (Math.SQRT2 * stress.maxVoltageV) / screwPlugPeakV.value : null;
  const all = [
    ['voltage', use.voltage],
    ['current', use.current],
    ['power', use.power],
    ['plug', plug],
  ] as const;
  return all.flatMap(([what, part]) =>
    part === null || !Number.isFinite(part) ? [] : [{ at, line, what, use: part }],
  );
}

export const lineOverrated: Rule = (judged) => {
  const uses = bandPairs(judged).flatMap(([at, finding]) => usesOf(judged, at, finding));
  const over = uses.filter(({ use }) => use > 1);
  const worstOf = new Map<string, Use>();
  for (const use of over) {
    const key = `${use.line} ${use.what}`;
    const known = worstOf.get(key);
    if (known === undefined || use.use > known.use) worstOf.set(key, use);
  }
  const { lineKind } = judged.facts;
  const { powerW } = judged.facts.settled;
  return [...worstOf.values()].map(({ at, line, what, use }) => {
    // Volts and amps grow with the square root of the power, heat with the power.
    const mostW = what === 'power' ? powerW / use : powerW / use ** 2;
    const data = { band: at.band, line, what, percent: 100 * use, powerW, mostW, plugPeakV: screwPlugPeakV.value };
    const lessPower: Way = ['less-power', { mostW }];
    // A thicker line has the same plug.
    const cure = what === 'plug' ? 'other-plug' : 'heavier-line';
    // On open-wire line the SWR is meant to be high; where its maxima fall is a matter of its length.
    const calmer = lineKind === 'open-wire' ? 'other-length' : 'lower-swr';
    const ways: readonly Way[] = what === 'plug' ? [calmer, lessPower, cure] : [cure, lessPower, calmer];
    return warn('line-overrated', data, ways, `over-${what}`);
  });
};

const NOTABLE_DB = 1;

const lostW = (powerW: number, lossDb: number): number => powerW * (1 - 10 ** (-lossDb / 10));

export const lineLoss: Rule = (judged) => {
  const lossy = bandPairs(judged).filter(([, { lineLossDb }]) => (lineLossDb ?? 0) > NOTABLE_DB);
  const [most] = [...lossy].sort(([, a], [, b]) => (b.lineLossDb ?? 0) - (a.lineLossDb ?? 0));
  if (most === undefined) return [];
  const [at, { lineLossDb }] = most;
  const lossDb = lineLossDb ?? 0;
  const { powerW, feedLine, feedLineLengthM } = judged.facts.settled;
  const data = {
    band: at.band,
    bands: lossy.map(([{ band }]) => band).join(','),
    lossDb,
    lostW: lostW(powerW, lossDb),
    lostOf100W: lostW(100, lossDb),
    powerW,
    line: feedLine,
    lineM: feedLineLengthM,
  };
  return [warn('line-loss', data, lessLoss(judged, at, (most[1].swrAtFeedPoint ?? 1) > 3))];
};

/** No wire that is fed against something takes open-wire line, and one cut away from resonance has no match to mend. */
function lessLoss({ facts, dimensions }: Judged, { wavelengthM }: BandFacts, mismatched: boolean): readonly Way[] {
  const { lineKind, settled, system, balanced } = facts;
  if (lineKind === 'open-wire') {
    const wider: readonly Way[] = settled.feedLine === 'open-wire' ? [] : ['wider-line'];
    const isShort = dimensions.radiator.metres < wavelengthM / 2;
    return [...wider, isShort ? 'longer-wire' : 'other-length', 'shorter-line'];
  }
  if (!mismatched) return ['heavier-line', 'shorter-line'];
  if (system.startsWith('non-resonant')) return ['tuner-at-feed-point', 'heavier-line', 'shorter-line'];
  return balanced ? ['mend-match', 'open-wire', 'shorter-line'] : ['mend-match', 'heavier-line', 'shorter-line'];
}

const HIDING_DB = 1;
/** A reading that people take for a good antenna, and how much worse the antenna is then. */
const LOOKS_GOOD = 3;
const IS_WORSE = 1.5;

export const swrIsNotProof: Rule = (judged) => {
  // A transforming line (75 Ω or open wire) changes the reading without loss.
  if (judged.facts.line?.z0Ohm.value !== SYSTEM_OHM) return [];
  return bandPairs(judged).flatMap(([at, finding]): Warning[] => {
    const { swrAtRadio, lineLossDb, deviceLossDb } = finding;
    const antennaSwr = antennaSwrOf(judged, finding);
    if (antennaSwr === null || swrAtRadio === null || lineLossDb === null) return [];
    const lossDb = lineLossDb + (deviceLossDb ?? 0);
    const hides = lossDb >= HIDING_DB && antennaSwr >= IS_WORSE * swrAtRadio;
    if (!hides || swrAtRadio > LOOKS_GOOD) return [];
    const data = {
      band: at.band,
      swr: swrAtRadio,
      feedSwr: Math.min(antennaSwr, MOST_SWR),
      lossDb,
      lineDb: lineLossDb,
      hasDevices: deviceLossDb !== null,
      deviceDb: deviceLossDb ?? 0,
      lostW: lostW(judged.facts.settled.powerW, lossDb),
      powerW: judged.facts.settled.powerW,
    };
    return [warn('swr-is-not-proof', data, ['measure-at-feed-point', 'compare-signals'])];
  });
};

const MOST_SWR = 999;

/** SWR that a transformer of the planned ratio without any loss would show on the line. */
function antennaSwrOf({ chain }: Judged, { feedPoint }: BandFinding): number | null {
  if (feedPoint === null) return null;
  const ratio = chain.find(({ device, at }) => device === 'transformer' && at === 'feed-point')?.ratio ?? 1;
  return swr(throughIdeal(complex(feedPoint.r, feedPoint.x), ratio), SYSTEM_OHM);
}

export const wetLine: Rule = ({ facts: { line, lineKind } }) => {
  if (lineKind !== 'open-wire' || line === null || line.kind !== 'open') return [];
  const known =
    line.wet === null ? { known: false } : { known: true, percent: 100 * (1 - line.wet.velocityFactor.value) };
  return [warn('wet-line', { line: line.id, ...known }, ['tune-again', 'keep-clear'])];
};
