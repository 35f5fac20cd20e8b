/**
 * The planned chokes as they are wound, in the places where the study put them at the least ohms they need: R and X of each design on each band,
 * in the open places of the solved antenna.
 *
 * A core lies anywhere in its tolerance, so all chokes are taken at the low end, by the maker's figures, and at the high end, and the worst of
 * each current, voltage and heat is told; what hangs on the antenna itself (impedance, SWR, efficiency) is that of the maker's figures. Heat
 * that the chokes take more or less than at their least ohms is missing from, or added to, what is radiated. Near fields give no credit for
 * such heat (near-field-study.ts) and stay as they are.
 *
 * Where the wound chokes let in more than the goal that the least ohms would meet, more ohms are asked for in the same places, and the first
 * design that meets the goal stands. Where none does, the first stands and its figures say so.
 */
import type { ComponentDesigns } from '../../advice/chain/component-designs';
import { type Designer, designParts } from '../../advice/chain/design-parts';
import { type Dimensions, dimensionsOf } from '../../advice/dimensions';
import type { BandFacts, Facts } from '../../advice/facts';
import {
  type BandField,
  type BuiltChokes,
  type ChokeChoice,
  type FieldFacts,
  fieldOf,
  type OpenCoax,
  type ShieldState,
} from '../../advice/field-facts';
import { complex } from '../../base/complex';
import { type CoreLot, coreLots } from '../../physics/component-curve';
import { sweepWith } from './band-study';
import { type BandShield, GOAL_MA, judgeSet, raised } from './choke-search';
import type { PlacedChoke } from './field-site';
import { operate, POWER_W, shieldCurrent } from './shield-currents';

export interface DesignedPlan {
  readonly dimensions: Dimensions;
  readonly designs: ComponentDesigns;
  readonly field: FieldFacts | undefined;
}

export function designIn(facts: Facts, field: FieldFacts | undefined, designer: Designer): DesignedPlan {
  const first = designFor(facts, field, designer);
  const { chokes } = first.field ?? {};
  const { built, goalMet } = chokes ?? {};
  if (field === undefined || chokes === undefined || built === undefined || built.goalMet || !goalMet) return first;
  for (const set of raised(chokes.chosen.chokes)) {
    const chosen = judgeSet(set, shieldsOf(facts, field));
    if (chosen === null) continue;
    const tried = designFor(facts, { ...field, chokes: { ...chokes, chosen } }, designer);
    if (tried.field?.chokes?.built?.goalMet) return insteadOf(tried, built.worstMa);
  }
  return first;
}

function designFor(facts: Facts, field: FieldFacts | undefined, designer: Designer): DesignedPlan {
  const dimensions = dimensionsOf(facts, field);
  const designs = designParts(facts, dimensions, field, designer);
  return { dimensions, designs, field: field === undefined ? undefined : inPlace(facts, field, designs) };
}

/** With what the design for fewer ohms would have left. */
function insteadOf(plan: DesignedPlan, beforeMa: number): DesignedPlan {
  const { field } = plan;
  const built = field?.chokes?.built;
  if (field?.chokes === undefined || built === undefined) return plan;
  return { ...plan, field: { ...field, chokes: { ...field.chokes, built: { ...built, beforeMa } } } };
}

const shieldsOf = ({ bands }: Facts, field: FieldFacts): readonly BandShield[] =>
  bands.flatMap(({ band }) => {
    const coax = fieldOf(field, band).openCoax;
    return coax === undefined ? [] : [{ band, with: (chokes: readonly PlacedChoke[]) => operate(coax, chokes).shield }];
  });

/** The planned chokes at a frequency, Hz, with cores from one part of their tolerance. */
type ChokesAt = (hz: number, lot: CoreLot) => readonly PlacedChoke[];

/** A choke without a design stays at the ohms it needs. */
const chokesIn =
  ({ chosen }: ChokeChoice, { chokes = {} }: ComponentDesigns): ChokesAt =>
  (hz, lot) =>
    chosen.chokes.map(({ role, distanceM, ohm }) => ({
      distanceM,
      z: chokes[role]?.figures.impedanceAt?.(hz, lot) ?? complex(ohm),
    }));

