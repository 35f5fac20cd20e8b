/** Bands that the antenna or the tuner does not reach, and why. */
import { magnitude } from '../../base/complex';
import type { System } from '../../design/choices';
import { legPlusLineM, wavesFromHalfWave } from '../../physics/lengths';
import { tunerRangeAt } from '../../physics/non-resonant-length';
import { easierLine } from '../easier-line';
import type { BandFacts, Facts } from '../facts';
import { halfWaves } from '../feed-impedance';
import { fieldOf } from '../field-facts';
import type { BandFinding, Warning } from '../finding';
import { REACH } from '../line-run';
import { nearestHalfWave } from '../near-half-wave';
import { searchOf } from '../non-resonant';
import { bandPairs, type Judged, listed, type Rule, type Way, warn } from './warning';

/** Mismatch at the feed point above which coax and tuner together lose most of the power, or the tuner gives up. Common practice. */
const NOT_SERVED_SWR = 10;
/** A wire that serves single bands by resonance is beyond trimming above this. */
const resonant: readonly System[] = [
  'centre-fed-half-wave',
  'inverted-v',
  'sloper',
  'off-centre-fed',
  'end-fed-half-wave',
  'quarter-wave-vertical',
  'inverted-l',
  'full-wave-loop',
  'parallel-dipoles',
  'linked-dipole',
  'folded-dipole',
];

/** Coax-fed and resonant: what the band shows cannot be mended at the shack end. */
export function isServed(facts: Facts, { swrAtFeedPoint }: BandFinding): boolean {
  if (swrAtFeedPoint === null || facts.lineKind === 'open-wire') return true;
  if (facts.settled.shackEnd === 'feed-point-tuner') return swrAtFeedPoint <= REACH.openLine;
  return !resonant.includes(facts.system) || swrAtFeedPoint <= NOT_SERVED_SWR;
}

export const bandNotServed: Rule = (judged) => {
  const { facts } = judged;
  return bandPairs(judged).flatMap(([at, finding]) => {
    if (isServed(facts, finding) || isNull(judged, at, finding)) return [];
    const size = finding.feedPoint === null ? 0 : magnitude({ re: finding.feedPoint.r, im: finding.feedPoint.x });
    const data = { band: at.band, swr: finding.swrAtFeedPoint ?? 0, ohm: size, system: facts.system };
    return [warn('band-not-served', data, ['own-wire', 'open-wire-doublet', ['drop-band', { band: at.band }]])];
  });
};

/** Part of the greatest current, squared, below which the feed point counts as standing at a current minimum. */
const NULL_PART = 0.25;

/** A band that the field solution found in use does not stand at one, whatever the rule says. */
function isNull({ facts, dimensions, field }: Judged, at: BandFacts, { swrAtFeedPoint }: BandFinding): boolean {
  if (facts.system !== 'off-centre-fed') return false;
  const isSolved = fieldOf(field, at.band).feedPoint !== undefined;
  if (isSolved && (swrAtFeedPoint ?? NOT_SERVED_SWR) < NOT_SERVED_SWR) return false;
  const shortM = facts.settled.feedFraction * dimensions.radiator.metres;
  return Math.sin(Math.PI * halfWaves(facts, at, shortM, 1)) ** 2 < NULL_PART;
}

/** Common practice for a band that stands at a minimum at a third. */
const A_FIFTH = 0.2;

/** Another part of the wire; where a field solution has looked, only the one that does better. */
function otherFraction({ field }: Judged): readonly Way[] {
  const feed = field?.lengths?.feed;
  if (feed === undefined) return [['other-fraction', { fraction: A_FIFTH, percent: 100 * A_FIFTH, isSolved: false }]];
  const fraction = feed.better?.fraction;
  return fraction === undefined ? [] : [['other-fraction', { fraction, percent: 100 * fraction, isSolved: true }]];
}

export const offCentreNull: Rule = (judged) =>
  bandPairs(judged).flatMap(([at, finding]) => {
    if (!isNull(judged, at, finding)) return [];
    const fraction = judged.facts.settled.feedFraction;
    const data = { band: at.band, fraction, percent: 100 * fraction, swr: finding.swrAtFeedPoint ?? 0 };
    return [warn('off-centre-null', data, ['own-wire', ...otherFraction(judged), ['drop-band', { band: at.band }]])];
  });

const CLEAR = 0.05;
const TUNER_ZONE = 0.3;

/** Nearest half-wave multiple of any frequency of the band; 0 where one falls into the band. */
function nearMultiple(facts: Facts, { edgesMHz }: BandFacts, lengthM: number): { n: number; offset: number } {
  const kw = facts.wire.velocityFactor.value;
  const low = nearestHalfWave(lengthM, edgesMHz.lowMHz, kw);
  const high = nearestHalfWave(lengthM, edgesMHz.highMHz, kw);
  if (low.n === high.n && Math.sign(low.offset) !== Math.sign(high.offset)) return { n: low.n, offset: 0 };
  return Math.abs(low.offset) < Math.abs(high.offset) ? low : high;
}

const awayFromHalfWaves: readonly System[] = ['non-resonant-end-fed', 'non-resonant-vertical'];

/** About its second half-wave and beyond a wire may serve a band well; below this, solved, it does. */
const SERVED_WELL_SWR = 5;

function isSolvedWell({ bands, field }: Judged, { band }: BandFacts): boolean {
  const swr = bands.find((each) => each.band === band)?.swrAtFeedPoint ?? null;
  return fieldOf(field, band).feedPoint !== undefined && swr !== null && swr <= SERVED_WELL_SWR;
}

