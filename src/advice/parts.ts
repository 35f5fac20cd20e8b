/** The shopping list, counted from the chain and the cuts: what to have or buy, what it is for, and what to take if the shop lacks it. */
import type { Dimensions } from './dimensions';
import type { Facts } from './facts';
import type { Cut, Link, Part, Said } from './finding';
import type { Mechanics } from './mechanics';
import { type Drawer, drawerOf, partLine, say } from './part-line';
import { deviceParts, drainParts } from './parts-to-wind';
import { wireEndVoltage } from './wire-end-voltage';
import { linkCount } from './wire-links';

/** Spacers of parallel wires, one for each of these, m. Common practice. */
const SPACER_EVERY_M = 1.5;
const ropes = /^(halyard|tie|guy|cord)$/;

export function partsOf(
  facts: Facts,
  dimensions: Dimensions,
  chain: readonly Link[],
  cuts: readonly Cut[],
  mechanics: Mechanics | null,
): Part[] {
  const drawer = drawerOf(facts.settled.onHand);
  return [
    ...wireParts(facts, cuts, drawer),
    ...insulators(facts, dimensions),
    ...linkParts(facts, dimensions),
    ...lineParts(facts, chain, cuts, drawer),
    ...deviceParts(facts, dimensions, chain, drawer),
    ...drainParts(facts, chain),
    ...ropeParts(facts, cuts, mechanics?.rope ?? USUAL_ROPE),
    ...sealing(facts),
  ].filter(({ quantity }) => quantity > 0);
}

const lengthOf = (cuts: readonly Cut[]): number => cuts.reduce((sum, { count, cutM }) => sum + count * cutM, 0);
const among = (cuts: readonly Cut[], piece: RegExp): Cut[] => cuts.filter((cut) => piece.test(cut.piece));

function wireParts({ settled }: Facts, cuts: readonly Cut[], drawer: Drawer): Part[] {
  const isCut = ({ note }: Cut): boolean => note.code !== 'wire-there';
  const radiatorM = lengthOf(
    among(cuts, /^(wire|leg|short-leg|long-leg|vertical|folded-conductor)(-|$)/).filter(isCut),
  );
  const returnM = lengthOf(among(cuts, /^(radial|counterpoise)$/));
  const ownedM = drawer.wireM(settled.wire);
  const wire = (quantity: number, have: number, place: string, or: string): Part =>
    partLine({
      item: say('wire', { wire: settled.wire }),
      quantity,
      unit: 'metre',
      have,
      for: say(place),
      or: say(or),
      where: 'wire-and-rope',
    });
  return [
    wire(radiatorM, ownedM, 'for-radiator', 'or-other-wire'),
    wire(returnM, Math.max(ownedM - Math.ceil(radiatorM), 0), 'for-return', 'or-any-wire'),
  ];
}

interface Insulating {
  readonly ends: number;
  readonly centre: number;
  readonly spacers: number;
}

function insulatorCount({ system, settled, bands }: Facts, { pieces, radiator }: Dimensions): Insulating {
  const pairs = pieces.filter(({ piece }) => piece === 'leg').length;
  const elevated =
    settled.returnPath === 'elevated-radials' ? pieces.find(({ piece }) => piece === 'radial') : undefined;
  const spacers = Math.ceil(radiator.metres / SPACER_EVERY_M);
  switch (system) {
    case 'parallel-dipoles':
      return { ends: 2 * pairs, centre: 1, spacers: bands.length > 1 ? spacers : 0 };
    case 'folded-dipole':
      return { ends: 2, centre: 1, spacers };
    case 'full-wave-loop':
      return { ends: settled.loopShape === 'square' ? 4 : 3, centre: 1, spacers: 0 };
    case 'quarter-wave-vertical':
    case 'non-resonant-vertical':
      return { ends: 1 + (elevated?.count ?? 0), centre: 0, spacers: 0 };
    case 'end-fed-half-wave':
    case 'non-resonant-end-fed':
    case 'inverted-l':
      return { ends: 2 + (elevated?.count ?? 0), centre: 0, spacers: 0 };
    default:
      return { ends: 2, centre: 1, spacers: 0 };
  }
}

function insulators(facts: Facts, dimensions: Dimensions): Part[] {
  const { ends, centre, spacers } = insulatorCount(facts, dimensions);
  const peakKilovolts = peakKilovoltsOf(facts);
  const wire = (item: Said, quantity: number, or: string): Part =>
    partLine({
      item,
      quantity,
      for: say('for-radiator'),
      or: say(or),
      where: 'wire-and-rope',
    });
  return [
    wire(say('end-insulator', { peakKilovolts }), ends, 'or-plastic-strip'),
    wire(say('centre-insulator'), centre, 'or-plastic-strip'),
    wire(say('spacer'), spacers, 'or-plastic-tube'),
  ];
}

