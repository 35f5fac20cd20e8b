/** The screen that compares antennas for somebody who has not chosen one. */
import type { Message } from '../message';

export const which = {
  compare: 'Compare antennas for me',
  compareWhy:
    'Halyard can work out every kind of antenna for your bands and your place, and say which come first and why.',
  title: 'Which antenna?',
  meaning: 'Every kind worked out for your bands and your place, the best first. Open any of them as a plan.',
  count: ({ number, of }) => `Before comparing, ${number} of ${of}`,
  restsOn: 'It rests on this',
  working: ({ done, of }) => (of === 0 ? 'Working them out' : `Working them out: ${done} of ${of}`),
  open: 'Open as a plan',
  openOf: ({ name }) => `Open as a plan: ${name}`,
  taken: ({ name }) => `Your plan now: ${name}.`,
  solving: 'The first three are being worked out once more from their fields at your place.',
  allSolved:
    'The first three were worked out from their fields at your place. The order still stands as it was before.',
  again: 'Put them in order again',
  solvingOne: 'Its field is being worked out.',
  stopSolving: 'Stop working it out',
  goOnSolving: 'Work out the fields',
  solvedHead: 'From its field at your place',
  swr: ({ least, most }) =>
    least === most
      ? `SWR at the radio about ${most}:1.`
      : `SWR at the radio from ${least}:1 to ${most}:1, band by band.`,
  entry: ({ ma }) => `For 100 W at most about ${ma} mA come to the house on the outside of the coax.`,
  hardlyEntry: 'For 100 W less than 1 mA comes to the house on the outside of the coax.',
  notSolved: 'Its field could not be worked out.',
} as const satisfies Readonly<Record<string, Message>>;

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
  'folded-dipole': 'Wire folded back on itself',
};
