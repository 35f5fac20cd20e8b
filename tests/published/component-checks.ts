/**
 * Printed and measured values that the line, core, choke and transformer models are held against. One entry is one number in print.
 * `tolerance` is a part of the expected value unless `absolute`; `because` is the reason for it. "memory" marks values recalled from the
 * source, not read in it again. The bench prints how far each family lies off.
 */
import { type Complex, complex, magnitude } from '../../src/base/complex';
import { C0 } from '../../src/base/constants';
import { beads } from '../../src/catalog/beads';
import { type CoreId, coreOf, type Mix } from '../../src/catalog/cores';
import { ferrites, muAt } from '../../src/catalog/ferrites';
import { type LineId, lines } from '../../src/catalog/lines';
import {
  closeWound,
  coilCapacitanceF,
  coilImpedance,
  coilInductanceH,
  coilTurns,
  resonanceHz,
} from '../../src/physics/air-coil';
import { lineDataOf } from '../../src/physics/catalogue-line';
import { beadsBand, chokeImpedance } from '../../src/physics/choke';
import { permeabilityTolerance } from '../../src/physics/core-tolerance';
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
import {
  gammaOfReturnLoss,
  gammaOfSwr,
  longLineLossDb,
  mismatchLossDb,
  returnLossDb,
  swrAtInput,
  swrOfGamma,
} from '../../src/physics/mismatch';
import { openWireLine } from '../../src/physics/open-wire-line';
import { alNanohenry, toroidTurns, windingImpedance } from '../../src/physics/toroid';
import { impedanceRatio, throughIdeal, transformerState, turnsRatioFor } from '../../src/physics/transformer';
import { coaxToWind } from '../../src/physics/wound-conductor';

export interface PublishedCheck {
  readonly family: string;
  readonly what: string;
  readonly expected: number;
  readonly computed: () => number;
  readonly tolerance: number;
  readonly absolute?: true;
  readonly because: string;
  readonly source: string;
}

type Case = Omit<PublishedCheck, 'family' | 'source' | 'because'>;
const family = (name: string, source: string, because: string, cases: readonly Case[]): PublishedCheck[] =>
  cases.map((one) => ({ family: name, source, because, ...one }));

/** A lossless line, an electrical length in wavelengths. */
const lossless = (z0Ohm: number, velocityFactor = 1): LineData => ({ z0Ohm, velocityFactor, k1: 0, k2: 0, clad: null });
const HZ = 10e6;
const WAVE_M = C0 / HZ;
const through = (z0Ohm: number, wavelengths: number, load: Complex): Complex =>
  inputImpedance(lineConstants(lossless(z0Ohm), HZ), wavelengths * WAVE_M, load);
const angleDeg = (z: Complex): number => (Math.atan2(z.im, z.re) * 180) / Math.PI;

const pozarLine = through(100, 0.3, complex(40, 70));
const pozarGamma = gamma(complex(40, 70), complex(100));
/** The book's phase velocity is 0.7 · 3·10⁸ m/s; over 3.35 wavelengths the rounding of c shows. */
const ulabyLine = inputImpedance(lineConstants(lossless(50, (0.7 * 3e8) / C0), 1050e6), 0.67, complex(100, 50));
const ulabyGamma = gamma(complex(100, 50), complex(50));

