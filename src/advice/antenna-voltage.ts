/**
 * Volts on the antenna itself, rms at the crest of a transmission.
 *
 *   feed point   V = √(P/R)·|Z|                                      Z = R + jX  solved
 *   wire ends    V = √((s V_feed)² + (Z0 √(P/R))²)                   standing wave: V² + (Z0 I)² is the same all along the wire
 *                Z0 = 60 (ln(2 l / a) − 1)                           mean impedance of an arm of length l and radius a
 *
 * s is ½ where the feed point lies between two arms, 1 where one wire is fed against ground or counterpoise. Limits: the part of the wave that
 * is radiated on its way is left out (some per cent); without a solution the ends are taken as √(2450 Ω · P), real ones up to 1.4 times.
 * Source: Schelkunoff's mean impedance, as in antenna texts.
 */
import type { Working, WorkingInput } from '../base/working';
import type { Band } from '../catalog/band-ids';
import type { Dimensions } from './dimensions';
import type { BandFacts, Facts } from './facts';
import { type FieldFacts, fieldOf } from './field-facts';
import { wireEndVoltage } from './wire-end-voltage';
import { conductorM } from './wire-links';

export interface AntennaVoltage {
  readonly band: Band;
  /** Null until it is solved. */
  readonly feedPointV: number | null;
  readonly feedPointVWorking: Working | null;
  /** Null on a closed loop, which has no end. */
  readonly wireEndV: number | null;
  readonly wireEndVWorking: Working | null;
}

export const antennaVoltages = (facts: Facts, dimensions: Dimensions, field?: FieldFacts): AntennaVoltage[] =>
  facts.bands.map((at) => voltageOn(facts, dimensions, at, field));

/** The greatest on any band at any place, V. A closed loop is taken to reach what a wire's end would: it has maxima too. */
export function greatestVoltage({ settled, answers }: Facts, list: readonly AntennaVoltage[]): number {
  const unknown = wireEndVoltage(settled.powerW, answers.powerW !== undefined).volts;
  return Math.max(...list.flatMap(({ feedPointV, wireEndV }) => [feedPointV ?? 0, wireEndV ?? unknown]));
}

const hasEnds = ({ settled: { radiator } }: Facts): boolean => radiator !== 'loop' && radiator !== 'folded-wire';
const isBetweenArms = ({ settled: { fedAt } }: Facts): boolean => fedAt === 'centre' || fedAt === 'off-centre';

function voltageOn(facts: Facts, dimensions: Dimensions, at: BandFacts, field: FieldFacts | undefined): AntennaVoltage {
  const { powerW } = facts.settled;
  const told = facts.answers.powerW === undefined ? 'assumed' : 'answer';
  const z = fieldOf(field, at.band).feedPoint;
  if (z === undefined || z.r <= 0) {
    const { volts, working } = wireEndVoltage(powerW, told === 'answer');
    return {
      band: at.band,
      feedPointV: null,
      feedPointVWorking: null,
      wireEndV: hasEnds(facts) ? volts : null,
      wireEndVWorking: hasEnds(facts) ? working : null,
    };
  }
  const feedInputs: Readonly<Record<string, WorkingInput>> = {
    P: { value: powerW, unit: 'W', from: told },
    R: { value: z.r, unit: 'ohm', from: 'solved' },
    X: { value: z.x, unit: 'ohm', from: 'solved' },
  };
  const currentA = Math.sqrt(powerW / z.r);
  const feedPointV = currentA * Math.hypot(z.r, z.x);
  return {
    band: at.band,
    feedPointV,
    feedPointVWorking: {
      formula: 'sqrt(P / R * (R^2 + X^2))',
      inputs: feedInputs,
      result: { value: feedPointV, unit: 'V' },
      source: 'this-antenna-solved',
    },
    ...endOf(facts, conductorM(dimensions, at.band), feedInputs, feedPointV, currentA),
  };
}

function endOf(
  facts: Facts,
  wireM: number,
  feedInputs: Readonly<Record<string, WorkingInput>>,
  feedPointV: number,
  currentA: number,
): Pick<AntennaVoltage, 'wireEndV' | 'wireEndVWorking'> {
  if (!hasEnds(facts)) return { wireEndV: null, wireEndVWorking: null };
  const share = isBetweenArms(facts) ? 0.5 : 1;
  const arm = wireM * share;
  const radiusM = facts.wire.diameterM.value / 2;
  const mean = 60 * (Math.log((2 * arm) / radiusM) - 1);
  const wireEndV = Math.hypot(share * feedPointV, mean * currentA);
  return {
    wireEndV,
    wireEndVWorking: {
      formula: 'sqrt(s^2 * P / R * (R^2 + X^2) + (60 ohm * (log(2 * arm / a) - 1))^2 * P / R)',
      inputs: {
        ...feedInputs,
        s: { value: share, unit: '', from: 'catalogue' },
        arm: { value: arm, unit: 'm', from: 'solved' },
        a: { value: radiusM, unit: 'm', from: 'catalogue' },
      },
      result: { value: wireEndV, unit: 'V' },
      source: 'this-antenna-solved',
    },
  };
}
