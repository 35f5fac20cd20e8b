/**
 * Answers in, plan out: a pure function of answers, catalogue and, where a field solution is at hand, field facts. A plan from closed forms
 * needs no field; solved numbers replace its values one by one.
 */
import { antennaVoltages, greatestVoltage } from '../advice/antenna-voltage';
import { assumedOf } from '../advice/assumed-heights';
import { bandsOf } from '../advice/bands';
import { cautionsOf } from '../advice/cautions';
import { chainOf } from '../advice/chain/chain';
import { createDesigner, type Designer } from '../advice/chain/design-parts';
import { cutsOf } from '../advice/cuts';
import type { Dimensions } from '../advice/dimensions';
import { disputesOf } from '../advice/disputes';
import { exposureOf } from '../advice/exposure';
import { type Facts, factsOf, isNoSystem } from '../advice/facts';
import type { FieldFacts } from '../advice/field-facts';
import { fieldOf } from '../advice/field-facts';
import type { Exposure, Link, Warning } from '../advice/finding';
import { mechanicsOf } from '../advice/mechanics';
import { needsOf } from '../advice/needs';
import { notNeededOf } from '../advice/not-needed';
import { partsOf } from '../advice/parts';
import { knowing } from '../advice/solved-facts';
import { stepsOf } from '../advice/steps';
import { offeredBoxOf, verdictsOf } from '../advice/verdicts';
import { noSuchFeedPoint } from '../advice/warnings/feed-point';
import { frequencyRefusals } from '../advice/warnings/frequency';
import { warningsOf } from '../advice/warnings/warnings-of';
import { linkCount } from '../advice/wire-links';
import type { Answers } from '../design/answers';
import { systemName } from '../words/en/names';
import { noSummary, summary, whichNone, whichSummary } from '../words/en/summary';
import type { Data } from '../words/message';
import type { Candidate } from './candidate-points';
import { candidatesByRule } from './candidates';
import { designIn } from './field/designed-chokes';
import type { Plan } from './plan-schema';
import { createSpeaker, type Speaker } from './speaker';
import { stateChain } from './state-chain';
import { stateField } from './state-field';
import {
  stateAssumed,
  stateBands,
  stateCautions,
  stateCuts,
  stateDisputes,
  stateExposure,
  stateNotNeeded,
  stateOfferedBox,
  stateParts,
  stateSteps,
  stateVerdicts,
  stateWarnings,
} from './state-findings';
import { stateMechanics, stateVoltages } from './state-mechanics';

export interface PlanOptions {
  /** What a field solution of this very antenna says. */
  readonly field?: FieldFacts;
  /** The antennas to choose from, solved; without them they are judged by the rules alone. */
  readonly candidates?: readonly Candidate[];
  /** Remembers the searches of earlier plans; one is made when none is given. */
  readonly designer?: Designer;
}

/** Throws only on a fault of the rules; answers that contradict each other give a plan that holds a `stop`. */
export function makePlan(answers: Answers, options: PlanOptions = {}): Plan {
  const speaker = createSpeaker(answers.units ?? 'metric');
  const designer = options.designer ?? createDesigner();
  if (answers.radiator === undefined) return whichAntenna(answers, options.candidates, speaker, designer);
  const facts = factsOf(answers);
  if (isNoSystem(facts)) return { ...emptyPlan(), warnings: stateWarnings([noSuchFeedPoint(facts)], answers, speaker) };
  const refusals = frequencyRefusals(facts);
  if (refusals.length > 0) {
    return {
      ...emptyPlan(),
      system: facts.system,
      needs: needsOf(facts),
      warnings: stateWarnings(refusals, answers, speaker),
    };
  }
  return planOf(facts, speaker, options.field, designer);
}

