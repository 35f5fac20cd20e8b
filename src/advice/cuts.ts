/**
 * Every piece to cut: as long as it hangs, as long as it is cut, how exactly, and where to mark it. Resonant wires are cut long and trimmed;
 * a non-resonant wire may be off by what its window leaves. A wire that is there already is measured, not cut.
 */
import type { Dimension, WorkingInput } from '../base/working';
import { type Cutting, cutting, type Exactness, NEIGHBOURS_SPARE, TRIMMING_SPARE } from '../physics/cutting';
import { chokesAtM } from './chain/links';
import { answered, dimension, metresOf } from './dimension';
import type { Dimensions, Piece, PieceId } from './dimensions';
import type { Facts } from './facts';
import type { Cut, Link, Said } from './finding';
import { aimedDipMHz } from './harmonics';
import { ropesOf } from './ropes';
import { linkedLegs } from './wire-links';

/** Taken up by a plug at each end of a tuned section, m. */
const PLUG_M = 0.05;
/** Coax and open-wire line may be this much longer than told without anybody noticing, m. */
const LINE_TOLERANCE_M = 0.1;
const LEAST_TOLERANCE_M = 0.02;

export function cutsOf(facts: Facts, dimensions: Dimensions, chain: readonly Link[]): Cut[] {
  const wires = dimensions.pieces
    .filter(({ piece }) => piece !== 'matching-section' || !hasTransformer(chain))
    .map((piece) => (piece.piece === 'matching-section' ? section(piece) : wireCut(facts, dimensions, piece)));
  return [...wires, ...lineCuts(facts, dimensions, chain), ...ropesOf(facts, dimensions)];
}

const hasTransformer = (chain: readonly Link[]): boolean => chain.some(({ device }) => device === 'transformer');

const say = (code: string, data: Said['data'] = {}): Said => ({ code, data });

const returnWires: readonly PieceId[] = ['radial', 'counterpoise'];

function wireCut(facts: Facts, dimensions: Dimensions, piece: Piece): Cut {
  const name = piece.band === null ? piece.piece : `${piece.piece}-${piece.band}`;
  const legM = piece.piece === 'leg-piece' ? legOf(dimensions, piece.band) : null;
  const common = {
    piece: name,
    count: piece.count,
    finishedM: piece.length.metres,
    ...(legM === null ? {} : { legM }),
  };
  if (isThere(facts, piece)) return { ...common, ...thereAlready(piece.length) };
  const exactness = exactnessOf(facts, piece.piece);
  const ends = endsOf(facts, piece.piece);
  const finished = { metres: piece.length.metres, from: 'solved' } as const;
  const cut = cutting(finished, ends, exactness, moreSpareOf(facts, piece, legM));
  return {
    ...common,
    cutM: cut.cut.metres,
    toleranceM: toleranceOf(dimensions, piece, cut),
    marksM: cut.marksM,
    note: noteOf(facts, dimensions, piece, exactness),
    stopRule: stopRuleOf(facts, dimensions, piece, exactness),
    working: chained(piece.length, cut.cut),
  };
}

/** Beyond the usual spare: neighbours detune a shorter pair, and behind a link the whole leg's resonance is trimmed on the piece that ends it. */
function moreSpareOf(facts: Facts, { band, length }: Piece, legM: number | null): number {
  if (facts.system === 'parallel-dipoles') return band === facts.bands[0].band ? 0 : NEIGHBOURS_SPARE;
  return legM === null ? 0 : TRIMMING_SPARE * (legM / length.metres - 1);
}

const legOf = (dimensions: Dimensions, band: Piece['band']): number | null =>
  linkedLegs(dimensions).find((leg) => leg.band === band)?.legM ?? null;

/** The radiator of a plan that starts from the wire in hand. Legs of other bands beside a told longest one are still cut. */
function isThere({ settled, system }: Facts, { piece, band }: Piece): boolean {
  const told = settled.wireLengthM !== null && (settled.lengthChoice === 'fixed' || system === 'other');
  if (returnWires.includes(piece) || piece === 'matching-section') return false;
  return told && band === null;
}

