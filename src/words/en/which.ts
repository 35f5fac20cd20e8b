/** The screen that compares antennas for somebody who has not chosen one. */
import type { Message } from '../message';
import { many } from './many';

export const which = {
  compare: 'Compare antennas for me',
  compareWhy:
    'Halyard can work out every kind of antenna for your bands and your place, and say which come first and why.',
  title: 'Which antenna?',
  meaning: 'Every kind worked out for your bands and your place, the best first.',
  count: ({ number, of }) => `Before comparing, ${number} of ${of}`,
  restsOn: 'What the order rests on',
  working: 'Working them out by the rules',
  open: 'Open as a plan',
  openOf: ({ name }) => `Open as a plan: ${name}`,
  taken: ({ name }) => `Your plan now: ${name}.`,
  solving: ({ done, of }) =>
    `Working out the fields at your place: ${done}\u00a0of\u00a0${of}. The order is by the rules until you ask for another.`,
  stopped: ({ done, of }) => `Stopped at ${done}\u00a0of\u00a0${of}. The order is as it was.`,
  solvedSame: 'The fields are worked out. They leave the order as it is; the reasons can be brought up to date.',
  solvedMoves: ({ moves }) =>
    `The fields are worked out, and the order is still the one by the rules. By the fields ${many(moves, 'antenna moves', 'antennas move')}.`,
  settled: 'In order by the fields at your place.',
  failed: 'The fields could not be worked out. The order is by the rules.',
  stop: 'Stop working it out',
  goOn: 'Go on working it out',
  again: 'Put them in order by the fields',
  upToDate: 'Bring the reasons up to date',
  figures: 'From its field, for 100\u00a0W',
  more: 'Why, and its figures',
  radiated: 'Radiated',
  swr: 'SWR at the radio',
  entry: 'Current at the house',
  entryPortable: 'Current at the radio',
  watts: ({ least, most }) => (least === most ? `${most}\u00a0W` : `${least} to ${most}\u00a0W`),
  ratios: ({ least, most }) => (least === most ? `${most}` : `${least} to ${most}`),
  milliamperes: ({ ma }) => (ma === 0 ? 'hardly any' : `up to ${ma}\u00a0mA`),
  noneFits:
    'None can be built here as it stands. What stops each is below: more room, a higher support or fewer bands may help.',
  others: ({ count }) => `${many(count, 'kind', 'kinds')} that cannot be built here, and why`,
  notYet: '…',
  none: 'none',
  howHead: 'How they are put in order',
  how: [
    'The field of an antenna is what it sends, how strongly and in which directions, worked out for its own wires over your ground.',
    'First those that can be built here, then those that your supports are high enough for, then those that work on more of your bands.',
    'Among these it goes by points, 1 point for each decibel of what is sent in the directions that count, after all losses. On 160, 80 and 60 m these are from 30 degrees above the horizon to overhead, where near contacts come from; on 30 m and shorter bands 5 to 20 degrees, where far ones come from; on 40 m both.',
    'A band that needs a tuner costs 1 point, a tuner wider than yours 3 more, a change of band by hand at the wire 1 for each band after the first, each doubling of the current at the house above 30 mA 1, each kind of thing to buy half a point.',
  ],
} as const satisfies Readonly<Record<string, Message | readonly string[]>>;

/** Everyday words; the trade's name stands beside them. */
export const everydayNames: Readonly<Record<string, string>> = {
  'centre-fed-half-wave': 'Straight wire, fed in the middle',
  'inverted-v': 'Wire over one support, both ends low',
  sloper: 'Straight wire, one end high',
  'open-wire-doublet': 'Straight wire on a two-wire line',
  'off-centre-fed': 'Straight wire, fed a third from one end',
  'end-fed-half-wave': 'Straight wire, fed at one end, cut to the bands',
  'non-resonant-end-fed': 'Straight wire, fed at one end, cut to miss the bands',
  'quarter-wave-vertical': 'Upright wire over ground wires',
  'non-resonant-vertical': 'Upright wire, cut to miss the bands',
  'inverted-l': 'Wire that goes up, then along',
  'full-wave-loop': 'Closed ring of wire',
  'parallel-dipoles': 'Several wires from one point',
  'linked-dipole': 'One wire with links for each band',
  'folded-dipole': 'Wire folded back on itself',
};
