/**
 * The job as a checklist, in order: pack, look at the site, cut, raise, measure, trim, test, leave. A step outdoors names the cautions that
 * must be read before it opens; nothing is cut outdoors before the site was looked at.
 */
import { chokesAtM } from './chain/links';
import type { Dimensions } from './dimensions';
import { endsReachedM, spanOf } from './end-height';
import type { Facts } from './facts';
import type { Before, Caution, Cut, Data, Link, Step } from './finding';
import { hangsAs } from './hanging';
import { aimedDipMHz } from './harmonics';
import type { Mechanics } from './mechanics';
import { highestPointM } from './site-run';
import { linkCount, linkedLegs } from './wire-links';

/** Which gates stand before a step. A step with none opens at once. Ids are kept with what was read: never renamed. */
export const stepGates = {
  pack: [],
  'make-boxes': [],
  'walk-site': ['site'],
  thunder: ['storm'],
  'cut-wire': ['site'],
  'lay-out': ['site'],
  'plan-lift': ['up', 'launch'],
  launch: ['launch'],
  raise: ['raise'],
  'return-wires': ['raise'],
  connect: ['raise'],
  entry: ['site'],
  mark: ['raise'],
  measure: ['site'],
  trim: ['raise', 'links'],
  'set-tuner': ['transmit'],
  'transmit-test': ['transmit', 'links'],
  'change-links': ['raise', 'links'],
  leave: ['leave'],
  storm: ['storm'],
} as const satisfies Record<string, readonly Before[]>;
export type StepId = keyof typeof stepGates;
export const stepIds = Object.keys(stepGates) as readonly StepId[];

/** The cautions to be read before a step, in order: one entry to a gate on screen. */
export function cautionsBefore<C extends Pick<Caution, 'before'>>(stepId: StepId, cautions: readonly C[]): C[] {
  const gates: readonly Before[] = stepGates[stepId];
  return cautions.filter(({ before }) => gates.includes(before));
}

/** Power of the first test, W. Common practice: as low as the radio goes, 10 W at most. */
const FIRST_TEST_W = 10;

export function stepsOf(
  facts: Facts,
  dimensions: Dimensions,
  chain: readonly Link[],
  cuts: readonly Cut[],
  cautions: readonly Caution[],
  mechanics: Mechanics | null,
): Step[] {
  const plan: Plan = { facts, dimensions, chain, cuts, cautions, mechanics };
  const list = facts.settled.indoors ? indoorSteps(plan) : outdoorSteps(plan);
  return list.map(({ id, code, data, outdoor }) => ({
    id,
    code,
    data,
    outdoor,
    cautions: [...new Set(cautionsBefore(id, cautions).map((caution) => caution.id))],
  }));
}

interface Plan {
  readonly facts: Facts;
  readonly dimensions: Dimensions;
  readonly chain: readonly Link[];
  readonly cuts: readonly Cut[];
  readonly cautions: readonly Caution[];
  readonly mechanics: Mechanics | null;
}

interface Draft {
  readonly id: StepId;
  readonly code: string;
  readonly data: Data;
  readonly outdoor: boolean;
}

const inside = (id: StepId, code: string = id, data: Data = {}): Draft => ({ id, code, data, outdoor: false });
const outside = (id: StepId, code: string = id, data: Data = {}): Draft => ({ id, code, data, outdoor: true });

function outdoorSteps(plan: Plan): Draft[] {
  const { facts, dimensions, cuts } = plan;
  const portable = facts.settled.station === 'portable';
  const thrown = cuts.some(({ piece }) => piece === 'throw-line');
  return [
    ...boxes(plan),
    inside('pack', portable ? 'pack-portable' : 'pack-home'),
    outside('walk-site', 'walk-site', { lineDistanceM: lineDistanceM(plan) }),
    outside('thunder', portable ? 'thunder-portable' : 'thunder-home'),
    ...cutting(plan).map((draft) => ({ ...draft, outdoor: true })),
    outside('lay-out', 'lay-out', { runM: dimensions.runM, riseM: dimensions.riseM }),
    outside('plan-lift', thrown ? 'plan-throw' : 'plan-pole'),
    ...(thrown ? [outside('launch')] : []),
    outside('raise', `raise-${hangsAs(facts.settled)}`, raiseData(plan)),
    ...returnWires(plan).map((draft) => ({ ...draft, outdoor: true })),
    outside('connect', connectCode(plan), connectData(plan)),
    ...(portable || facts.lineKind === 'none' ? [] : [outside('entry', `entry-${facts.lineKind}`)]),
    outside('mark', facts.settled.radiator === 'loop' ? 'mark-loop' : 'mark'),
    ...tuning(plan).map((draft) => ({ ...draft, outdoor: true })),
    outside('transmit-test', 'transmit-test', testData(plan)),
    ...changing(plan).map((draft) => ({ ...draft, outdoor: true })),
    portable ? outside('leave', hasLinks(plan) ? 'leave-linked' : 'leave') : outside('storm', 'storm-home'),
  ];
}

/** In a loft, on a balcony or in a room: nothing is thrown or climbed, but people and wiring are near. */
function indoorSteps(plan: Plan): Draft[] {
  return [
    ...boxes(plan),
    ...cutting(plan),
    inside('raise', 'hang-indoors', { runM: plan.dimensions.runM }),
    ...returnWires(plan),
    inside('connect', connectCode(plan), connectData(plan)),
    ...tuning(plan),
    inside('transmit-test', 'transmit-test', testData(plan)),
    ...changing(plan),
    inside('storm', 'storm-indoors'),
  ];
}

