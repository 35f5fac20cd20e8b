/** Devices by name, what to ask for in a shop, and how to make one. */
import type { Format } from '../format';
import type { Data, Message } from '../message';
import { bandName, coreName, lineName, wireName } from './names';
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
    `Ask for a ${ratioText(Number(d.ratio), f)} transformer, ${String(d.kind)} type, ${kindText(d)}, without a choke inside, rated ${figure(d, f, 'ratingW', 2)} W or more for voice. Look for the loss in dB on your lowest band; a part that does not state it is a guess.`,
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

const conductor = (d: Data): string => {
  const id = String(d.conductor);
  const name = lineName(id);
  return name === id ? wireName(id) : name;
};
const rings = (d: Data): string =>
  Number(d.count) === 1
    ? `one ${coreName(String(d.core))}`
    : `${d.count} stacked rings, each a ${coreName(String(d.core))}`;
const cut = (d: Data, f: Format): string => `Cut ${f.length(Number(d.conductorM))} of ${conductor(d)}`;
const capacitor = (d: Data, f: Format): string =>
  Number(d.capacitorPf) > 0
    ? ` Put ${figure(d, f, 'capacitorPf')} pF (mica or ceramic NP0, 1 kV or more) across the ${d.turns} turns: it keeps the match above 14 MHz.`
    : '';

export const builds: Readonly<Record<string, Message>> = {
  'choke-one-winding': (d, f) =>
    `${d.turns} turns on one ${coreName(String(d.core))}. ${cut(d, f)}. One turn is one pass through the hole. Half the turns up one side, cross over, the other half on: both ends come out apart. By the trade's table, good to about a turn or two.`,
  'choke-two-windings': (d, f) =>
    `Two windings one behind the other: ${d.turns} turns on one ${coreName(String(d.core))} for the low bands and ${d.secondTurns} turns on another for the high ones. ${cut(d, f)} for both. One turn is one pass through the hole. By the trade's table, good to about a turn or two.`,
  'transformer-autotransformer': (d, f) => {
    const [most, tap] = [Number(d.turns), Number(d.secondaryTurns)].sort((a, b) => b - a);
    const antennaHigh = Number(d.secondaryTurns) > Number(d.turns);
    const [toTap, toEnd] = antennaHigh ? ['coax centre', 'wire'] : ['wire', 'coax centre'];
    return `${most} turns on ${rings(d)}, tapped at ${tap} turns from the shield end: shield to the start, ${toTap} to the tap, ${toEnd} to the far end. ${cut(d, f)}.${capacitor(d, f)}`;
  },
  'transformer-centre-tapped': (d, f) =>
    `${d.secondaryTurns} turns on ${rings(d)}, as two wires wound side by side, ${d.turns} turns each, end of one joined to start of the other. Shield to that joint, coax centre to one free end, the two legs to the two free ends. ${cut(d, f)} in two halves.${capacitor(d, f)}`,
  'transformer-two-windings': (d, f) =>
    `${d.turns} turns for the coax and ${d.secondaryTurns} turns for the antenna on ${rings(d)}, two windings that touch nowhere. ${cut(d, f)} for the antenna side and about ${f.number((Number(d.turns) / Number(d.secondaryTurns)) * 100, 2)} % of that for the other.${capacitor(d, f)}`,
  'transformer-beyond-rule': (d, f) =>
    `${figure(d, f, 'averageW', 2)} W average is beyond any rule of thumb. Use only a design measured under that load, or come down to ${figure(d, f, 'mostW', 2)} W average. As a start: ${d.turns} and ${d.secondaryTurns} turns on ${rings(d)}. ${cut(d, f)}.${capacitor(d, f)}`,
};
