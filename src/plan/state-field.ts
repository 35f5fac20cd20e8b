/** The field study in numbers and words, at the operator's power. */
import type { Facts } from '../advice/facts';
import type { BandField, FieldFacts } from '../advice/field-facts';
import type { BandFinding } from '../advice/finding';
import { fieldWords } from '../words/en/field';
import { type Data, render } from '../words/message';
import type { FieldStudy } from './field-schema';
import type { Speaker } from './speaker';
import { lengthSaid, stateLengths } from './state-lengths';
import { chokeSaid, receptionOf, shieldSaid, stateChokes, stateShield } from './state-shield';

type BandStudy = FieldStudy['bands'][number];
type Said = readonly [keyof typeof fieldWords, Data];

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
    chokes:
      field.chokes === undefined
        ? null
        : stateChokes(field.chokes, field, say(chokeSaid(facts, field.chokes, field, speaker))),
    confidence: say(confidenceSaid(facts, field)),
  };
}

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
    reception: receptionOf(noChoke, planned),
    receptionOwned: receptionOf(noChoke, owned),
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

function bandSaid(facts: Facts, band: string, solved: BandField, budget: Budget | null): readonly Said[] {
  const { powerW } = facts.settled;
  const said: Said[] = [...shieldSaid(facts, band, solved)];
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
