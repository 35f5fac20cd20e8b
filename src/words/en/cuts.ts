/** Pieces to cut: their names, what to do with each, and when to stop. Data: the numbers named in advice/cuts and advice/ropes. */
import type { Format } from '../format';
import type { Data, Message } from '../message';
import { bandName } from './names';
import { metres } from './readers';

const names: Readonly<Record<string, string>> = {
  wire: 'wire',
  leg: 'leg',
  'leg-piece': 'piece of the leg',
  'short-leg': 'short leg',
  'long-leg': 'long leg',
  vertical: 'upright wire',
  radial: 'radial',
  counterpoise: 'counterpoise wire',
  'folded-conductor': 'wire of the folded pair',
  'matching-section': '75 Ω coax section, in place of the transformer',
  coax: 'coax',
  'coax-jumper': 'short coax to the tuner',
  'open-wire-line': 'open-wire line',
  halyard: 'rope over the support',
  tie: 'tie-off rope',
  guy: 'guy rope',
  'throw-line': 'throw line',
  cord: 'cord to hold an end',
};

/** `leg-40m` as "leg for 40 m". */
export function pieceName(piece: string): string {
  const known = names[piece];
  if (known !== undefined) return known;
  const at = piece.lastIndexOf('-');
  return `${names[piece.slice(0, at)] ?? piece} for ${bandName(piece.slice(at + 1))}`;
}

const window = (d: Data, f: Format): string => `${metres(d, f, 'fromM')} to ${metres(d, f, 'toM')}`;

/** Other stretches, best first; each as two metre figures. */
function otherWindows(d: Data, f: Format): string {
  const list = String(d.others)
    .split('|')
    .filter((each) => each !== '')
    .map((each) =>
      each
        .split('-')
        .map((metre) => f.length(Number(metre)))
        .join(' to '),
    );
  return list.length === 0 ? '' : ` Also clear, best first: ${list.join('; ')}.`;
}

export const cutNotes: Readonly<Record<string, Message>> = {
  'cut-long-fold-back':
    'Cut long, mark the finished length, and fold the rest back along the wire. Trim by folding more, not by cutting.',
  'trim-longest-first':
    'Cut long and fold back. Trim the longest pair first, then each shorter one: the pairs pull at each other.',
  'linked-only':
    'One band alone needs no link. Cut long, mark the finished length, and fold the rest back along the wire.',
  'linked-inner': (d, f) =>
    `From the feed point to the first link. Check: each leg is ${metres(d, f, 'legM')} up to there, and on ${bandName(String(d.band))} that link and all beyond it are open. Trim it first: what it gains or loses, every lower band does too.`,
  'linked-middle': (d, f) =>
    `From the ${bandName(String(d.inner))} link to the ${bandName(String(d.band))} link. Check: from the feed point to there, joined, each leg is ${metres(d, f, 'legM')}. Trim it at its own link, after ${bandName(String(d.inner))}.`,
  'linked-outer': (d, f) =>
    `From the ${bandName(String(d.inner))} link to the end of the leg. Check: with every link closed each leg is ${metres(d, f, 'legM')}. Trim it last, at its end, after ${bandName(String(d.inner))}.`,
  window: (d, f) =>
    `Any length from ${window(d, f)} stays clear of every half-wave. No trimming needed.${otherWindows(d, f)}`,
  'any-clear-length': 'Cut to length and fold the ends through their insulators. Nothing to trim.',
  'wire-there': 'You have this wire already. Measure it once more.',
  'radials-equal': (d) => `Cut all ${d.count} alike and spread them evenly: unequal ones carry unequal currents.`,
  'radials-loose': 'On the ground the length is not critical. Spread them evenly and join them all at the base.',
  'counterpoise-place': 'Join it to the ground terminal and lead it away from the coax, where nobody treads on it.',
  'section-75-ohm': 'Only if you build the loop without a transformer. It sits between loop and coax.',
  'coax-marks':
    'Measure from the feed-point end and tape each mark. The marks are where the chokes go and where the coax enters.',
  'coax-plain': 'One piece, with a plug at each end.',
  'jumper-short': 'As short as the room allows.',
  'open-wire-clear': 'Keep it a hand away from metal, and twist it once a metre.',
  'open-wire-longer': (d, f) =>
    `At ${metres(d, f, 'clearM')} it would be easier to tune. Hang the extra in open loops, not in a coil.`,
  'rope-halyard': 'Goes up, over and back down, so that you lower the wire without climbing.',
  'rope-tie': 'From a low end of the wire to a stake or post.',
  'rope-guy': 'Tie at two thirds of the pole, stake out at four tenths of its height.',
  'rope-throw-line': 'Thin line with a weight. It pulls the rope over.',
  'rope-cord': 'Any cord that does not conduct.',
};

export const stopRules: Readonly<Record<string, Message>> = {
  'stop-at-dip': (d, f) =>
    `Stop when the dip is within 1 % of ${f.number(Number(d.dipMHz), 4)} MHz on ${bandName(String(d.band))}, or the SWR where you work is under 2. Take half of what the sum asks, then measure again.`,
  'stay-in-window': (d, f) => `Leave it anywhere from ${window(d, f)}. Do not trim for a lower SWR.`,
  'no-trimming': 'Leave it as cut. The tuner does the rest.',
  'measure-only': 'Nothing to cut.',
  'radials-match': 'Stop when all are alike within the tolerance.',
  'radials-any': 'A little more or less does not matter.',
  'counterpoise-as-cut': 'Leave it as cut; longer can come near a half-wave.',
  'section-as-cut': 'Leave it as cut.',
  'coax-length': 'Longer is fine. Shorter must still reach.',
  'open-wire-length': 'If one band will not tune, add or take off a metre or two of line.',
  'rope-longer': 'Longer is fine, shorter is not.',
};
