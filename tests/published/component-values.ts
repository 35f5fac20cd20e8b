/** What the models answer to each check of fixtures/published/components.json, by its id, in its order and unit. */
import { type Complex, complex, magnitude } from '../../src/base/complex';
import { C0 } from '../../src/base/constants';
import { beads } from '../../src/catalog/beads';
import type { CoreId } from '../../src/catalog/core-ids';
import { coreOf } from '../../src/catalog/cores';
import { ferrites, muAt } from '../../src/catalog/ferrites';
import type { CoaxId } from '../../src/catalog/line-ids';
import {
  type AirCoil,
  closeWound,
  coilCapacitanceF,
  coilImpedance,
  coilInductanceH,
  coilTurns,
  resonanceHz,
} from '../../src/physics/air-coil';
import { beadsBand, chokeImpedance } from '../../src/physics/choke';
import {
  attenuationDbPer100M,
  gamma,
  impedanceOfGamma,
  inputImpedance,
  type LineData,
  lineConstants,
  lineLoss,
  swr,
} from '../../src/physics/line';
import { longLineLossDb, returnLossDb, swrAtInput } from '../../src/physics/mismatch';
import { openWireLine } from '../../src/physics/open-wire-line';
import { alNanohenry, toroidTurns, windingImpedance } from '../../src/physics/toroid';
import { impedanceRatio, throughIdeal, transformerState, turnsRatioFor } from '../../src/physics/transformer';
import { coaxToWind } from '../../src/physics/wound-conductor';

const HZ = 10e6;
const INCH_M = 0.0254;
const FEET_100_M = 30.48;

const lossless = (z0Ohm: number, velocityFactor = 1): LineData => ({ z0Ohm, velocityFactor, k1: 0, k2: 0, clad: null });
const through = (z0Ohm: number, wavelengths: number, load: Complex): Complex =>
  inputImpedance(lineConstants(lossless(z0Ohm), HZ), (wavelengths * C0) / HZ, load);
const parts = ({ re, im }: Complex): number[] => [re, im];
const angleDeg = ({ re, im }: Complex): number => (Math.atan2(im, re) * 180) / Math.PI;
const polar = (size: number, deg: number): Complex =>
  complex(size * Math.cos((deg * Math.PI) / 180), size * Math.sin((deg * Math.PI) / 180));

/** The book's phase velocity is 0.7 · 3e8 m/s; over 3.35 wavelengths the rounding of c shows. */
const ulabyLine = lineConstants(lossless(50, (0.7 * 3e8) / C0), 1050e6);
const pozarGamma = gamma(complex(40, 70), complex(100));
const ulabyGamma = gamma(complex(100, 50), complex(50));

/** 15 ft with 0.055 dB matched loss, all of it in the conductors. */
const shortLine: LineData = { ...lossless(50, 0.66), k1: ((0.055 / 4.572) * 100) / Math.sqrt(3.8) };
const airLine = openWireLine({
  spacingM: 0.1524,
  diameterM: 0.002053,
  conductivitySPerM: 5.8e7,
  velocityFactor: 1,
});
const airLineLoss = (mhz: number): number => (attenuationDbPer100M(airLine, mhz * 1e6) * FEET_100_M) / 100;

const oneTurn = (hz: number): Complex => windingImpedance(coreOf('ft240-43'), 1, 1, muAt('43', hz), hz);
const twoBeads = (mhz: number): number[] => {
  const exact = { below: 0, above: 0 };
  return [magnitude(beadsBand(beads['bead-13mm'].size.value, 2, muAt('31', mhz * 1e6), mhz * 1e6, exact).nominal)];
};
const al = (id: CoreId): number => alNanohenry(coreOf(id), ferrites[coreOf(id).mix].muInitial.value);
const alCores = ['ft50', 'ft82', 'ft114', 'ft140', 'ft240'] as const;
const alMixes = ['43', '61', '77'] as const;

const coil = (turns: number, formInch: number): AirCoil => closeWound(turns, formInch * INCH_M, 0.0103);
const coilAt = (turns: number, formInch: number, mhz: number): number[] => [
  magnitude(coilImpedance(coil(turns, formInch), mhz * 1e6)),
];
const coilResonanceMHz = (one: AirCoil): number => resonanceHz(coilInductanceH(one), coilCapacitanceF(one)) / 1e6;

const choke = (core: CoreId, turns: number, cable: CoaxId, hz: number): number =>
  magnitude(
    chokeImpedance(
      { ring: coreOf(core), count: 1, turns, conductor: coaxToWind(cable) },
      muAt(coreOf(core).mix, hz),
      hz,
    ),
  );

/** 2:14 turns between 50 and 2450 Ω at 3.6 MHz; nothing but the core. */
const coreLoss = transformerState(
  {
    ring: coreOf('ft240-43'),
    count: 1,
    primaryTurns: 2,
    secondaryTurns: 14,
    leakageH: 0,
    strayF: 0,
    compensationF: 0,
    wire: { diameterM: 0.001, conductivitySPerM: 58e6 },
    copperLengthM: 0,
  },
  muAt('43', 3.6e6),
  3.6e6,
  complex(2450),
);

