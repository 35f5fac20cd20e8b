/** One number: a length, a height, a power, a share or a count. */
import { bandEdgesMHz } from '../../../catalog/bands';
import type { AnswerKey, DraftAnswers } from '../../../design/answers';
import { nthHalfWaveM } from '../../../physics/lengths';
import { radiatorM } from '../../../plan/plan-figures';
import { answering } from '../../../words/en/answering';
import { questionWords } from '../../../words/en/questions';
import { quantityKindOf } from '../../answer-text';
import { readLengthField } from '../../fields/length-field';
import { readCountField, readPowerField, readShareField } from '../../fields/number-fields';
import { fieldText } from '../../fields/quantity-text';
import type { Quantity, QuantityKind, Reading } from '../../fields/reading';
import { useSay } from '../../say';
import { provisionalAnswers } from '../../stores/effective-answers';
import { usePlanned } from '../../stores/planned';
import { useStores } from '../../stores/stores';
import { answerOf } from './asked';
import type { BodyProps } from './body';
import { TypedField } from './typed-field';

const padUnits: Readonly<Record<QuantityKind, readonly string[]>> = {
  length: ['m', 'cm', 'ft', 'in'],
  frequency: ['MHz', 'kHz'],
  power: ['W', 'kW'],
  share: ['%', '/'],
  count: [],
};

/** Ranges the answers' schema allows. */
const shares: Partial<Record<AnswerKey, { least: number; most: number }>> = {
  feedFraction: { least: 0.02, most: 0.5 },
  transmitShare: { least: 0, most: 1 },
};

export function QuantityBody(props: BodyProps) {
  const { question, answers, draft, typed, onTyped, onAccept, onNext, onNotSure, accept } = props;
  const say = useSay();
  const units = useStores().settings.units.value;
  const expectedM = useExpectedM(question.id, draft);
  const kind = quantityKindOf(question.id) ?? 'count';
  const value = answers[question.id];

  const read = (text: string): Reading => {
    switch (kind) {
      case 'length':
        return readLengthField(text, {
          key: question.id,
          unit: units === 'metric' ? 'm' : 'ft',
          format: say.format,
          ...(expectedM === null ? {} : { expectedM }),
        });
      case 'power':
        return readPowerField(text);
      case 'share':
        return readShareField(text, shares[question.id] ?? { least: 0, most: 1 });
      default:
        return readCountField(text, { least: 0, most: 120 });
    }
  };
  const take = ({ value: taken }: Quantity): void => onAccept(answerOf(question.id, taken), question.id);
  const hint =
    kind === 'length'
      ? say(answering.typeHere, { unit: say(units === 'metric' ? answering.metres : answering.feet) })
      : undefined;
  return (
    <TypedField
      label={questionWords(question.id).short}
      text={typed(question.id)}
      settledText={typeof value === 'number' ? fieldText({ kind, value }, units, say.format) : undefined}
      {...(hint === undefined ? {} : { hint })}
      padUnits={padUnits[kind]}
      read={read}
      onText={(text) => onTyped(question.id, text)}
      onQuantity={take}
      onNext={onNext}
      onNotSure={onNotSure}
      accept={accept}
    />
  );
}

/** What one may expect of a length that goes with the wire, m: by the plan, and before there is one by half a wave of the lowest band. */
function useExpectedM(key: AnswerKey, draft: DraftAnswers): number | null {
  const { wireLengthM: _wire, spanM: _span, lengthChoice: _choice, ...others } = draft;
  const goesWithWire = key === 'wireLengthM' || key === 'spanM';
  const planned = usePlanned(goesWithWire ? provisionalAnswers(others) : null, key);
  if (!goesWithWire) return null;
  if (planned !== null) return radiatorM(planned.plan);
  const [lowest] = draft.bands ?? [];
  return lowest === undefined ? null : nthHalfWaveM(1, bandEdgesMHz(lowest, draft.region ?? 1).lowMHz, 1);
}
