/** What a designed device does on each wanted band, over the range for a plot, and in short. */
import type { Complex } from '../../base/complex';
import { magnitude } from '../../base/complex';
import { coreOf } from '../../catalog/cores';
import { type Mode, modeIds } from '../../catalog/modes';
import type { ImpedanceBand } from '../../physics/choke';
import type { ChokeDesign, ChokeNeed } from '../../physics/choke-need';
import {
  chokeAt,
  chokeCurve,
  transformerCurve,
  transformerInput,
  transformerLosses,
} from '../../physics/component-curve';
import { RISE_LIMIT_K } from '../../physics/core-heat';
import { permeabilityTolerance } from '../../physics/core-tolerance';
import type { PowerByMode } from '../../physics/mode-power';
import { evaluateTransformer } from '../../physics/transformer-evaluate';
import type { TransformerDesign } from '../../physics/transformer-need';
import type { DeviceBand, DeviceCurvePoint, DeviceFigures, DeviceSummary, Spread } from '../device-finding';
import type { Facts } from '../facts';
import type { Said } from '../finding';
import { type ChokeTask, type TransformerTask, tabled } from './design-task';
import { chokeShortfallsOf, transformerShortfallsOf, worstPoint } from './device-shortfalls';
import { chokeWorkings, transformerWorkings } from './device-workings';
import { resistorTest } from './resistor-test';

const CURVE_POINTS = 24;
/** How far a plot goes beyond the wanted bands, as part of the frequency. */
const MARGIN = 0.1;
/** No number in a plan is larger: beyond it nothing limits. */
const MOST_W = 100_000;

const spread = ([low, high]: readonly [number, number], nominal: number): Spread => ({ low, nominal, high });
const ohmsOf = ({ re, im }: Complex) => ({ r: re, x: im });
const capped = (watts: number): number => Math.min(watts, MOST_W);
const cappedByMode = (byMode: PowerByMode): Record<Mode, number> =>
  Object.fromEntries(modeIds.map((mode) => [mode, capped(byMode[mode])])) as Record<Mode, number>;

const nothing = {
  lossSpreadDb: null,
  heatW: null,
  riseK: null,
  input: null,
  swr: null,
  rOhm: null,
  xOhm: null,
  ohm: null,
  neededOhm: null,
  isReactive: null,
  voltageV: null,
  currentA: null,
} as const;

/** Frequencies of a plot, evenly over the logarithm, from below the lowest wanted band to above the highest. */
function curveHz({ bands }: Facts): number[] {
  const lowHz = tabled(Math.min(...bands.map(({ edgesMHz }) => edgesMHz.lowMHz * 1e6)) * (1 - MARGIN));
  const highHz = tabled(Math.max(...bands.map(({ edgesMHz }) => edgesMHz.highMHz * 1e6)) * (1 + MARGIN));
  return Array.from({ length: CURVE_POINTS }, (_, i) => lowHz * (highHz / lowHz) ** (i / (CURVE_POINTS - 1)));
}

export function transformerSummary(facts: Facts, design: TransformerDesign): DeviceSummary {
  const shortfalls = transformerShortfallsOf(facts, design);
  return {
    isEnough: shortfalls.length === 0,
    shortfalls,
    worstLossDb: Math.max(...design.points.map((point) => point.lossDb)),
    heatW: design.heatW,
    riseK: design.riseK,
    mostW: capped(design.safePowerW),
    powerByModeW: cappedByMode(design.safePowerByMode),
    leastOhm: null,
    rings: design.count,
    massKg: design.massKg,
  };
}

