/**
 * Chokes by rule of thumb: turns of small coax on one 61 mm ring of mix 31, by the range of bands; two windings in series where one ring does
 * not reach over the whole range. Source: common practice, after published measurements of chokes on such rings.
 */
import { type Band, bandIds } from '../../catalog/bands';
import { coreOf } from '../../catalog/cores';
import { type CoaxId, coaxes } from '../../catalog/lines';
import { conductorLengthM } from '../../physics/conductor-on-core';
import type { Facts } from '../facts';
import type { BuildFinding } from '../finding';
import { keyedAverageW } from '../heating-power';
import type { ChokePlace } from './choke-places';

interface Range {
  readonly from: Band;
  readonly to: Band;
  readonly turns: number;
}

/** Narrowest first, so that a single band gets the turns made for it. */
const ranges: readonly Range[] = [
  { from: '20m', to: '6m', turns: 10 },
  { from: '40m', to: '15m', turns: 12 },
  { from: '80m', to: '20m', turns: 14 },
  { from: '160m', to: '80m', turns: 17 },
];
/** One winding over everything: the compromise that is good for 1 kΩ. */
const COMPROMISE_TURNS = 12;
const HIGH_BANDS_TURNS = 10;
const LOWEST_BAND_TURNS = 17;
const LOW_BANDS_TURNS = 14;
/** Coax left at each end of a winding for the plugs, m. */
const TAIL_M = 0.15;
const THIN_COAX_W = 50;
const CORE = 'ft240-31';
const SMALL_CORE = 'ft140-31';

const order = (band: Band): number => bandIds.indexOf(band);

export function ruleOfThumbChoke(facts: Facts, { minimumOhm }: ChokePlace): BuildFinding {
  const lowest = facts.bands[0].band;
  const highest = facts.bands.at(-1)?.band ?? lowest;
  const averageW = keyedAverageW(facts);
  const thin = averageW <= THIN_COAX_W;
  const conductor: CoaxId = thin ? 'rg-316' : 'rg-400';
  if (minimumOhm <= 1000 && facts.settled.station === 'portable' && thin)
    return wound('choke-one-winding', SMALL_CORE, conductor, [COMPROMISE_TURNS]);
  const range = ranges.find(({ from, to }) => order(from) <= order(lowest) && order(to) >= order(highest));
  if (range !== undefined) return wound('choke-one-winding', CORE, conductor, [range.turns]);
  if (minimumOhm <= 1000) return wound('choke-one-winding', CORE, conductor, [COMPROMISE_TURNS]);
  const low = lowest === '160m' ? LOWEST_BAND_TURNS : LOW_BANDS_TURNS;
  return wound('choke-two-windings', CORE, conductor, [low, HIGH_BANDS_TURNS]);
}

function wound(code: string, core: string, conductor: CoaxId, windings: readonly [number, number?]): BuildFinding {
  const [turns, secondTurns] = windings;
  const ring = coreOf(core);
  const outerM = coaxes[conductor].outerDiameterM.value;
  const cable = (of: number): number => conductorLengthM(ring, 1, of, outerM, TAIL_M);
  const conductorM = cable(turns) + (secondTurns === undefined ? 0 : cable(secondTurns));
  return {
    code,
    data: { core, conductor, turns, conductorM, ...(secondTurns === undefined ? {} : { secondTurns }) },
    core,
    count: secondTurns === undefined ? 1 : 2,
    turns,
    secondaryTurns: secondTurns ?? null,
    conductor,
    conductorLengthM: conductorM,
    capacitorPf: null,
    box: 'vented-box',
  };
}
