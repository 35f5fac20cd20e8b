/**
 * The cautions of a plan, each before the step it belongs to: which lines apply, and the numbers they are filled with. One entry stands on
 * one gate, so none has more than three lines. Words: words/en/cautions, by line number.
 */
import type { SourceId } from '../catalog/sources';
import type { RuleSet } from '../design/choices';
import type { Dimensions } from './dimensions';
import type { Facts } from './facts';
import type { Before, Caution, Cut, Data } from './finding';
import { powerLineDistance } from './power-line';
import { highestPointM } from './site-run';
import { codeAwg } from './wire-code';
import { wireEndVoltage } from './wire-end-voltage';

/** Above this a support can concern an airfield nearby. Source: airspace rules. */
const AIRFIELD_FROM_M = 6;
const WALKWAY_M = 3;
const THUNDER_MINUTES = 30;
/** Electric field against nerve effects, V/m, under rule sets that have one for the public below 10 MHz. */
const NERVE_LIMIT_V_PER_M = 83;
const nerveLimitBelowMHz = 10;
const withNerveLimit: readonly RuleSet[] = ['icnirp-2020', 'ca-safety-code-6', 'au-rps-s1'];

interface Entry {
  readonly id: string;
  readonly before: Before;
  readonly lines: readonly number[];
  readonly source: SourceId;
  readonly applies?: (site: Site) => boolean;
}

interface Site {
  readonly facts: Facts;
  readonly highestM: number;
  readonly runM: number;
}

const outdoors = ({ facts }: Site): boolean => !facts.settled.indoors;
const portable = ({ facts }: Site): boolean => facts.settled.station === 'portable' && !facts.settled.indoors;
const hasReturnWires = ({ facts }: Site): boolean =>
  ['counterpoise-wire', 'ground-radials', 'elevated-radials'].includes(facts.settled.returnPath);
const hasNerveLimit = ({ facts }: Site): boolean =>
  withNerveLimit.includes(facts.settled.ruleSet) && facts.bands[0].focusMHz < nerveLimitBelowMHz;

const hasLinks = ({ facts }: Pick<Site, 'facts'>): boolean =>
  facts.system === 'linked-dipole' && facts.bands.length > 1;

/** The code's sizes are for wire that hangs between supports. */
const spans = (site: Site): boolean => outdoors(site) && site.runM > 0;

/** In the order they are read. What carries no `applies` stands in every plan. */
const entries: readonly Entry[] = [
  { id: 'power-lines', before: 'site', lines: [1, 3, 4], source: 'antenna-electrocutions', applies: outdoors },
  { id: 'fall-path', before: 'site', lines: [2], source: 'line-distance-rule', applies: outdoors },
  { id: 'power-lines', before: 'site', lines: [5, 6], source: 'work-near-lines', applies: outdoors },
  {
    id: 'airfield',
    before: 'site',
    lines: [7],
    source: 'airfield-rules',
    applies: (site) => outdoors(site) && site.highestM > AIRFIELD_FROM_M,
  },
  { id: 'rf-exposure', before: 'site', lines: [8], source: 'exposure-of-others', applies: outdoors },
  { id: 'not-alone', before: 'site', lines: [9, 10], source: 'lone-work', applies: outdoors },
  { id: 'local-codes', before: 'site', lines: [44], source: 'local-law', applies: outdoors },
  { id: 'climbing', before: 'up', lines: [11, 12, 13], source: 'work-at-height', applies: outdoors },
  { id: 'climbing', before: 'up', lines: [14, 15, 16], source: 'ladder-rules', applies: outdoors },
  { id: 'launching', before: 'launch', lines: [17, 18, 19], source: 'engineering-judgement', applies: outdoors },
  { id: 'launching', before: 'launch', lines: [20, 21], source: 'engineering-judgement', applies: outdoors },
  { id: 'wind-and-weather', before: 'raise', lines: [22, 23], source: 'mast-weather', applies: outdoors },
  { id: 'fall-path', before: 'raise', lines: [26], source: 'line-distance-rule', applies: outdoors },
  { id: 'mast-and-ropes', before: 'raise', lines: [24, 25, 27], source: 'mast-raising-notes', applies: outdoors },
  { id: 'mast-and-ropes', before: 'raise', lines: [28], source: 'antenna-wire-code', applies: spans },
  { id: 'trip-and-tread', before: 'raise', lines: [29, 30], source: 'mast-raising-notes', applies: outdoors },
  { id: 'wire-ends-voltage', before: 'transmit', lines: [34], source: 'antenna-wire-code' },
  {
    id: 'rf-exposure',
    before: 'transmit',
    lines: [31, 32],
    source: 'exposure-of-others',
    applies: (site) => !hasNerveLimit(site),
  },
  { id: 'rf-exposure', before: 'transmit', lines: [31, 32, 33], source: 'exposure-of-others', applies: hasNerveLimit },
  { id: 'rf-exposure', before: 'transmit', lines: [36, 37], source: 'exposure-of-others' },
  { id: 'trip-and-tread', before: 'transmit', lines: [35], source: 'exposure-of-others', applies: hasReturnWires },
  { id: 'fuel-and-implants', before: 'transmit', lines: [38, 39], source: 'implants-and-fuel', applies: portable },
  {
    id: 'fuel-and-implants',
    before: 'transmit',
    lines: [38],
    source: 'implants-and-fuel',
    applies: (site) => !portable(site),
  },
  {
    id: 'wire-ends-voltage',
    before: 'links',
    lines: [47, 48, 49],
    source: 'antenna-wire-code',
    applies: (site) => hasLinks(site) && outdoors(site),
  },
  {
    id: 'wire-ends-voltage',
    before: 'links',
    lines: [47],
    source: 'antenna-wire-code',
    applies: (site) => hasLinks(site) && !outdoors(site),
  },
  { id: 'power-lines', before: 'leave', lines: [40], source: 'antenna-electrocutions', applies: portable },
  { id: 'leaving', before: 'leave', lines: [41, 42], source: 'exposure-of-others', applies: portable },
  { id: 'lightning', before: 'storm', lines: [43], source: 'lightning-advice' },
  { id: 'local-codes', before: 'storm', lines: [44], source: 'local-law' },
  { id: 'power-lines', before: 'storm', lines: [45], source: 'fallen-line', applies: outdoors },
  { id: 'wire-ends-voltage', before: 'storm', lines: [46], source: 'navy-radio-course' },
];

