/**
 * Cores of planned transformers and chokes that would get too hot: where no build of the catalogue is enough at this power and mode, and on
 * bands where a mismatched antenna drives a transformer harder than it was sized for.
 */
import { RISE_EXPONENT } from '../../physics/core-heat';
import type { DeviceBand, DeviceFigures } from '../device-finding';
import type { Link, Warning } from '../finding';
import { keyedAverageW } from '../heating-power';
import { REACH } from '../line-run';
import { type Judged, type Rule, type Way, warn } from './warning';

export const coreHeat: Rule = (judged) => judged.chain.flatMap((link) => heatOf(judged, link));

function heatOf({ facts }: Judged, { device, at, build, figures }: Link): Warning[] {
  const hot = figures === null ? undefined : hottest(figures);
  if (figures === null || hot === undefined || build === null || hot.riseK <= figures.limitK) return [];
  // The law of the rise turned round: what part of the heat brings it to the limit.
  const part = (figures.limitK / hot.riseK) ** (1 / RISE_EXPONENT);
  const mostW = facts.settled.powerW * part;
  const data = {
    device,
    at,
    band: hot.band.band,
    core: build.core ?? '',
    count: build.count ?? 1,
    heatW: hot.band.heatW ?? 0,
    riseK: hot.riseK,
    limitK: figures.limitK,
    isClosed: figures.housing === 'closed-box',
    swr: hot.band.swr ?? 1,
    dutyPercent: 100 * part,
    mostW,
    averageW: keyedAverageW(facts),
  };
  const mismatched = (hot.band.swr ?? 1) > REACH.none;
  const cure: readonly Way[] = device === 'choke' ? ['more-ohms'] : mismatched ? ['lower-swr'] : [];
  return [warn('core-heat', data, [['less-power', { mostW }], ...cure, 'cooler-box', 'shorter-overs'])];
}

/** The hottest band that can be worked; a choke's rise is known for its hottest band only. */
function hottest({ bands, riseK }: DeviceFigures): { band: DeviceBand; riseK: number } | undefined {
  const worked = bands.filter(({ swr }) => swr === null || swr <= REACH.wide);
  const [most] = [...worked].sort((a, b) => (b.riseK ?? b.heatW ?? 0) - (a.riseK ?? a.heatW ?? 0));
  const rise = most?.riseK ?? riseK;
  return most === undefined || rise === null ? undefined : { band: most, riseK: rise };
}
