/**
 * Feed-point impedance of each system from closed forms: the lossy open line (physics/wire-feed-point), radiation resistance with the ground
 * below (physics/wire-radiation), measured radial loss. A field solution replaces any of it.
 *
 * Resonance stands where the length rules put it, n half-waves at 149.9 (n − 0.05) kw / f, since wires are trimmed there: height and ground move
 * it by a few per cent, and are in the resistance only.
 * The ground loss, the quarter-wave bound on the line impedance and the counterpoise's loss were chosen against our own field solutions, and come
 * within a factor 1.6 of the SWR of those: 17 rows of 41 m off-centre, 41 m end-fed (80 to 20 m) and 21.75 m behind 9:1. The same end-fed wire on
 * 10 m comes out at 6.6 where 3.4 was solved; an off-centre null (15 m) at 43 where 14 was solved. Elsewhere: no check, read it as a factor 2.
 * Where the size passes 2 kΩ at a feed point that is not an end, only the order of size holds (`rough`).
 */
import { add, type Complex, complex, divide, magnitude, multiply, reciprocal, scale } from '../base/complex';
import { grounds } from '../catalog/ground';
import { nthHalfWaveM } from '../physics/lengths';
import { QUARTER_WAVE_OHM, radialLossOhm } from '../physics/radial-loss';
import { feedPointImpedance, openSide, spreadOhm, type WireSide } from '../physics/wire-feed-point';
import {
  centreFedRadiationOhm,
  groundFactor,
  harmonicRadiationOhm,
  type Soil,
  wireZ0Ohm,
} from '../physics/wire-radiation';
import { counterpoiseImpedance } from './counterpoise-impedance';
import type { Dimensions, Piece } from './dimensions';
import type { BandFacts, Facts } from './facts';
import { bentFactor, heightOf, invertedLOhm } from './wire-height';
import { conductorM } from './wire-links';

export interface FeedPoint {
  readonly z: Complex;
  /** Only the order of size is known. */
  readonly rough: boolean;
}

/** End effect of one open end, in half-waves. */
const ONE_END = 0.025;
const ROUGH_OHM = 2000;
const LOOP_OHM = 120; // 100 to 130 Ω on its fundamental
const LOOP_HARMONIC_OHM = 200; // 100 to 300 Ω on harmonics
/** Elevated radials lose about as much as sixty on the ground. */
const ELEVATED_RADIALS_OHM = 5;
const FOLDED_PAIR_OHM = 400; // two wires about 3 cm apart
const LOOP_WAVES = 306; // once round a full-wave loop, m · MHz

/** Electrical length of `lengthM` of the antenna's wire with `ends` open ends, in half-waves. */
export function halfWaves(facts: Facts, at: BandFacts, lengthM: number, ends: 0 | 1 | 2): number {
  const kw = facts.wire.velocityFactor.value;
  const perHalfWaveM = nthHalfWaveM(2, at.focusMHz, kw) - nthHalfWaveM(1, at.focusMHz, kw);
  return lengthM / perHalfWaveM + ends * ONE_END;
}

const soilOf = (facts: Facts): Soil => {
  const { epsilonR, sigmaSPerM } = grounds[facts.settled.ground];
  return { epsilonR: epsilonR.value, sigmaSPerM: sigmaSPerM.value };
};

/** One side of a feed point that ends open. A line of many quarter-waves has the impedance of its first. */
export function sideOf(facts: Facts, at: BandFacts, lengthM: number, ends: 1 | 2): WireSide {
  const radiusM = facts.wire.diameterM.value / 2;
  return {
    theta: Math.PI * halfWaves(facts, at, lengthM, ends),
    z0Ohm: wireZ0Ohm(Math.min(lengthM, at.wavelengthM / 4), radiusM),
  };
}

const lying = (facts: Facts, at: BandFacts, wholeM: number): number =>
  facts.settled.radiator === 'vertical' ? 1 : groundFactor(heightOf(facts, wholeM), at.focusMHz * 1e6, soilOf(facts));

/** `hungM`: the wire that hangs there, of which a linked one uses a part. */
function centreFed(facts: Facts, at: BandFacts, wholeM: number, hungM = wholeM): Complex {
  const leg = sideOf(facts, at, wholeM / 2, 1);
  const radiation = centreFedRadiationOhm(2 * leg.theta) * lying(facts, at, hungM) * bentFactor(facts, hungM);
  return feedPointImpedance([leg, leg], radiation);
}

function offCentre(facts: Facts, at: BandFacts, wholeM: number): Complex {
  const shortM = facts.settled.feedFraction * wholeM;
  const sides = [sideOf(facts, at, shortM, 1), sideOf(facts, at, wholeM - shortM, 1)];
  const whole = sides.reduce((sum, { theta }) => sum + theta, 0);
  return feedPointImpedance(sides, harmonicRadiationOhm(whole) * lying(facts, at, wholeM));
}

/** The wire against its counterpoise, in series. An end-fed half-wave has both end effects in its resonance. */
function endFed(facts: Facts, at: BandFacts, dimensions: Dimensions): Complex {
  const wire = sideOf(facts, at, dimensions.radiator.metres, 2);
  const radiation = harmonicRadiationOhm(wire.theta) * lying(facts, at, dimensions.radiator.metres);
  return add(openSide(wire, spreadOhm([wire], radiation)), counterpoiseImpedance(facts, at, dimensions));
}

