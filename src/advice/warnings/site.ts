/** Room, height and wire: what the place does to the antenna. */
import type { System } from '../../design/choices';
import { shortestDoubletM } from '../doublet';
import { LEAST_FACTOR, mechanicsOf } from '../mechanics';
import { codeAwg } from '../wire-code';
import { heightOf } from '../wire-height';
import { listed, type Rule, type Way, warn } from './warning';

/** Rounding of what people type: 1 cm. */
const SLACK_M = 0.01;
/** Heights of supports are estimates. */
const TOLD_ROUGHLY_M = 0.5;
/** A third of each leg may hang or turn at its end. Common practice. */
const HANGING = 1 / 3;

export const doesNotFit: Rule = ({ facts, dimensions }) => {
  const { spanM, radiator } = facts.settled;
  const { runM } = dimensions;
  if (spanM === null || runM <= spanM + SLACK_M) return [];
  const data = { lowestBand: facts.bands[0].band, neededM: runM, spanM, shortM: runM - spanM };
  const hangs = runM * (1 - HANGING) <= spanM && radiator !== 'loop';
  const [lowest] = facts.bands;
  const fits = facts.bands.find(({ focusMHz }) => (runM * lowest.focusMHz) / focusMHz <= spanM)?.band;
  const shortestM = shortestDoubletM(facts);
  const shorter: Way =
    facts.system === 'open-wire-doublet' && shortestM <= spanM ? ['cut-doublet', { shortestM }] : 'shorter-with-tuner';
  return [
    warn('does-not-fit', data, [
      ...(hangs ? ([['bend-ends', { hangM: (runM - spanM) / 2 }]] as const) : []),
      ...(radiator === 'straight-wire' ? ['inverted-v'] : []),
      shorter,
      ...(fits === undefined ? [] : ([['higher-band', { band: fits }]] as const)),
      ['longer-span', { neededM: runM }],
    ]),
  ];
};

/** Above a raised hand: no wire of a loop hangs lower. */
const OUT_OF_REACH_M = 2.5;

/** An upright wire or loop that is taller than the support that was told. */
export const tooTall: Rule = ({ facts, dimensions }) => {
  const { radiator, loopPlane, heightM, supportHeightM } = facts.settled;
  const isLoop = radiator === 'loop' && loopPlane === 'upright';
  if ((!isLoop && radiator !== 'vertical') || facts.answers.supportHeightM === undefined) return [];
  const topM = facts.settled.fedAt === 'centre' ? dimensions.riseM : heightM + dimensions.riseM;
  if (topM <= supportHeightM + TOLD_ROUGHLY_M) return [];
  const lowerM = supportHeightM - dimensions.riseM;
  const data = { lowestBand: facts.bands[0].band, topM, supportHeightM, shortM: topM - supportHeightM, isLoop };
  return [
    warn(
      'does-not-fit',
      data,
      [
        ...(lowerM >= (isLoop ? OUT_OF_REACH_M : 0) ? ([['feed-lower', { lowerM }]] as const) : []),
        isLoop ? 'flat-loop' : 'inverted-l',
        ['higher-support', { topM }],
      ],
      'does-not-fit-height',
    ),
  ];
};

const LOW_WAVES = 0.1;
const upright: readonly System[] = ['quarter-wave-vertical', 'non-resonant-vertical', 'inverted-l'];

export const lowHeight: Rule = ({ facts, dimensions }) => {
  if (facts.settled.radiator === 'vertical' || upright.includes(facts.system)) return [];
  const heightM = heightOf(facts, dimensions.radiator.metres);
  const low = facts.bands.filter(({ wavelengthM }) => heightM < LOW_WAVES * wavelengthM);
  const [lowest] = low;
  if (lowest === undefined) return [];
  const wantedM = LOW_WAVES * lowest.wavelengthM;
  const data = {
    band: lowest.band,
    bands: listed(low.map(({ band }) => band)),
    heightM,
    waves: heightM / lowest.wavelengthM,
    wantedM,
  };
  return [warn('low-height', data, [['raise', { wantedM }], 'accept-near', 'use-vertical'])];
};

export const indoors: Rule = ({ facts }) => {
  const { powerW } = facts.settled;
  return facts.settled.indoors ? [warn('indoors', { powerW }, ['less-power', 'keep-from-wiring', 'go-outside'])] : [];
};

export const wiresInteract: Rule = ({ facts, dimensions }) => {
  if (facts.system !== 'parallel-dipoles') return [];
  const legs = dimensions.pieces.filter(({ piece }) => piece === 'leg');
  const pairs = legs.length;
  if (pairs < 2) return [];
  const longestM = Math.max(...legs.map(({ length }) => length.metres));
  return [warn('wires-interact', { pairs, longestM }, ['longest-first', 'spread-ends'])];
};

/** Thinner than the code asks of an antenna that stays up; and what wind and ice would do to it on its hardest span. */
export const thinWire: Rule = ({ facts, dimensions, chain }) => {
  const { wire } = facts;
  const spanM = Math.max(dimensions.runM, 0);
  if (facts.settled.indoors || spanM === 0) return [];
  const asked = codeAwg(facts, spanM);
  if (wire.awg <= asked) return [];
  const mechanics = mechanicsOf(facts, dimensions, chain);
  const [hardest] = (mechanics?.spans ?? []).toSorted((a, b) => a.ice.factor - b.ice.factor);
  const pulls =
    hardest === undefined
      ? { known: false }
      : {
          known: true,
          windN: hardest.wind.newton,
          iceN: hardest.ice.newton,
          leastFactor: Math.min(hardest.wind.factor, hardest.ice.factor),
          wantedFactor: LEAST_FACTOR,
        };
  const data = { wire: wire.id, awg: wire.awg, asked, spanM, breakN: mechanics?.breakN ?? wire.breakN.value, ...pulls };
  const stays: readonly Way[] = [['thicker', { asked }], 'rope-carries', 'before-storm'];
  return [warn('thin-wire', data, facts.settled.station === 'portable' ? stays.toReversed() : stays)];
};
