/**
 * What the wire's weight, wind and ice do to it and to what holds it.
 *
 *   sag    the greater of 2.5 % of the span and the sag at which wire and hung weight pull with a tenth of the wire's breaking load
 *   wind   27 m/s (60 mph) square to the wire      ice  6.4 mm all round with 190 Pa of wind, the sag kept
 *
 * A tenth at rest is what print recommends; twice the pull of wind and ice is common practice, no source. Coax weighs as a rod of
 * 1900 kg/m³ through its jacket; a box at the feed point is taken as 0.3 kg, a link in the wire, plugs and insulator, as 0.03 kg spread over its
 * span. Trees sway by about a tenth of the span, common practice.
 */
import { STANDARD_GRAVITY_M_PER_S2 } from '../base/convert';
import type { Dimension, Working, WorkingInput } from '../base/working';
import { coaxes } from '../catalog/lines';
import {
  catenaryFromPull,
  iceNPerM,
  loadInWindNPerM,
  pullWithCentreN,
  safetyFactor,
  weightNPerM,
  windPressurePa,
} from '../physics/wire-mechanics';
import { dimension, metresOf } from './dimension';
import type { Dimensions } from './dimensions';
import type { Facts } from './facts';
import type { Link } from './finding';
import { hangsAs } from './hanging';
import { highestPointM } from './site-run';
import { codeAwg } from './wire-code';
import { linkCount } from './wire-links';

const SAG_SHARE = 0.025;
const REST_FACTOR = 10;
export const LEAST_FACTOR = 2;
const WIND_M_PER_S = 26.82;
const ICE_M = 0.00635;
const ICE_WIND_PA = 190;
const BOX_KG = 0.3;
const LINK_KG = 0.03;
const JACKET_RADII = 1.37;
const COAX_KG_PER_M3 = 1900;
const OPEN_WIRE_KG_PER_M = 0.06;
const SWAY_SHARE = 0.1;
/** A rope carries a fifth of its breaking load for long. Common practice, no source. */
const ROPE_FACTOR = 5;
const GUY_SPREAD = 0.41;
const GUY_TIED = 0.65;
const LADDER = 0.25;

/** Braided polyester, diameter m and breaking load N. From memory; makers differ by a fifth. */
export const ropeSizes = [
  { diameterM: 0.002, breakN: 700 },
  { diameterM: 0.003, breakN: 1500 },
  { diameterM: 0.004, breakN: 2500 },
  { diameterM: 0.005, breakN: 4000 },
  { diameterM: 0.006, breakN: 5500 },
  { diameterM: 0.008, breakN: 9000 },
] as const;
const strongest = { diameterM: 0.01, breakN: 14_000 };

export interface Pull {
  readonly newton: number;
  /** Times the wire could carry it. */
  readonly factor: number;
  readonly working: Working;
}

export interface Span {
  readonly id: 'span' | 'leg' | 'top' | 'side';
  readonly count: number;
  readonly spanM: number;
  readonly sag: Dimension;
  /** The catenary's sag and wire length; null where a weight hangs from the middle, which makes it two straighter halves. */
  readonly exactSagM: number | null;
  readonly wireM: number | null;
  readonly centreN: number;
  readonly rest: Pull;
  readonly wind: Pull;
  readonly ice: Pull;
}

export interface Mechanics {
  readonly spans: readonly Span[];
  readonly breakN: number;
  readonly code: {
    readonly spanM: number;
    readonly askedAwg: number;
    readonly awg: number;
    readonly sizeMeets: boolean;
    readonly metalMeets: boolean;
  };
  readonly rope: {
    readonly diameterM: number;
    readonly breakN: number;
    readonly neededN: number;
    readonly weightKg: number;
    readonly swayM: number;
  } | null;
  readonly guys: { readonly count: number; readonly spreadM: number; readonly tiedAtM: number } | null;
  readonly ladderFootM: number;
}

