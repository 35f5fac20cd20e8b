/**
 * Ways out that are a changed answer: which one, and its new value. A way out that is something to do outdoors, to measure or to buy has none,
 * nor has one that needs several answers or one that only the operator knows. Each changes one answer, so that it can be taken back at once.
 *
 * Watts are rounded down and lengths up, so that what is set keeps to what the way out asks.
 */
import { bandIds } from '../../catalog/band-ids';
import { isOpenWireLine } from '../../catalog/line-ids';
import type { WireId } from '../../catalog/wire-ids';
import { wires } from '../../catalog/wires';
import type { Answers, DraftAnswers } from '../../design/answers';
import { feedPositionIds } from '../../design/choices';
import type { Data, Said, Warning } from '../finding';

type Change = (data: Data, answers: Answers) => DraftAnswers | null;

/** To the millimetre: feet read as metres have more figures than anybody measures. */
const millimetres = (metres: unknown): number => Math.round(1000 * Number(metres)) / 1000;

/** A tenth of a metre upward; what is computed to lie on a step stays there. */
const upToTenth = (metres: number): number => Math.ceil(10 * metres - 1e-6) / 10;

const power = (watts: number): DraftAnswers | null => (watts >= 1 ? { powerW: watts } : null);
const lessPower: Change = ({ mostW }) => power(Number(mostW));

/** The last band stays: without any there is no plan. */
const without = (band: unknown, { bands }: Answers): DraftAnswers | null =>
  bands.length > 1 ? { bands: bands.filter((each) => each !== band) } : null;
const dropBand: Change = ({ band }, answers) => without(band, answers);

/** Bands stay in the order they are asked in. */
const addBand: Change = ({ middle }, { bands }) => ({
  bands: bandIds.filter((band) => bands.includes(band) || band === middle),
});

const focusAt =
  (key: 'readMHz' | 'middleMHz'): Change =>
  (data, { focusMHz }) => ({ focusMHz: { ...focusMHz, [String(data.band)]: Number(data[key]) } });

const lowToHigh: readonly string[] = bandIds;

const hasTunerForOpenWire = ({ shackEnd }: Answers): boolean =>
  shackEnd === 'wide-tuner' || shackEnd === 'balanced-tuner' || shackEnd === 'feed-point-tuner';

const openWire: Change = (_, answers) =>
  answers.fedAt === 'centre' && hasTunerForOpenWire(answers) ? { feedLine: 'window-line' } : null;

const heavierLine: Change = (_, { feedLine = 'rg-58' }) => {
  if (isOpenWireLine(feedLine) || feedLine === 'none' || feedLine === 'foam-15mm') return null;
  return { feedLine: feedLine === 'foam-10.3mm' || feedLine === 'rg-213' ? 'foam-15mm' : 'foam-10.3mm' };
};

/** Which height was typed in feet: the tallest of those that were told. */
const heightFromFeet: Change = ({ metres, readM }, answers) => {
  const keys = ['heightM', 'supportHeightM', 'endHeightM'] as const;
  const key = keys.find((each) => answers[each] === metres);
  return key === undefined ? null : { [key]: millimetres(readM) };
};

/** The wire's middle at the wanted height, where heights are told so that one of them moves it there (wire-height.ts). */
const raise: Change = ({ wantedM }, { radiator, fedAt, endHeightM }) => {
  if (radiator !== 'straight-wire' && radiator !== 'parallel-wires' && radiator !== 'folded-wire') return null;
  const wanted = Number(wantedM);
  if (endHeightM === undefined) return { heightM: upToTenth(wanted) };
  return { heightM: upToTenth(fedAt === 'end' ? 2 * wanted - endHeightM : (3 * wanted - endHeightM) / 2) };
};

const sixteenRadials: Change = ({ lengthM }, { returnPath, radialCount = 16 }) => {
  if (returnPath === 'ground-rod') return { returnPath: 'ground-radials' };
  return radialCount < 16 ? { radialCount: 16 } : { radialLengthM: upToTenth(Number(lengthM)) };
};