export const componentValues: Readonly<Record<string, () => readonly number[]>> = {
  'line-zin-01': () => parts(through(100, 0.3, complex(40, 70))),
  'line-zin-02': () => [
    magnitude(pozarGamma),
    angleDeg(pozarGamma),
    swr(complex(40, 70), 100),
    returnLossDb(magnitude(pozarGamma)),
  ],
  'line-zin-03': () => parts(inputImpedance(ulabyLine, 0.67, complex(100, 50))),
  'line-zin-04': () => [magnitude(ulabyGamma), angleDeg(ulabyGamma)],
  'line-zin-06': () => [through(70.71, 0.25, complex(100)).re],
  'line-zin-09': () => [Math.sign(through(50, 0.125, complex(0)).im)],
  'line-zin-11': () => [
    magnitude(through(50, 0.25, complex(1e9))),
    magnitude(through(50, 0.5, complex(0))),
    1 / magnitude(through(50, 0.25, complex(0))),
  ],
  'touchstone-01': () => parts(impedanceOfGamma(polar(0.894, -12.136), 50)),
  'touchstone-04': () => parts(impedanceOfGamma(complex(0.3926, -0.1211), 50)),
  'swr-loss-02': () => [1.1925, longLineLossDb(4, 1.1925), longLineLossDb(4, 1.1925) - 1.1925],
  'swr-loss-10': () => [swr(through(50, 0.37, complex(250)), 50)],
  'swr-loss-11': () => [Math.sign(5 - swrAtInput(5, 1))],
  'swr-loss-13': () => [longLineLossDb(32, 0.027)],
  'swr-loss-14': () => [lineLoss(lineConstants(shortLine, 3.8e6), 4.572, complex(100, 100)).totalDb],
  'open-end-swr': () => [swrAtInput(1e12, 3), swrAtInput(1e12, 6)],
  'open-wire-loss': () => [1, 10, 100].map(airLineLoss),
  'one-turn-r': () => [oneTurn(1e6).re],
  'one-turn-x': () => [oneTurn(1e6).im],
  'one-turn-14': () => parts(oneTurn(14e6)),
  'bead-z-1.8': () => twoBeads(1.8),
  'ferrite-z-07': () => twoBeads(20),
  'ferrite-z-08': () => twoBeads(30),
  ...Object.fromEntries(
    alCores.flatMap((size) => alMixes.map((mix) => [`al-${size}-${mix}`, () => [al(`${size}-${mix}`)]])),
  ),
  'toroid-01': () => [toroidTurns(5e-6, 4)],
  'toroid-02': () => [toroidTurns(1e-3, 523)],
  'toroid-13': () => {
    const { areaM2, lengthM, volumeM3 } = coreOf('ft240-43');
    return [areaM2 * 1e6, lengthM * 1e3, volumeM3 * 1e9];
  },
  'choke-14': () => coilAt(6, 4.25, 1),
  'choke-15': () => coilAt(6, 4.25, 10),
  'choke-16': () => coilAt(12, 4.25, 1),
  'choke-17': () => coilAt(12, 4.25, 10),
  'choke-18': () => coilAt(4, 6.625, 1),
  'choke-19': () => coilAt(4, 6.625, 10),
  'choke-20': () => coilAt(8, 6.625, 1),
  'choke-21': () => coilAt(8, 6.625, 10),
  'choke-22': () => [coilResonanceMHz(coil(8, 6.625))],
  'coil-02': () => [coilTurns(10e-6, INCH_M, 1.25 * INCH_M)],
  'impedance-13': () => [resonanceHz(50e-6, 40e-12) / 1e6],
  'impedance-14': () => [resonanceHz(50e-6, 10e-12) / 1e6],
  'choke-04': () => [choke('ft240-43', 5, 'rg-58', 3.5e6)],
  'choke-06': () => [choke('ft240-43', 5, 'rg-58', 25e6)],
  'choke-07': () => [20 * Math.log10(choke('ft140-77', 20, 'rg-316', 1.8e6) / choke('ft240-31', 12, 'rg-58', 1.8e6))],
  'transformer-04': () => [impedanceRatio(1, 4), 50 * impedanceRatio(1, 4)],
  'transformer-05': () => [turnsRatioFor(600, 50)],
  'transformer-06': () => [turnsRatioFor(600, 4)],
  'transformer-07': () => [120 * Math.sqrt(impedanceRatio(500, 1500))],
  'transformer-08': () => [120 * Math.sqrt(impedanceRatio(2250, 500))],
  'transformer-09': () => [2500, 3500].map((ohm) => 50 / throughIdeal(complex(50), ohm / 50).re),
  'transformer-loss': () => [coreLoss.coreShare],
};