export function mechanicsOf(facts: Facts, dimensions: Dimensions, chain: readonly Link[]): Mechanics | null {
  if (facts.settled.indoors) return null;
  const pieces = hung(facts, dimensions);
  const linksN = weightNPerM(LINK_KG * linkCount(dimensions)) / Math.max(pieces[0]?.count ?? 1, 1);
  const spans = pieces.map((piece) => spanOf(facts, piece, hasCentre(facts) ? centreN(facts, chain) : 0, linksN));
  const breakN = facts.wire.breakN.value * wiresTogether(facts);
  const longestM = Math.max(dimensions.runM, ...spans.map(({ spanM }) => spanM));
  const topM = highestPointM(facts, dimensions);
  const askedAwg = codeAwg(facts, longestM);
  return {
    spans,
    breakN,
    code: {
      spanM: longestM,
      askedAwg,
      awg: facts.wire.awg,
      sizeMeets: facts.wire.awg <= askedAwg,
      metalMeets: facts.wire.metal !== 'soft-copper',
    },
    rope: spans.length === 0 ? null : ropeFor(spans),
    guys:
      facts.settled.radiator === 'vertical' ? { count: 3, spreadM: GUY_SPREAD * topM, tiedAtM: GUY_TIED * topM } : null,
    ladderFootM: LADDER * topM,
  };
}

/** Wires that hang side by side share the pull: the two of a folded dipole. Parallel dipoles hang from the longest. */
const wiresTogether = ({ settled }: Facts): number => (settled.radiator === 'folded-wire' ? 2 : 1);

type Piece = Pick<Span, 'id' | 'count' | 'spanM'>;

function hung({ settled, system }: Facts, { runM, radiator }: Dimensions): Piece[] {
  switch (hangsAs(settled)) {
    case 'vertical':
      return [];
    case 'inverted-v':
      return [{ id: 'leg', count: 2, spanM: radiator.metres / 2 }];
    case 'sloper':
      return [{ id: 'span', count: 1, spanM: radiator.metres }];
    case 'inverted-l':
      return [{ id: 'top', count: 1, spanM: runM }];
    case 'loop': {
      const sides = settled.loopShape === 'square' ? 4 : 3;
      return settled.loopPlane === 'flat'
        ? [{ id: 'side', count: sides, spanM: runM }]
        : [{ id: 'top', count: 1, spanM: runM }];
    }
    default:
      return system === 'other' && runM === 0 ? [] : [{ id: 'span', count: 1, spanM: runM }];
  }
}

/** The line hangs from the wire's middle unless a support stands there. */
const hasCentre = ({ settled }: Facts): boolean =>
  settled.fedAt !== 'end' && ['straight-wire', 'parallel-wires', 'folded-wire'].includes(hangsAs(settled));

function centreN({ settled, line }: Facts, chain: readonly Link[]): number {
  const boxes = chain.filter(({ device, at }) => at === 'feed-point' && device !== 'line').length;
  const perM =
    line === null
      ? 0
      : line.kind === 'coax'
        ? COAX_KG_PER_M3 * Math.PI * (JACKET_RADII * coaxes[line.id].shieldRadiusM.value) ** 2
        : OPEN_WIRE_KG_PER_M;
  return weightNPerM(BOX_KG * boxes + perM * Math.min(settled.heightM, settled.feedLineLengthM));
}