const lineInput: PublishedCheck[] = [
  ...family(
    'line input',
    'Pozar, Microwave Engineering, 2nd and 3rd ed., example 2.2 (memory)',
    'printed to three digits; the reflection is rounded before use',
    [
      { what: 'R of 40 + j70 Ω through 0.3 λ of 100 Ω', expected: 36.5, computed: () => pozarLine.re, tolerance: 0.01 },
      { what: 'X of the same', expected: -61.1, computed: () => pozarLine.im, tolerance: 0.01 },
      { what: '|Γ| of 40 + j70 Ω on 100 Ω', expected: 0.59, computed: () => magnitude(pozarGamma), tolerance: 0.01 },
      { what: 'angle of Γ', expected: 104, computed: () => angleDeg(pozarGamma), tolerance: 0.01 },
      { what: 'SWR', expected: 3.87, computed: () => swr(complex(40, 70), 100), tolerance: 0.01 },
      { what: 'return loss', expected: 4.6, computed: () => returnLossDb(magnitude(pozarGamma)), tolerance: 0.01 },
    ],
  ),
  ...family(
    'line input',
    'Ulaby, Fundamentals of Applied Electromagnetics, complete solution of a 1.05 GHz line (memory)',
    'printed to three digits',
    [
      { what: 'R of 100 + j50 Ω through 67 cm', expected: 21.9, computed: () => ulabyLine.re, tolerance: 0.01 },
      { what: 'X of the same', expected: 17.4, computed: () => ulabyLine.im, tolerance: 0.01 },
      { what: '|Γ| of 100 + j50 Ω', expected: 0.45, computed: () => magnitude(ulabyGamma), tolerance: 0.01 },
      { what: 'angle of Γ', expected: 26.6, computed: () => angleDeg(ulabyGamma), tolerance: 0.01 },
    ],
  ),
  ...family('line input', 'Pozar, Microwave Engineering, example 2.5, quarter-wave transformer (memory)', 'exact', [
    {
      what: '100 Ω through a quarter-wave of 70.71 Ω',
      expected: 50,
      computed: () => through(70.71, 0.25, complex(100)).re,
      tolerance: 0.001,
    },
  ]),
  ...family(
    'line input',
    'US amateur examination pool, Extra 2024-2028, E9F09, E9F10, E9F12, E9F04 (kind of reactance or size only)',
    'the pool says which; the size follows from the line equation',
    [
      {
        what: 'eighth-wave of 50 Ω, shorted: inductive',
        expected: 50,
        computed: () => through(50, 0.125, complex(0)).im,
        tolerance: 0.001,
      },
      {
        what: 'quarter-wave, open: very low',
        expected: 0,
        computed: () => magnitude(through(50, 0.25, complex(1e9))),
        tolerance: 0.01,
        absolute: true,
      },
      {
        what: 'half-wave, shorted: very low',
        expected: 0,
        computed: () => magnitude(through(50, 0.5, complex(0))),
        tolerance: 0.01,
        absolute: true,
      },
      {
        what: 'quarter-wave, shorted: conductance very low',
        expected: 0,
        computed: () => 1 / magnitude(through(50, 0.25, complex(0))),
        tolerance: 1e-6,
        absolute: true,
      },
    ],
  ),
  ...family('reflection', 'US amateur examination pool, General 2023-2027, G9A10', 'exact', [
    { what: 'SWR of 10 Ω on 50 Ω', expected: 5, computed: () => swr(complex(10), 50), tolerance: 1e-9 },
  ]),
  ...family(
    'reflection',
    'Touchstone 2.0 specification, 2009, one-port and two-port examples (data read there)',
    'file data have three to four digits',
    [
      {
        what: 'R of S = 0.894 at −12.136°',
        expected: 196.08,
        computed: () => ofPolar(0.894, -12.136).re,
        tolerance: 0.001,
      },
      { what: 'X of the same', expected: -367.12, computed: () => ofPolar(0.894, -12.136).im, tolerance: 0.001 },
      {
        what: 'R of S11 = 0.3926 − j0.1211',
        expected: 108.34,
        computed: () => impedanceOfGamma(complex(0.3926, -0.1211), 50).re,
        tolerance: 0.001,
      },
      {
        what: 'X of the same',
        expected: -31.569,
        computed: () => impedanceOfGamma(complex(0.3926, -0.1211), 50).im,
        tolerance: 0.001,
      },
    ],
  ),
];