export function transformerFigures(facts: Facts, task: TransformerTask, design: TransformerDesign): DeviceFigures {
  const { need, loads, turned } = task;
  const points = need.points.map(({ hz, load }, i) => ({ hz, load: loads[i] ?? load }));
  const real = evaluateTransformer({ ...need, points }, design, design.capacitorPf);
  const losses = transformerLosses(need, design, points);
  const bands = facts.bands.map(({ band, focusMHz }, i): DeviceBand => {
    const point = real.points[i] as TransformerDesign['points'][number];
    const seen = turned || loads[i] == null ? {} : { input: ohmsOf(point.input), swr: point.swr };
    const heat = { heatW: point.coreHeatW + point.copperHeatW, riseK: point.riseK };
    const lossSpreadDb = spread(losses[i]?.lossRangeDb ?? [point.lossDb, point.lossDb], point.lossDb);
    return { ...nothing, band, atMHz: focusMHz, lossDb: point.lossDb, lossSpreadDb, ...heat, ...seen };
  });
  const curve = transformerCurve(need, design, curveHz(facts));
  const inputAt = transformerInput(need, design);
  return {
    ...transformerSummary(facts, design),
    ...stationOf(facts, need.housing),
    ...transformerWorkings(facts, need.housing, design, MOST_W),
    riseWorstK: design.riseWorstK,
    peakV: design.highPeakV,
    bands,
    curve: curve.map(
      ({ hz, lossDb, lossRangeDb, swr }): DeviceCurvePoint => ({
        ...flatPoint(hz),
        lossDb: spread(lossRangeDb, lossDb),
        swr,
      }),
    ),
    inputAt: turned ? null : (hz, load) => inputAt(tabled(hz), load),
    impedanceAt: null,
    test: resistorTest(facts, task, design),
    notes: transformerNotes(facts, task, design),
  };
}

const stationOf = ({ settled }: Facts, housing: DeviceFigures['housing']) => ({
  powerW: settled.powerW,
  mode: settled.mode,
  housing,
  limitK: RISE_LIMIT_K,
});

const flatPoint = (hz: number): DeviceCurvePoint => ({
  atMHz: hz / 1e6,
  lossDb: null,
  swr: null,
  rOhm: null,
  xOhm: null,
  ohm: null,
});

function transformerNotes(facts: Facts, { need }: TransformerTask, design: TransformerDesign): Said[] {
  const [index, worst] = worstPoint(design.points, (point) => point.lossDb);
  const band = facts.bands[index]?.band ?? '';
  const [atWorst] = transformerLosses(need, design, need.points.slice(index, index + 1));
  const { powerW } = facts.settled;
  const expect = {
    band,
    lossDb: worst.lossDb,
    lostW: powerW * (1 - 10 ** (-worst.lossDb / 10)),
    powerW,
    riseK: design.riseK,
    isClosed: need.housing === 'closed-box',
  };
  const tolerance = permeabilityTolerance(coreOf(design.core));
  const doubt = {
    percent: 100 * Math.max(tolerance.below, tolerance.above),
    band,
    lowDb: atWorst?.lossRangeDb[0] ?? worst.lossDb,
    highDb: atWorst?.lossRangeDb[1] ?? worst.lossDb,
    riseWorstK: design.riseWorstK,
    limitK: RISE_LIMIT_K,
  };
  return [
    { code: 'transformer-expect', data: expect },
    { code: 'transformer-doubt', data: doubt },
    powerNote(cappedByMode(design.safePowerByMode)),
  ];
}

const powerNote = ({ voice, cw, data }: Readonly<Record<Mode, number>>): Said => ({
  code: 'power-by-mode',
  data: { voiceW: voice, cwW: cw, dataW: data },
});

const ohmSpread = ({ ohm, nominal }: ImpedanceBand): Spread => spread(ohm, magnitude(nominal));
const needsMost = (design: ChokeDesign) =>
  worstPoint(design.points, (point) => point.neededOhm / magnitude(point.impedance.nominal));