const thereAlready = (length: Dimension): Omit<Cut, 'piece' | 'count' | 'finishedM'> => ({
  cutM: length.metres,
  toleranceM: Math.max(LEAST_TOLERANCE_M, 0.01 * length.metres),
  marksM: [],
  note: say('wire-there'),
  stopRule: say('measure-only'),
  working: length.working,
});

/** Ends that fold back through an insulator or a terminal; a wire that lies on the ground has one. */
function endsOf({ settled }: Facts, piece: PieceId): 1 | 2 {
  if (piece === 'counterpoise') return 1;
  return piece === 'radial' && settled.returnPath === 'ground-radials' ? 1 : 2;
}

function exactnessOf({ settled, system }: Facts, piece: PieceId): Exactness {
  if (piece === 'radial') return settled.returnPath === 'elevated-radials' ? 'equal' : 'loose';
  if (piece === 'counterpoise') return 'equal';
  const staysClear = system === 'non-resonant-end-fed' || system === 'non-resonant-vertical';
  return staysClear || settled.lengthChoice === 'non-resonant' || system === 'open-wire-doublet' ? 'equal' : 'resonant';
}

/** Inside a window every length is as good: the tolerance is what is left to its nearer edge. */
function toleranceOf({ windows }: Dimensions, { piece, length }: Piece, cut: Cutting): number {
  const window = returnWires.includes(piece) ? undefined : windowOf(windows, length.metres);
  if (window === undefined) return cut.toleranceM;
  return Math.max(LEAST_TOLERANCE_M, Math.min(window.toM - length.metres, length.metres - window.fromM));
}

const windowOf = (windows: Dimensions['windows'], metres: number): Dimensions['windows'][number] | undefined =>
  windows.find(({ fromM, toM }) => metres >= fromM && metres <= toM);

function noteOf(facts: Facts, dimensions: Dimensions, { piece, band, length }: Piece, exactness: Exactness): Said {
  const { windows } = dimensions;
  if (piece === 'leg-piece') return linkedNote(facts, dimensions, band);
  if (piece === 'radial')
    return say(exactness === 'equal' ? 'radials-equal' : 'radials-loose', { count: facts.settled.radialCount });
  if (piece === 'counterpoise') return say('counterpoise-place');
  if (exactness === 'resonant')
    return say(facts.system === 'parallel-dipoles' ? 'trim-longest-first' : 'cut-long-fold-back');
  const window = windowOf(windows, length.metres);
  if (window === undefined) return say('any-clear-length');
  const others = windows.filter((other) => other !== window).map(({ fromM, toM }) => `${fromM}-${toM}`);
  return say('window', { fromM: window.fromM, toM: window.toM, others: others.join('|') });
}

/** How long the leg is up to the outer end of a piece: measured once more when the pieces are joined. */
function linkedNote(facts: Facts, dimensions: Dimensions, band: Piece['band']): Said {
  const legs = linkedLegs(dimensions);
  const index = legs.findIndex((leg) => leg.band === band);
  const place = legs.length < 2 ? 'only' : index === 0 ? 'inner' : index < legs.length - 1 ? 'middle' : 'outer';
  const legM = legs[index]?.legM ?? 0;
  return say(`linked-${place}`, { band: band ?? facts.bands[0].band, legM, inner: legs[index - 1]?.band ?? '' });
}

function stopRuleOf(facts: Facts, dimensions: Dimensions, { piece, band, length }: Piece, exactness: Exactness): Said {
  if (piece === 'radial') return say(exactness === 'equal' ? 'radials-match' : 'radials-any');
  if (piece === 'counterpoise') return say('counterpoise-as-cut');
  if (exactness === 'resonant') {
    const own = facts.bands.find((at) => at.band === band);
    const dipMHz = own?.focusMHz ?? aimedDipMHz(facts, dimensions);
    return say('stop-at-dip', { band: (own ?? facts.bands[0]).band, dipMHz });
  }
  const window = windowOf(dimensions.windows, length.metres);
  return window === undefined ? say('no-trimming') : say('stay-in-window', { fromM: window.fromM, toM: window.toM });
}

