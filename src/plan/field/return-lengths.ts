/**
 * What a wire with one terminal works against, by field.
 *
 *   raised radials   two opposite ones, fed between them as a dipole at their height, show no reactance at the focus: a pair that resonates by
 *                    itself holds the joint at no voltage, and the coax has nothing to carry. The upright wire is then cut with them in place
 *   counterpoise     of several clear lengths the shortest that leaves the coax choke about the least heat on the worst band, with no worse SWR.
 *                    The rule's stays while none saves a quarter of the heat: that is as far as computed heat can be trusted
 *
 * Radials on the soil stay by rule: no wire of the solver may lie on the surface, and their length is not critical. So does the shorter of two
 * counterpoise wires. Told lengths are left alone. Limits: radials within 8 % of the rule, without the coupling of more than one pair.
 */
import { type Dimensions, dimensionsOf } from '../../advice/dimensions';
import type { Facts } from '../../advice/facts';
import type { SolvedLengths, SolvedReturn } from '../../advice/field-facts';
import { searchOf } from '../../advice/non-resonant';
import { counterpoiseLength } from '../../physics/counterpoise-length';
import { layoutOf } from '../layout-of';
import type { FieldInstrument } from './instrument';
import { rootFactor } from './resonance';
import { bareImpedance, swrsBehind, trialDuty } from './trial';

const ruleLengths = ({ pieces }: Dimensions, piece: SolvedReturn['piece']): readonly number[] =>
  pieces.filter((each) => each.piece === piece).map(({ length }) => length.metres);

/** Null where no raised radials are to be cut, or no pair resonates near the rule. */
export async function solveRadials(
  facts: Facts,
  dimensions: Dimensions,
  instrument: FieldInstrument,
): Promise<SolvedReturn | null> {
  const { returnPath, radialLengthM } = facts.settled;
  const [ruleM] = ruleLengths(dimensions, 'radial');
  const layout = layoutOf(facts, dimensions);
  if (returnPath !== 'elevated-radials' || radialLengthM !== null || ruleM === undefined || layout === null)
    return null;
  const pair = (factor: number) => ({
    ...layout,
    radiator: 'straight-wire' as const,
    fedAt: 'centre' as const,
    endHeightM: layout.heightM,
    radiatorM: 2 * ruleM * factor,
    feedFraction: 0.5,
    furtherPairsM: [],
    returnPath: 'none' as const,
    shieldAtMidGap: false,
  });
  const factor = await rootFactor(async (each) => {
    const z = await bareImpedance(facts, pair(each), instrument, facts.bands[0]);
    return z?.im ?? null;
  });
  if (factor === null) return null;
  return { piece: 'radial', by: 'resonance', wires: [{ ruleM, chosenM: ruleM * factor }], heatW: null };
}

/** Aims tried, in waves of the lowest band: from the common 0.05 λ to just short of a quarter-wave. */
const AIMS = [0.05, 0.08, 0.11, 0.15, 0.2] as const;
/** Nearer to the rule's than this a length is the same. */
const SAME = 0.1;
const SAVES = 0.75;
const NEARLY_LEAST = 1.15;
const NO_WORSE = 1.1;

interface Tried {
  readonly metres: number;
  readonly heatW: number;
  readonly worstSwr: number;
}

/** Null where no counterpoise is to be cut, or no choke stands on the coax beside it. */
export async function solveCounterpoise(
  facts: Facts,
  lengths: SolvedLengths,
  instrument: FieldInstrument,
): Promise<SolvedReturn | null> {
  if (facts.settled.counterpoiseM !== null || facts.system === 'quarter-wave-vertical') return null;
  const rules = ruleLengths(dimensionsOf(facts, { lengths }), 'counterpoise');
  const ruleM = rules.at(-1);
  if (ruleM === undefined) return null;
  const wiresWith = (metres: number): SolvedReturn['wires'] =>
    rules.map((each, i) => ({ ruleM: each, chosenM: i === rules.length - 1 ? metres : each }));
  const returnWith = (metres: number): SolvedReturn => ({
    piece: 'counterpoise',
    by: 'choke-heat',
    wires: wiresWith(metres),
    heatW: null,
  });
  const rule = await tried(facts, { ...lengths, returns: returnWith(ruleM) }, ruleM, instrument);
  if (rule === null) return null;
  const others: Tried[] = [];
  for (const metres of otherLengths(facts, rules)) {
    const other = await tried(facts, { ...lengths, returns: returnWith(metres) }, metres, instrument);
    if (other !== null && other.worstSwr <= NO_WORSE * rule.worstSwr) others.push(other);
  }
  const chosen = coolest(rule, others);
  return { ...returnWith(chosen.metres), heatW: { rule: rule.heatW, chosen: chosen.heatW } };
}

/** Clear of half-waves, none like another or like one that is there by rule. */
function otherLengths(facts: Facts, rules: readonly number[]): readonly number[] {
  const { bands, wireFactor } = searchOf(facts);
  const list: number[] = [];
  for (const aim of AIMS) {
    const { length, clear } = counterpoiseLength(bands, wireFactor, aim);
    const isNew = [...rules, ...list].every((other) => Math.abs(length.metres / other - 1) > SAME);
    if (clear && isNew) list.push(length.metres);
  }
  return list;
}

async function tried(
  facts: Facts,
  lengths: SolvedLengths,
  metres: number,
  instrument: FieldInstrument,
): Promise<Tried | null> {
  const all = await Promise.all(facts.bands.map((at) => trialDuty(facts, lengths, instrument, at)));
  const known = all.filter((each) => each !== null);
  const heats = known.flatMap(({ heatW }) => heatW);
  if (known.length < all.length || heats.length === 0) return null;
  const swrs = swrsBehind(
    facts,
    known.map(({ z }) => z),
  );
  return { metres, heatW: Math.max(...heats), worstSwr: Math.max(...swrs) };
}

function coolest(rule: Tried, others: readonly Tried[]): Tried {
  const least = Math.min(rule.heatW, ...others.map(({ heatW }) => heatW));
  if (least > SAVES * rule.heatW) return rule;
  const cool = others.filter(({ heatW }) => heatW <= NEARLY_LEAST * least);
  return cool.reduce((a, b) => (b.metres < a.metres ? b : a), cool[0] ?? rule);
}