export const wireNearHalfWave: Rule = (judged) => {
  const { facts, dimensions } = judged;
  if (!awayFromHalfWaves.includes(facts.system)) return [];
  const wires = [
    { piece: 'wire', lengthM: dimensions.radiator.metres },
    ...dimensions.pieces
      .filter(({ piece }) => piece === 'counterpoise')
      .map(({ piece, length }) => ({ piece, lengthM: length.metres })),
  ];
  const better = dimensions.windows[0]?.bestM;
  return wires.flatMap(({ piece, lengthM }) =>
    facts.bands.flatMap((at): Warning[] => {
      const { n, offset } = nearMultiple(facts, at, lengthM);
      if (Math.abs(offset) > CLEAR) return [];
      if (piece === 'wire' && n > 1 && isSolvedWell(judged, at)) return [];
      const data = { band: at.band, piece, lengthM, n, percent: 100 * offset };
      const other =
        piece === 'wire' && better !== undefined ? [['cut-to', { lengthM: better }] as const] : ['change-length'];
      return [warn('wire-near-half-wave', data, [...other, ['drop-band', { band: at.band }]])];
    }),
  );
};

/** What the shack end brings to 50 Ω. On open-wire line a wide or balanced tuner is used far beyond its figure for coax. */
export function reachOf(facts: Facts): number {
  switch (facts.settled.shackEnd) {
    case 'radio':
      return REACH.none;
    case 'radio-tuner':
      return REACH.radio;
    case 'feed-point-tuner':
      return REACH.openLine;
    default:
      return facts.lineKind === 'open-wire' ? REACH.openLine : REACH.wide;
  }
}

export const tunerRange: Rule = (judged) => {
  const { facts, dimensions, chain, bands } = judged;
  const reach = reachOf(facts);
  const atWire = facts.settled.shackEnd === 'feed-point-tuner';
  return bandPairs(judged).flatMap(([at, finding]): Warning[] => {
    const swr = atWire ? finding.swrAtFeedPoint : finding.swrAtRadio;
    if (swr === null || !isServed(facts, finding) || isNull(judged, at, finding)) return [];
    const first = facts.system === 'non-resonant-end-fed' ? nearMultiple(facts, at, dimensions.radiator.metres) : null;
    const offset = Math.abs(first?.offset ?? 1);
    const inZone = first !== null && first.n === 1 && offset > CLEAR && offset <= TUNER_ZONE;
    if (swr <= reach && !inZone) return [];
    const data = {
      band: at.band,
      swr: inZone ? swrInZone(judged, at, swr) : swr,
      reach,
      percent: 100 * offset,
      inZone,
      shackEnd: facts.settled.shackEnd,
    };
    const wider = reach < REACH.wide ? ['wide-tuner'] : ['tuner-at-feed-point'];
    const easier = easierLine(facts, chain, bands);
    const usual = isTiedToResonance(facts) ? 'free-length' : 'other-length';
    const other = easier === null ? usual : (['easier-line', easier] as const);
    const dropBand = ['drop-band', { band: at.band }] as const;
    return inZone
      ? [warn('tuner-range', data, [...wider, 'other-length', dropBand], 'tuner-zone')]
      : [warn('tuner-range', data, [...wider, other, dropBand])];
  });
};

/** Open-wire line does not ask the wire to resonate, and without that there is a length that tunes better. */
const isTiedToResonance = ({ system, settled }: Facts): boolean =>
  system === 'open-wire-doublet' && settled.lengthChoice === 'resonant';

/** Near its first half-wave the closed form is too kind: the sweep of field solutions is held beside it, until this very wire is solved. */
function swrInZone({ facts, dimensions, field }: Judged, { band }: BandFacts, swr: number): number {
  if (fieldOf(field, band).feedPoint !== undefined) return swr;
  const swept = tunerRangeAt(searchOf(facts), dimensions.radiator.metres).find((each) => each.band === band);
  return Math.max(swr, swept?.expectedSwr ?? swr);
}

const NEAR_WAVES = 0.05;

export const legPlusLine: Rule = ({ facts, dimensions }) => {
  if (facts.system !== 'open-wire-doublet' || facts.lineKind !== 'open-wire' || facts.line === null) return [];
  const lineM = facts.settled.feedLineLengthM;
  const electricalM = legPlusLineM(dimensions.radiator.metres / 2, lineM, facts.line.velocityFactor.value);
  const near = facts.bands.filter(({ focusMHz }) => wavesFromHalfWave(electricalM, focusMHz) < NEAR_WAVES);
  const [first] = near;
  if (first === undefined) return [];
  const data = {
    band: first.band,
    bands: listed(near.map(({ band }) => band)),
    electricalM,
    waves: wavesFromHalfWave(electricalM, first.focusMHz),
  };
  const clear = dimensions.clearLine?.metres;
  const line =
    clear === undefined ? ['change-line'] : [['line-to', { lengthM: clear, addedM: clear - lineM }] as const];
  return [warn('leg-plus-line-half-wave', data, [...line, 'change-leg'])];
};

const NOTABLE = 0.005;

export const harmonicsHigh: Rule = ({ facts, dimensions: { harmonics } }) => {
  const higher = harmonics.filter(({ n }) => n > 1);
  if (harmonics.length < 2 || higher.length === 0) return [];
  const byOffset = [...harmonics].sort((a, b) => Math.abs(a.offset) - Math.abs(b.offset));
  const favoured = byOffset[0];
  const worst = byOffset.at(-1);
  if (favoured === undefined || worst === undefined || Math.abs(worst.offset) < NOTABLE) return [];
  const data = {
    favoured: favoured.band,
    band: worst.band,
    resonanceMHz: worst.resonanceMHz,
    percent: 100 * worst.offset,
  };
  const coil = facts.system === 'end-fed-half-wave' ? ['small-coil'] : [];
  return [warn('harmonics-high', data, ['do-not-cut-on', ...coil])];
};
