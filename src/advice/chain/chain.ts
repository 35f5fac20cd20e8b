/**
 * The chain from the wire to the radio: every device where it stands along the line, the pieces of line between them, and why.
 *
 *   coax        [transformer or tuner] ─ [choke] ═ coax ═ [arrester][choke] ═ coax ═ [choke][tuner][radio]
 *   open wire   ═ line ═ [arrester] ═ [choke] ─ coax jumper ─ [tuner][radio]      or straight into a balanced tuner
 *   no line     [transformer][tuner][radio]
 */
import type { Ohms } from '../../design/answers';
import type { Dimensions } from '../dimensions';
import type { Facts } from '../facts';
import type { Link } from '../finding';
import { needsOf } from '../needs';
import { type ChokePlace, chokePlacesOf, JUMPER_M } from './choke-places';
import type { ComponentDesigns } from './component-designs';
import { type CoaxPart, coaxWhy, openWireWhy } from './line-why';
import { chokeLink, lineLink } from './links';
import { arresterLink, feedPointTuner, radioLink, shackTuner } from './shack-links';
import { transformerLink } from './transformer-link';
import { practice } from './why-codes';

/** Shortest piece of line worth a link of its own, m. */
const SHORTEST_LINE_M = 0.02;
/** Coax for the jumper between a choke at the wall and the tuner: low loss, because the SWR on it is high. */
const JUMPER_LINE = 'rg-213';

/** `solved`: feed-point impedance on the lowest band, once a field solution knows it. */
export function chainOf(
  facts: Facts,
  dimensions: Dimensions,
  designs: ComponentDesigns = {},
  solved: Ohms | null = null,
): readonly Link[] {
  switch (facts.lineKind) {
    case 'coax':
      return coaxChain(facts, dimensions, designs, solved);
    case 'open-wire':
      return openWireChain(facts, dimensions, designs);
    case 'none':
      return [
        ...feedPointLinks(facts, designs, solved),
        ...chokePlacesOf(facts, dimensions).map((place) => chokeLink(facts, place, designs)),
        ...shackLinks(facts, 0),
      ];
  }
}

function feedPointLinks(facts: Facts, designs: ComponentDesigns, solved: Ohms | null): readonly Link[] {
  if (facts.settled.shackEnd === 'feed-point-tuner') return [feedPointTuner()];
  const need = needsOf(facts, solved).transformation;
  const place = { at: 'feed-point', distanceM: 0 } as const;
  return need === null ? [] : [transformerLink(facts, need.ratio, place, designs, solved)];
}

function coaxChain(
  facts: Facts,
  dimensions: Dimensions,
  designs: ComponentDesigns,
  solved: Ohms | null,
): readonly Link[] {
  const lengthM = facts.settled.feedLineLengthM;
  const { entryChokeAt } = dimensions;
  const entryM = entryChokeAt?.metres ?? facts.settled.entryDistanceM;
  const arrester = arresterLink(facts, entryM, entryChokeAt);
  const chokes = chokePlacesOf(facts, dimensions);
  const devices = [
    ...feedPointLinks(facts, designs, solved),
    ...chokes.filter(onTheWay).map((place) => chokeLink(facts, place, designs)),
    ...(arrester === null ? [] : [arrester]),
    ...chokes.filter((place) => !onTheWay(place)).map((place) => chokeLink(facts, place, designs)),
    ...shackLinks(facts, lengthM),
  ];
  return weave(facts, dimensions, devices);
}

/** Before the arrester at the wall. */
const onTheWay = ({ role }: ChokePlace): boolean => role === 'antenna' || role === 'further';

/** Puts the coax between devices that stand apart. */
function weave(facts: Facts, dimensions: Dimensions, devices: readonly Link[]): readonly Link[] {
  const chain: Link[] = [];
  let reachedM = 0;
  let part: CoaxPart = 'above-choke';
  for (const device of devices) {
    const distanceM = device.distanceM ?? reachedM;
    const gapM = distanceM - reachedM;
    if (gapM > SHORTEST_LINE_M) {
      const why = coaxWhy(facts, dimensions, gapM, part);
      chain.push(lineLink(facts.settled.feedLine, reachedM, gapM, why));
      reachedM = distanceM;
    }
    if (device.at === 'building-entry') part = 'inside';
    else if (device.device === 'choke') part = 'outdoors';
    chain.push(device);
  }
  return chain;
}

function openWireChain(facts: Facts, dimensions: Dimensions, designs: ComponentDesigns): readonly Link[] {
  const { feedLineLengthM, shackEnd, station } = facts.settled;
  const upToTuner = [
    ...(shackEnd === 'feed-point-tuner' ? [feedPointTuner()] : []),
    ...openLineAndArrester(facts, dimensions),
  ];
  const places = chokePlacesOf(facts, dimensions);
  const radioChokes = places.filter(({ role }) => role === 'radio').map((place) => chokeLink(facts, place, designs));
  // A balanced tuner takes the line as it is; a choke, where trouble asks for one, then belongs on the coax after it.
  if (shackEnd === 'balanced-tuner') return [...upToTuner, ...shackLinks(facts, feedLineLengthM, radioChokes)];
  const need = needsOf(facts).transformation;
  const lineEnd = { at: station === 'portable' ? 'radio' : 'building-entry', distanceM: feedLineLengthM } as const;
  const jumperM = station === 'portable' ? 0 : JUMPER_M;
  const jumperWhy = practice(need === null ? 'line-jumper' : 'line-jumper-matched', { lengthM: jumperM });
  return [
    ...upToTuner,
    ...(need === null ? [] : [transformerLink(facts, need.ratio, lineEnd, designs, null)]),
    ...places.filter(({ role }) => role === 'line-end').map((place) => chokeLink(facts, place, designs)),
    ...(jumperM > 0 ? [lineLink(JUMPER_LINE, feedLineLengthM, jumperM, [jumperWhy])] : []),
    ...radioChokes,
    ...shackLinks(facts, feedLineLengthM + jumperM),
  ];
}

/** The open-wire line, in two pieces where it passes an arrester on its way to a balanced tuner. */
function openLineAndArrester(facts: Facts, dimensions: Dimensions): readonly Link[] {
  const { feedLine, feedLineLengthM, entryDistanceM, shackEnd } = facts.settled;
  const entryM = shackEnd === 'balanced-tuner' ? Math.min(entryDistanceM, feedLineLengthM) : feedLineLengthM;
  const arrester = arresterLink(facts, entryM, null);
  const why = openWireWhy(facts, dimensions);
  const line = (fromM: number, lengthM: number): readonly Link[] =>
    lengthM > SHORTEST_LINE_M ? [lineLink(feedLine, fromM, lengthM, why)] : [];
  if (arrester === null) return line(0, feedLineLengthM);
  return [...line(0, entryM), arrester, ...line(entryM, feedLineLengthM - entryM)];
}

const shackLinks = (facts: Facts, distanceM: number, between: readonly Link[] = []): readonly Link[] => {
  const tuner = shackTuner(facts, distanceM);
  return [...(tuner === null ? [] : [tuner]), ...between, radioLink(distanceM)];
};
