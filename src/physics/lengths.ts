/**
 * Lengths of wires and lines from frequency, by the rules of print.
 *
 *   half-wave      L  = 149.9 · 0.955 · kw / f         143/f bare (469/f ft), the n-th resonance   Ln = 149.9 · (n − 0.05) · kw / f
 *   quarter-wave   L  = half of that                   loop, once round   L = 306.3 · kw / f   (1005/f ft)
 *   part of a wave L  = share · 299.8 / f              on a line, times its velocity factor
 *
 * L in m, f in MHz, kw the wire factor alone (1 bare, below 1 insulated). Limits: the site moves a resonance by ± 3 %; height, slope and
 * nearness of ends to ground are not in these rules. Sources: handbook length rules and end-effect rule (sources.ts); line lengths from
 * theory. Every length somebody acts on comes with its working, whose text gives the same number when evaluated.
 */
import type { Dimension, Working, WorkingInput } from '../base/working';
import type { SourceId } from '../catalog/sources';

/** A number and where it is from: an answer, an assumption, the catalogue, a solution. */
export interface Known {
  readonly value: number;
  readonly from: WorkingInput['from'];
}

/** What a resonant wire is cut for. */
export interface CutFor {
  readonly frequencyMHz: Known;
  readonly wireFactor: Known;
}

/** Free half-wave, m·MHz, as the rules of print round it. */
const HALF_WAVE = 149.9;
const WAVE = 299.8;
/** Shortening of a half-wave by its ends, thin wire at usual heights. */
const END_FACTOR = 0.955;
/** Shortening of n half-waves by the two ends of the wire, in half-waves. */
const END_EFFECT = 0.05;
/** Once round a loop, m·MHz: 1005 ft·MHz. */
const LOOP = 306.3;

const input = (known: Known, unit = ''): WorkingInput => ({ ...known, unit });

const dimension = (metres: number, formula: string, inputs: Working['inputs'], source: SourceId): Dimension => ({
  metres,
  working: { formula, inputs, result: { value: metres, unit: 'm' }, source },
});

const cutInputs = ({ frequencyMHz, wireFactor }: CutFor): Working['inputs'] => ({
  f: input(frequencyMHz, 'MHz'),
  kw: input(wireFactor),
});

/** Length of the n-th resonance, m. */
export const nthHalfWaveM = (n: number, frequencyMHz: number, wireFactor: number): number =>
  (HALF_WAVE * (n - END_EFFECT) * wireFactor) / frequencyMHz;

/** Frequency of the n-th resonance of a wire, MHz. Always above n times the first: f2 ≈ 2.05 f1, f4 ≈ 4.16 f1. */
export const nthResonanceMHz = (n: number, wireM: number, wireFactor: number): number =>
  (HALF_WAVE * (n - END_EFFECT) * wireFactor) / wireM;

/** Wire of n half-waves for end feeding. */
export const nthHalfWave = (n: number, cut: CutFor): Dimension =>
  dimension(
    nthHalfWaveM(n, cut.frequencyMHz.value, cut.wireFactor.value),
    '149.9 m MHz * (n - 0.05) * kw / f',
    { n: { value: n, unit: '', from: 'assumed' }, ...cutInputs(cut) },
    'handbook-end-effect',
  );

/** Half-wave wire, both legs together; one wire of a folded dipole too. */
export const halfWave = (cut: CutFor): Dimension =>
  dimension(
    (HALF_WAVE * END_FACTOR * cut.wireFactor.value) / cut.frequencyMHz.value,
    '149.9 m MHz * 0.955 * kw / f',
    cutInputs(cut),
    'handbook-length-rules',
  );

/** Quarter-wave wire: a vertical, an elevated radial, one leg of a half-wave. */
export const quarterWave = (cut: CutFor): Dimension =>
  dimension(
    (HALF_WAVE * END_FACTOR * cut.wireFactor.value) / (2 * cut.frequencyMHz.value),
    '149.9 m MHz * 0.955 * kw / (2 * f)',
    cutInputs(cut),
    'handbook-length-rules',
  );

/** Full-wave loop, once round. */
export const fullWaveLoop = (cut: CutFor): Dimension =>
  dimension(
    (LOOP * cut.wireFactor.value) / cut.frequencyMHz.value,
    '306.3 m MHz * kw / f',
    cutInputs(cut),
    'handbook-length-rules',
  );

