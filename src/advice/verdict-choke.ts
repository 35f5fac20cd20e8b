/**
 * Chokes, beads, coils and bare cores on hand, by the ohms they have on the weakest of the wanted bands, against each choke of the chain. A
 * mostly reactive one needs more (5 kΩ at end-feds, 2 kΩ elsewhere), and above its own resonance it is no help. Source: own field solutions.
 */
import { type CoaxId, isCoax } from '../catalog/line-ids';
import type { PartOnHand } from '../design/answers';
import { reactiveMinimumOhm } from './chain/choke-minimum';
import type { Facts } from './facts';
import type { BuildFinding, Link } from './finding';
import { keyedAverageW } from './heating-power';
import { beadsOnHand, chokeOnHand, coaxTurnsThatFit, coilOnHand, type Impedance } from './part-impedance';
import { type Judged, judged } from './verdict-codes';

type Choke = Extract<PartOnHand, { part: 'choke' }>;
type Coil = Extract<PartOnHand, { part: 'coil' }>;
type Core = Extract<PartOnHand, { part: 'core' }>;

const chokesIn = (chain: readonly Link[]): readonly Link[] => chain.filter(({ device }) => device === 'choke');

export function judgeChoke(part: Choke, facts: Facts, chain: readonly Link[]): Judged {
  if (!isCoax(part.line)) return judged('wrong', 'choke-of-open-line');
  const fit = coaxTurnsThatFit(part.core, part.line);
  if (part.turns > fit)
    return judged('wrong', 'choke-turns', { turns: part.turns, fit, core: part.core, line: part.line });
  return judgeOhms(chokeOnHand({ ...part, line: part.line }, facts.bands), facts, chain);
}

export const judgeBeads = (count: number, facts: Facts, chain: readonly Link[]): Judged =>
  judgeOhms(beadsOnHand(count, facts.bands), facts, chain);

export function judgeCoil(part: Coil, facts: Facts, chain: readonly Link[]): Judged {
  if (!isCoax(part.line)) return judged('wrong', 'choke-of-open-line');
  return judgeOhms(coilOnHand({ ...part, line: part.line }, facts.bands), facts, chain);
}

/** What a choke needs where it is mostly reactive or not. */
const needOhm = (link: Link, at: Impedance, facts: Facts): number =>
  Math.max(link.minimumOhm ?? 0, at.reactive ? reactiveMinimumOhm(facts) : 0);

/** The place over the bands where the part has least of what this choke needs. */
const weakestFor = (link: Link, part: readonly Impedance[], facts: Facts): Impedance | undefined =>
  part.reduce<Impedance | undefined>(
    (weak, at) =>
      weak === undefined || at.ohm / needOhm(link, at, facts) < weak.ohm / needOhm(link, weak, facts) ? at : weak,
    undefined,
  );

/** The antenna-end choke first; another place that the part is good enough for, else. */
function judgeOhms(part: readonly Impedance[], facts: Facts, chain: readonly Link[]): Judged {
  const chokes = chokesIn(chain);
  const [first] = chokes;
  const weak = first === undefined ? undefined : weakestFor(first, part, facts);
  if (first === undefined || weak === undefined) return judged('wrong', 'choke-not-here');
  const enoughFor = (link: Link): boolean => part.every((at) => at.ohm >= needOhm(link, at, facts));
  const data = { ohm: weak.ohm, band: weak.band, needed: needOhm(first, weak, facts), at: first.at };
  const elsewhere = (link: Link) => ({ ...data, elsewhere: link.at, otherOhm: link.minimumOhm ?? 0 });
  if (enoughFor(first)) {
    const tooHard = chokes.find((link) => !enoughFor(link));
    return tooHard === undefined
      ? judged('fits', 'choke-fits', data)
      : judged('fits', 'choke-fits-first', elsewhere(tooHard));
  }
  const other = chokes.find(enoughFor);
  if (other !== undefined) return judged('fits-elsewhere', 'choke-fits-elsewhere', elsewhere(other));
  if (weak.capacitive) return judged('too-small', 'choke-capacitive', data);
  return judged('too-small', weak.reactive ? 'choke-reactive' : 'choke-too-small', data);
}

const THIN_COAX_W = 50;
const MOST_TURNS = 20;
const FEWEST_TURNS = 3;

/** A bare core is worth what can be wound on it: what the plan winds on it first, else the best choke. */
export function judgeCore(part: Core, facts: Facts, chain: readonly Link[]): Judged {
  const users = chain.filter(({ build }) => build?.core === part.core);
  const user = users.find(({ build }) => part.count >= (build?.count ?? 1)) ?? users[0];
  if (user?.build != null) return judgePlanned(part, user, user.build);
  return chokesIn(chain).length === 0
    ? judged('wrong', 'core-not-here', { core: part.core })
    : judgeCoreAsChoke(part, facts, chain);
}

function judgePlanned(part: Core, { device, at }: Link, build: BuildFinding): Judged {
  const data = { core: part.core, at, count: build.count ?? 1, turns: build.turns ?? 0 };
  if (part.count < data.count) return judged('fits', 'core-is-part', { ...data, device, have: part.count });
  if (device === 'transformer')
    return judged('fits', 'core-for-transformer', { ...data, secondaryTurns: build.secondaryTurns ?? 0 });
  return judged('fits', 'core-for-planned-choke', {
    ...data,
    secondTurns: build.secondaryTurns ?? 0,
    line: build.conductor ?? '',
  });
}

function judgeCoreAsChoke(part: Core, facts: Facts, chain: readonly Link[]): Judged {
  const line: CoaxId = keyedAverageW(facts) <= THIN_COAX_W ? 'rg-316' : 'rg-400';
  const best = bestWinding(part, line, facts, chain);
  const data = { core: part.core, count: part.count, line, turns: best?.turns ?? 0, ...best?.judgement.data };
  switch (best?.judgement.verdict) {
    case 'fits':
      return judged('fits', best.judgement.code === 'choke-fits' ? 'core-for-choke' : 'core-for-first-choke', data);
    case 'fits-elsewhere':
      return judged('fits-elsewhere', 'core-for-other-choke', data);
    default:
      return judged('too-small', best === null ? 'core-too-small' : 'core-too-few-ohms', data);
  }
}

/** The number of turns that comes nearest to what the antenna-end choke needs, or has most to spare; null when too few fit through the hole. */
function bestWinding(
  { core, count }: Core,
  line: CoaxId,
  facts: Facts,
  chain: readonly Link[],
): { readonly turns: number; readonly judgement: Judged } | null {
  const most = Math.min(coaxTurnsThatFit(core, line), MOST_TURNS);
  let best: { turns: number; judgement: Judged; met: number } | null = null;
  for (let turns = FEWEST_TURNS; turns <= most; turns++) {
    const judgement = judgeOhms(chokeOnHand({ core, count, turns, line }, facts.bands), facts, chain);
    const met = Number(judgement.data.ohm) / Number(judgement.data.needed);
    if (best === null || met > best.met) best = { turns, judgement, met };
  }
  return best;
}
