/** Devices by name, what to ask for in a shop, and how to make one. */
import type { Format } from '../format';
import type { Data, Message } from '../message';
import { conductorName, coreName, lineName } from './catalog-names';
import { plural } from './many';
import { bandName } from './names';
import { metres } from './readers';
import { ratioText } from './why';

/** What a link is called. `data`: ratio, kind and at, as far as the link has them. */
export const deviceNames: Readonly<Record<string, Message>> = {
  transformer: (d, f) => `${ratioText(Number(d.ratio), f)} transformer`,
  choke: '1:1 choke',
  line: (d) => lineName(String(d.line)),
  tuner: 'tuner',
  arrester: 'arrester and bond',
  radio: 'radio',
};

export const placeNames: Readonly<Record<string, string>> = {
  'feed-point': 'at the feed point',
  'along-line': 'along the feed line',
  'building-entry': 'where the line enters the building',
  radio: 'at the radio',
};

const figure = (d: Data, f: Format, key: string, figures = 3): string => f.number(Number(d[key]), figures);
const wanted = (d: Data): string =>
  d.lowest === d.highest
    ? `on ${bandName(String(d.lowest))}`
    : `on every band from ${bandName(String(d.lowest))} to ${bandName(String(d.highest))}`;
const kiloOhm = (d: Data, f: Format): string => `${f.number(Number(d.ohm) / 1000, 2)} kΩ`;
const kindText = (d: Data): string => (d.balanced === true ? 'balanced to unbalanced' : 'unbalanced to unbalanced');

export const buy: Readonly<Record<string, Message>> = {
  'buy-nothing': 'Nothing to buy.',
  'buy-transformer': (d, f) =>
    `Ask for a ${ratioText(Number(d.ratio), f)} transformer, ${d.kind === 'voltage' ? 'voltage' : 'current'} type, ${kindText(d)}, without a choke inside, rated ${figure(d, f, 'ratingW', 2)} W or more for voice. Look for the loss in dB on your lowest band; a part that does not state it is a guess.`,
  'buy-choke': (d, f) =>
    `Ask for a 1:1 choke for coax with at least ${kiloOhm(d, f)} ${wanted(d)}, mostly resistive, rated ${figure(d, f, 'ratingW', 2)} W or more for voice. Ask for a measured curve.`,
  'buy-line-end-choke': (d, f) =>
    `Ask for a 1:1 current-type choke with two posts for open-wire line and a coax socket, at least ${kiloOhm(d, f)} ${wanted(d)}, rated ${figure(d, f, 'ratingW', 2)} W or more for voice. Not a 4:1.`,
  'buy-line': (d, f) => `${f.length(Number(d.lengthM))} of ${lineName(String(d.line))}.`,
  'buy-wide-tuner': (d, f) =>
    `Ask for a wide-range tuner, 10 to 1000 Ω or more, for ${figure(d, f, 'powerW')} W, with a coax output.`,
  'buy-arrester': (d, f) =>
    `Ask for a coax arrester for ${figure(d, f, 'powerW')} W or more at HF, and bonding wire and clamp as your local code wants them (6 AWG, 13 mm², in the United States).`,
  'buy-arrester-open-wire': (d, f) =>
    `Ask for a two-wire arrester or a pair of spark gaps for ${figure(d, f, 'powerW')} W or more, and bonding wire and clamp as your local code wants them (6 AWG, 13 mm², in the United States).`,
};

export const boxNames: Readonly<Record<string, string>> = {
  'vented-box': 'weatherproof box with a hole at the bottom to breathe',
};

const conductor = (d: Data): string => conductorName(String(d.conductor));
const rings = (d: Data): string =>
  plural(d.count, `one ${coreName(String(d.core))}`, `${d.count} stacked rings, each a ${coreName(String(d.core))}`);
