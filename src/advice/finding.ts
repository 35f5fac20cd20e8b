/** What rules say: codes and numbers. words/ turns them into sentences; a code without a sentence is a failing test. */
import type { Working } from '../base/working';
import type { Band } from '../catalog/band-ids';
import type { Provenance } from '../catalog/sourced';
import type { SourceId } from '../catalog/sources';
import type { AntennaPart, PeoplePlace } from '../design/antenna-part';
import type { RuleSet } from '../design/choices';
import type { DeviceAlternative, DeviceFigures } from './device-finding';
import type { StepId } from './steps';

/** Numbers in SI or the unit their name ends with (`wireM`, `powerW`), ids of the catalogue, band ids. Never NaN, never undefined. */
export type Data = Readonly<Record<string, number | string | boolean>>;

export interface Said {
  readonly code: string;
  readonly data: Data;
}

/** A reason for a device, or for leaving one out. */
export interface Reason extends Said {
  readonly source: SourceId;
}

export interface Needs {
  readonly balance: boolean;
  readonly transformation: { readonly ratio: number } | null;
  readonly isolation: boolean;
}

export type DeviceKind = 'transformer' | 'choke' | 'line' | 'tuner' | 'arrester' | 'radio';
export type Place = 'feed-point' | 'along-line' | 'building-entry' | 'radio';

/** How to make a device; `code` and `data` word the winding instruction. */
export interface BuildFinding extends Said {
  readonly core: string | null;
  readonly count: number | null;
  readonly turns: number | null;
  readonly secondaryTurns: number | null;
  /** Wires that go on side by side as one. */
  readonly strands: number | null;
  readonly conductor: string | null;
  /** All of it, tails included: a pair of wires counts twice. */
  readonly conductorLengthM: number | null;
  readonly conductorLengthMWorking: Working | null;
  readonly capacitorPf: number | null;
  readonly box: string;
}

/** One link of the chain from wire to radio. */
export interface Link {
  readonly device: DeviceKind;
  readonly at: Place;
  /** Along the line from the feed point, m. */
  readonly distanceM: number | null;
  readonly distanceMWorking: Working | null;
  readonly ratio: number | null;
  readonly kind: 'voltage' | 'current' | null;
  readonly ports: { readonly in: 'balanced' | 'unbalanced'; readonly out: 'balanced' | 'unbalanced' } | null;
  readonly minimumOhm: number | null;
  readonly minimumOhmBand: Band | null;
  /** A line of the catalogue and its length, for `line`. */
  readonly line: string | null;
  readonly lengthM: number | null;
  readonly why: readonly Reason[];
  readonly build: BuildFinding | null;
  /** What the build does, and what other rings would do; null and none for a device that is bought or not designed. */
  readonly figures: DeviceFigures | null;
  readonly alternatives: readonly DeviceAlternative[];
  /** Words what to ask for in a shop. */
  readonly buy: Said;
}

export interface NotNeeded extends Reason {
  readonly device: string;
}

export interface Verdict extends Said {
  readonly part: number;
  readonly verdict: 'fits' | 'fits-elsewhere' | 'too-small' | 'wrong';
}

/** What a shop may offer instead of what is planned. */
export interface OfferedBox extends Omit<Verdict, 'part'> {
  readonly ratio: number;
}

export type Severity = 'stop' | 'warn' | 'note';

export interface Warning extends Said {
  readonly id: string;
  readonly severity: Severity;
  /** Bands it is about; empty for all. */
  readonly bands: readonly Band[];
  readonly waysOut: readonly Said[];
}

/** A piece of wire, line or rope to cut. */
export interface Cut {
  readonly piece: string;
  readonly count: number;
  readonly finishedM: number;
  /** From the feed point to the outer end of a piece that links join to others inside it. */
  readonly legM?: number;
  readonly cutM: number;
  readonly toleranceM: number;
  /** Where to mark, m from the feed-point end. */
  readonly marksM: readonly number[];
  readonly note: Said;
  /** When to stop trimming, or how exact the piece must be. */
  readonly stopRule: Said;
  readonly working: Working;
}

