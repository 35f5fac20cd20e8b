/**
 * One of each antenna system in its usual form, hung as the operator's support allows: a wire at the height that was told; a sloper from it; a
 * loop upright where that leaves its foot 2 m above ground, else flat; coax longer by as much as the feed point is higher than usual.
 */
import { dimensionsOf } from '../advice/dimensions';
import { factsOf, isNoSystem } from '../advice/facts';
import type { Answers } from '../design/answers';
import type { FeedPosition, Radiator } from '../design/choices';

interface Kind {
  readonly radiator: Radiator;
  readonly fedAt: FeedPosition;
  readonly also?: Partial<Answers>;
}

const kinds: readonly Kind[] = [
  { radiator: 'inverted-v', fedAt: 'centre' },
  { radiator: 'straight-wire', fedAt: 'centre' },
  { radiator: 'sloper', fedAt: 'centre' },
  { radiator: 'straight-wire', fedAt: 'end' },
  { radiator: 'straight-wire', fedAt: 'end', also: { lengthChoice: 'non-resonant' } },
  { radiator: 'straight-wire', fedAt: 'off-centre' },
  { radiator: 'straight-wire', fedAt: 'centre', also: { feedLine: 'window-line', lengthChoice: 'non-resonant' } },
  { radiator: 'parallel-wires', fedAt: 'centre' },
  { radiator: 'linked-wire', fedAt: 'centre' },
  { radiator: 'folded-wire', fedAt: 'centre' },
  { radiator: 'vertical', fedAt: 'base' },
  { radiator: 'vertical', fedAt: 'base', also: { lengthChoice: 'non-resonant' } },
  { radiator: 'inverted-l', fedAt: 'base' },
  { radiator: 'loop', fedAt: 'corner' },
];

const forSeveralBands: readonly Radiator[] = ['parallel-wires', 'linked-wire'];

/** The answers of every candidate worth a look, each to be planned. */
export const candidateAnswers = (answers: Answers): Answers[] =>
  kinds
    .filter(({ radiator }) => !forSeveralBands.includes(radiator) || answers.bands.length > 1)
    .map((kind) => hung(answersFor(answers, kind)));

function answersFor(answers: Answers, { radiator, fedAt, also }: Kind): Answers {
  const { lengthChoice: _length, wireLengthM: _wire, ...kept } = answers;
  const openWireAsked =
    kept.feedLine === 'window-line' || kept.feedLine === 'open-wire' || kept.feedLine === 'twin-lead';
  const { feedLine: _line, ...onCoax } = kept;
  return { ...(openWireAsked && also?.feedLine === undefined ? onCoax : kept), radiator, fedAt, ...also };
}

/** Height at which wires hang when nobody told one, and the end of a sloper, m: as settled (advice/settle). */
const USUAL_M = 8;
const LOW_END_M = 3;
/** Up to here a pole that people carry reaches, m. Common practice. */
export const USUAL_SUPPORT_M = 10;
/** People pass under a wire here, m. Common practice. */
const FOOT_M = 2;

function hung(answers: Answers): Answers {
  const { radiator, supportHeightM } = answers;
  if (answers.heightM !== undefined || radiator === 'vertical' || radiator === 'inverted-l') return answers;
  const topM = supportHeightM ?? USUAL_SUPPORT_M;
  if (radiator === 'loop') return hungLoop(answers, topM);
  // A sloper is fed half-way up.
  if (radiator === 'sloper')
    return fedAtHeight(answers, (topM + (answers.endHeightM ?? Math.min(LOW_END_M, topM))) / 2);
  return supportHeightM === undefined ? answers : fedAtHeight(answers, supportHeightM);
}

function hungLoop(answers: Answers, topM: number): Answers {
  const facts = factsOf(answers);
  if (isNoSystem(facts) || answers.loopPlane === 'flat') return fedAtHeight(answers, topM);
  const footM = topM - dimensionsOf(facts).riseM;
  return footM >= FOOT_M || answers.loopPlane === 'upright'
    ? fedAtHeight(answers, Math.max(footM, FOOT_M))
    : fedAtHeight({ ...answers, loopPlane: 'flat' }, topM);
}

function fedAtHeight(answers: Answers, heightM: number): Answers {
  const { feedLineLengthM } = answers;
  const higherM = heightM - USUAL_M;
  return {
    ...answers,
    heightM: Math.round(heightM * 10) / 10,
    ...(feedLineLengthM === undefined && higherM > 0 ? { feedLineLengthM: USUAL_COAX_M + Math.ceil(higherM) } : {}),
  };
}

/** Coax when nobody told its length, m: as settled (advice/settle). */
const USUAL_COAX_M = 15;
