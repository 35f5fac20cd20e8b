/**
 * The windings of a plan's devices as one counts them: one after the other, a turn being one pass through the hole, and where on the way
 * something else is to be done. Wires that go on side by side are wound, and counted, as one.
 */
import type { SavedPlan } from '../../design/saved-plan';
import type { ChainItem, Plan } from '../../plan/plan-schema';
import { sumOf, turnsOfCode } from './winding-code';

export interface Winding {
  readonly turns: number;
  /** Wires wound as one. */
  readonly strands: number;
  /** Turns from the start where the tap comes out. */
  readonly tapAt: number | null;
  /** Turns after which a choke's cable crosses to the other side of its ring. */
  readonly crossAfter: number | null;
}

export interface WoundDevice {
  /** What it is and where it sits; stays the same while the plan around it changes. */
  readonly id: string;
  readonly item: ChainItem;
  readonly windings: readonly Winding[];
}

/** The windings of a choke are chokes of their own, one behind the other; those of a transformer share its rings. */
export const isOnRingOfItsOwn = (device: ChainItem['device'], windings: readonly Winding[]): boolean =>
  device === 'choke' && windings.length > 1;

/** Rings that one winding goes round, stacked. */
export function ringsOf({ item: { device, build }, windings }: WoundDevice): number {
  const rings = build?.count ?? 1;
  return isOnRingOfItsOwn(device, windings) ? rings / windings.length : rings;
}

/** Fewer turns go on in one go: drawing/winding.tsx draws it so. */
const LEAST_TO_CROSS = 4;

export function woundDevices({ chain }: Plan): readonly WoundDevice[] {
  return chain.flatMap((item, index) => {
    const windings = windingsOf(item);
    if (windings.length === 0) return [];
    const before = chain.slice(0, index).filter(({ device, at }) => device === item.device && at === item.at).length;
    return [{ id: [item.device, item.at, ...(before === 0 ? [] : [before + 1])].join('-'), item, windings }];
  });
}

function windingsOf({ device, build, ports }: ChainItem): readonly Winding[] {
  if (build === null || build.turns === null) return [];
  const { turns, secondaryTurns, strands } = build;
  const plain = { strands: strands ?? 1, tapAt: null, crossAfter: null };
  if (device === 'choke') {
    const rings = [turns, ...(secondaryTurns === null ? [] : [secondaryTurns])];
    return rings.map((each) => ({ ...plain, turns: each, crossAfter: crossAfter(each) }));
  }
  if (secondaryTurns === null) return [{ ...plain, turns }];
  const [least, most] = turns < secondaryTurns ? [turns, secondaryTurns] : [secondaryTurns, turns];
  if (plain.strands > 1) return [{ ...plain, turns: least }];
  if (ports?.in !== 'balanced') return [{ ...plain, turns: most, tapAt: least }];
  return [
    { ...plain, turns },
    { ...plain, turns: secondaryTurns },
  ];
}

const crossAfter = (turns: number): number | null => (turns < LEAST_TO_CROSS ? null : Math.ceil(turns / 2));

/** All there is to wind, as text that jobs/winding-code.ts reads. */
export const codeOf = (windings: readonly Winding[]): string =>
  windings
    .map(
      ({ turns, tapAt, strands }) => `${turns}${tapAt === null ? '' : `/${tapAt}`}${strands > 1 ? `*${strands}` : ''}`,
    )
    .join('+');

function windingsOfCode(code: string, isChoke: boolean): readonly Winding[] {
  const marks = code.split('+');
  const after = (winding: number, mark: RegExp): number | null => {
    const [, count] = mark.exec(marks[winding] ?? '') ?? [];
    return count === undefined ? null : Number(count);
  };
  return turnsOfCode(code).map((turns, winding) => ({
    turns,
    strands: after(winding, /\*(\d+)/) ?? 1,
    tapAt: after(winding, /\/(\d+)/),
    crossAfter: isChoke ? crossAfter(turns) : null,
  }));
}

const jobStart = (id: string): string => `wind ${id} `;
/** The job under which the count is kept. A device of other turns is another job: what was counted for the old one says nothing of it. */
export const windingJob = ({ id, windings }: Omit<WoundDevice, 'item'>): string => jobStart(id) + codeOf(windings);

export interface BegunWinding {
  readonly windings: readonly Winding[];
  readonly count: WindingCount;
  /** Other turns than the plan now asks for. */
  readonly isOther: boolean;
}

/** The last count of this device that was begun, for whatever turns the plan asked for then; null when none was. */
export function begunWinding({ progress }: SavedPlan, wound: WoundDevice): BegunWinding | null {
  const [last] = Object.entries(progress)
    .filter(([job, { step }]) => job.startsWith(jobStart(wound.id)) && Number(step) > 0)
    .sort(([, a], [, b]) => b.at - a.at);
  if (last === undefined) return null;
  const [job, { step }] = last;
  const windings = windingsOfCode(job.slice(jobStart(wound.id).length), wound.item.device === 'choke');
  return { windings, count: countOf(windings, Number(step)), isOther: job !== windingJob(wound) };
}

export interface WindingCount {
  /** The winding in hand, from 0. */
  readonly winding: number;
  /** Turns of it that are on. */
  readonly done: number;
  /** Turns of all windings that are on, and that there are. */
  readonly total: number;
  readonly of: number;
}

/** Where a count of turns over all windings stands. A winding just filled is still in hand: the next turn begins the next one. */
export function countOf(windings: readonly Winding[], counted: number): WindingCount {
  const of = sumOf(windings.map(({ turns }) => turns));
  const total = Math.min(Math.max(Number.isFinite(counted) ? Math.trunc(counted) : 0, 0), of);
  let winding = 0;
  let done = total;
  for (; winding < windings.length - 1 && done > (windings[winding]?.turns ?? 0); winding++) {
    done -= windings[winding]?.turns ?? 0;
  }
  return { winding, done, total, of };
}

export type TurnMoment = 'start' | 'tap' | 'cross' | 'winding-done' | 'all-done' | 'winding';

/** What the turn just counted asks for. */
export function momentOf(windings: readonly Winding[], { winding, done, total, of }: WindingCount): TurnMoment {
  const at = windings[winding];
  if (total === of) return 'all-done';
  if (total === 0) return 'start';
  if (at === undefined) return 'winding';
  if (done === at.turns) return 'winding-done';
  if (done === at.tapAt) return 'tap';
  return done === at.crossAfter ? 'cross' : 'winding';
}