/**
 * `keepOutM`: how far the exposure result keeps the public from every part of the antenna, on the band that asks most; null where no result is
 * known. Told nothing it is 0 in the data, and the sentence then sends the reader to the result. `endV`: the greatest volts on the antenna.
 */
export function cautionsOf(
  facts: Facts,
  dimensions: Dimensions,
  cuts: readonly Cut[],
  keepOutM: number | null,
  endV = wireEndVoltage(facts.settled.powerW, facts.answers.powerW !== undefined).volts,
): Caution[] {
  const site: Site = { facts, highestM: highestPointM(facts, dimensions), runM: dimensions.runM };
  const distance = powerLineDistance(facts, dimensions, cuts);
  const data = dataOf(facts, dimensions, keepOutM ?? 0, distance.metres, endV);
  return entries
    .filter(({ applies }) => applies === undefined || applies(site))
    .map(({ id, before, lines, source }) => ({
      id,
      before,
      lines,
      source,
      data,
      distanceM: lines.includes(2) ? distance.metres : null,
      distanceMWorking: lines.includes(2) ? distance.working : null,
    }));
}

function dataOf(facts: Facts, { runM }: Dimensions, keepOutM: number, lineDistanceM: number, endV: number): Data {
  const { powerW, mode, ruleSet } = facts.settled;
  return {
    lineDistanceM,
    keepOutM,
    awg: facts.wire.awg,
    runM,
    codeAwg: codeAwg(facts, runM),
    walkwayM: WALKWAY_M,
    bands: facts.bands.map(({ band }) => band).join(' '),
    powerW,
    mode: mode ?? 'not-told',
    ruleSet,
    nerveVPerM: NERVE_LIMIT_V_PER_M,
    endV,
    hot: hotPlaces(facts).join(' '),
    minutes: THUNDER_MINUTES,
  };
}

type HotPlace = 'ends' | 'links' | 'loop' | 'wire' | 'feed' | 'line';

/** Where the volts stand that burn: a loop has no ends, an open link has two, and only some wires are fed where they are high. */
function hotPlaces(facts: Facts): readonly HotPlace[] {
  const { radiator, fedAt, lengthChoice } = facts.settled;
  const isFedHot = fedAt === 'end' || (fedAt === 'base' && lengthChoice !== 'resonant');
  const places: readonly (readonly [HotPlace, boolean])[] = [
    [radiator === 'loop' ? 'loop' : radiator === 'other' ? 'wire' : 'ends', true],
    ['links', hasLinks({ facts })],
    ['feed', isFedHot],
    ['line', facts.lineKind === 'open-wire'],
  ];
  return places.flatMap(([place, isHot]) => (isHot ? [place] : []));
}
