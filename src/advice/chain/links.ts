/** Links of the chain that need no choice: an empty one to fill, a choke, a piece of line. */
import type { DeviceFinding } from '../device-finding';
import type { Facts } from '../facts';
import type { DeviceKind, Link, Place, Reason } from '../finding';
import { speechRatingW } from '../heating-power';
import { twinLeadMeetsCoax } from '../needs';
import type { ChokePlace } from './choke-places';
import type { ComponentDesigns } from './component-designs';
import { practice } from './why-codes';

export const emptyLink = (device: DeviceKind, at: Place, distanceM: number | null): Link => ({
  device,
  at,
  distanceM,
  distanceMWorking: null,
  ratio: null,
  kind: null,
  ports: null,
  minimumOhm: null,
  minimumOhmBand: null,
  line: null,
  lengthM: null,
  why: [],
  build: null,
  figures: null,
  alternatives: [],
  buy: { code: 'buy-nothing', data: {} },
});

/** What a design gives a link; nothing without one. */
export const designedAs = (found: DeviceFinding | undefined): Pick<Link, 'build' | 'figures' | 'alternatives'> =>
  found ?? { build: null, figures: null, alternatives: [] };

/** Where the chokes of a chain sit, m along the line from the feed point. */
export const chokesAtM = (chain: readonly Link[]): readonly number[] =>
  chain.flatMap(({ device, distanceM }) => (device === 'choke' && distanceM !== null ? [distanceM] : []));

/** At the end of open-wire line a choke joins a balanced line to a coax socket; on coax, or behind a transformer, it joins nothing. */
export function chokeLink(facts: Facts, place: ChokePlace, designs: ComponentDesigns): Link {
  const { role, at, distanceM, working, minimumOhm, band, why } = place;
  const lineEnd = role === 'line-end' && !twinLeadMeetsCoax(facts);
  const designed = designs.chokes?.[role];
  const noCable = designs.chokes !== undefined && designed === undefined;
  return {
    ...emptyLink('choke', at, distanceM),
    distanceMWorking: working,
    kind: lineEnd ? 'current' : null,
    ports: lineEnd ? { in: 'balanced', out: 'unbalanced' } : null,
    minimumOhm,
    minimumOhmBand: band,
    why: noCable ? [...why, practice('choke-no-cable', { averageW: facts.averageW })] : why,
    ...designedAs(designed),
    buy: {
      code: lineEnd ? 'buy-line-end-choke' : 'buy-choke',
      data: {
        ohm: minimumOhm,
        lowest: facts.bands[0].band,
        highest: facts.bands.at(-1)?.band ?? facts.bands[0].band,
        ratingW: speechRatingW(facts),
      },
    },
  };
}

export const lineLink = (line: string, fromM: number, lengthM: number, why: readonly Reason[]): Link => ({
  ...emptyLink('line', 'along-line', fromM),
  line,
  lengthM,
  why,
  buy: { code: 'buy-line', data: { line, lengthM } },
});