function planOf(asked: Facts, speaker: Speaker, studied: FieldFacts | undefined, designer: Designer): Plan {
  const facts = knowing(asked, studied?.lengths);
  const solved = fieldOf(studied, facts.bands[0].band).feedPoint ?? null;
  const { dimensions, designs, field } = designIn(facts, studied, designer);
  const chain = chainOf(facts, dimensions, designs, solved);
  const cuts = cutsOf(facts, dimensions, chain);
  const known = field === undefined ? {} : { field };
  const bands = bandsOf(facts, dimensions, chain, known);
  const exposure = exposureOf(facts, dimensions, bands, field);
  const voltages = antennaVoltages(facts, dimensions, field);
  const cautions = cautionsOf(facts, dimensions, cuts, widestKeepOutM(exposure), greatestVoltage(facts, voltages));
  const warnings = warningsOf(facts, dimensions, chain, bands, { ...known, cautions, exposure });
  const mechanics = mechanicsOf(facts, dimensions, chain);
  const steps = stepsOf(facts, dimensions, chain, cuts, cautions, mechanics);
  return {
    schema: 1,
    system: facts.system,
    summary: summary(summaryData(facts, dimensions, chain), speaker.format),
    runM: dimensions.runM,
    riseM: dimensions.riseM,
    needs: needsOf(facts, solved),
    chain: stateChain(chain, speaker),
    notNeeded: stateNotNeeded(notNeededOf(facts, chain), speaker),
    verdicts: stateVerdicts(verdictsOf(facts, chain, dimensions), speaker),
    offeredBox: stateOfferedBox(offeredBoxOf(facts, chain), speaker),
    cuts: stateCuts(cuts, speaker),
    parts: stateParts(partsOf(facts, dimensions, chain, cuts, mechanics), speaker),
    bands: stateBands(bands, speaker),
    warnings: stateWarnings(warnings, facts.answers, speaker),
    cautions: stateCautions(cautions, speaker),
    exposure: stateExposure(exposure, speaker),
    mechanics: stateMechanics(mechanics, speaker),
    voltages: stateVoltages(voltages),
    steps: stateSteps(steps, speaker),
    assumed: stateAssumed(assumedOf(facts, dimensions), speaker),
    disputes: stateDisputes(disputesOf(facts, field), speaker),
    fieldStudy: field === undefined ? null : stateField(facts, field, bands, speaker),
  };
}

/** The band that keeps people farthest decides the cautions; a band without a result leaves it open. */
function widestKeepOutM(exposure: readonly Exposure[]): number | null {
  const distances = exposure.map(({ publicM }) => publicM);
  return distances.includes(null) ? null : Math.max(...distances.map((metres) => metres ?? 0));
}

function summaryData({ system, settled, lineKind }: Facts, dimensions: Dimensions, chain: readonly Link[]): Data {
  const transformer = chain.find(({ device, at }) => device === 'transformer' && at === 'feed-point');
  const chokes = chain.filter(({ device }) => device === 'choke');
  const antenna = chokes.find(({ at }) => at === 'feed-point' || at === 'along-line');
  return {
    system,
    radiatorM: dimensions.radiator.metres,
    links: linkCount(dimensions),
    percent: Math.round(settled.feedFraction * 100),
    line: settled.feedLine,
    ratio: transformer?.ratio ?? 0,
    transformerKind: transformer?.kind ?? '',
    tunerAtFeedPoint: chain.some(({ device, at }) => device === 'tuner' && at === 'feed-point'),
    ...(antenna?.distanceM == null ? {} : { feedChokeM: antenna.distanceM }),
    lineEndChoke: lineKind === 'open-wire' && chokes.some(({ distanceM }) => distanceM === settled.feedLineLengthM),
    entryChoke: lineKind === 'coax' && chokes.some(({ at }) => at === 'building-entry'),
    radioChoke: lineKind === 'coax' && chokes.some(({ at }) => at === 'radio'),
  };
}

function whichAntenna(
  answers: Answers,
  solved: readonly Candidate[] | undefined,
  { format }: Speaker,
  designer: Designer,
): Plan {
  const candidates = [...(solved ?? candidatesByRule(answers, (chosen) => makePlan(chosen, { designer }), format))];
  const [best] = candidates;
  const buildable = best !== undefined && best.score.stops === 0;
  return { ...emptyPlan(), summary: buildable ? whichSummary(systemName(best.system)) : whichNone, candidates };
}

const emptyPlan = (): Plan => ({
  schema: 1,
  system: null,
  summary: noSummary,
  runM: null,
  riseM: null,
  needs: { balance: false, transformation: null, isolation: false },
  chain: [],
  notNeeded: [],
  verdicts: [],
  offeredBox: null,
  cuts: [],
  parts: [],
  bands: [],
  warnings: [] satisfies Warning[],
  cautions: [],
  exposure: [],
  mechanics: null,
  voltages: [],
  steps: [],
  assumed: [],
  disputes: [],
  fieldStudy: null,
});