function ofPolar(size: number, deg: number): Complex {
  const rad = (deg * Math.PI) / 180;
  return impedanceOfGamma(complex(size * Math.cos(rad), size * Math.sin(rad)), 50);
}

const swrRows: readonly (readonly [number, number, number, number])[] = [
  [1.1, 0.05, 26.43, 0.01],
  [1.2, 0.09, 20.83, 0.04],
  [1.5, 0.2, 13.98, 0.18],
  [1.8, 0.29, 10.88, 0.37],
  [2.5, 0.43, 7.36, 0.88],
  [3, 0.5, 6.02, 1.25],
  [4, 0.6, 4.44, 1.94],
  [5, 0.67, 3.52, 2.55],
  [10, 0.82, 1.74, 4.81],
];
const returnLossRows: readonly (readonly [number, number, number])[] = [
  [3, 5.848, 0.708],
  [10, 1.925, 0.316],
  [14, 1.499, 0.2],
  [20, 1.222, 0.1],
  [26, 1.105, 0.05],
  [30, 1.065, 0.032],
];

const reflectionTables: PublishedCheck[] = [
  ...swrRows.flatMap(([s, rho, rl, ml]) =>
    family(
      'SWR table',
      'SWR table of a Bulgarian amateur (LZ1LEN)',
      'two decimals printed; one row is 0.014 off in its return loss',
      [
        { what: `|Γ| at SWR ${s}`, expected: rho, computed: () => gammaOfSwr(s), tolerance: 0.02, absolute: true },
        {
          what: `return loss at SWR ${s}`,
          expected: rl,
          computed: () => returnLossDb(gammaOfSwr(s)),
          tolerance: 0.02,
          absolute: true,
        },
        {
          what: `mismatch loss at SWR ${s}`,
          expected: ml,
          computed: () => mismatchLossDb(gammaOfSwr(s)),
          tolerance: 0.02,
          absolute: true,
        },
      ],
    ),
  ),
  ...returnLossRows.flatMap(([rl, s, rho]) =>
    family('SWR table', 'SWR and return loss table, radio-electronics.com', 'three decimals printed', [
      {
        what: `SWR at ${rl} dB return loss`,
        expected: s,
        computed: () => swrOfGamma(gammaOfReturnLoss(rl)),
        tolerance: 0.002,
        absolute: true,
      },
      {
        what: `|Γ| at ${rl} dB return loss`,
        expected: rho,
        computed: () => gammaOfReturnLoss(rl),
        tolerance: 0.002,
        absolute: true,
      },
    ]),
  ),
];

/** All of the loss in the conductors. */
function shortLineLossDb(): number {
  const k1 = (0.055 / 4.572) * (100 / Math.sqrt(3.8));
  const line: LineData = { z0Ohm: 50, velocityFactor: 0.66, k1, k2: 0, clad: null };
  return lineLoss(lineConstants(line, 3.8e6), 4.572, complex(100, 100)).totalDb;
}

const lossInSwr: PublishedCheck[] = [
  ...family(
    'loss with SWR',
    'ARRL Antenna Book, transmission-line chapter, worked example: 150 ft at 0.795 dB/100 ft, SWR 4 (memory)',
    'printed to two decimals from rounded steps',
    [
      { what: 'total loss', expected: 2.12, computed: () => longLineLossDb(4, 1.1925), tolerance: 0.006 },
      { what: 'added loss', expected: 0.93, computed: () => longLineLossDb(4, 1.1925) - 1.1925, tolerance: 0.006 },
    ],
  ),
  ...family('loss with SWR', 'G. Johnson, transmission line notes: 100 ft of window line', 'two digits printed', [
    {
      what: 'total loss at 0.027 dB matched, SWR 32',
      expected: 0.41,
      computed: () => longLineLossDb(32, 0.027),
      tolerance: 0.01,
    },
  ]),
  ...family(
    'loss with SWR',
    'amateur antenna handbooks: an open end behind a lossy line (memory)',
    'rounded to whole and hundredth SWR; 3 dB is 3.01',
    [
      { what: 'SWR of an open end behind 3 dB', expected: 3, computed: () => swrAtInput(1e12, 3), tolerance: 0.01 },
      { what: 'SWR of an open end behind 6 dB', expected: 1.67, computed: () => swrAtInput(1e12, 6), tolerance: 0.01 },
    ],
  ),
  ...family(
    'loss with SWR',
    'S. Hunt, reflector posting of 2009-02-01: 15 ft of 0.66 line at 3.8 MHz, 0.055 dB matched, 100 + j100 Ω',
    'one figure printed, split of the loss not told',
    [
      {
        what: 'total loss, below the matched loss',
        expected: 0.025,
        computed: () => shortLineLossDb(),
        tolerance: 0.4,
      },
    ],
  ),
];

