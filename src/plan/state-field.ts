/** The field study in numbers and words, at the operator's power. */
import type { Facts } from '../advice/facts';
import type { BandField, ChokeChoice, ChokeSetResult, FieldFacts, ShieldState } from '../advice/field-facts';
import { roughly } from '../advice/field-figures';
import type { BandFinding } from '../advice/finding';
import { chokeSetText, fieldWords } from '../words/en/field';
import { type Data, render } from '../words/message';
import { GOAL_MA, TEN_MA } from './field/choke-search';
import type { FieldStudy } from './field-schema';
import type { Speaker } from './speaker';
import { lengthSaid, stateLengths } from './state-lengths';

type BandStudy = FieldStudy['bands'][number];
type Said = readonly [keyof typeof fieldWords, Data];

/** Heat of a choke worth a sentence, W. */
const TELLING_W = 1;

export function stateField(
  facts: Facts,
  field: FieldFacts,
  rows: readonly BandFinding[],
  speaker: Speaker,
): FieldStudy {
  const say = (list: readonly Said[]): string[] =>
    list.map(([code, data]) => render(fieldWords[code], data, speaker.format));
  return {
    bands: facts.bands.flatMap(({ band }): BandStudy[] => {
      const solved = field.bands[band];
      if (solved === undefined) return [];
      const budget = budgetOf(
        solved,
        rows.find((row) => row.band === band),
      );
      return [stateBand(band, solved, budget, say(bandSaid(facts, band, solved, budget)))];
    }),
    lengths: field.lengths === undefined ? null : stateLengths(field.lengths, say(lengthSaid(facts, field.lengths))),
    chokes: field.chokes === undefined ? null : stateChokes(field.chokes, say(chokeSaid(field.chokes, speaker))),
    confidence: say(confidenceSaid(facts, field)),
  };
}

const stateShield = (state: ShieldState): NonNullable<BandStudy['planned']> => ({
  entryMa: state.entryMa,
  entryDb: state.entryDb,
  radioMa: state.radioMa,
  radioDb: state.radioDb,
  chokes: [...state.chokes],
});

/** Where 100 W from the radio go. A loss nobody knows yet counts as none. */
interface Budget {
  readonly lineW: number;
  readonly devicesW: number;
  readonly nearW: number;
  readonly radiatedW: number;
}

function budgetOf({ efficiency }: BandField, row: BandFinding | undefined): Budget | null {
  if (efficiency === undefined || row === undefined || row.lineLossDb === null) return null;
  const afterLineW = 100 * 10 ** (-row.lineLossDb / 10);
  const atFeedW = afterLineW * 10 ** (-(row.deviceLossDb ?? 0) / 10);
  const radiatedW = atFeedW * efficiency;
  return { lineW: 100 - afterLineW, devicesW: afterLineW - atFeedW, nearW: atFeedW - radiatedW, radiatedW };
}

function stateBand(band: BandStudy['band'], solved: BandField, budget: Budget | null, text: string[]): BandStudy {
  const { noChoke, planned, owned } = solved;
  return {
    band,
    feedCurrentA: solved.feedCurrentA ?? null,
    noChoke: noChoke === undefined ? null : stateShield(noChoke),
    planned: planned === undefined ? null : stateShield(planned),
    owned: owned == null ? null : { ...stateShield(owned), places: [...owned.places] },
    efficiency: solved.efficiency ?? null,
    gainDbi: solved.gainDbi ?? null,
    takeOffDeg: solved.takeOffDeg ?? null,
    radiatedW: budget?.radiatedW ?? null,
    elevationShares: solved.elevationShares === undefined ? null : [...solved.elevationShares],
    elevation: solved.elevation === undefined ? null : [...solved.elevation],
    azimuth: solved.azimuth === undefined ? null : [...solved.azimuth],
    errorEstimate: solved.errorEstimate ?? null,
    text,
  };
}

function bandSaid({ settled }: Facts, band: string, solved: BandField, budget: Budget | null): readonly Said[] {
  const { powerW } = settled;
  const scaled = (ma: number): number => roughly(ma * Math.sqrt(powerW / 100));
  const { noChoke, planned, owned } = solved;
  const said: Said[] = [];
  if (noChoke !== undefined && planned !== undefined) {
    said.push([
      'shield-currents',
      {
        band,
        powerW,
        noneMa: scaled(noChoke.entryMa),
        plannedMa: scaled(planned.entryMa),
        noneRadioMa: scaled(noChoke.radioMa),
        plannedRadioMa: scaled(planned.radioMa),
        ...(owned == null ? {} : { ownedMa: scaled(owned.entryMa) }),
      },
    ]);
    const lessDb = Math.round(20 * Math.log10(noChoke.radioMa / planned.radioMa));
    if (planned.radioMa > 0 && lessDb >= 3) said.push(['reception', { band, lessDb }]);
    const hottest = [...planned.chokes].sort((a, b) => b.heatW - a.heatW)[0];
    if (hottest !== undefined && (hottest.heatW * powerW) / 100 >= TELLING_W)
      said.push([
        'choke-duty',
        {
          band,
          distanceM: hottest.distanceM,
          voltageV: hottest.voltageV * Math.sqrt(powerW / 100),
          heatW: (hottest.heatW * powerW) / 100,
        },
      ]);
  }
  if (budget !== null) {
    const share = powerW / 100;
    const { lineW, devicesW, nearW, radiatedW } = budget;
    const watts = { lineW: lineW * share, devicesW: devicesW * share, nearW: nearW * share };
    said.push(['where-power-goes', { band, powerW, ...watts, radiatedW: radiatedW * share }]);
  }
  return [...said, ...directionSaid(band, solved)];
}

