/**
 * What an end-fed wire works against, as a line open at its end: counterpoise wires side by side near the ground, or the outside of the coax
 * down to its first choke. Z0 = 60 ln(2h/r) of a wire over ground; the soil's loss is a spread 60 Ω, from our own field solutions (two wires of
 * 4.2 and 9 m over average ground).
 */
import { add, type Complex, complex, reciprocal } from '../base/complex';
import { openSide } from '../physics/wire-feed-point';
import type { Dimensions } from './dimensions';
import type { BandFacts, Facts } from './facts';

const SOIL_SPREAD_OHM = 60;
const WIRE_HEIGHT_M = 1;
const AIR_SPREAD_OHM = 20;
const SHIELD_RADIUS_M = 0.0025;
/** End effect of its one open end, in half-waves. */
const ONE_END = 0.025;

const lineOver = (heightM: number, radiusM: number): number => 60 * Math.log((2 * heightM) / radiusM);

const theta = (lengthM: number, at: BandFacts): number => Math.PI * ((2 * lengthM) / at.wavelengthM + ONE_END);

/** Impedance of the return path, in series with the wire's own. */
export function counterpoiseImpedance(facts: Facts, at: BandFacts, dimensions: Dimensions): Complex {
  const wires = dimensions.pieces.filter(({ piece }) => piece === 'counterpoise' || piece === 'radial');
  if (wires.length > 0) {
    const z0Ohm = lineOver(WIRE_HEIGHT_M, facts.wire.diameterM.value / 2);
    const each = wires.flatMap(({ length, count }) =>
      Array.from({ length: count }, () => openSide({ theta: theta(length.metres, at), z0Ohm }, SOIL_SPREAD_OHM)),
    );
    return reciprocal(each.map(reciprocal).reduce(add, complex(0)));
  }
  const shieldM = Math.max(dimensions.chokeAt?.metres ?? facts.settled.feedLineLengthM, 0.5);
  const z0Ohm = lineOver(Math.max(facts.settled.heightM / 2, 0.1), SHIELD_RADIUS_M);
  return openSide({ theta: theta(shieldM, at), z0Ohm }, AIR_SPREAD_OHM);
}