/** dB per 100 ft or per 100 m as the table has it. */
const lossRow = (
  line: LineId,
  mhz: number,
  expected: number,
  tolerance: number,
  per: 'ft' | 'm',
  absolute?: true,
): Case => ({
  what: `${line} at ${mhz} MHz, dB per 100 ${per}`,
  expected,
  computed: () => attenuationDbPer100M(lineDataOf(lines[line]), mhz * 1e6) * (per === 'ft' ? 0.3048 : 1),
  tolerance,
  ...(absolute === undefined ? {} : { absolute }),
});

const openWireLossPer100Ft = (mhz: number): number => {
  const geometry = { spacingM: 0.1524, diameterM: 0.002053, conductivitySPerM: 5.8e7, velocityFactor: 1 };
  return attenuationDbPer100M(openWireLine(geometry), mhz * 1e6) * 0.3048;
};

const attenuation: PublishedCheck[] = [
  ...family(
    'attenuation',
    'Santa Clara County ARES/RACES, Coaxial Cable (makers’ sheets compiled)',
    'one decimal printed: half a unit of it, and a little for the fit',
    [
      lossRow('foam-6.1mm', 30, 1.3, 0.055, 'ft', true),
      lossRow('foam-6.1mm', 50, 1.7, 0.055, 'ft', true),
      lossRow('foam-10.3mm', 30, 0.7, 0.055, 'ft', true),
      lossRow('foam-10.3mm', 50, 0.9, 0.055, 'ft', true),
      lossRow('foam-10.3mm', 150, 1.5, 0.055, 'ft', true),
      lossRow('foam-15mm', 30, 0.4, 0.055, 'ft', true),
      lossRow('foam-15mm', 50, 0.5, 0.055, 'ft', true),
    ],
  ),
  ...family(
    'attenuation',
    'P. Harden, Coaxial Cable Specifications',
    'two digits; the thin cable’s copper-clad centre departs from the fit',
    [lossRow('rg-58', 10, 1.4, 0.05, 'ft'), lossRow('rg-174', 10, 3.3, 0.15, 'ft')],
  ),
  ...family(
    'attenuation',
    'Austrian amateur society, page on antenna cables',
    'other makers than the fit: 10 to 15 % between makers',
    [
      lossRow('rg-58', 145, 17.8, 0.15, 'm'),
      lossRow('rg-213', 145, 8.5, 0.15, 'm'),
      lossRow('foam-10.2mm-flexible', 145, 4.8, 0.03, 'm'),
    ],
  ),
  ...family(
    'attenuation',
    'Codan, Radio Repeater Systems Training Guide, appendix H',
    'other makers than the fit; the PTFE row is for the single-shield twin',
    [
      lossRow('rg-58', 50, 10.8, 0.05, 'm'),
      lossRow('rg-58', 150, 20, 0.05, 'm'),
      lossRow('rg-213', 50, 4.9, 0.15, 'm'),
      lossRow('rg-142', 50, 8.8, 0.05, 'm'),
    ],
  ),
  ...family(
    'attenuation',
    'ARRL Handbook, line table: 600 Ω open wire, dB per 100 ft (memory)',
    'one digit printed, few spacers, conductor loss alone computed for 2.05 mm at 152 mm',
    [
      { what: 'open wire at 1 MHz', expected: 0.02, computed: () => openWireLossPer100Ft(1), tolerance: 0.2 },
      { what: 'open wire at 10 MHz', expected: 0.06, computed: () => openWireLossPer100Ft(10), tolerance: 0.2 },
      { what: 'open wire at 100 MHz', expected: 0.2, computed: () => openWireLossPer100Ft(100), tolerance: 0.2 },
    ],
  ),
];