const radials =
  (path: 'ground-radials' | 'elevated-radials', count: number): Change =>
  (_, { returnPath, radialCount }) => {
    if (radialCount !== 0) return { returnPath: path };
    return returnPath === path ? { radialCount: count } : null;
  };

/** From the easiest to get to the strongest. */
const thickWires: readonly WireId[] = ['pvc-awg14', 'pe-awg14-copper-clad', 'copper-2.0mm-bare', 'copper-2.5mm-bare'];
const thickerWire: Change = ({ asked }) => {
  const wire = thickWires.find((id) => wires[id].awg <= Number(asked));
  return wire === undefined ? null : { wire };
};

const INDOORS_W = 50;

const counterpoise: Change = () => ({ returnPath: 'counterpoise-wire' });
const wideTuner: Change = () => ({ shackEnd: 'wide-tuner' });
const tunerAtFeedPoint: Change = () => ({ shackEnd: 'feed-point-tuner' });
const balancedTuner: Change = () => ({ shackEnd: 'balanced-tuner' });

/** By the code of the warning's wording and of the way out. */
const changes: Readonly<Record<string, Readonly<Record<string, Change>>>> = {
  'no-such-feed-point': {
    'feed-at': ({ fedAt }) => ({ fedAt: feedPositionIds.find((id) => id === fedAt) }),
  },
  'people-too-near': { 'less-power': lessPower },
  'power-above-licence': { 'less-power': lessPower },
  'frequency-unit': { 'it-is': focusAt('readMHz'), 'use-middle': focusAt('middleMHz') },
  'wire-unit': { 'is-feet': ({ readM }) => ({ wireLengthM: millimetres(readM) }) },
  'height-unit': { 'is-feet': heightFromFeet },
  'outside-band': { 'use-band': focusAt('middleMHz'), 'drop-band': dropBand },
  'national-permission': { 'use-band': focusAt('middleMHz') },
  'power-limit-60m': { 'less-power': lessPower, 'leave-60m': (_, answers) => without('60m', answers) },
  'does-not-fit': {
    'inverted-v': () => ({ radiator: 'inverted-v' }),
    'higher-band': ({ band }, { bands }) => ({
      bands: bands.filter((each) => lowToHigh.indexOf(each) >= lowToHigh.indexOf(String(band))),
    }),
  },
  'does-not-fit-height': {
    'feed-lower': ({ lowerM }) => ({ heightM: millimetres(lowerM) }),
    'flat-loop': () => ({ loopPlane: 'flat' }),
    'inverted-l': (_, { fedAt }) => (fedAt === 'base' ? { radiator: 'inverted-l' } : null),
  },
  'links-by-hand': { 'parallel-wires': () => ({ radiator: 'parallel-wires' }) },
  'open-piece-half-wave': { 'add-band': addBand },
  'low-height': { raise },
  'end-out-of-reach': {
    'hang-lower': ({ reachedM }) => ({ supportHeightM: millimetres(reachedM) }),
    'rope-on': ({ place, reachedM }) => (place === 'short-leg' ? null : { endHeightM: millimetres(reachedM) }),
    'feed-at': ({ place, feedM }, { fedAt }) =>
      fedAt === 'end' && place !== 'end' ? null : { heightM: millimetres(feedM) },
  },
  indoors: {
    'less-power': (_, { powerW = 100 }) => (powerW > INDOORS_W ? power(INDOORS_W) : null),
    'go-outside': () => ({ indoors: false }),
  },
  'thin-wire': { thicker: thickerWire },
  'few-radials': { sixteen: sixteenRadials, elevated: radials('elevated-radials', 4) },
  'rod-only': { sixteen: sixteenRadials, elevated: radials('elevated-radials', 4) },
  'one-elevated': { 'second-opposite': () => ({ radialCount: 2 }), 'four-even': () => ({ radialCount: 4 }) },
  'open-wire-on-one-wire': {
    'use-coax': () => ({ feedLine: 'rg-58' }),
    'feed-centre': (_, { radiator }) => (radiator === 'inverted-l' ? null : { fedAt: 'centre' }),
  },
  'coax-on-doublet': {
    'use-open-wire': openWire,
    'cut-resonant': () => ({ lengthChoice: 'resonant' }),
    'tuner-at-feed-point': tunerAtFeedPoint,
  },
  'return-path-needed': {
    'counterpoise-wire': counterpoise,
    'coax-as-counterpoise': () => ({ returnPath: 'coax-shield' }),
    'feed-with-coax': (_, { returnPath }) => (returnPath === 'none' ? null : { feedLine: 'rg-58' }),
    'ground-radials': radials('ground-radials', 16),
    'elevated-radials': radials('elevated-radials', 4),
  },
  'choke-without-return': {
    'choke-further': (_, { returnPath, onHand = [] }) =>
      returnPath !== 'none' || onHand.some(({ part }) => part === 'two-in-one') ? null : { returnPath: 'coax-shield' },
    'counterpoise-wire': counterpoise,
  },
  'open-wire-needs-choke': {
    'choke-and-tuner': wideTuner,
    'balanced-tuner': balancedTuner,
    'coax-and-resonant': (_, { lengthChoice = 'resonant' }) =>
      lengthChoice === 'resonant' ? { feedLine: 'rg-58' } : null,
  },
  'band-not-served': { 'drop-band': dropBand },
  'off-centre-null': {
    'other-fraction': ({ fraction }) => ({ feedFraction: Math.round(100 * Number(fraction)) / 100 }),
    'drop-band': dropBand,
  },
  'wire-near-half-wave': { 'drop-band': dropBand },
  'tuner-range': {
    'wide-tuner': wideTuner,
    'tuner-at-feed-point': tunerAtFeedPoint,
    'free-length': () => ({ lengthChoice: 'non-resonant' }),
    'easier-line': ({ lengthM }) => ({ feedLineLengthM: millimetres(lengthM) }),
    'drop-band': dropBand,
  },
  'tuner-zone': { 'wide-tuner': wideTuner, 'tuner-at-feed-point': tunerAtFeedPoint, 'drop-band': dropBand },
  'leg-plus-line-half-wave': { 'line-to': ({ lengthM }) => ({ feedLineLengthM: millimetres(lengthM) }) },
  'two-in-one-box': { 'less-power': lessPower },
  'built-in-4to1': { 'unbalanced-socket': wideTuner, 'balanced-tuner': balancedTuner },
  'choke-too-hot': { 'less-power': lessPower },
  'core-heat': { 'less-power': lessPower },
  'line-under-wire': { 're-route': () => ({ feedLineRoute: 'square' }) },
  'line-shorter-than-counterpoise': {
    'counterpoise-wire': counterpoise,
    'longer-line': ({ lengthM }) => ({ feedLineLengthM: upToTenth(Number(lengthM)) }),
  },
  'line-too-short': {
    'longer-line': ({ lengthM }) => ({ feedLineLengthM: upToTenth(Number(lengthM)) }),
    'lower-feed-point': ({ lengthM }, { endHeightM }) =>
      endHeightM === undefined ? { heightM: millimetres(lengthM) } : null,
  },
  'line-ends-before-entry': {
    'longer-line': ({ lengthM }) => ({ feedLineLengthM: upToTenth(Number(lengthM)) }),
    'nearer-entry': ({ lengthM }) => ({ entryDistanceM: millimetres(lengthM) }),
  },
  'line-loss': { 'heavier-line': heavierLine, 'open-wire': openWire },
  'over-voltage': { 'heavier-line': heavierLine, 'less-power': lessPower },
  'over-current': { 'heavier-line': heavierLine, 'less-power': lessPower },
  'over-power': { 'heavier-line': heavierLine, 'less-power': lessPower },
  'over-plug': { 'less-power': lessPower },
};

/** The one answer that this way out changes, with its new value; null when it is no change of an answer, or none that is known here. */
export function wayAnswer({ code }: Pick<Warning, 'code'>, way: Said, answers: Answers): DraftAnswers | null {
  const change = changes[code]?.[way.code]?.(way.data, answers) ?? null;
  const isOld =
    change !== null &&
    Object.entries(change).every(
      ([key, value]) => JSON.stringify(answers[key as keyof Answers]) === JSON.stringify(value),
    );
  return isOld ? null : change;
}
