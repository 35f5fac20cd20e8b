/**
 * Ways to state one mismatch: standing-wave ratio S, |Γ|, return loss, mismatch loss, and how line loss hides it.
 *
 *   |Γ| = (S − 1) / (S + 1)      return loss = −20 log10 |Γ|      mismatch loss = −10 log10 (1 − |Γ|²)
 *   |Γ| at the input = |Γ| at the load · 10^(−matched loss / 10)
 *   long-line loss = 10 log10 ((a² − |Γ|²) / (a (1 − |Γ|²))),  a = 10^(matched loss / 10)
 *
 * Limits: real Z0. The long-line loss is the average over where the load sits on the standing wave; for one given load and length, and always on
 * lines below a quarter-wave, use lineLoss of line.ts.
 * Source: Pozar, Microwave Engineering, 4th ed., §2.3 and §2.7; the loss formula as in amateur antenna handbooks, transmission-line chapter.
 */
export const gammaOfSwr = (swr: number): number => (swr - 1) / (swr + 1);
export const swrOfGamma = (gammaMagnitude: number): number => (1 + gammaMagnitude) / (1 - gammaMagnitude);
export const returnLossDb = (gammaMagnitude: number): number => -20 * Math.log10(gammaMagnitude);
export const gammaOfReturnLoss = (lossDb: number): number => 10 ** (-lossDb / 20);
export const mismatchLossDb = (gammaMagnitude: number): number => -10 * Math.log10(1 - gammaMagnitude ** 2);

/** Standing-wave ratio read at the input of a line with `matchedDb` of loss whose load has `swrAtLoad`. */
export const swrAtInput = (swrAtLoad: number, matchedDb: number): number =>
  swrOfGamma(gammaOfSwr(swrAtLoad) * 10 ** (-matchedDb / 10));

/** Average loss of a line many quarter-waves long, dB. */
export function longLineLossDb(swrAtLoad: number, matchedDb: number): number {
  const power = 10 ** (matchedDb / 10);
  const reflected = gammaOfSwr(swrAtLoad) ** 2;
  return 10 * Math.log10((power ** 2 - reflected) / (power * (1 - reflected)));
}