const oneTurn = (core: CoreId, hz: number): Complex =>
  windingImpedance(coreOf(core), 1, 1, muAt(coreOf(core).mix, hz), hz);
const twoBeads = (mhz: number): number => {
  const size = beads['bead-13mm'].size.value;
  const tolerance = permeabilityTolerance({ mix: '31', outsideDiameterM: size.outsideDiameterM });
  return magnitude(beadsBand(size, 2, muAt('31', mhz * 1e6), mhz * 1e6, tolerance).nominal);
};
const al = (core: CoreId, expected: number): Case => ({
  what: `A_L of ${core}, nH`,
  expected,
  computed: () => alNanohenry(coreOf(core), ferrites[coreOf(core).mix as Mix].muInitial.value),
  tolerance: 0.12,
});

const ferriteCores: PublishedCheck[] = [
  ...family(
    'ferrite',
    'O. Duffy, published one-turn values of a 61/35.55/12.7 mm mix-43 ring from the maker’s curves',
    'one or two digits printed: 0.04 Ω is the rounding of 0.5, 6 has half a unit',
    [
      {
        what: 'R of one turn at 1 MHz',
        expected: 0.5,
        computed: () => oneTurn('ft240-43', 1e6).re,
        tolerance: 0.05,
        absolute: true,
      },
      {
        what: 'X of one turn at 1 MHz',
        expected: 6,
        computed: () => oneTurn('ft240-43', 1e6).im,
        tolerance: 0.5,
        absolute: true,
      },
      { what: 'R of one turn at 14 MHz', expected: 24, computed: () => oneTurn('ft240-43', 14e6).re, tolerance: 0.05 },
      { what: 'X of one turn at 14 MHz', expected: 24, computed: () => oneTurn('ft240-43', 14e6).im, tolerance: 0.05 },
    ],
  ),
  ...family(
    'ferrite',
    'C. Counselman, Common-Mode Chokes, 2006: two mix-31 beads on a hairpin, measured',
    'maker’s ±20 to 25 %; he doubts his own readings above 20 MHz',
    [
      { what: '|Z| at 1.8 MHz', expected: 100, computed: () => twoBeads(1.8), tolerance: 0.25 },
      { what: '|Z| at 20 MHz', expected: 300, computed: () => twoBeads(20), tolerance: 0.25 },
      { what: '|Z| at 30 MHz', expected: 250, computed: () => twoBeads(30), tolerance: 0.5 },
    ],
  ),
  ...family(
    'ferrite',
    'vendor A_L table (nH per turn², ±20 to 30 %)',
    'the table is for the older 850 grade of mix 43 (6 %) and rounds the sizes; far inside its own ±20 %',
    [
      al('ft50-43', 470),
      al('ft50-61', 68),
      al('ft50-77', 990),
      al('ft82-43', 500),
      al('ft82-61', 75),
      al('ft82-77', 1060),
      al('ft114-43', 540),
      al('ft114-61', 79.3),
      al('ft114-77', 1270),
      al('ft140-43', 952),
      al('ft140-61', 140),
      al('ft140-77', 2250),
      al('ft240-43', 1160),
      al('ft240-61', 173),
      al('ft240-77', 2725),
    ],
  ),
  ...family(
    'ferrite',
    'Fair-Rite catalogue, core constants of the 61 mm ring (memory)',
    'three digits, rounded corners',
    [
      { what: 'Ae, mm²', expected: 158, computed: () => coreOf('ft240-43').areaM2 * 1e6, tolerance: 0.01 },
      { what: 'le, mm', expected: 145, computed: () => coreOf('ft240-43').lengthM * 1e3, tolerance: 0.01 },
      { what: 'Ve, mm³', expected: 22800, computed: () => coreOf('ft240-43').volumeM3 * 1e9, tolerance: 0.01 },
    ],
  ),
  ...family(
    'ferrite',
    'US amateur examination pool, Extra 2016-2020, E6D01 and E6D11',
    'whole turns, one of them rounded down',
    [
      {
        what: 'turns for 5 µH on 40 µH per 100 turns',
        expected: 35,
        computed: () => toroidTurns(5e-6, 4),
        tolerance: 0.5,
        absolute: true,
      },
      {
        what: 'turns for 1 mH on 523 mH per 1000 turns',
        expected: 43,
        computed: () => toroidTurns(1e-3, 523),
        tolerance: 0.8,
        absolute: true,
      },
    ],
  ),
];

