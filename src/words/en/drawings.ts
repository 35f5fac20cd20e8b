/** What each drawing says, in one or two sentences, for those who do not see it. */
import type { Data, Message } from '../message';

const lineName = ({ isCoax }: Data): string => (isCoax === true ? 'The coax' : 'The open-wire line');

export const drawings = {
  side: (d, f) =>
    `Side view to scale. The wire is fed ${f.length(Number(d.feedM))} above ground; its highest point is ${f.length(Number(d.topM))}, its lowest ${f.length(Number(d.lowM))}.${Number(d.lineM) > 0 ? ` ${lineName(d)} runs ${f.length(Number(d.lineM))} to the radio.` : ''}${d.chokes === '' ? '' : ` Chokes sit on it: ${d.chokes}.`}`,
  chokeThere: (d, f) => (d.atFeed === true ? 'one at the feed point' : `one at ${f.length(Number(d.metres))}`),
  top: (d, f) =>
    `The site from above, to scale: the wire ${Number(d.runM) < 0.05 ? 'stands upright' : `is ${f.length(Number(d.runM))} across`}.${Number(d.lineM) > 0 ? ` ${lineName(d)} leaves it ${d.square === true ? 'at a right angle' : 'along the wire'}.` : ''}${Number(d.keepOutM) > 0 ? ` People stay away from every part of it, ${f.length(Number(d.keepOutM))} where most is asked.` : ''}`,
  decides: (d, f) =>
    `The measure marks the part that keeps people farthest: ${d.part}, ${f.length(Number(d.keepOutM))}.`,
  groundStrip: (d, f) =>
    `Striped ground: nobody stands there while you send, at most ${f.length(Number(d.groundM))} from the nearest part, seen from above.`,
  groundDots: 'Dots: nobody stands on this ground while you send.',
  fall: (d, f) =>
    `The site from above, to scale: striped ground reaches ${f.length(Number(d.distanceM))} from every wire and support on all sides. No overhead line may stand over it.${d.drawn === true ? ` A heavy outline ${f.length(Number(d.lineM))} away is where the nearest line may be, ${d.near === true ? 'inside the stripes' : 'outside them'}.` : ''}`,
  choke: ({ turns, cores }) =>
    `Front view of the ring${Number(cores) > 1 ? ', one of several stacked' : ''}: ${turns} strands of coax pass through the hole, half of them up one side, then across, the rest up the other side.`,
  tapped: ({ turns, tap, start, atTap, end }) =>
    `Front view of the ring: ${turns} strands of wire pass through the hole. Red pencil points at strand ${tap}, where the tap is soldered. The start goes to ${start}, the tap to ${atTap}, the end to ${end}.`,
  together: ({ turns, wires }) =>
    `Front view of the ring: ${wires} wires that lie together pass through the hole ${turns} times. Below it their starts and ends with what is joined to what, as the text says.`,
  chokePair: ({ turns }) =>
    `Front view of the ring: a pair of wires passes through the hole ${turns} times, half of them up one side, then across, the rest up the other side.`,
  twoWindings: ({ turns, second }) =>
    `Front view of the ring: the coax winding, drawn plain, passes through the hole ${turns} times, the antenna winding, drawn hollow, ${second} times. They touch nowhere.`,
  toShield: 'shield',
  toCoax: 'coax centre',
  toWire: 'wire',
  toAntenna: 'antenna',
  toAntennaAndCoax: 'antenna, coax centre',
  progress: ({ now, count, done }) => `Piece ${now} of ${count}, ${done} done`,
  piece: ({ marks }) => `The piece with red pencil at ${marks}`,
  pieceBare: 'The piece, with no mark on it',
  roadsOpen:
    'Coax cut open lengthwise: current on the centre wire, as much back on the inside of the shield, and a third on the outside of the shield.',
  roadsChoked:
    'Coax cut open lengthwise with a choke round it: the current on the outside of the shield stops at the choke, the currents inside pass unchanged.',
  transformer: 'A transformer between wire and coax changes the ohms.',
  chokeAtWork: 'A choke round the coax: the current on the outside stops at it.',
  trimTape: ({ was, now, aim, band, low, high }) =>
    `A tape of megahertz.${was === '' ? '' : ` The dip was at ${was},`} now ${now}, aim ${aim}. ${band} runs from ${low} to ${high}.`,
} as const satisfies Readonly<Record<string, Message>>;