const peakKilovoltsOf = ({ settled, answers }: Facts): number => {
  const { volts } = wireEndVoltage(settled.powerW, answers.powerW !== undefined);
  return Math.max(1, Math.ceil((volts * Math.SQRT2) / 1000));
};

/** Of each link: what carries the pull, what carries the current, and its name. Common practice, no source. */
function linkParts(facts: Facts, dimensions: Dimensions): Part[] {
  const quantity = linkCount(dimensions);
  const link = (item: Said, or: string, where: Part['where'], unit: Part['unit'] = 'piece'): Part =>
    partLine({ item, quantity, unit, for: say('for-links'), or: say(or), where });
  return [
    link(say('link-insulator', { peakKilovolts: peakKilovoltsOf(facts) }), 'or-plastic-strip', 'wire-and-rope'),
    link(say('link-plug'), 'or-flat-plug', 'electrical', 'pair'),
    link(say('link-label'), 'or-any-tape', 'hardware', 'pair'),
  ];
}

function lineParts({ settled }: Facts, chain: readonly Link[], cuts: readonly Cut[], drawer: Drawer): Part[] {
  const lines = among(cuts, /^(coax|open-wire-line|coax-jumper)$/);
  const others = chain.flatMap(({ device, line }) =>
    device === 'line' && line !== null && line !== settled.feedLine ? [line] : [],
  );
  return lines.flatMap(({ piece, cutM }): Part[] => {
    const line = piece === 'coax-jumper' ? others[0] : settled.feedLine;
    if (line === undefined) return [];
    const metres = partLine({
      item: say('line', { line }),
      quantity: cutM,
      unit: 'metre',
      have: drawer.lineM(line),
      for: say('for-line'),
      or: say(piece === 'open-wire-line' ? 'or-other-open-wire' : 'or-other-coax'),
      where: 'wire-and-rope',
    });
    if (piece === 'open-wire-line') return [metres];
    return [metres, plugs(line, 2 * stretches(chain, line))];
  });
}

/** Pieces that the chokes and the arrester cut a coax into: two plugs each. */
const stretches = (chain: readonly Link[], line: string): number =>
  Math.max(1, chain.filter((link) => link.device === 'line' && link.line === line).length);

const plugs = (line: string, quantity: number): Part =>
  partLine({
    item: say('coax-plug', { line }),
    quantity,
    for: say('for-line'),
    or: say('or-bnc'),
    where: 'electrical',
  });

/** What raises one antenna after the other, and rolls that outlast one. Common practice, no source. */
const usedAgain: readonly string[] = ['throw-line', 'throw-weight', 'marking-tape', 'sealing-tape'];

/** For guys and cords, which carry little. Common practice. */
const USUAL_ROPE = { diameterM: 0.003, weightKg: 0 };

function ropeParts(
  { settled }: Facts,
  cuts: readonly Cut[],
  rope: Pick<NonNullable<Mechanics['rope']>, 'diameterM' | 'weightKg'>,
): Part[] {
  const ropeM = lengthOf(cuts.filter(({ piece }) => ropes.test(piece)));
  const thrown = among(cuts, /^throw-line$/);
  const staked = among(cuts, /^(tie|guy)$/).reduce((sum, { count }) => sum + count, 0);
  const guyed = among(cuts, /^guy$/).length > 0;
  const raise = (item: Said, quantity: number, or: string, unit: Part['unit'] = 'piece'): Part =>
    partLine({
      item,
      quantity,
      unit,
      for: say('for-raising'),
      or: say(or),
      again: usedAgain.includes(item.code),
      where: unit === 'metre' ? 'wire-and-rope' : 'hardware',
    });
  const outdoors = settled.indoors ? 0 : 1;
  return [
    raise(say('rope', { diameterMm: 1000 * rope.diameterM }), ropeM, 'or-other-rope', 'metre'),
    raise(say('throw-line'), lengthOf(thrown), 'or-fishing-line', 'metre'),
    raise(say('throw-weight'), thrown.length, 'or-water-bottle'),
    raise(say('end-weight', { weightKg: rope.weightKg }), thrown.length, 'or-elastic'),
    raise(say('pole'), guyed ? 1 : 0, 'or-tree'),
    raise(say('stake'), staked, 'or-fence-post'),
    raise(say('streamers'), outdoors, 'or-bright-cloth', 'set'),
  ];
}

function sealing({ settled, lineKind }: Facts): Part[] {
  const roll = (item: string, place: string, or: string): Part =>
    partLine({
      item: say(item),
      quantity: 1,
      unit: 'roll',
      for: say(place),
      or: say(or),
      again: usedAgain.includes(item),
      where: 'hardware',
    });
  return [
    roll('marking-tape', 'for-marks', 'or-any-tape'),
    ...(settled.indoors || lineKind === 'none' ? [] : [roll('sealing-tape', 'for-sealing', 'or-pvc-tape')]),
  ];
}