/** The two legs of a wire fed off its centre; `fraction` is the shorter one's part of the whole. */
export function offCentreLegs(whole: Known, fraction: Known): { short: Dimension; long: Dimension } {
  const inputs = { L: input(whole, 'm'), p: input(fraction) };
  return {
    short: dimension(whole.value * fraction.value, 'L * p', inputs, 'house-practice'),
    long: dimension(whole.value * (1 - fraction.value), 'L * (1 - p)', inputs, 'house-practice'),
  };
}

/** The same where a field solution moved the feed point: `moved` is the solved part over the rule's. */
export function movedLegs(whole: Known, rule: Known, moved: number): { short: Dimension; long: Dimension } {
  const inputs = { L: input(whole, 'm'), p: input(rule), moved: { value: moved, unit: '', from: 'solved' } } as const;
  const short = rule.value * moved;
  return {
    short: dimension(whole.value * short, 'L * p * moved', inputs, 'this-antenna-solved'),
    long: dimension(whole.value * (1 - short), 'L * (1 - p * moved)', inputs, 'this-antenna-solved'),
  };
}

/** Part of a free wave: the place of a choke, a counterpoise, a ground radial. Nothing here resonates, so no wire factor. */
export const partOfWave = (share: number, frequencyMHz: Known, source: SourceId = 'house-practice'): Dimension =>
  dimension(
    (share * WAVE) / frequencyMHz.value,
    'share * 299.8 m MHz / f',
    { share: { value: share, unit: '', from: 'assumed' }, f: input(frequencyMHz, 'MHz') },
    source,
  );

/** Part of a wave along a line, physical length: 0.25 is a quarter-wave matching section. */
export const lineLength = (share: number, frequencyMHz: Known, velocityFactor: Known): Dimension =>
  dimension(
    (share * velocityFactor.value * WAVE) / frequencyMHz.value,
    'share * vf * 299.8 m MHz / f',
    {
      share: { value: share, unit: '', from: 'assumed' },
      vf: input(velocityFactor),
      f: input(frequencyMHz, 'MHz'),
    },
    'wave-and-line',
  );

/**
 * Ground radial. It does not resonate, so an exact quarter-wave means nothing: up to 16 radials gain nothing beyond 0.15 λ, 32 want 0.2 λ,
 * more want 0.25 λ.
 */
export function groundRadial(count: number, frequencyMHz: Known): Dimension {
  const share = count <= 16 ? 0.15 : count <= 32 ? 0.2 : 0.25;
  return partOfWave(share, frequencyMHz, 'ground-system-measurements');
}

/** One leg of a doublet and its line as one electrical length, m. */
export const legPlusLineM = (legM: number, lineM: number, velocityFactor: number): number =>
  legM + lineM / velocityFactor;

/** Distance of an electrical length from the nearest multiple of half a wave, in waves: 0 to 0.25. */
export function wavesFromHalfWave(electricalM: number, frequencyMHz: number): number {
  const halfWaves = (2 * electricalM * frequencyMHz) / WAVE;
  return Math.abs(halfWaves - Math.round(halfWaves)) / 2;
}

/**
 * End-fed wire for several harmonically related bands: half-way between the longest and the shortest length they ask for, so that the worst
 * miss is least. One frequency gives its first resonance. The lowest frequency counts as n = 1.
 */
export function harmonicHalfWave(frequenciesMHz: readonly Known[], wireFactor: Known): Dimension {
  const lowest = Math.min(...frequenciesMHz.map(({ value }) => value));
  const asked = frequenciesMHz
    .map((frequencyMHz) => {
      const n = Math.max(1, Math.round(((1 - END_EFFECT) * frequencyMHz.value) / lowest + END_EFFECT));
      return { n, frequencyMHz, metres: nthHalfWaveM(n, frequencyMHz.value, wireFactor.value) };
    })
    .sort((a, b) => a.metres - b.metres);
  const [short, long] = [asked[0], asked.at(-1)];
  if (short === undefined || long === undefined) throw new TypeError('no frequency to cut for');
  if (short === long) return nthHalfWave(short.n, { frequencyMHz: short.frequencyMHz, wireFactor });
  return dimension(
    (short.metres + long.metres) / 2,
    '149.9 m MHz * kw * ((n1 - 0.05) / f1 + (n2 - 0.05) / f2) / 2',
    {
      kw: input(wireFactor),
      n1: { value: short.n, unit: '', from: 'assumed' },
      f1: input(short.frequencyMHz, 'MHz'),
      n2: { value: long.n, unit: '', from: 'assumed' },
      f2: input(long.frequencyMHz, 'MHz'),
    },
    'handbook-end-effect',
  );
}
