/**
 * What a field solution tells of one antenna. All of it optional: what is given replaces the value of the rules, the rest stays.
 * Currents and choke duty are per 100 W accepted at the feed gap, rms. Confidence, from our own field computations (average ground, 8 to 10 m
 * up, coax 15 to 35 m along the ground): currents with chokes at both ends 3 dB, with one or none 6 dB, choke heat 25 %.
 */
import type { Complex } from '../base/complex';
import type { Band } from '../catalog/band-ids';
import type { Ohms } from '../design/answers';
import type { AntennaPart, PeoplePlace } from '../design/antenna-part';
import type { CommonModeSource } from '../physics/choke';
import type { OpenAntenna } from '../physics/port-network';
import type { Data } from './finding';

/** On the outside of the coax: mA, and dB relative to the feed current. Null where there is no current to speak of: an open end. */
export interface ShieldCurrent {
  readonly entryMa: number;
  readonly entryDb: number;
  readonly radioMa: number;
  readonly radioDb: number | null;
  /** Outdoors, at the foot of the drop; left out where the coax never comes down. */
  readonly footMa?: number;
}

export interface ChokeDutyAt {
  readonly distanceM: number;
  /** |Z| it was computed with. */
  readonly ohm: number;
  readonly voltageV: number;
  readonly heatW: number;
}

/** A set of chokes on the coax and what it does. */
export interface ShieldState extends ShieldCurrent {
  readonly chokes: readonly ChokeDutyAt[];
}

/** The operator's own chokes, each at the place of the chain where they do most; `part` is its index in `onHand`. */
export interface OwnedState extends ShieldState {
  readonly places: readonly { readonly part: number; readonly distanceM: number }[];
}

/** Strongest fields at each distance, rms with 100 W accepted: V/m and A/m. */
export interface FieldByDistance {
  readonly electric: readonly number[];
  readonly magnetic: readonly number[];
}

/** Fields round the antenna, part by part: `around` at any height, `ground` where a body stands on the ground and seen from above. */
export interface NearField {
  readonly aroundM: readonly number[];
  readonly groundM: readonly number[];
  readonly parts: readonly {
    readonly part: AntennaPart;
    readonly around: FieldByDistance;
    readonly ground: FieldByDistance;
  }[];
  /** Strongest over the height of a body at each place of this site where one may be, rms with 100 W accepted. */
  readonly places: readonly { readonly place: PeoplePlace; readonly electric: number; readonly magnetic: number }[];
}

/** Power towards a direction: `db` below the strongest. */
export interface PatternPoint {
  readonly deg: number;
  readonly db: number;
}

/** Where wires come near to what thin-wire theory leaves out: other wires, their own thickness, the ground. */
export type WireDoubt = 'wires-close' | 'segment-short' | 'segment-thick' | 'ground-close';

/** The antenna with the places of its chokes still open, at the focus or over a band. */
export interface OpenCoax {
  readonly antenna: OpenAntenna;
  /** Loads of the site itself, which come before the places. */
  readonly siteOhms: readonly Complex[];
  /** Places along the coax from the feed point, m, in order. */
  readonly portsM: readonly number[];
}

export interface BandField {
  /** With the planned chokes in place. */
  readonly feedPoint?: Ohms;
  readonly feedCurrentA?: number;
  /** On the outside of the coax at the building entry, mA. */
  readonly entryCurrentMa?: number;
  /** The same relative to the feed current, dB. */
  readonly shieldCurrentDb?: number;
  readonly noChoke?: ShieldState;
  readonly planned?: ShieldState;
  readonly owned?: OwnedState | null;
  /** Radiated part of the power accepted. */
  readonly efficiency?: number;
  readonly gainDbi?: number;
  /** Height above the horizon of the strongest radiation. */
  readonly takeOffDeg?: number;
  /** What drives each planned choke, the others in their places. */
  readonly chokeSources?: Readonly<Partial<Record<ChosenChoke['role'], CommonModeSource>>>;
  /** So that chokes as they are wound can be put in the places of the planned ones; with the places that were tried, and over the band. */
  readonly openCoax?: OpenCoax;
  readonly openSweep?: OpenCoax;
  /** Impedance at the feed point over the band. */
  readonly sweep?: readonly { readonly mhz: number; readonly r: number; readonly x: number }[];
  /** Part of the power that goes up to 15°, 15 to 35°, 35 to 60°, and above. */
  readonly elevationShares?: readonly [number, number, number, number];
  /** Along the strongest azimuth, by height above the horizon. */
  readonly elevation?: readonly PatternPoint[];
  /** Round the horizon at the take-off angle; 0° lies along the wire, 90° where coax leaves at a right angle. */
  readonly azimuth?: readonly PatternPoint[];
  /** The solver's own estimate of its error in impedance, as part of it. */
  readonly errorEstimate?: number;
  /** What the solver doubts of these wires, each once; its error estimate does not see it. */
  readonly doubts?: readonly WireDoubt[];
  /** Fields where people may be, with the planned chokes. */
  readonly nearField?: NearField;
}

