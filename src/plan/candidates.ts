/** Which antenna? One candidate as its plan and its fields show it: score, figures band by band, and what speaks for and against it. */
import type { Answers } from '../design/answers';
import { candidateReasons, toBuyWords } from '../words/en/candidates';
import type { Format } from '../words/format';
import { type Data, render } from '../words/message';
import { candidateAnswers } from './candidate-kinds';
import { orderCandidates } from './candidate-order';
import type { Candidate } from './candidate-points';
import { type Judged, judge } from './candidate-score';
import type { ShortStudy } from './field/candidate-study';
import type { Plan } from './plan-schema';
import { thingsToBuy } from './things-to-buy';

/** Every candidate planned by closed forms alone, in their order. */
export function candidatesByRule(answers: Answers, planOf: (answers: Answers) => Plan, format: Format): Candidate[] {
  const judged = candidateAnswers(answers).flatMap(
    (chosen) => judgedCandidate(chosen, planOf(chosen), null, format) ?? [],
  );
  return orderCandidates(judged, format);
}

/** Without its place, which the others decide; null where there is no antenna. */
export function judgedCandidate(
  answers: Answers,
  plan: Plan,
  study: ShortStudy | null,
  format: Format,
): Candidate | null {
  if (plan.system === null) return null;
  const judged = judge(answers, plan, study);
  return {
    system: plan.system,
    answers,
    rank: 0,
    solved: study !== null,
    score: judged.score,
    bands: judged.bands,
    place: '',
    reasons: reasonsOf(answers, plan, judged, study !== null, format),
  };
}

function reasonsOf(answers: Answers, plan: Plan, judged: Judged, isSolved: boolean, format: Format): string[] {
  const { score, missing, tuned, beyond } = judged;
  const say = (code: keyof typeof candidateReasons, data: Data = {}): string =>
    render(candidateReasons[code], data, format);
  const wanted = answers.bands.length;
  const stops = plan.warnings.filter(({ severity }) => severity === 'stop').map(({ text }) => text);
  return [
    ...stops,
    missing.length === 0
      ? say('serves-all', { wanted })
      : say('serves-some', { served: score.bandsServed, wanted, missing: missing.join(' ') }),
    tuned.length === 0 ? '' : say('tuner-on', { bands: tuned.join(' ') }),
    beyond.length === 0 ? '' : say(hasTuner(answers) ? 'beyond-on' : 'no-tuner-for', { bands: beyond.join(' ') }),
    tuned.length + beyond.length > 0 || score.bandsServed === 0 ? '' : say('no-tuner'),
    stops.length > 0 ? '' : room(plan, answers, say),
    score.bandsByHand === 0 ? '' : say('by-hand', { links: 2 * (wanted - 1) }),
    answers.radiator === 'loop' && answers.loopPlane === 'flat' ? say('lies-flat') : '',
    score.tooHigh ? say(answers.supportHeightM === undefined ? 'high' : 'too-high', { supportM: score.supportM }) : '',
    isSolved || score.radiatedShare === null ? '' : say('loss', { radiatedW: 100 * score.radiatedShare }),
    toBuyWords(thingsToBuy(plan)),
  ].filter((reason) => reason !== '');
}

const hasTuner = ({ shackEnd }: Answers): boolean => shackEnd !== 'radio';

type Say = (code: keyof typeof candidateReasons, data?: Data) => string;

function room(plan: Plan, { spanM }: Answers, say: Say): string {
  if (plan.runM === null || plan.runM < 0.5) return '';
  const code = spanM === undefined ? 'room-unknown' : plan.runM <= spanM ? 'fits' : 'too-long';
  return say(code, { runM: plan.runM });
}