/** The cut length as one formula over the finished length, whose own working stands with the dimensions. */
const chained = (finished: Dimension, cut: Dimension): Cut['working'] => ({
  ...cut.working,
  formula: cut.working.formula.replace(/\bL\b/, `(${finished.working.formula})`),
  inputs: { ...finished.working.inputs, ...withoutLength(cut.working.inputs) },
  source: finished.working.source,
});

const withoutLength = ({ L: _finished, ...rest }: Dimension['working']['inputs']): Dimension['working']['inputs'] =>
  rest;

function section({ piece, count, length }: Piece): Cut {
  const cut = dimension(
    length.metres + 2 * PLUG_M,
    `${length.working.formula} + 2 * plug`,
    { ...length.working.inputs, plug: metresOf(PLUG_M, 'assumed') },
    'wave-and-line',
  );
  return {
    piece,
    count,
    finishedM: length.metres,
    cutM: cut.metres,
    toleranceM: Math.max(LEAST_TOLERANCE_M, 0.01 * length.metres),
    marksM: [],
    note: say('section-75-ohm'),
    stopRule: say('section-as-cut'),
    working: cut.working,
  };
}

function lineCuts(facts: Facts, dimensions: Dimensions, chain: readonly Link[]): Cut[] {
  if (facts.lineKind === 'none') return [];
  const { feedLine, feedLineLengthM } = facts.settled;
  const told = { ...answered(facts, 'feedLineLengthM', feedLineLengthM), unit: 'm' };
  const jumpers = chain.flatMap(({ device, line, lengthM }) =>
    device === 'line' && line !== feedLine && lengthM !== null ? [lengthM] : [],
  );
  return [
    facts.lineKind === 'coax' ? coaxCut(facts, chain, told) : openLineCut(dimensions, told),
    ...jumpers.map(
      (lengthM): Cut => ({ ...plugged('coax-jumper', metresOf(lengthM, 'assumed')), note: say('jumper-short') }),
    ),
  ];
}

function coaxCut({ settled }: Facts, chain: readonly Link[], told: WorkingInput): Cut {
  const entryM = settled.station === 'home' ? [Math.min(settled.entryDistanceM, settled.feedLineLengthM)] : [];
  const marksM = marksAlong([...chokesAtM(chain), ...entryM], told.value);
  return { ...plugged('coax', told), marksM, note: say(marksM.length === 0 ? 'coax-plain' : 'coax-marks') };
}

function openLineCut({ clearLine }: Dimensions, line: WorkingInput): Cut {
  return {
    piece: 'open-wire-line',
    count: 1,
    finishedM: line.value,
    cutM: line.value,
    toleranceM: LINE_TOLERANCE_M,
    marksM: [],
    note: clearLine === null ? say('open-wire-clear') : say('open-wire-longer', { clearM: clearLine.metres }),
    stopRule: say('open-wire-length'),
    working: dimension(line.value, 'line', { line }, 'house-practice').working,
  };
}

/** Coax as told: its plugs are counted in. */
const plugged = (piece: 'coax' | 'coax-jumper', line: WorkingInput): Cut => ({
  piece,
  count: 1,
  finishedM: line.value,
  cutM: line.value,
  toleranceM: LINE_TOLERANCE_M,
  marksM: [],
  note: say('coax-plain'),
  stopRule: say('coax-length'),
  working: dimension(line.value, 'line', { line }, 'house-practice').working,
});

/** Places strictly inside the line, each once, in order. */
const marksAlong = (placesM: readonly number[], lineM: number): number[] =>
  [...new Set(placesM.map((place) => Math.round(place * 100) / 100))]
    .filter((place) => place > 0.05 && place < lineM - 0.05)
    .sort((a, b) => a - b);
