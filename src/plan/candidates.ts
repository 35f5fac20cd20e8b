/**
 * Which antenna? For an operator who has not chosen: every system that the answers allow, planned and ranked, each with its reasons. Ranked by
 * what stops it, bands served, bands without a tuner, power that leaves the feed line, and parts to buy.
 */
import type { Answers } from '../design/answers';
import type { FeedPosition, Radiator } from '../design/choices';
import { candidates as sentences } from '../words/en/candidates';
import type { Format } from '../words/format';
import { type Data, render } from '../words/message';
import type { Plan } from './plan-schema';

export type Candidate = NonNullable<Plan['candidates']>[number];

interface Kind {
  readonly radiator: Radiator;
  readonly fedAt: FeedPosition;
  readonly also?: Partial<Answers>;
}

/** One of each system, in its usual form. */
const kinds: readonly Kind[] = [
  { radiator: 'inverted-v', fedAt: 'centre' },
  { radiator: 'straight-wire', fedAt: 'centre' },
  { radiator: 'sloper', fedAt: 'centre' },
  { radiator: 'straight-wire', fedAt: 'end' },
  { radiator: 'straight-wire', fedAt: 'end', also: { lengthChoice: 'non-resonant' } },
  { radiator: 'straight-wire', fedAt: 'off-centre' },
  { radiator: 'straight-wire', fedAt: 'centre', also: { feedLine: 'window-line', lengthChoice: 'non-resonant' } },
  { radiator: 'parallel-wires', fedAt: 'centre' },
  { radiator: 'folded-wire', fedAt: 'centre' },
  { radiator: 'vertical', fedAt: 'base' },
  { radiator: 'vertical', fedAt: 'base', also: { lengthChoice: 'non-resonant' } },
  { radiator: 'inverted-l', fedAt: 'base' },
  { radiator: 'loop', fedAt: 'corner' },
];

/** The answers of every candidate worth a look, each to be planned. */
export const candidateAnswers = (answers: Answers): Answers[] =>
  kinds
    .filter(({ radiator }) => radiator !== 'parallel-wires' || answers.bands.length > 1)
    .map((kind) => answersFor(answers, kind));

/** `plans` holds the plan of each candidate: whoever calls makes them, in one go or a few at a time. */
export function rankCandidates(answers: Answers, plans: ReadonlyMap<Answers, Plan>, format: Format): Candidate[] {
  return [...plans]
    .map(([chosen, plan]) => judgedCandidate(chosen, plan, format))
    .filter((candidate) => candidate !== null)
    .sort((a, b) => compare(a.score, b.score, (supportM) => isTooHigh(supportM, answers)))
    .map((candidate, index) => ({ ...candidate, rank: index + 1 }));
}

function answersFor(answers: Answers, { radiator, fedAt, also }: Kind): Answers {
  const { lengthChoice: _length, wireLengthM: _wire, ...kept } = answers;
  const openWireAsked =
    kept.feedLine === 'window-line' || kept.feedLine === 'open-wire' || kept.feedLine === 'twin-lead';
  const { feedLine: _line, ...onCoax } = kept;
  return { ...(openWireAsked && also?.feedLine === undefined ? onCoax : kept), radiator, fedAt, ...also };
}

/** One candidate as its plan shows it, without its place; null where there is no antenna. */
export function judgedCandidate(answers: Answers, plan: Plan, format: Format): Candidate | null {
  if (plan.system === null) return null;
  const missing = plan.warnings
    .filter((warning) => warning.id === 'band-not-served')
    .flatMap((warning) => warning.bands);
  const served = answers.bands.filter((band) => !missing.includes(band));
  const tuned = plan.bands.filter((band) => served.includes(band.band) && band.tunerNeeded === true);
  const losses = plan.bands
    .filter(({ band }) => served.includes(band))
    .map((band) => (band.lineLossDb ?? 0) + (band.deviceLossDb ?? 0));
  const known = losses.length > 0 && plan.bands.some((band) => band.lineLossDb !== null);
  const supportM = supportOf(plan, answers);
  const score = {
    bandsServed: served.length,
    bandsWithoutTuner: served.length - tuned.length,
    supportM,
    radiatedShare: known ? 10 ** (-Math.max(...losses) / 10) : null,
    entryCurrentMa: plan.bands.reduce<number | null>((worst, band) => max(worst, band.entryCurrentMa), null),
    partsToBuy: plan.parts.filter((part) => part.have < part.quantity).length,
    stops: plan.warnings.filter((warning) => warning.severity === 'stop').length,
  };
  const reasons = [
    score.stops > 0 ? say('stops', { count: score.stops }, format) : '',
    missing.length === 0
      ? say('serves-all', {}, format)
      : say('serves-some', { served: served.length, wanted: answers.bands.length, missing: missing.join(' ') }, format),
    tuned.length === 0
      ? say('no-tuner', {}, format)
      : say('tuner-on', { bands: tuned.map((band) => band.band).join(' ') }, format),
    room(plan, answers, format),
    height(supportM, answers, format),
    score.radiatedShare === null ? '' : say('loss', { radiatedW: 100 * score.radiatedShare }, format),
    say('parts', { count: score.partsToBuy }, format),
  ].filter((reason) => reason !== '');
  return { system: plan.system, answers, rank: 0, score, reasons };
}

/** Up to here a pole that people carry reaches, m: common practice. */
const USUAL_SUPPORT_M = 10;

/** Height of its highest point, m. */
function supportOf({ riseM }: Plan, { radiator, heightM }: Answers): number {
  const hangs = radiator === 'straight-wire' || radiator === 'parallel-wires' || radiator === 'folded-wire';
  const topDown = hangs || radiator === 'inverted-v' || radiator === 'sloper';
  return topDown ? (heightM ?? 8) : (heightM ?? 0.2) + (riseM ?? 0);
}

const isTooHigh = (supportM: number, { supportHeightM }: Answers): boolean =>
  supportM > (supportHeightM ?? USUAL_SUPPORT_M) + 0.5;

function height(supportM: number, answers: Answers, format: Format): string {
  const told = answers.supportHeightM !== undefined;
  if (!isTooHigh(supportM, answers)) return '';
  return say(told ? 'too-high' : 'high', { supportM }, format);
}

function room(plan: Plan, { spanM }: Answers, format: Format): string {
  if (plan.runM === null || plan.runM < 0.5) return '';
  const code = spanM === undefined ? 'room-unknown' : plan.runM <= spanM ? 'fits' : 'too-long';
  return say(code, { runM: plan.runM }, format);
}

const say = (code: string, data: Data, format: Format): string => render(sentences[code] ?? '', data, format);

const max = (a: number | null, b: number | null): number | null => (a === null ? b : b === null ? a : Math.max(a, b));

type Score = Candidate['score'];
/** Shares that differ by less than this are the same to anybody's ear. */
const SHARE_STEP = 0.1;
const shareStep = ({ radiatedShare }: Score): number => Math.round((radiatedShare ?? 0) / SHARE_STEP);

const compare = (a: Score, b: Score, tooHigh: (supportM: number) => boolean): number =>
  a.stops - b.stops ||
  Number(tooHigh(a.supportM)) - Number(tooHigh(b.supportM)) ||
  b.bandsServed - a.bandsServed ||
  b.bandsWithoutTuner - a.bandsWithoutTuner ||
  shareStep(b) - shareStep(a) ||
  a.partsToBuy - b.partsToBuy;
