/**
 * What the feed point really needs: balance, transformation, isolation.
 *
 * Ratios: off-centre 4, end-fed half-wave 49, non-resonant end-fed 9, non-resonant vertical 4, loop 2 on one band and 4 on several, folded
 * dipole 4 (6 where 300 Ω line becomes 50 Ω coax). Open-wire line carries any impedance to the tuner, and a tuner at the feed point does the
 * transforming itself: neither wants a ratio. Source: common practice; house positions.
 */
import { add, magnitude, subtract } from '../base/complex';
import type { Ohms } from '../design/answers';
import type { Facts } from './facts';
import type { Needs } from './finding';

/** Impedance ratios the trade sells, antenna side over line side. */
export const tradeRatios = [1, 1.5, 2, 4, 6, 9, 12, 16, 49, 64] as const;
/** The same parts turned round, for feed points well below the line's impedance. */
const turnedRatios = [0.25, 0.5] as const;

/** `solved`: feed-point impedance on the lowest band, once a field solution knows it. It decides the ratio of an inverted-L. */
export function needsOf(facts: Facts, solved: Ohms | null = null): Needs {
  const ratio = ratioOf(facts, solved);
  return {
    balance: facts.balanced,
    transformation: ratio === null ? null : { ratio },
    isolation: needsIsolation(facts),
  };
}

/** Where coax begins, the outside of its shield has to be cut off from the antenna. */
function needsIsolation({ lineKind, settled }: Facts): boolean {
  if (settled.rfInShack || lineKind === 'coax') return true;
  return lineKind === 'open-wire' && settled.shackEnd !== 'balanced-tuner';
}

/** 300 Ω line that meets a 50 Ω socket, where the folded dipole is its match. */
export const twinLeadMeetsCoax = ({ system, settled }: Facts): boolean =>
  system === 'folded-dipole' &&
  settled.feedLine === 'twin-lead' &&
  (settled.shackEnd === 'radio' || settled.shackEnd === 'radio-tuner');

function ratioOf(facts: Facts, solved: Ohms | null): number | null {
  const { system, settled, lineKind } = facts;
  if (settled.shackEnd === 'feed-point-tuner') return null;
  if (lineKind === 'open-wire') return twinLeadMeetsCoax(facts) ? 6 : null;
  switch (system) {
    case 'off-centre-fed':
    case 'non-resonant-vertical':
    case 'folded-dipole':
      return 4;
    case 'end-fed-half-wave':
      return 49;
    case 'non-resonant-end-fed':
      return 9;
    case 'full-wave-loop':
      return facts.bands.length === 1 ? 2 : 4;
    case 'inverted-l':
      return solved === null
        ? null
        : notOne(nearestTradeRatio(solved, lineOhm(facts), [...turnedRatios, ...tradeRatios]));
    case 'other':
      return settled.feedImpedance === null ? null : notOne(nearestTradeRatio(settled.feedImpedance, lineOhm(facts)));
    default:
      return null;
  }
}

const notOne = (ratio: number): number | null => (ratio === 1 ? null : ratio);

/** Impedance that the line wants to see, Ω; 50 with no line. */
export const lineOhm = ({ line }: Facts): number => line?.z0Ohm.value ?? 50;

/** SWR of `load` behind a transformer of this ratio, on a line of `z0Ohm`. */
export function swrBehind(load: Ohms, ratio: number, z0Ohm: number): number {
  const z = { re: load.r / ratio, im: load.x / ratio };
  const line = { re: z0Ohm, im: 0 };
  const gamma = Math.min(magnitude(subtract(z, line)) / magnitude(add(z, line)), 0.999);
  return (1 + gamma) / (1 - gamma);
}

/** The ratio that leaves the lowest SWR; the lower one when two do as well. */
export const nearestTradeRatio = (load: Ohms, z0Ohm: number, ratios: readonly number[] = tradeRatios): number =>
  ratios.reduce((best, ratio) => (swrBehind(load, ratio, z0Ohm) < swrBehind(load, best, z0Ohm) - 1e-9 ? ratio : best));
