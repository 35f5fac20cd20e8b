/**
 * How the numbers of a device that somebody acts on came about: how warm it gets, how much power it stands, the volts across it.
 *
 *   rise = unit · (box · heat / (surface · perKelvin))^exponent       core-heat.ts; a choke's cable adds a rise of its own, choke-heat.ts
 *   most = power · (limit / rise)^(1 / exponent), and no more than flux allows
 */
import type { Working, WorkingInput } from '../../base/working';
import { coreOf } from '../../catalog/cores';
import type { ChokeDesign } from '../../physics/choke-need';
import { BOX_FACTOR, HEAT_W_PER_M2, type Housing, RISE_EXPONENT, RISE_LIMIT_K } from '../../physics/core-heat';
import { permeabilityTolerance } from '../../physics/core-tolerance';
import type { TransformerDesign } from '../../physics/transformer-need';
import type { DeviceWorkings } from '../device-finding';
import type { Facts } from '../facts';

const NONE: DeviceWorkings = { riseKWorking: null, riseWorstKWorking: null, mostWWorking: null, peakVWorking: null };

type Inputs = Readonly<Record<string, WorkingInput>>;

const quantity = (value: number, unit: string, from: WorkingInput['from'] = 'solved'): WorkingInput => ({
  value,
  unit,
  from,
});

const working = (formula: string, inputs: Inputs, value: number, unit: string): Working => ({
  formula,
  inputs,
  result: { value, unit },
  source: 'wound-parts',
});

const power = ({ answers, settled }: Facts): WorkingInput =>
  quantity(settled.powerW, 'W', answers.powerW === undefined ? 'assumed' : 'answer');
const exponent = quantity(RISE_EXPONENT, '', 'catalogue');

/** What the law of the rise needs wherever it stands. */
const lawOf = (housing: Housing): Inputs => ({
  unit: quantity(1, 'K', 'catalogue'),
  box: quantity(BOX_FACTOR[housing], '', 'assumed'),
  perKelvin: quantity(HEAT_W_PER_M2, 'W/m^2', 'catalogue'),
  exponent,
});

/** Where nothing but heat limits, `ceilingW` is the largest number of a plan. */
const mostWorking = (facts: Facts, riseK: number, ceilingW: number, mostW: number): Working =>
  working(
    'min(power * (limit / rise) ^ (1 / exponent), ceiling)',
    {
      power: power(facts),
      limit: quantity(RISE_LIMIT_K, 'K', 'catalogue'),
      rise: quantity(riseK, 'K'),
      exponent,
      ceiling: quantity(ceilingW, 'W'),
    },
    Math.min(mostW, ceilingW),
    'W',
  );

/** `ceilingW`: no power of a plan is larger. */
export function transformerWorkings(
  facts: Facts,
  housing: Housing,
  design: TransformerDesign,
  ceilingW: number,
): DeviceWorkings {
  const { heatW, riseK, riseWorstK, safePowerW, fluxLimitW, surfaceM2, highPeakV } = design;
  const heated = { heat: quantity(heatW, 'W'), surface: quantity(surfaceM2, 'm^2', 'catalogue'), ...lawOf(housing) };
  const above = quantity(permeabilityTolerance(coreOf(design.core)).above, '', 'catalogue');
  const acrossOhm = highPeakV ** 2 / (2 * facts.settled.powerW);
  return {
    riseKWorking: working('unit * (box * heat / (surface * perKelvin)) ^ exponent', heated, riseK, 'K'),
    riseWorstKWorking: working(
      'unit * (box * heat * (1 + above) / (surface * perKelvin)) ^ exponent',
      { ...heated, above },
      riseWorstK,
      'K',
    ),
    mostWWorking: mostWorking(facts, riseK, Math.min(fluxLimitW, ceilingW), safePowerW),
    peakVWorking: working(
      'sqrt(2 * power * across)',
      { power: power(facts), across: quantity(acrossOhm, 'ohm') },
      highPeakV,
      'V',
    ),
  };
}

export function chokeWorkings(
  facts: Facts,
  housing: Housing,
  { riseK, safePowerW, hottest }: ChokeDesign,
  ceilingW: number,
): DeviceWorkings {
  if (riseK === null || safePowerW === null || hottest === null) return NONE;
  const inputs = {
    core: quantity(hottest.coreHeatW, 'W'),
    surface: quantity(hottest.coreSurfaceM2, 'm^2', 'catalogue'),
    cable: quantity(hottest.cableHeatW, 'W'),
    jacket: quantity(hottest.cableSurfaceM2, 'm^2', 'catalogue'),
    ...lawOf(housing),
  };
  const formula =
    'unit * ((box * core / (surface * perKelvin)) ^ exponent + (box * cable / (jacket * perKelvin)) ^ exponent)';
  return {
    ...NONE,
    riseKWorking: working(formula, inputs, riseK, 'K'),
    mostWWorking: mostWorking(facts, riseK, ceilingW, safePowerW),
  };
}
