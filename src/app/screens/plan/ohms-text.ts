/** Ohms to two figures, as people read them off a choke: "7.8 kΩ". */
import type { Say } from '../../say';

export const ohmsText = (ohms: number, { format }: Say): string =>
  Math.abs(ohms) >= 1000 ? `${format.number(ohms / 1000, 2)}\u00a0kΩ` : `${format.number(ohms, 2)}\u00a0Ω`;
