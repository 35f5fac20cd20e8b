/** The pieces of wire an antenna is made of, each with its finished length. */
import type { Dimension } from '../base/working';
import { lines } from '../catalog/lines';
import { halfWave, lineLength, movedLegs, nthHalfWaveM, nthResonanceMHz, offCentreLegs } from '../physics/lengths';
import { answered, cutFor, focusOf } from './dimension';
import type { FreeRide, Piece } from './dimensions';
import type { Facts } from './facts';
import type { SolvedLengths } from './field-facts';
import { linkedPieces } from './linked-pieces';
import { half, ownLength } from './own-length';
import { returnWiresOf } from './return-wires';

/** A third resonance this near a wanted band serves it: 15 m on 40 m legs lies about 4 % off. Common practice. */
const FREE_RIDE = 0.05;

export function piecesOf(facts: Facts, radiator: Dimension, solved?: SolvedLengths): Piece[] {
  return [...radiatorPieces(facts, radiator, solved), ...returnWiresOf(facts, solved?.returns)];
}

function radiatorPieces(facts: Facts, radiator: Dimension, solved: SolvedLengths | undefined): Piece[] {
  const one = (piece: Piece['piece'], length: Dimension, count = 1): Piece => ({ piece, band: null, count, length });
  switch (facts.system) {
    case 'centre-fed-half-wave':
    case 'inverted-v':
    case 'sloper':
    case 'open-wire-doublet':
      return [one('leg', half(radiator), 2)];
    case 'off-centre-fed': {
      const { short, long } = armsOf(facts, radiator, solved);
      return [one('short-leg', short), one('long-leg', long)];
    }
    case 'parallel-dipoles':
      return parallelLegs(facts, radiator, solved);
    case 'linked-dipole':
      return linkedPieces(facts, radiator, solved);
    case 'folded-dipole':
      return [one('folded-conductor', radiator, 2)];
    case 'quarter-wave-vertical':
    case 'non-resonant-vertical':
      return [one('vertical', radiator)];
    case 'full-wave-loop':
      return [one('wire', radiator), ...matchingSection(facts)];
    case 'other': // the antenna is there already: nothing to cut unless its length is told
      return facts.settled.wireLengthM === null ? [] : [one('wire', radiator)];
    default:
      return [one('wire', radiator)];
  }
}

/** A part that was looked for is told as the rule's, moved. */
function armsOf(
  facts: Facts,
  radiator: Dimension,
  solved: SolvedLengths | undefined,
): ReturnType<typeof offCentreLegs> {
  const whole = { value: radiator.metres, from: 'solved' } as const;
  const feed = solved?.feed;
  if (feed === undefined || feed.told || feed.fraction === feed.ruleFraction)
    return offCentreLegs(whole, answered(facts, 'feedFraction', facts.settled.feedFraction));
  return movedLegs(whole, { value: feed.ruleFraction, from: 'assumed' }, feed.fraction / feed.ruleFraction);
}

/** Pairs of legs, longest first; the longest takes a told length, the others follow their bands. */
function parallelLegs(facts: Facts, radiator: Dimension, solved: SolvedLengths | undefined): Piece[] {
  const rides = freeRidesOf(facts, solved).map((ride) => ride.band);
  return facts.bands
    .filter(({ band }) => !rides.includes(band))
    .map((at, index) => ({
      piece: 'leg',
      band: at.band,
      count: 2,
      length: half(index === 0 ? radiator : ownLength(facts, at, solved)),
    }));
}

/** Bands served by the third resonance of another pair, unless the field solution found that they need one of their own. */
export function freeRidesOf(facts: Facts, solved?: Pick<SolvedLengths, 'pairs'>): FreeRide[] {
  if (facts.system !== 'parallel-dipoles') return [];
  const kw = facts.wire.velocityFactor.value;
  const riders = facts.bands.filter(({ band }) => solved?.pairs[band] === undefined);
  return riders.flatMap((at) =>
    facts.bands.flatMap((host): FreeRide[] => {
      const hostM = halfWave(cutFor(facts, host)).metres;
      const isNear = Math.abs(hostM / nthHalfWaveM(3, at.focusMHz, kw) - 1) <= FREE_RIDE;
      return isNear ? [{ band: at.band, on: host.band, resonanceMHz: nthResonanceMHz(3, hostM, kw) }] : [];
    }),
  );
}

/** A loop for one band can be fed through a quarter-wave of 75 Ω coax instead of a transformer. */
function matchingSection(facts: Facts): Piece[] {
  const [only, another] = facts.bands;
  if (another !== undefined || facts.lineKind !== 'coax') return [];
  const velocityFactor = { value: lines['rg-6'].velocityFactor.value, from: 'catalogue' } as const;
  const length = lineLength(0.25, focusOf(facts, only), velocityFactor);
  return [{ piece: 'matching-section', band: only.band, count: 1, length }];
}
