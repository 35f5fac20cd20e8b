/**
 * Wire factor of an insulated wire from its layer alone.
 *
 *   kw = √((R + S) / Q)      Q = εr ln(4H/d)   R = εr ln(4H/D)   S = ln(D/d)
 *   H  height, m     d  conductor diameter, m     D  outside diameter, m
 *
 * The wire above ground is a line whose inductance the layer leaves alone and whose capacitance it raises. Lossless; print reports 0 to 2 %
 * more shortening, so the catalogue's wire factor lies at or below this value.
 * Source: R. Edwards, Velocity factor of an insulated antenna wire (2005).
 */
export function insulatedWireFactor(wire: {
  readonly heightM: number;
  readonly conductorM: number;
  readonly outsideM: number;
  readonly epsilonR: number;
}): number {
  const whole = wire.epsilonR * Math.log((4 * wire.heightM) / wire.conductorM);
  const outside = wire.epsilonR * Math.log((4 * wire.heightM) / wire.outsideM);
  return Math.sqrt((outside + Math.log(wire.outsideM / wire.conductorM)) / whole);
}
