/**
 * The outside of the coax in numbers and words, at the operator's power: currents, chokes, and the same backwards.
 *
 * Reciprocity: what a set of chokes takes off the current at a point while 100 W are sent, it takes off the noise that comes in at that point.
 * Noise from the house comes in where the coax ends, or at the entry where it is open there; noise outdoors at the foot of the drop.
 */
import type { Facts } from '../advice/facts';
import type { BandField, ChokeChoice, ChokeSetResult, FieldFacts, ShieldState } from '../advice/field-facts';
import { roughly } from '../advice/field-figures';
import { needsOf } from '../advice/needs';
import { chokeSetText, type fieldWords } from '../words/en/field';
import type { Data } from '../words/message';
import { GOAL_MA, TEN_MA } from './field/choke-search';
import type { FieldStudy } from './field-schema';
import type { Speaker } from './speaker';

type BandStudy = FieldStudy['bands'][number];
type Said = readonly [keyof typeof fieldWords, Data];

/** Heat of a choke worth a sentence, W. */
const TELLING_W = 1;

export const stateShield = (state: ShieldState): NonNullable<BandStudy['planned']> => ({
  entryMa: state.entryMa,
  entryDb: state.entryDb,
  radioMa: state.radioMa,
  radioDb: state.radioDb,
  footMa: state.footMa ?? null,
  chokes: [...state.chokes],
});

/** How much weaker noise reaches the receiver with these chokes than with none, dB. */
export function receptionOf(
  none: ShieldState | undefined,
  state: ShieldState | null | undefined,
): BandStudy['reception'] {
  if (none === undefined || state == null) return null;
  const weaker = (before: number, after: number): number => 20 * Math.log10(before / after);
  const atRadio = none.radioMa > 0 && state.radioMa > 0;
  return {
    fromHouseDb: atRadio ? weaker(none.radioMa, state.radioMa) : weaker(none.entryMa, state.entryMa),
    outdoorsDb: none.footMa === undefined || state.footMa === undefined ? null : weaker(none.footMa, state.footMa),
  };
}

export function shieldSaid(facts: Facts, band: string, solved: BandField): readonly Said[] {
  const { powerW } = facts.settled;
  const scaled = (ma: number): number => roughly(ma * Math.sqrt(powerW / 100));
  const { noChoke, planned, owned } = solved;
  if (noChoke === undefined || planned === undefined) return [];
  const hasRadio = noChoke.radioDb !== null;
  const currents: Data = {
    band,
    powerW,
    hasRadio,
    noneMa: scaled(noChoke.entryMa),
    plannedMa: scaled(planned.entryMa),
    noneRadioMa: scaled(noChoke.radioMa),
    plannedRadioMa: scaled(planned.radioMa),
    ...(owned == null ? {} : { ownedMa: scaled(owned.entryMa), ownedRadioMa: scaled(owned.radioMa) }),
  };
  const reception = receptionOf(noChoke, planned);
  const hottest = [...planned.chokes].sort((a, b) => b.heatW - a.heatW)[0];
  return [
    ['shield-currents', currents],
    ...(planned.chokes.length === 0 || reception === null ? [] : [receptionSaid(facts, band, reception)]),
    ...(hottest === undefined || (hottest.heatW * powerW) / 100 < TELLING_W ? [] : [dutySaid(band, hottest, facts)]),
  ];
}

const receptionSaid = (
  { settled }: Facts,
  band: string,
  { fromHouseDb, outdoorsDb }: NonNullable<BandStudy['reception']>,
): Said => [
  'reception',
  {
    band,
    isPortable: settled.station === 'portable',
    houseDb: Math.round(fromHouseDb),
    ...(outdoorsDb === null ? {} : { outdoorsDb: Math.round(outdoorsDb) }),
  },
];

function dutySaid(band: string, { distanceM, voltageV, heatW }: ShieldState['chokes'][number], facts: Facts): Said {
  const share = facts.settled.powerW / 100;
  const duty = { voltageV: voltageV * Math.sqrt(share), heatW: heatW * share };
  return ['choke-duty', { band, distanceM, ...duty, hasBox: hasBox(facts) }];
}

const stateSet = (set: ChokeSetResult): NonNullable<FieldStudy['chokes']>['house'] => ({
  ...set,
  chokes: [...set.chokes],
});

const differenceDb = ({ house, chosen }: ChokeChoice): number => 20 * Math.log10(chosen.worstMa / house.worstMa);

/** A transformer hangs at the feed point: distances along the coax count from its box. */
const hasBox = (facts: Facts): boolean =>
  facts.settled.shackEnd !== 'feed-point-tuner' && needsOf(facts).transformation !== null;

export const stateChokes = (
  choice: ChokeChoice,
  { ownedUntried = 0 }: FieldFacts,
  text: string[],
): FieldStudy['chokes'] => ({
  goalMa: GOAL_MA,
  goalMet: choice.goalMet,
  house: stateSet(choice.house),
  chosen: stateSet(choice.chosen),
  tenMa: choice.tenMa === null ? null : stateSet(choice.tenMa),
  differenceDb: differenceDb(choice),
  built: choice.built ?? null,
  ownedUntried,
  text,
});

export function chokeSaid(
  facts: Facts,
  choice: ChokeChoice,
  { ownedUntried = 0 }: FieldFacts,
  { format }: Speaker,
): readonly Said[] {
  const { house, chosen, goalMet, built } = choice;
  const outcome = !goalMet ? 'choke-goal-missed' : chosen === house ? 'choke-house-holds' : 'choke-changed';
  const data = {
    goalMa: GOAL_MA,
    houseMa: roughly(house.worstMa),
    houseBand: house.worstBand,
    chosenMa: roughly(chosen.worstMa),
    chosenBand: chosen.worstBand,
    gainDb: -differenceDb(choice),
  };
  return [
    [outcome, data],
    ...(built === undefined ? [] : [builtSaid(goalMet, built)]),
    ...tenSaid(facts, choice, format),
    ...(ownedUntried === 0 ? [] : [['owned-untried', { count: ownedUntried }] as const]),
  ];
}

/** What wound chokes come to; a goal that the ohms alone miss needs no second telling. */
function builtSaid(goalMet: boolean, built: NonNullable<ChokeChoice['built']>): Said {
  const { worstMa, worstBand, nominalMa, beforeMa } = built;
  const data = { goalMa: GOAL_MA, worstMa: roughly(worstMa), band: worstBand, nominalMa: roughly(nominalMa) };
  if (beforeMa !== null) return ['choke-built-raised', { ...data, beforeMa: roughly(beforeMa) }];
  return [goalMet && !built.goalMet ? 'choke-built-misses' : 'choke-built-holds', data];
}

/** Whether 10 mA are there, or with which chokes; nothing where the chosen ohms give them and only the rings' tolerance does not. */
function tenSaid(facts: Facts, { chosen, tenMa, built }: ChokeChoice, format: Speaker['format']): readonly Said[] {
  if ((built?.worstMa ?? chosen.worstMa) <= TEN_MA) return [['ten-already', {}]];
  if (tenMa === null) return [['ten-impossible', {}]];
  if (tenMa === chosen) return [];
  const set = chokeSetText(tenMa.chokes, hasBox(facts), format);
  return [['ten-possible', { chokes: tenMa.chokes.length, tenMa: roughly(tenMa.worstMa), set }]];
}