export interface Part {
  /** What it is, size and all, but not how much of it. Kept with ticks: never renamed. */
  readonly id: string;
  readonly item: Said;
  readonly quantity: number;
  readonly unit: 'piece' | 'metre' | 'set' | 'pair' | 'roll';
  readonly have: number;
  /** All there is of it on hand, for whoever shops for several plans: `have` is never more than is asked for. */
  readonly owned: number;
  readonly for: Said;
  readonly substitute: Said;
  /** One does for all antennas that are put up one after the other. */
  readonly again: boolean;
  readonly where: 'wire-and-rope' | 'electrical' | 'radio' | 'hardware' | 'made';
}

export interface BandFinding {
  readonly band: Band;
  readonly atMHz: number;
  readonly feedPoint: { readonly r: number; readonly x: number } | null;
  readonly swrAtFeedPoint: number | null;
  readonly swrAtRadio: number | null;
  readonly lineLossDb: number | null;
  readonly deviceLossDb: number | null;
  readonly entryCurrentMa: number | null;
  readonly shieldCurrentDb: number | null;
  /** SWR at the radio over the band. */
  readonly swrSweep: readonly { readonly mhz: number; readonly swr: number }[] | null;
  readonly tunerNeeded: boolean | null;
  readonly notes: readonly Said[];
}

export type Before = 'site' | 'up' | 'launch' | 'raise' | 'transmit' | 'links' | 'leave' | 'storm';

export interface Caution {
  readonly id: string;
  /** Lines of the caution catalogue (words/en/cautions.ts), by number. */
  readonly lines: readonly number[];
  readonly before: Before;
  readonly data: Data;
  readonly source: SourceId;
  readonly distanceM: number | null;
  readonly distanceMWorking: Working | null;
}

export interface Exposure {
  readonly band: Band;
  readonly knowingM: number | null;
  readonly knowingMWorking: Working | null;
  readonly publicM: number | null;
  readonly publicMWorking: Working | null;
  /** On the ground, seen from above: from where on a standing body meets the limits; 0 where it does everywhere. */
  readonly groundKnowingM: number | null;
  readonly groundKnowingMWorking: Working | null;
  readonly groundPublicM: number | null;
  readonly groundPublicMWorking: Working | null;
  readonly ruleSet: RuleSet;
  readonly method: 'solved' | 'screen' | 'common-practice' | 'refused';
  /** The part that decides for the public. */
  readonly part: AntennaPart | null;
  /** Each part's own distance, 0 where its field is within the limits at touching distance. */
  readonly parts: readonly ExposurePart[];
  readonly places: readonly ExposurePlace[];
  readonly limits: readonly ExposureLimit[];
  readonly decidedBy: Said;
  readonly nearestPersonOk: boolean | null;
  /** At the crest. */
  readonly powerAtNearestPersonW: number | null;
  readonly powerAtNearestPersonWWorking: Working | null;
}

interface ExposurePart {
  readonly part: AntennaPart;
  readonly knowingM: number;
  readonly knowingMWorking: Working;
  readonly publicM: number;
  readonly publicMWorking: Working;
}

/** A place where people may be: the field there as a part of its limit, 1 at the limit, and the peak power that brings it there. */
export interface ExposurePlace {
  readonly place: PeoplePlace;
  readonly knowingPart: number;
  readonly knowingMostW: number;
  readonly knowingMostWWorking: Working;
  readonly publicPart: number;
  readonly publicMostW: number;
  readonly publicMostWWorking: Working;
}

/** One limit that was asked of a band, and how its number came in. */
export interface ExposureLimit {
  readonly tier: 'knowing' | 'public';
  readonly kind: 'electric' | 'magnetic' | 'power';
  readonly limit: number;
  /** 0 for the crest, which is not averaged. */
  readonly averagingMin: number;
  readonly provenance: Provenance;
  readonly source: SourceId;
}

export interface Step extends Said {
  readonly id: StepId;
  readonly outdoor: boolean;
  /** Cautions that must be read first. */
  readonly cautions: readonly string[];
}

export interface Dispute extends Said {
  readonly id: string;
  readonly source: SourceId;
}