/** SWR behind the transformer at the focus of one band, by rule and as chosen. */
export interface ComparedSwr {
  readonly band: Band;
  readonly rule: number;
  readonly chosen: number;
}

/** Where an off-centre wire is fed, as its shorter arm's part of the whole. */
export interface SolvedFeed {
  readonly fraction: number;
  readonly ruleFraction: number;
  /** A told part stays, whatever was found. */
  readonly told: boolean;
  /** On every band the wire's length fits, each part with the length that suits it; empty where the rule's part stays. */
  readonly swr: readonly ComparedSwr[];
  /** Another part that would do clearly better than the told one, with the worst band either way. */
  readonly better: {
    readonly fraction: number;
    readonly worst: { readonly band: Band; readonly swr: number };
    readonly toldWorst: { readonly band: Band; readonly swr: number };
  } | null;
}

/** Two legs of parallel dipoles, tip to tip. */
export interface SolvedPair {
  readonly wholeM: number;
  readonly ruleM: number;
  /** What the band shows without legs of its own, where the rules would do without them. */
  readonly rideSwr?: number;
}

/** What a one-terminal wire works against. Raised radials resonate in pairs; a counterpoise leaves its choke the least power. */
export interface SolvedReturn {
  readonly piece: 'radial' | 'counterpoise';
  readonly by: 'resonance' | 'choke-heat';
  /** One to a wire of its own length, as the rules list them. */
  readonly wires: readonly { readonly ruleM: number; readonly chosenM: number }[];
  /** Heat of the hottest choke per 100 W on the worst band; null where no choke decided. */
  readonly heatW: { readonly rule: number; readonly chosen: number } | null;
}

/** Conductor lengths that the site asks for, in place of those of the rules. */
export interface SolvedLengths {
  readonly radiatorM: number;
  readonly ruleM: number;
  /** Whole length of each further pair of parallel dipoles. */
  readonly pairs: Readonly<Partial<Record<Band, SolvedPair>>>;
  /**
   * What the radiator was chosen by: no reactance at the focus, the worst SWR over the wanted bands behind the ratio, or nothing: it was told,
   * or the rule's length stands.
   */
  readonly by: 'resonance' | 'worst-swr' | 'told' | 'rule';
  /** `alone` is the lowest SWR on that band at any length near this one: what it pays for the others. */
  readonly swr: readonly (ComparedSwr & { readonly alone?: number })[];
  /** Where the SWR of a wire for several bands dips, MHz. */
  readonly dipsMHz?: Readonly<Partial<Record<Band, number>>>;
  readonly feed?: SolvedFeed;
  readonly returns?: SolvedReturn;
}

export interface ChosenChoke {
  readonly role: 'antenna' | 'entry' | 'radio' | 'line-end' | 'further';
  readonly distanceM: number;
  readonly ohm: number;
}

/** A set of chokes with the worst of the wanted bands. */
export interface ChokeSetResult {
  readonly chokes: readonly ChosenChoke[];
  readonly worstMa: number;
  readonly worstBand: Band;
  /** Greatest heat in the choke nearest to the antenna, W per 100 W. */
  readonly heatW: number;
}

export interface ChokeChoice {
  readonly house: ChokeSetResult;
  readonly chosen: ChokeSetResult;
  /** Cheapest set that brings every wanted band to 10 mA; null when none tried does. */
  readonly tenMa: ChokeSetResult | null;
  readonly goalMet: boolean;
  /** The chosen ones as they are wound, once they are designed. */
  readonly built?: BuiltChokes;
}

/** Chokes with their designed impedance instead of the least they need, on the worst of the wanted bands. */
export interface BuiltChokes {
  /** With cores from the end of their tolerance that is worse, and with the maker's figures. */
  readonly worstMa: number;
  readonly worstBand: Band;
  readonly nominalMa: number;
  readonly goalMet: boolean;
  /** What the chokes designed for fewer ohms left, where more are asked for because of that. */
  readonly beforeMa: number | null;
}

export interface FieldFacts {
  readonly bands: Readonly<Partial<Record<Band, BandField>>>;
  readonly lengths?: SolvedLengths;
  readonly chokes?: ChokeChoice;
  /** Owned chokes that were not tried in every place, because there were too many ways. */
  readonly ownedUntried?: number;
  /** What this antenna's own numbers say for a dispute, by its id. */
  readonly disputes?: Readonly<Record<string, Data>>;
}

export const noField: BandField = {};
export const fieldOf = (field: FieldFacts | undefined, band: Band): BandField => field?.bands[band] ?? noField;
