/** The answer in one or two sentences: what to feed, where, through what, and where the chokes go. */
import type { Format } from '../format';
import type { Data } from '../message';
import { lineName } from './catalog-names';
import { ratioText } from './why';

type Opening = (length: string, d: Data) => string;

const opening: Readonly<Record<string, Opening>> = {
  'centre-fed-half-wave': (length) => `Feed a ${length} wire in its middle`,
  'inverted-v': (length) => `Hang a ${length} wire by its middle, both ends low, and feed it there`,
  sloper: (length) => `Feed a ${length} sloping wire in its middle`,
  'open-wire-doublet': (length, d) => `Feed a ${length} wire in its middle with ${lineName(String(d.line))}`,
  'off-centre-fed': (length, d) => `Feed a ${length} wire ${d.percent} % from one end`,
  'end-fed-half-wave': (length) => `Feed a ${length} wire at its end`,
  'non-resonant-end-fed': (length) => `Feed a ${length} wire at its end`,
  'quarter-wave-vertical': (length) => `Feed a ${length} upright wire at its base`,
  'non-resonant-vertical': (length) => `Feed a ${length} upright wire at its base`,
  'inverted-l': (length) => `Feed a ${length} wire, up and then along, at its base`,
  'full-wave-loop': (length) => `Feed a loop ${length} round`,
  'parallel-dipoles': (length) => `Feed several wires at one point in their middle, the longest ${length}`,
  'linked-dipole': (length, d) =>
    Number(d.links) > 0
      ? `Feed one wire, ${length} with its ${d.links} links closed, in its middle; open links for the higher bands`
      : `Feed a ${length} wire in its middle`,
  'folded-dipole': (length) => `Feed a folded wire ${length} long in the middle of one side`,
  other: (length) => (length === '' ? 'Feed your antenna' : `Feed your ${length} antenna`),
};

/** Data: system, radiatorM, ratio (0 for none), transformerKind, tunerAtFeedPoint, chokesM (places along the line, joined by "|"), … */
export function summary(d: Data, f: Format): string {
  const start = opening[String(d.system)] ?? opening.other;
  const length = typeof d.radiatorM === 'number' ? f.length(d.radiatorM) : '';
  const first = `${start?.(length, d)}${through(d, f)}.`;
  return [first, chokes(d, f)].filter((sentence) => sentence !== '').join(' ');
}

function through(d: Data, f: Format): string {
  if (d.tunerAtFeedPoint === true) return ' through a tuner at the feed point';
  if (typeof d.ratio !== 'number' || d.ratio === 0) return '';
  const kind = d.transformerKind === 'voltage' ? '' : ' current';
  return ` through ${article(d.ratio)} ${ratioText(d.ratio, f)}${kind} transformer`;
}

const article = (ratio: number): string => (ratio === 8 || ratio === 11 || ratio === 18 ? 'an' : 'a');

function chokes(d: Data, f: Format): string {
  const places = [
    typeof d.feedChokeM === 'number' ? feedChoke(d.feedChokeM, f) : '',
    d.lineEndChoke === true ? 'where the line becomes coax' : '',
    d.entryChoke === true ? 'before the coax enters the building' : '',
    d.radioChoke === true ? 'at the radio' : '',
  ].filter((place) => place !== '');
  const [first, ...more] = places;
  if (first === undefined) return '';
  const rest = more.map((place) => `another ${place}`);
  return `Put a 1:1 choke ${[first, ...rest].join(rest.length > 1 ? ', ' : ' and ')}.`;
}

const feedChoke = (alongM: number, f: Format): string =>
  alongM < 0.05 ? 'at the feed point' : `${f.length(alongM)} down the coax`;

/** When the answers name no antenna that can be fed as told. */
export const noSummary = 'These answers do not make an antenna yet. See what stops them, and the ways out.';

/** When the operator asks which antenna to build. */
export const whichSummary = (best: string): string =>
  `Of the antennas that fit your answers, the ${best} comes first. Open any of them as a plan.`;
export const whichNone = 'No antenna fits these answers without a change. See what stops each of them.';