const lineDistanceM = ({ cautions }: Plan): number =>
  cautions.find(({ distanceM }) => distanceM !== null)?.distanceM ?? 0;

/** Devices to wind, if any. */
function boxes({ chain }: Plan): Draft[] {
  const count = chain.filter(({ build }) => build !== null).length;
  return count === 0 ? [] : [inside('make-boxes', 'make-boxes', { count })];
}

const isWire = ({ note }: Cut): boolean =>
  note.code !== 'wire-there' && !/^(rope|coax|jumper|open-wire|section)-/.test(note.code);

/** Nothing to cut where the wire is there already. */
function cutting(plan: Plan): Draft[] {
  const count = plan.cuts.filter(isWire).reduce((sum, cut) => sum + cut.count, 0);
  if (count === 0) return [];
  const links = linkCount(plan.dimensions);
  return [
    links === 0
      ? inside('cut-wire', 'cut-wire', { count })
      : inside('cut-wire', 'cut-linked', { count, ...order(plan) }),
  ];
}

const hasLinks = ({ dimensions }: Plan): boolean => linkCount(dimensions) > 0;

/** Bands of a linked wire in the order they are cut and trimmed, highest first. */
const order = ({ dimensions }: Plan): Data => ({
  order: linkedLegs(dimensions)
    .map(({ band }) => band)
    .join(' '),
});

/** A band is chosen at the wire. */
const changing = (plan: Plan): Draft[] =>
  hasLinks(plan) ? [inside('change-links', 'change-links', { ...order(plan), ...lowered(plan) })] : [];

/** Nothing is lowered indoors. */
const lowered = ({ facts }: Plan): Data => ({ indoors: facts.settled.indoors });

/** Nothing is known of how another's antenna hangs, and an upright wire does not sag. */
function slackData({ cuts, mechanics }: Plan): Data {
  const [span] = mechanics?.spans ?? [];
  if (span === undefined || mechanics?.rope == null) return {};
  const onTree = cuts.some(({ piece }) => piece === 'throw-line');
  const { weightKg, swayM } = mechanics.rope;
  return { span: span.id, sagM: span.sag.metres, ...(onTree ? { weightKg, swayM } : {}) };
}

function raiseData(plan: Plan): Data {
  const { facts, dimensions, cuts } = plan;
  const guys = cuts.find(({ piece }) => piece === 'guy');
  const { heightM, fedAt } = facts.settled;
  const { farM: endHeightM, shortM: shortEndHeightM } = endsReachedM(facts, dimensions.radiator.metres);
  const leans = ['inverted-v', 'sloper'].includes(hangsAs(facts.settled));
  const topM = leans ? spanOf(facts, dimensions.radiator.metres).highM : highestPointM(facts, dimensions);
  return {
    heightM,
    endHeightM,
    shortEndHeightM,
    topM,
    endFed: fedAt === 'end',
    guyM: guys?.finishedM ?? 0,
    ...slackData(plan),
  };
}

function returnWires({ facts, dimensions }: Plan): Draft[] {
  const wires = dimensions.pieces.filter(({ piece }) => piece === 'radial' || piece === 'counterpoise');
  const [first] = wires;
  if (first === undefined) return [];
  const count = wires.reduce((sum, { count: each }) => sum + each, 0);
  const code = first.piece === 'counterpoise' ? 'lay-counterpoise' : `lay-${facts.settled.returnPath}`;
  const { heightM } = facts.settled;
  return [inside('return-wires', code, { count, lengthM: first.length.metres, heightM })];
}

const connectCode = ({ facts }: Plan): string => `connect-${facts.lineKind}`;

/** `chokesM`: places along the line, counted from the feed point, joined by "|". */
function connectData({ chain, facts }: Plan): Data {
  const box = chain.some(({ device, at }) => device !== 'line' && at === 'feed-point');
  const transformed = chain.some(({ device, at }) => device === 'transformer' && at !== 'feed-point');
  const square = facts.settled.feedLineRoute === 'square';
  return { chokesM: [...new Set(chokesAtM(chain))].join('|'), box, square, transformed };
}

function tuning(plan: Plan): Draft[] {
  const { facts, dimensions, cuts } = plan;
  const [lowest] = facts.bands;
  const data: Data = {
    band: lowest.band,
    dipMHz: aimedDipMHz(facts, dimensions),
    bands: facts.bands.map(({ band }) => band).join(' '),
  };
  const trimmed = cuts.some(({ stopRule }) => stopRule.code === 'stop-at-dip');
  if (!trimmed) return [inside('set-tuner', 'set-tuner', data)];
  if (hasLinks(plan)) {
    const highest = facts.bands.at(-1) ?? lowest;
    const first = { ...order(plan), band: highest.band, dipMHz: highest.focusMHz, ...lowered(plan) };
    return [inside('measure', 'measure-linked', first), inside('trim', 'trim-linked', first)];
  }
  return [inside('measure', 'measure-dip', data), inside('trim', 'trim', data)];
}

const testData = (plan: Plan): Data => ({
  firstW: Math.min(FIRST_TEST_W, plan.facts.settled.powerW),
  powerW: plan.facts.settled.powerW,
  linked: hasLinks(plan),
});