const INCH = 0.0254;
/** Close-wound 10.3 mm coax on a form. */
const gilbertCoil = (turns: number, formInch: number) => closeWound(turns, formInch * INCH, 0.405 * INCH);
const coilCase = (turns: number, formInch: number, at1MHz: number, at10MHz: number): PublishedCheck[] => [
  ...family(
    'air coil',
    'E. Gilbert, coax chokes measured with an impedance analyser (description found, values memory)',
    'Wheeler ±1 %, form and cable ±2 % in diameter, one or two digits printed',
    [
      {
        what: `|Z| of ${turns} turns on ${formInch} in at 1 MHz`,
        expected: at1MHz,
        computed: () => 2e6 * Math.PI * coilInductanceH(gilbertCoil(turns, formInch)),
        tolerance: 0.1,
      },
    ],
  ),
  ...family(
    'air coil',
    'E. Gilbert, the same coils at 10 MHz (memory)',
    'self-capacitance scatters by 35 %; 8 turns stand at 0.83 of their resonance, where that is a factor of 2',
    [
      {
        what: `|Z| of ${turns} turns on ${formInch} in at 10 MHz`,
        expected: at10MHz,
        computed: () => magnitude(coilImpedance(gilbertCoil(turns, formInch), 10e6)),
        tolerance: turns === 8 ? 0.5 : 0.25,
      },
    ],
  ),
];

const airCoils: PublishedCheck[] = [
  ...coilCase(6, 4.25, 26, 298),
  ...coilCase(12, 4.25, 65, 1103),
  ...coilCase(4, 6.625, 26, 333),
  ...coilCase(8, 6.625, 74, 2300),
  ...family(
    'air coil',
    'posting of 2003 quoting the same table',
    'capacitance scatters by 35 %, so resonance by about 20 %',
    [
      {
        what: 'resonance of 8 turns on 6.625 in, MHz',
        expected: 12,
        computed: () => {
          const coil = gilbertCoil(8, 6.625);
          return resonanceHz(coilInductanceH(coil), coilCapacitanceF(coil)) / 1e6;
        },
        tolerance: 0.2,
      },
    ],
  ),
  ...family('air coil', 'ARRL Handbook, air-core coil example (memory)', 'three digits', [
    {
      what: 'turns for 10 µH, 1 in across, 1.25 in long',
      expected: 26.1,
      computed: () => coilTurns(10e-6, INCH, 1.25 * INCH),
      tolerance: 0.005,
    },
  ]),
  ...family('air coil', 'US amateur examination pool, Extra 2024-2028, E5A02 and E5A10', 'three digits', [
    {
      what: 'resonance of 50 µH and 40 pF, MHz',
      expected: 3.56,
      computed: () => resonanceHz(50e-6, 40e-12) / 1e6,
      tolerance: 0.003,
    },
    {
      what: 'resonance of 50 µH and 10 pF, MHz',
      expected: 7.12,
      computed: () => resonanceHz(50e-6, 10e-12) / 1e6,
      tolerance: 0.003,
    },
  ]),
];