function directionSaid(band: string, { takeOffDeg, elevationShares, azimuth }: BandField): readonly Said[] {
  if (takeOffDeg === undefined || elevationShares === undefined || azimuth === undefined) return [];
  const [low, , , high] = elevationShares;
  return [
    ['where-it-sends', { band, takeOffDeg, side: sideOf(azimuth), lowPercent: 100 * low, highPercent: 100 * high }],
  ];
}

/** Less than this between the strongest and the weakest azimuth is no direction. */
const ROUND_DB = 3;

/** Which way, by the azimuth that is strongest; 0° along the wire away from the feed point or its long side. */
function sideOf(azimuth: NonNullable<BandField['azimuth']>): string {
  const dbAt = (deg: number): number =>
    azimuth.reduce((best, point) => (Math.abs(point.deg - deg) < Math.abs(best.deg - deg) ? point : best)).db;
  const weakest = Math.min(...azimuth.map(({ db }) => db));
  if (weakest > -ROUND_DB) return 'round';
  const [far, near] = [dbAt(0), dbAt(180)];
  const across = Math.max(dbAt(90), dbAt(270));
  const alongBest = Math.max(far, near);
  if (Math.max(across, alongBest) < -ROUND_DB) return 'slanting';
  if (across > alongBest + 1) return 'broadside';
  if (far > near + ROUND_DB) return 'far';
  return near > far + ROUND_DB ? 'near' : 'along';
}

const stateSet = (set: ChokeSetResult): NonNullable<FieldStudy['chokes']>['house'] => ({
  ...set,
  chokes: [...set.chokes],
});

const differenceDb = ({ house, chosen }: ChokeChoice): number => 20 * Math.log10(chosen.worstMa / house.worstMa);

const stateChokes = (choice: ChokeChoice, text: string[]): FieldStudy['chokes'] => ({
  goalMa: GOAL_MA,
  goalMet: choice.goalMet,
  house: stateSet(choice.house),
  chosen: stateSet(choice.chosen),
  tenMa: choice.tenMa === null ? null : stateSet(choice.tenMa),
  differenceDb: differenceDb(choice),
  text,
});

function chokeSaid(choice: ChokeChoice, { format }: Speaker): readonly Said[] {
  const { house, chosen, tenMa, goalMet } = choice;
  const data = {
    goalMa: GOAL_MA,
    houseMa: roughly(house.worstMa),
    houseBand: house.worstBand,
    chosenMa: roughly(chosen.worstMa),
    chosenBand: chosen.worstBand,
    gainDb: -differenceDb(choice),
  };
  const outcome: Said = [
    !goalMet ? 'choke-goal-missed' : chosen === house ? 'choke-house-holds' : 'choke-changed',
    data,
  ];
  if (chosen.worstMa <= TEN_MA) return [outcome, ['ten-already', {}]];
  if (tenMa === null) return [outcome, ['ten-impossible', {}]];
  const set = chokeSetText(tenMa.chokes, format);
  return [outcome, ['ten-possible', { chokes: tenMa.chokes.length, tenMa: roughly(tenMa.worstMa), set }]];
}

/** Heights and coax lengths over which the confidence was found. */
const CHECKED = { heightM: [7, 12], coaxM: [15, 35] } as const;

function confidenceSaid({ settled, lineKind }: Facts, { bands }: FieldFacts): readonly Said[] {
  const errors = Object.values(bands).flatMap(({ errorEstimate }) =>
    errorEstimate === undefined ? [] : [errorEstimate],
  );
  const solver: readonly Said[] =
    errors.length === 0 ? [] : [['confidence-solver', { percent: 100 * Math.max(...errors) }]];
  const doubts = new Set(Object.values(bands).flatMap((band) => band.doubts ?? []));
  const doubted = [...doubts].map((code): Said => [code, {}]);
  if (lineKind !== 'coax') return [...solver, ...doubted];
  const within = (value: number, [low, high]: readonly [number, number]): boolean => value >= low && value <= high;
  const isChecked =
    settled.ground === 'average' &&
    within(settled.heightM, CHECKED.heightM) &&
    within(settled.feedLineLengthM, CHECKED.coaxM) &&
    settled.runHeightM <= 0.3;
  return [
    ['confidence-two', {}],
    ['confidence-one', {}],
    ['confidence-heat', {}],
    ...solver,
    ...doubted,
    ...(isChecked ? [] : ([['confidence-range', {}]] as const)),
  ];
}
