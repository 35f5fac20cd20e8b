/**
 * Voltage, current and heat along a line with standing waves, and how near they come to its limits.
 *
 *   |V(d)| = |V⁺| · |e^{γd} + Γ e^{−γd}|      |I(d)| = |V⁺ / Z0| · |e^{γd} − Γ e^{−γd}|      d from the load
 *   heat per metre = |I|² R + |V|² G          (rms)
 *
 * Maxima stand where both waves are in phase, 2βd = ∠Γ + 2πn (voltage) or + π (current), or at an end. With loss they move by about α/β of a
 * radian, which changes them by less than (α/β)²/2.
 * The maker's power rating is for a matched line and a steady carrier, at one frequency; it is a rating of heat per metre, so it scales with
 * 1/attenuation, and a line with standing waves is compared by its hottest metre. Source: usual practice of cable makers' catalogues (memory).
 */
import { add, type Complex, divide, exponential, magnitude, multiply, scale, subtract } from '../base/complex';
import { attenuationDbPer100M, gamma, type LineConstants, type LineData } from './line';

export interface LineStress {
  /** Rms, at the power accepted by the input. */
  readonly maxVoltageV: number;
  readonly maxVoltageAtM: number;
  readonly maxCurrentA: number;
  readonly maxCurrentAtM: number;
  /** Hottest metre, W/m, and the matched power that would heat it as much. */
  readonly maxHeatWPerM: number;
  readonly equivalentMatchedW: number;
}

/** Ratings of a line; a number that is not known is null and not judged. Power is for a matched line at `ratedAtHz`. */
export interface LineLimits {
  readonly peakVoltageV: number | null;
  /** Rms. */
  readonly currentA: number | null;
  readonly powerW: number | null;
  readonly ratedAtHz: number;
}

/** Use of each rating, 1 at the limit; null where the rating is unknown. Above 1 is too much. */
export interface LineUse {
  readonly voltage: number | null;
  readonly current: number | null;
  readonly power: number | null;
}

/** Voltage and current per unit of the forward wave at the load, at `d` metres from it. */
function waveAt(constants: LineConstants, reflection: Complex, d: number): { volts: number; amps: number } {
  const forward = exponential(scale(constants.gammaPerM, d));
  const backward = multiply(reflection, exponential(scale(constants.gammaPerM, -d)));
  return {
    volts: magnitude(add(forward, backward)),
    amps: magnitude(divide(subtract(forward, backward), constants.z0)),
  };
}

/** Places from the load where a maximum can stand: both ends and each point where the waves meet in phase. */
function candidates(beta: number, angle: number, lengthM: number): number[] {
  const places = [0, lengthM];
  const turn = Math.PI / beta;
  for (let d = (((angle / (2 * beta)) % turn) + turn) % turn; d < lengthM; d += turn) places.push(d);
  return places;
}

/** Largest voltage, current and heat on `lengthM` of line that accepts `inputW` (average for heat, peak envelope for voltage). */
export function lineStress(constants: LineConstants, lengthM: number, load: Complex, inputW: number): LineStress {
  const reflection = gamma(load, constants.z0);
  const unit = unitPowerW(constants, lengthM, reflection);
  const forward = unit > 0 ? Math.sqrt(inputW / unit) : Number.POSITIVE_INFINITY;
  const angle = Math.atan2(reflection.im, reflection.re);
  const beta = constants.gammaPerM.im;
  const best = { maxVoltageV: 0, maxVoltageAtM: 0, maxCurrentA: 0, maxCurrentAtM: 0, maxHeatWPerM: 0 };
  for (const d of [...candidates(beta, angle, lengthM), ...candidates(beta, angle + Math.PI, lengthM)]) {
    const wave = waveAt(constants, reflection, d);
    const volts = wave.volts * forward;
    const amps = wave.amps * forward;
    if (volts > best.maxVoltageV) Object.assign(best, { maxVoltageV: volts, maxVoltageAtM: d });
    if (amps > best.maxCurrentA) Object.assign(best, { maxCurrentA: amps, maxCurrentAtM: d });
    const heat = amps ** 2 * constants.resistanceOhmPerM + volts ** 2 * constants.conductanceSPerM;
    best.maxHeatWPerM = Math.max(best.maxHeatWPerM, heat);
  }
  const alpha = constants.gammaPerM.re;
  return { ...best, equivalentMatchedW: alpha > 0 ? best.maxHeatWPerM / (2 * alpha) : inputW };
}

/** Power into the input for a forward wave of 1 V rms at the load. */
function unitPowerW(constants: LineConstants, lengthM: number, reflection: Complex): number {
  const forward = exponential(scale(constants.gammaPerM, lengthM));
  const backward = multiply(reflection, exponential(scale(constants.gammaPerM, -lengthM)));
  const volts = add(forward, backward);
  const amps = divide(subtract(forward, backward), constants.z0);
  return volts.re * amps.re + volts.im * amps.im;
}

/** How much of each rating `stress` uses. `peakW` is the envelope peak that `stress` was computed for, `averageW` what heats. */
export function lineUse(
  line: LineData,
  limits: LineLimits,
  stress: LineStress,
  hz: number,
  averageFactor: number,
): LineUse {
  const ratio = (value: number, limit: number | null): number | null => (limit === null ? null : value / limit);
  const heatScale = attenuationDbPer100M(line, hz) / attenuationDbPer100M(line, limits.ratedAtHz);
  return {
    voltage: ratio(Math.SQRT2 * stress.maxVoltageV, limits.peakVoltageV),
    current: ratio(stress.maxCurrentA * Math.sqrt(averageFactor), limits.currentA),
    power: ratio(stress.equivalentMatchedW * averageFactor * heatScale, limits.powerW),
  };
}
