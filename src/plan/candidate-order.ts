/**
 * The order of the candidates and the reason for each place: what stops it, a support higher than there is, bands served, points, things to buy.
 * A solved score and a provisional one do not compare: those solved take the places of the solved among themselves, the others keep theirs.
 */
import { candidatePlaces, type PlaceCode } from '../words/en/candidates';
import type { Format } from '../words/format';
import { type Data, render } from '../words/message';
import {
  type Candidate,
  entryPoints,
  handPoints,
  type Score,
  THING_POINTS,
  tunerPoints,
  usefulPoints,
} from './candidate-points';

const compare = (a: Score, b: Score): number =>
  a.stops - b.stops ||
  Number(a.tooHigh) - Number(b.tooHigh) ||
  b.bandsServed - a.bandsServed ||
  b.points - a.points ||
  a.partsToBuy - b.partsToBuy;

export function orderCandidates(candidates: readonly Candidate[], format: Format): Candidate[] {
  const solved = sorted(candidates.filter((candidate) => candidate.solved));
  const byRule = candidates.filter((candidate) => !candidate.solved);
  const waiting = solved.length === 0 ? sorted(byRule) : byRule;
  const placed = candidates.flatMap((before) => (before.solved ? solved.shift() : waiting.shift()) ?? []);
  return placed.map((candidate, index) => ({
    ...candidate,
    rank: index + 1,
    place: placeOf(placed, index, format),
  }));
}

const sorted = (candidates: readonly Candidate[]): Candidate[] =>
  [...candidates].sort((a, b) => compare(a.score, b.score));

/** Told against the one above; the first against the next. */
function placeOf(placed: readonly Candidate[], index: number, format: Format): string {
  const [here, other] = [placed[index], placed[index === 0 ? 1 : index - 1]];
  const say = (code: PlaceCode, data: Data = {}): string => render(candidatePlaces[code], data, format);
  if (here === undefined || here.score.stops > 0) return say('stopped');
  if (other === undefined || other.score.stops > 0) return say('only');
  if (here.solved !== other.solved) return say(here.solved ? 'beside-provisional' : 'provisional');
  const [better, worse] = index === 0 ? [here, other] : [other, here];
  const said = differences(better, worse).slice(0, MOST_SAID);
  const clauses = said.map(([code, data]) => say(code, data)).join(say('and'));
  if (said.length === 0) return say(index === 0 ? 'level-first' : 'level');
  return say(index === 0 ? 'first' : 'after', { clauses });
}

const tunedBands = ({ bandsServed, bandsWithoutTuner }: Score): number => bandsServed - bandsWithoutTuner;

const MOST_SAID = 2;

/** What the worse one lacks, the weightiest first. */
function differences(
  { score: better }: Candidate,
  { score: worse, answers }: Candidate,
): readonly (readonly [PlaceCode, Data])[] {
  if (worse.tooHigh && !better.tooHigh) return [['needs-height', {}]];
  if (worse.bandsServed < better.bandsServed)
    return [['fewer-bands', { fewer: better.bandsServed - worse.bandsServed }]];
  const isSolved = better.usefulDb !== null && worse.usefulDb !== null;
  const less = usefulPoints(better) - usefulPoints(worse);
  const bands = tunedBands(worse) - tunedBands(better);
  const needsOther = worse.bandsBeyondTuner > 0 && better.bandsBeyondTuner === 0;
  const more = (of: (score: Score) => number): number => of(worse) - of(better);
  const things = more(({ partsToBuy }) => partsToBuy);
  const all: readonly (readonly [points: number, code: PlaceCode, data: Data])[] = [
    [less, isSolved ? 'weaker' : 'more-loss', { db: less }],
    [
      more(tunerPoints),
      needsOther ? (answers.shackEnd === 'radio' ? 'a-tuner' : 'other-tuner') : 'more-tuner',
      { bands },
    ],
    [more(handPoints), 'by-hand', {}],
    [more((score) => entryPoints(score.entryCurrentMa)), 'more-current', { ma: worse.entryCurrentMa ?? 0 }],
    [THING_POINTS * things, 'more-to-buy', { things }],
  ];
  return all
    .filter(([points]) => points > 0)
    .sort(([a], [b]) => b - a)
    .map(([, code, data]) => [code, data]);
}
