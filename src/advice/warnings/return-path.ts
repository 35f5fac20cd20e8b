/** Radials and the way static charge gets home. */
import type { System } from '../../design/choices';
import { radialLossDb, radialLossOhm } from '../../physics/radial-loss';
import { isUpright } from '../chain/choke-minimum';
import { type Rule, warn } from './warning';

/** Sixteen radials of 0.15 wavelengths lose 2.3 dB: fewer or shorter ones are worth a word. */
const NOTABLE_DB = 2.5;
const FEWEST_ELEVATED = 2;

export const fewRadials: Rule = ({ facts, dimensions }) => {
  if (!isUpright(facts.system)) return [];
  const { returnPath, radialCount } = facts.settled;
  const [lowest] = facts.bands;
  if (returnPath === 'elevated-radials') {
    if (radialCount < 1 || radialCount >= FEWEST_ELEVATED) return [];
    return [
      warn(
        'few-radials',
        { count: radialCount, wanted: FEWEST_ELEVATED },
        ['second-opposite', 'four-even'],
        'one-elevated',
      ),
    ];
  }
  const radial = dimensions.pieces.find(({ piece }) => piece === 'radial');
  const count = returnPath === 'ground-radials' ? radialCount : 0;
  if (returnPath !== 'ground-radials' && returnPath !== 'ground-rod') return [];
  if (returnPath === 'ground-radials' && radialCount === 0) return []; // refused elsewhere: nothing to work against
  const lengthM = radial?.length.metres ?? 0;
  const waves = lengthM / lowest.wavelengthM;
  const lossDb = radialLossDb(count, waves);
  if (lossDb < NOTABLE_DB) return [];
  const data = {
    band: lowest.band,
    count,
    lengthM,
    lossDb,
    lossOhm: radialLossOhm(count, waves),
    wantedM: 0.15 * lowest.wavelengthM,
  };
  const ways = [['sixteen', { lengthM: data.wantedM }], 'elevated'] as const;
  return [warn('few-radials', data, ways, returnPath === 'ground-rod' ? 'rod-only' : 'few-radials')];
};

const FEW_ELEVATED = 4;

export const radialSymmetry: Rule = ({ facts }) => {
  const { returnPath, radialCount } = facts.settled;
  if (!isUpright(facts.system) || returnPath !== 'elevated-radials') return [];
  if (radialCount < FEWEST_ELEVATED || radialCount > FEW_ELEVATED) return [];
  return [warn('radial-symmetry', { count: radialCount }, ['same-length', 'even-angles'])];
};

/** A loop or a folded wire is closed: both its ends are joined for direct current. */
const closed: readonly System[] = ['full-wave-loop', 'folded-dipole'];

export const staticDrain: Rule = ({ facts, chain }) => {
  if (closed.includes(facts.system) || facts.system === 'other' || facts.settled.indoors) return [];
  if (chain.some(({ device }) => device === 'transformer')) return [];
  return [warn('static-drain', { system: facts.system, lineKind: facts.lineKind }, ['resistors', 'short-first'])];
};
