/**
 * The job as a checklist, in order: pack, look at the site, cut, raise, measure, trim, test, leave. A step outdoors names the cautions that
 * must be read before it opens; nothing is cut outdoors before the site was looked at.
 */
import { chokesAtM } from './chain/links';
import type { Dimensions } from './dimensions';
import { endReachedM } from './end-height';
import type { Facts } from './facts';
import type { Before, Caution, Cut, Data, Link, Step } from './finding';
import { aimedDipMHz } from './harmonics';
import type { Mechanics } from './mechanics';
import { highestPointM } from './site-run';

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
  trim: ['raise'],
  'set-tuner': ['transmit'],
  'transmit-test': ['transmit'],
  leave: ['leave'],
  storm: ['storm'],
} as const satisfies Record<string, readonly Before[]>;
export type StepId = keyof typeof stepGates;

/** The cautions to be read before a step, in order: one entry to a gate on screen. */
export function cautionsBefore<C extends Pick<Caution, 'before'>>(stepId: StepId, cautions: readonly C[]): C[] {
export const stepIds = Object.keys(stepGates) as readonly StepId[];
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
    inside('pack', portable ? 'pack-portable' : 'pack-home'),
    ...boxes(plan),
    outside('walk-site', 'walk-site', { lineDistanceM: lineDistanceM(plan) }),
    outside('thunder', portable ? 'thunder-portable' : 'thunder-home'),
    ...cutting(plan).map((data) => outside('cut-wire', 'cut-wire', data)),
    outside('lay-out', 'lay-out', { runM: dimensions.runM, riseM: dimensions.riseM }),
    outside('plan-lift', thrown ? 'plan-throw' : 'plan-pole'),
    ...(thrown ? [outside('launch')] : []),
    outside('raise', `raise-${facts.settled.radiator}`, raiseData(plan)),
    ...returnWires(plan).map((draft) => ({ ...draft, outdoor: true })),
    outside('connect', connectCode(plan), connectData(plan)),
    ...(portable || facts.lineKind === 'none' ? [] : [outside('entry', `entry-${facts.lineKind}`)]),
    outside('mark'),
    ...tuning(plan).map((draft) => ({ ...draft, outdoor: true })),
    outside('transmit-test', 'transmit-test', testData(facts)),
    portable ? outside('leave') : outside('storm', 'storm-home'),
  ];
}

/** In a loft, on a balcony or in a room: nothing is thrown or climbed, but people and wiring are near. */
function indoorSteps(plan: Plan): Draft[] {
  return [
    ...boxes(plan),
    ...cutting(plan).map((data) => inside('cut-wire', 'cut-wire', data)),
    inside('raise', 'hang-indoors', { runM: plan.dimensions.runM }),
    ...returnWires(plan),
    inside('connect', connectCode(plan), connectData(plan)),
    ...tuning(plan),
    inside('transmit-test', 'transmit-test', testData(plan.facts)),
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
function cutting({ cuts }: Plan): Data[] {
  const count = cuts.filter(isWire).reduce((sum, cut) => sum + cut.count, 0);
  return count === 0 ? [] : [{ count }];
}

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
  const endHeightM = endReachedM(facts, dimensions.radiator.metres);
  const topM = highestPointM(facts, dimensions);
  return { heightM, endHeightM, topM, endFed: fedAt === 'end', guyM: guys?.finishedM ?? 0, ...slackData(plan) };
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

function tuning({ facts, dimensions, cuts }: Plan): Draft[] {
  const [lowest] = facts.bands;
  const data: Data = {
    band: lowest.band,
    dipMHz: aimedDipMHz(facts, dimensions),
    bands: facts.bands.map(({ band }) => band).join(' '),
  };
  const trimmed = cuts.some(({ stopRule }) => stopRule.code === 'stop-at-dip');
  if (!trimmed) return [inside('set-tuner', 'set-tuner', data)];
  return [inside('measure', 'measure-dip', data), inside('trim', 'trim', data)];
}

const testData = ({ settled }: Facts): Data => ({
  firstW: Math.min(FIRST_TEST_W, settled.powerW),
  powerW: settled.powerW,
});
