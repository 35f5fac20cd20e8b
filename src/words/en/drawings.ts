/** What each drawing says, in one or two sentences, for those who do not see it. */
import type { Message } from '../message';

export const drawings = {
  side: (d, f) =>
    `Side view to scale. The feed point is ${f.length(Number(d.feedM))} above ground, the highest wire ${f.length(Number(d.topM))}, its ends ${f.length(Number(d.endM))}.${d.coax === true ? ` Coax runs ${f.length(Number(d.coaxM))} to the radio.` : ''}${d.chokes === '' ? '' : ` Chokes sit on it at ${d.chokes}.`}`,
  top: (d, f) =>
    `The site from above, to scale: the wire is ${f.length(Number(d.runM))} across.${d.coax === true ? ` The coax leaves it ${d.square === true ? 'at a right angle' : 'along the wire'}.` : ''}${Number(d.keepOutM) > 0 ? ` People stay ${f.length(Number(d.keepOutM))} away from every part of it.` : ''}`,
  decides: (d, f) =>
    `The measure marks the part that keeps people farthest: ${d.part}, ${f.length(Number(d.keepOutM))}.`,
  groundStrip: (d, f) =>
    `Striped ground: nobody stands there while you send, at most ${f.length(Number(d.groundM))} from the nearest part, seen from above.`,
  groundDots: 'Dots: nobody stands on this ground while you send.',
  fall: (d, f) =>
    `The site from above, to scale: striped ground reaches ${f.length(Number(d.distanceM))} from every wire and support on all sides. No overhead line may stand over it.${d.drawn === true ? ` A heavy outline ${f.length(Number(d.lineM))} away is where the nearest line may be, ${d.near === true ? 'inside the stripes' : 'outside them'}.` : ''}`,
  choke: ({ turns, cores }) =>
    `Front view of the ring${Number(cores) > 1 ? ', one of several stacked' : ''}: ${turns} strands of coax pass through the hole, half of them up one side, then across, the rest up the other side.`,
  tapped: ({ turns, tap }) =>
    `Front view of the ring: ${turns} strands of wire pass through the hole. Red pencil points at strand ${tap}, where the tap is soldered.`,
  paired: ({ turns }) =>
    `Front view of the ring: two wires side by side pass through the hole ${turns} times, the second drawn hollow.`,
  twoWindings: ({ turns, second }) =>
    `Front view of the ring: ${turns} strands of wire pass through the hole. The first ${second} have a second wire beside them, drawn hollow: the other winding.`,
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