const cut = (d: Data, f: Format): string => `Cut ${metres(d, f, 'conductorM')} of ${conductor(d)}`;
const capacitor = (d: Data, f: Format): string =>
  Number(d.capacitorPf) > 0
    ? ` Put ${figure(d, f, 'capacitorPf')} pF (mica or ceramic NP0, for the volts that the shopping list says) across the ${Math.min(Number(d.turns), Number(d.secondaryTurns))} turns: it takes the winding’s stray inductance out of the match.`
    : '';
const winding = (d: Data, turns: string): string =>
  d.isPair === true ? `${d[turns]} turns of a close pair of wires` : `${d[turns]} turns`;
const piece = (d: Data, f: Format, key: string): string =>
  d.isPair === true
    ? `Cut two pieces of ${metres(d, f, key)} of ${conductor(d)} and tape them side by side`
    : `Cut ${metres(d, f, key)} of ${conductor(d)}`;
const counting = 'One turn is one pass through the hole.';

/** What wires that are wound side by side are called, in the text and in the drawing. */
export const wireNames = ['A', 'B', 'C'] as const;

export const builds: Readonly<Record<string, Message>> = {
  'choke-one-winding': (d, f) =>
    `${winding(d, 'turns')} on ${rings(d)}. ${piece(d, f, 'conductorM')}. ${counting} Half the turns up one side, cross over, the other half on: both ends come out apart.`,
  'choke-two-windings': (d, f) =>
    `Two windings one behind the other: ${winding(d, 'turns')} on ${rings(d)}, and ${winding(d, 'secondTurns')} on ${plural(d.count, 'another', 'as many again')}. ${piece(d, f, 'conductorM')} for the first, ${metres(d, f, 'secondM')} for the second. ${counting} Keep the two apart, so that they do not couple.`,
  'transformer-autotransformer': (d, f) => {
    const [most, tap] = [Number(d.turns), Number(d.secondaryTurns)].sort((a, b) => b - a);
    const antennaHigh = Number(d.secondaryTurns) > Number(d.turns);
    const toTap = antennaHigh ? 'coax centre' : 'wire';
    const toEnd = antennaHigh ? 'wire' : 'coax centre';
    return `${most} turns on ${rings(d)}, tapped at ${tap} turns from the shield end: shield to the start, ${toTap} to the tap, ${toEnd} to the far end. ${counting} ${cut(d, f)}.${capacitor(d, f)}`;
  },
  'transformer-side-by-side': (d, f) => {
    const names = wireNames.slice(0, Number(d.strands));
    const last = names.at(-1) ?? '';
    const joints = names.slice(1).map((name, index) => `the end of ${names[index]} to the start of ${name}`);
    const [atJoint, atEnd] = d.isTurned === true ? ['wire', 'coax centre'] : ['coax centre', 'wire'];
    return `${d.strands} wires wound side by side as one, ${d.strandTurns} turns, on ${rings(d)}: ${Number(d.strands) * Number(d.strandTurns)} turns in all. Mark them ${names.slice(0, -1).join(', ')} and ${last} at both ends. Join ${joints.join(' and ')}. Shield to the start of A, ${atJoint} to the joint of A and B, ${atEnd} to the end of ${last}. ${counting} Cut ${d.strands} pieces of ${metres(d, f, 'pieceM')} of ${conductor(d)}.${capacitor(d, f)}`;
  },
  'transformer-centre-tapped': (d, f) =>
    `Two wires wound side by side as one, ${d.turns} turns, on ${rings(d)}: ${d.secondaryTurns} turns in all. Mark them A and B at both ends. Join the end of A to the start of B: the shield goes there. One side of the antenna to the start of A, the other side and the coax centre to the end of B. ${counting} Cut two pieces of ${metres(d, f, 'pieceM')} of ${conductor(d)}.${capacitor(d, f)}`,
  'transformer-two-windings': (d, f) =>
    `${d.turns} turns for the coax and ${d.secondaryTurns} turns for the antenna on ${rings(d)}, two windings that touch nowhere, the smaller spread between the turns of the larger. ${counting} Cut ${metres(d, f, 'coaxPieceM')} of ${conductor(d)} for the coax side and ${metres(d, f, 'antennaPieceM')} for the antenna side.${capacitor(d, f)}`,
};