export function chokeSummary(facts: Facts, design: ChokeDesign): DeviceSummary {
  const heats = design.points.flatMap(({ heatW }) => (heatW === null ? [] : [heatW]));
  const [, weakest] = needsMost(design);
  return {
    isEnough: design.shortfalls.length === 0,
    shortfalls: chokeShortfallsOf(facts, design),
    worstLossDb: Math.max(...design.points.map((point) => point.lossDb)),
    heatW: heats.length === 0 ? null : Math.max(...heats),
    riseK: design.riseK,
    mostW: design.safePowerW === null ? null : capped(design.safePowerW),
    powerByModeW: design.safePowerByMode === null ? null : cappedByMode(design.safePowerByMode),
    leastOhm: ohmSpread(weakest.impedance),
    rings: design.coreCount,
    massKg: design.massKg,
  };
}

export function chokeFigures(facts: Facts, { need, byLikeness }: ChokeTask, design: ChokeDesign): DeviceFigures {
  const bands = facts.bands.map(({ band, focusMHz }, i): DeviceBand => {
    const point = design.points[i] as ChokeDesign['points'][number];
    const { impedance, lossDb, heatW, neededOhm, isReactive, voltageV, currentA } = point;
    const duty = { heatW, neededOhm, isReactive, voltageV, currentA };
    return { ...nothing, band, atMHz: focusMHz, lossDb, ...duty, ...spreadsOf(impedance) };
  });
  const impedanceAt = chokeAt(design);
  return {
    ...chokeSummary(facts, design),
    ...stationOf(facts, need.housing),
    ...chokeWorkings(facts, need.housing, design, MOST_W),
    riseWorstK: null,
    peakV: null,
    bands,
    curve: chokeCurve(design, curveHz(facts)).map((point) => ({ ...flatPoint(point.hz), ...spreadsOf(point) })),
    inputAt: null,
    impedanceAt: (hz, lot) => impedanceAt(tabled(hz), lot),
    test: null,
    notes: [...chokeNotes(facts, design), ...chokeHeatNotes(facts, need, byLikeness, design)],
  };
}

const spreadsOf = (impedance: ImpedanceBand): Pick<DeviceBand, 'rOhm' | 'xOhm' | 'ohm'> => ({
  rOhm: spread(impedance.rOhm, impedance.nominal.re),
  xOhm: spread(impedance.xOhm, impedance.nominal.im),
  ohm: ohmSpread(impedance),
});

function chokeNotes(facts: Facts, design: ChokeDesign): Said[] {
  const [index, { impedance, neededOhm, isReactive }] = needsMost(design);
  const tolerance = permeabilityTolerance(coreOf(design.core));
  const expect = {
    band: facts.bands[index]?.band ?? '',
    ohm: magnitude(impedance.nominal),
    lowOhm: impedance.ohm[0],
    highOhm: impedance.ohm[1],
    neededOhm,
    isReactive,
    belowPercent: 100 * tolerance.below,
    abovePercent: 100 * tolerance.above,
  };
  return [
    { code: 'choke-expect', data: expect },
    { code: 'choke-doubt', data: expect },
  ];
}

/** On the band that makes it hottest: what current on the outside leaves in it, and what the power on its way through leaves in its cable. */
function chokeHeatNotes(facts: Facts, { housing }: ChokeNeed, byLikeness: boolean, design: ChokeDesign): Said[] {
  const { riseK, safePowerByMode, hottest, points, conductorLengthM } = design;
  if (riseK === null || safePowerByMode === null || hottest === null) {
    return [{ code: facts.lineKind === 'coax' ? 'choke-heat-later' : 'choke-heat-unknown', data: {} }];
  }
  const heat = {
    band: facts.bands[hottest.point]?.band ?? '',
    heatW: points[hottest.point]?.heatW ?? 0,
    cableW: hottest.cableHeatW * conductorLengthM,
    riseK,
    powerW: facts.settled.powerW,
    isClosed: housing === 'closed-box',
  };
  const code = byLikeness ? 'choke-heat-likely' : 'choke-heat';
  return [{ code, data: heat }, powerNote(cappedByMode(safePowerByMode))];
}