const pieceOf = (dimensions: Dimensions, id: Piece['piece']): Piece | undefined =>
  dimensions.pieces.find(({ piece }) => piece === id);

/** What an upright wire works against: loss of radials on the ground, or raised ones with their own reactance. */
function returnOhm(facts: Facts, at: BandFacts, dimensions: Dimensions): Complex {
  const radial = pieceOf(dimensions, 'radial');
  const { returnPath, radialCount } = facts.settled;
  if (returnPath === 'elevated-radials' && radial !== undefined) {
    const each = openSide(sideOf(facts, at, radial.length.metres, 1), 0.1);
    return complex(ELEVATED_RADIALS_OHM, each.im / Math.max(radialCount, 1));
  }
  const grounded = returnPath === 'ground-radials' && radial !== undefined;
  return complex(grounded ? radialLossOhm(radialCount, radial.length.metres / at.wavelengthM) : radialLossOhm(0, 0));
}

function upright(facts: Facts, at: BandFacts, dimensions: Dimensions): Complex {
  const wire = sideOf(facts, at, dimensions.radiator.metres, 1);
  const bent = facts.system === 'inverted-l';
  const radiation = bent
    ? invertedLOhm(dimensions, lying(facts, at, dimensions.radiator.metres), wire.theta)
    : (centreFedRadiationOhm(2 * wire.theta) * QUARTER_WAVE_OHM) / centreFedRadiationOhm(Math.PI);
  return add(feedPointImpedance([wire], radiation), returnOhm(facts, at, dimensions));
}

/** A closed loop: from the far side back it is two lines of half its length, shorted there. */
function loop(facts: Facts, at: BandFacts, wholeM: number): Complex {
  const kw = facts.wire.velocityFactor.value;
  const waves = (wholeM * at.focusMHz) / (LOOP_WAVES * kw);
  const z0Ohm = wireZ0Ohm(at.wavelengthM / 4, facts.wire.diameterM.value / 2) * 2;
  const flat = facts.settled.loopPlane === 'flat' ? lying(facts, at, wholeM) : 1;
  const resistance = (waves < 1.5 ? LOOP_OHM : LOOP_HARMONIC_OHM) * flat;
  const nearest = Math.max(1, Math.round(waves));
  // Half a loop is n half-waves at its n-th resonance; a shorted line is an open one a quarter-wave longer.
  const theta = Math.PI * (waves + 0.5);
  return openSide({ theta, z0Ohm }, (2 * resistance) / (Math.PI * (nearest + 0.5)));
}

/** All pairs on one feed point side by side, without their coupling. */
function parallel(facts: Facts, at: BandFacts, dimensions: Dimensions): Complex {
  const legs = dimensions.pieces.filter(({ piece }) => piece === 'leg');
  const admittances = legs.map(({ length }) => reciprocal(centreFed(facts, at, 2 * length.metres)));
  return reciprocal(admittances.reduce(add, complex(0)));
}

/** Folded dipole: the antenna at four times its impedance beside two shorted lines in series. Balanis, Antenna Theory, 3rd ed., §9.5. */
function folded(facts: Facts, at: BandFacts, wholeM: number): Complex {
  const antenna = scale(centreFed(facts, at, wholeM), 4);
  const theta = (Math.PI / 2) * halfWaves(facts, at, wholeM, 2);
  const stubs = complex(0.5, 2 * FOLDED_PAIR_OHM * Math.tan(theta));
  return divide(multiply(antenna, stubs), add(antenna, stubs));
}

function impedanceOf(facts: Facts, at: BandFacts, dimensions: Dimensions): Complex | null {
  const wholeM = dimensions.radiator.metres;
  switch (facts.system) {
    case 'off-centre-fed':
      return offCentre(facts, at, wholeM);
    case 'end-fed-half-wave':
    case 'non-resonant-end-fed':
      return endFed(facts, at, dimensions);
    case 'quarter-wave-vertical':
    case 'non-resonant-vertical':
    case 'inverted-l':
      return upright(facts, at, dimensions);
    case 'full-wave-loop':
      return loop(facts, at, wholeM);
    case 'parallel-dipoles':
      return parallel(facts, at, dimensions);
    case 'linked-dipole': // without what the open pieces beyond do to it
      return centreFed(facts, at, conductorM(dimensions, at.band), wholeM);
    case 'folded-dipole':
      return folded(facts, at, wholeM);
    case 'other': {
      const told = facts.settled.feedImpedance;
      return told === null ? null : complex(told.r, told.x);
    }
    default:
      return centreFed(facts, at, wholeM);
  }
}

const endSystems: readonly Facts['system'][] = ['end-fed-half-wave', 'non-resonant-end-fed', 'other'];

/** Impedance at the feed point, before any transformer; null only where nothing is known of the antenna. */
export function feedPointOf(facts: Facts, at: BandFacts, dimensions: Dimensions): FeedPoint | null {
  const z = impedanceOf(facts, at, dimensions);
  if (z === null || !Number.isFinite(magnitude(z))) return null;
  return { z, rough: magnitude(z) > ROUGH_OHM && !endSystems.includes(facts.system) };
}