const wound = (core: CoreId, turns: number, cable: 'rg-58' | 'rg-400' | 'rg-316', hz: number): Complex =>
  chokeImpedance({ ring: coreOf(core), count: 1, turns, conductor: coaxToWind(cable) }, muAt(coreOf(core).mix, hz), hz);

const chokes: PublishedCheck[] = [
  ...family(
    'choke',
    'M. Tope, reflector posting of 2004-11-10, 5 turns on a 61 mm mix-43 ring, measured',
    'maker’s ±20 to 25 % on permeability',
    [
      {
        what: '|Z| at 3.5 MHz',
        expected: 490,
        computed: () => magnitude(wound('ft240-43', 5, 'rg-58', 3.5e6)),
        tolerance: 0.25,
      },
    ],
  ),
  ...family('choke', 'T. Eklund, common-mode chokes for receiving antennas, measured', 'as given there: ±4 dB', [
    {
      what: 'dB by which 20 turns on 36 mm mix 77 beat 12 turns on 61 mm mix 31 at 1.8 MHz',
      expected: 10,
      computed: () =>
        20 *
        Math.log10(
          magnitude(wound('ft140-77', 20, 'rg-316', 1.8e6)) / magnitude(wound('ft240-31', 12, 'rg-58', 1.8e6)),
        ),
      tolerance: 4,
      absolute: true,
    },
  ]),
];

/** 50 Ω on two turns, 2450 Ω behind them, at 3.6 MHz; nothing but the core. */
const twoTurnLossShare = (): number =>
  transformerState(
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
  ).coreShare;

const transformers: PublishedCheck[] = [
  ...family(
    'transformer',
    'builder’s report: 2:14 turns on one 61 mm mix-43 ring, 3.6 MHz, measured',
    'maker’s ±20 to 25 % on permeability',
    [{ what: 'share of the power lost in the core', expected: 0.29, computed: twoTurnLossShare, tolerance: 0.2 }],
  ),
  ...family('transformer', 'PA0ROB, Unun impedance transformer end-fed', 'exact', [
    { what: 'ratio of 4 times the turns', expected: 16, computed: () => impedanceRatio(1, 4), tolerance: 1e-9 },
    {
      what: '800 Ω behind it, Ω',
      expected: 50,
      computed: () => throughIdeal(complex(800), impedanceRatio(1, 4)).re,
      tolerance: 1e-9,
    },
    { what: 'ratio for 2.5 kΩ', expected: 50, computed: () => turnsRatioFor(2500, 50) ** 2, tolerance: 1e-9 },
    { what: 'ratio for 3.5 kΩ', expected: 70, computed: () => turnsRatioFor(3500, 50) ** 2, tolerance: 1e-9 },
  ]),
  ...family(
    'transformer',
    'US amateur examination pool, General 2019-2023 and 2023-2027, G5C07',
    'rounded to one decimal in the pool',
    [
      { what: 'turns ratio for 600 Ω to 50 Ω', expected: 3.5, computed: () => turnsRatioFor(600, 50), tolerance: 0.02 },
      { what: 'turns ratio for 600 Ω to 4 Ω', expected: 12.2, computed: () => turnsRatioFor(600, 4), tolerance: 0.005 },
    ],
  ),
];

export const componentChecks: readonly PublishedCheck[] = [
  ...lineInput,
  ...reflectionTables,
  ...lossInSwr,
  ...attenuation,
  ...ferriteCores,
  ...airCoils,
  ...chokes,
  ...transformers,
];
