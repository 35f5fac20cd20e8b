/** Where the numbers of a length come from, and the few lengths that are no rule of physics. */
import type { Dimension, WorkingInput } from '../base/working';
import type { SourceId } from '../catalog/sources';
import type { AnswerKey } from '../design/answers';
import type { CutFor, Known } from '../physics/lengths';
import type { BandFacts, Facts } from './facts';

export type Inputs = Readonly<Record<string, WorkingInput>>;

export const dimension = (metres: number, formula: string, inputs: Inputs, source: SourceId): Dimension => ({
  metres,
  working: { formula, inputs, result: { value: metres, unit: 'm' }, source },
});

export const metresOf = (value: number, from: WorkingInput['from']): WorkingInput => ({ value, unit: 'm', from });

/** An answer, or what was assumed in its place. */
export const answered = (facts: Facts, key: AnswerKey, value: number): Known => ({
  value,
  from: facts.answers[key] === undefined ? 'assumed' : 'answer',
});

/** The frequency a band is cut for. */
export const focusOf = (facts: Facts, { band, focusMHz }: BandFacts): Known => ({
  value: focusMHz,
  from: facts.answers.focusMHz?.[band] === undefined ? 'assumed' : 'answer',
});

/** The wire factor kw: 1 for bare wire, below 1 with insulation. */
export const wireFactorOf = (facts: Facts): Known => ({ value: facts.wire.velocityFactor.value, from: 'catalogue' });

export const cutFor = (facts: Facts, at: BandFacts): CutFor => ({
  frequencyMHz: focusOf(facts, at),
  wireFactor: wireFactorOf(facts),
});

/** A rule's length as the field solution of this very site corrects it: the rule stays to be seen, `site` is what was solved. */
export const onSite = (rule: Dimension, solvedM: number): Dimension =>
  dimension(
    solvedM,
    `${rule.working.formula} * site`,
    { ...rule.working.inputs, site: { value: solvedM / rule.metres, unit: '', from: 'solved' } },
    'this-antenna-solved',
  );

export const asSolved = (metres: number): Dimension =>
  dimension(metres, 'solved', { solved: metresOf(metres, 'solved') }, 'this-antenna-solved');

/** A length the operator told us. */
export const asTold = (metres: number): Dimension =>
  dimension(metres, 'told', { told: metresOf(metres, 'answer') }, 'house-practice');