function inPlace(facts: Facts, field: FieldFacts, designs: ComponentDesigns): FieldFacts {
  const { chokes } = field;
  if (chokes === undefined) return field;
  const chokesAt = chokesIn(chokes, designs);
  const rows = facts.bands.flatMap(({ band, focusMHz }): readonly BuiltBand[] => {
    const solved = fieldOf(field, band);
    const { openCoax } = solved;
    if (openCoax === undefined) return [];
    const state = builtState(openCoax, (lot) => chokesAt(focusMHz * 1e6, lot));
    return state === null ? [] : [{ band, state, field: bandWith(solved, state, chokesAt) }];
  });
  const built = worstOf(rows);
  const bands = { ...field.bands, ...Object.fromEntries(rows.map((row) => [row.band, row.field])) };
  return { ...field, bands, chokes: built === null ? chokes : { ...chokes, built } };
}

interface BuiltBand {
  readonly band: BandFacts['band'];
  readonly state: BuiltState;
  readonly field: BandField;
}

function worstOf(rows: readonly BuiltBand[]): BuiltChokes | null {
  const [first, ...others] = rows;
  if (first === undefined) return null;
  const worst = others.reduce(
    (most, each) => (each.state.worst.entryMa > most.state.worst.entryMa ? each : most),
    first,
  );
  const worstMa = worst.state.worst.entryMa;
  const nominalMa = Math.max(...rows.map(({ state }) => state.nominal.entryMa));
  return { worstMa, worstBand: worst.band, nominalMa, goalMet: worstMa <= GOAL_MA, beforeMa: null };
}

/** Wound chokes at one frequency: by the maker's figures, and the worst over the tolerance of each number. */
interface BuiltState {
  readonly feedPoint: { readonly r: number; readonly x: number };
  readonly feedCurrentA: number;
  readonly nominal: ShieldState;
  readonly worst: ShieldState;
}

function builtState(coax: OpenCoax, chokesOf: (lot: CoreLot) => readonly PlacedChoke[]): BuiltState | null {
  const { z, feedCurrentA, shield: nominal } = operate(coax, chokesOf('nominal'));
  if (nominal === null) return null;
  const shields = coreLots.map((lot) => operate(coax, chokesOf(lot)).shield ?? nominal);
  const most = (of: (shield: ShieldState) => number): number => Math.max(...shields.map(of));
  const parts = (of: (shield: ShieldState) => number): number => most(of) / 1000 / feedCurrentA;
  const worst: ShieldState = {
    ...shieldCurrent(
      parts(({ entryMa }) => entryMa),
      parts(({ radioMa }) => radioMa),
      feedCurrentA,
    ),
    ...(nominal.footMa === undefined ? {} : { footMa: most(({ footMa }) => footMa ?? 0) }),
    chokes: nominal.chokes.map((choke, i) => ({
      ...choke,
      voltageV: most(({ chokes }) => chokes[i]?.voltageV ?? 0),
      heatW: most(({ chokes }) => chokes[i]?.heatW ?? 0),
    })),
  };
  return { feedPoint: { r: z.re, x: z.im }, feedCurrentA, nominal, worst };
}

function bandWith(solved: BandField, { feedPoint, feedCurrentA, nominal, worst }: BuiltState, at: ChokesAt): BandField {
  const { openSweep, efficiency, gainDbi } = solved;
  const left = (shield: ShieldState | undefined): number =>
    POWER_W - (shield?.chokes ?? []).reduce((sum, { heatW }) => sum + heatW, 0);
  const more = left(nominal) / left(solved.planned);
  return {
    ...solved,
    feedPoint,
    feedCurrentA,
    entryCurrentMa: worst.entryMa,
    shieldCurrentDb: worst.entryDb,
    planned: worst,
    ...(openSweep === undefined ? {} : { sweep: sweepWith(openSweep, (hz) => at(hz, 'nominal')) }),
    ...(efficiency === undefined ? {} : { efficiency: efficiency * more }),
    ...(gainDbi === undefined ? {} : { gainDbi: gainDbi + 10 * Math.log10(more) }),
  };
}