/** `linksN`: weight of the links in one span. */
function spanOf(facts: Facts, piece: Piece, hungN: number, linksN: number): Span {
  const { wire } = facts;
  const together = wiresTogether(facts);
  const breakN = wire.breakN.value * together;
  const outsideM = (wire.diameterM.value + 2 * (wire.insulation?.thicknessM.value ?? 0)) * together;
  const weight = weightNPerM(wire.massKgPerM.value) * together + linksN / Math.max(piece.spanM, 1);
  const sag = sagFor(piece.spanM, weight, hungN, breakN);
  const iced = outsideM + 2 * ICE_M;
  const inIce = Math.hypot(weight + iceNPerM(outsideM, ICE_M), ICE_WIND_PA * iced);
  const pullOf = (load: number, working: Working): Pull => {
    const newton = pullWithCentreN(piece.spanM, load, hungN, sag.metres);
    return { newton, factor: safetyFactor(breakN, newton), working };
  };
  const common = inputsOf(piece.spanM, weight, hungN, sag.metres);
  const rest = pullOf(weight, pullWorking('w', common));
  const exact = hungN > 0 ? null : catenaryFromPull(piece.spanM, weight, rest.newton);
  const wind = {
    p: { value: windPressurePa(WIND_M_PER_S), unit: 'Pa', from: 'assumed' },
    D: metresOf(outsideM, 'catalogue'),
  } as const;
  const ice = {
    ice: { value: iceNPerM(outsideM, ICE_M), unit: 'N/m', from: 'assumed' },
    p: { value: ICE_WIND_PA, unit: 'Pa', from: 'assumed' },
    D: metresOf(iced, 'assumed'),
  } as const;
  return {
    ...piece,
    sag,
    exactSagM: exact?.sagM ?? null,
    wireM: exact?.lengthM ?? null,
    centreN: hungN,
    rest,
    wind: pullOf(
      loadInWindNPerM(weight, outsideM, WIND_M_PER_S),
      pullWorking('sqrt(w^2 + (p * D)^2)', { ...common, ...wind }),
    ),
    ice: pullOf(inIce, pullWorking('sqrt((w + ice)^2 + (p * D)^2)', { ...common, ...ice })),
  };
}

type Inputs = Readonly<Record<string, WorkingInput>>;

const inputsOf = (spanM: number, weight: number, hungN: number, sagM: number): Inputs => ({
  L: metresOf(spanM, 'solved'),
  w: { value: weight, unit: 'N/m', from: 'catalogue' },
  W: { value: hungN, unit: 'N', from: 'assumed' },
  sag: metresOf(sagM, 'solved'),
});

function pullWorking(load: string, inputs: Inputs): Working {
  const at = (name: string): number => inputs[name]?.value ?? 0;
  const perM = load === 'w' ? at('w') : Math.hypot(at('w') + at('ice'), at('p') * at('D'));
  return {
    formula: `(${load} * L^2 / 8 + W * L / 4) / sag`,
    inputs,
    result: { value: pullWithCentreN(at('L'), perM, at('W'), at('sag')), unit: 'N' },
    source: 'hanging-wire',
  };
}

function sagFor(spanM: number, weight: number, hungN: number, breakN: number): Dimension {
  const bySpan = SAG_SHARE * spanM;
  const byBreak = (pullWithCentreN(spanM, weight, hungN, 1) * REST_FACTOR) / breakN;
  return dimension(
    Math.max(bySpan, byBreak),
    'max(share * L, (w * L^2 / 8 + W * L / 4) * rest / breaks)',
    {
      share: { value: SAG_SHARE, unit: '', from: 'assumed' },
      L: metresOf(spanM, 'solved'),
      w: { value: weight, unit: 'N/m', from: 'catalogue' },
      W: { value: hungN, unit: 'N', from: 'assumed' },
      rest: { value: REST_FACTOR, unit: '', from: 'catalogue' },
      breaks: { value: breakN, unit: 'N', from: 'catalogue' },
    },
    'hanging-wire',
  );
}

function ropeFor(spans: readonly Span[]): NonNullable<Mechanics['rope']> {
  const windN = Math.max(...spans.map(({ wind }) => wind.newton));
  const restN = Math.max(...spans.map(({ rest }) => rest.newton));
  const neededN = ROPE_FACTOR * windN;
  const size = ropeSizes.find(({ breakN }) => breakN >= neededN) ?? strongest;
  return {
    diameterM: size.diameterM,
    breakN: size.breakN,
    neededN,
    weightKg: restN / STANDARD_GRAVITY_M_PER_S2,
    swayM: SWAY_SHARE * Math.max(...spans.map(({ spanM }) => spanM)),
  };
}
