/** A device of the chain as a plan states it: how to make it, what it does on each band, and what other rings would do. */
import * as z from 'zod/mini';
import { bandIds } from '../catalog/band-ids';
import { mixIds } from '../catalog/core-ids';
import { modeIds } from '../catalog/modes';
import { housings } from '../physics/core-heat';
import { Working } from './working-schema';

const text = z.string();
const maybe = z.nullable(z.number());

/** How to make a device. `text` says it in a few sentences. `count` and `conductorLengthM` are for the whole device. */
export const Build = z.strictObject({
  core: z.nullable(text),
  count: maybe,
  turns: maybe,
  secondaryTurns: maybe,
  /** Wires that go on side by side as one: their turns are counted once. */
  strands: maybe,
  conductor: z.nullable(text),
  conductorLengthM: maybe,
  conductorLengthMWorking: z.nullable(Working),
  capacitorPf: maybe,
  box: text,
  text,
});

/** From the catalogue's values, and the least and most that tolerances allow. */
const Spread = z.strictObject({ low: z.number(), nominal: z.number(), high: z.number() });
const spread = z.nullable(Spread);

const impedance = { rOhm: spread, xOhm: spread, ohm: spread };
const powerByMode = z.nullable(z.record(z.enum(modeIds), z.number()));

const summary = {
  isEnough: z.boolean(),
  shortfalls: z.array(text),
  worstLossDb: z.number(),
  heatW: maybe,
  riseK: maybe,
  mostW: maybe,
  powerByModeW: powerByMode,
  leastOhm: spread,
  rings: z.number(),
  massKg: z.number(),
};

/** Powers are envelope peaks; `mostW` is for the plan's mode, all without pause. Null where it does not apply or nobody has computed it. */
export const Figures = z.strictObject({
  ...summary,
  powerW: z.number(),
  mode: z.nullable(z.enum(modeIds)),
  housing: z.enum(housings),
  limitK: z.number(),
  riseWorstK: maybe,
  peakV: maybe,
  riseKWorking: z.nullable(Working),
  riseWorstKWorking: z.nullable(Working),
  mostWWorking: z.nullable(Working),
  peakVWorking: z.nullable(Working),
  /** A transformer tried out with a resistor in place of the antenna: the SWR to expect, and up to which it is well made. */
  test: z.nullable(
    z.strictObject({
      resistorOhm: z.number(),
      goodSwr: z.number(),
      bands: z.array(z.strictObject({ band: z.enum(bandIds), swr: z.number() })),
    }),
  ),
  /** What to expect, how sure that is, and what limits it. */
  notes: z.array(text),
  bands: z.array(
    z.strictObject({
      band: z.enum(bandIds),
      atMHz: z.number(),
      lossDb: z.number(),
      lossSpreadDb: spread,
      heatW: maybe,
      riseK: maybe,
      input: z.nullable(z.strictObject({ r: z.number(), x: z.number() })),
      swr: maybe,
      ...impedance,
      neededOhm: maybe,
      isReactive: z.nullable(z.boolean()),
      voltageV: maybe,
      currentA: maybe,
    }),
  ),
  /** For a plot over the wanted range: loss of a transformer, R, X and |Z| of a choke. */
  curve: z.array(z.strictObject({ atMHz: z.number(), lossDb: spread, swr: maybe, ...impedance })),
});

/** Other rings for the same place: one line each for a list, and what changes with it. */
export const Alternative = z.strictObject({
  ...summary,
  id: text,
  name: text,
  mix: z.enum(mixIds),
  isPlanned: z.boolean(),
  build: Build,
  changes: text,
});
