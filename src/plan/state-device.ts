/** A designed device in words: its build, its figures, and the other ways to make it. */
import type { DeviceAlternative, DeviceFigures, DeviceSummary } from '../advice/device-finding';
import type { BuildFinding } from '../advice/finding';
import { alternativeNames, comparison, deviceNotes, shortfalls } from '../words/en/device-figures';
import { boxNames, builds } from '../words/en/devices';
import { render } from '../words/message';
import type { ChainItem } from './plan-schema';
import type { Speaker } from './speaker';
import { stateWorkingOrNull } from './word-sources';

type Stated = {
  readonly build: NonNullable<ChainItem['build']>;
  readonly figures: NonNullable<ChainItem['figures']>;
  readonly alternative: ChainItem['alternatives'][number];
};

export const stateBuild = (build: BuildFinding, speaker: Speaker): Stated['build'] => ({
  core: build.core,
  count: build.count,
  turns: build.turns,
  secondaryTurns: build.secondaryTurns,
  strands: build.strands,
  conductor: build.conductor,
  conductorLengthM: build.conductorLengthM,
  conductorLengthMWorking: stateWorkingOrNull(build.conductorLengthMWorking),
  capacitorPf: build.capacitorPf,
  box: boxNames[build.box] ?? build.box,
  text: speaker.say(builds, build),
});

const stateSummary = (summary: DeviceSummary, speaker: Speaker) => ({
  isEnough: summary.isEnough,
  shortfalls: summary.shortfalls.map((shortfall) => speaker.say(shortfalls, shortfall)),
  worstLossDb: summary.worstLossDb,
  heatW: summary.heatW,
  riseK: summary.riseK,
  mostW: summary.mostW,
  powerByModeW: summary.powerByModeW === null ? null : { ...summary.powerByModeW },
  leastOhm: summary.leastOhm,
  rings: summary.rings,
  massKg: summary.massKg,
});

/** Four figures are more than any part keeps to; the rest would only make a plan long. */
function rounded<T>(value: T): T {
  if (typeof value === 'number') return Number(value.toPrecision(4)) as T;
  if (Array.isArray(value)) return value.map(rounded) as T;
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([key, each]) => [key, rounded(each)])) as T;
}

export const stateFigures = (figures: DeviceFigures, speaker: Speaker): Stated['figures'] => ({
  ...stateSummary(figures, speaker),
  powerW: figures.powerW,
  mode: figures.mode,
  housing: figures.housing,
  limitK: figures.limitK,
  riseWorstK: figures.riseWorstK,
  peakV: figures.peakV,
  riseKWorking: stateWorkingOrNull(figures.riseKWorking),
  riseWorstKWorking: stateWorkingOrNull(figures.riseWorstKWorking),
  mostWWorking: stateWorkingOrNull(figures.mostWWorking),
  peakVWorking: stateWorkingOrNull(figures.peakVWorking),
  test: figures.test === null ? null : { ...figures.test, bands: figures.test.bands.map((band) => rounded(band)) },
  notes: figures.notes.map((note) => speaker.say(deviceNotes, note)),
  bands: figures.bands.map((band) => rounded(band)),
  curve: figures.curve.map((point) => rounded(point)),
});

export const stateAlternative = (other: DeviceAlternative, speaker: Speaker): Stated['alternative'] => ({
  ...stateSummary(other, speaker),
  id: other.id,
  name: alternativeNames[other.id],
  mix: other.mix,
  isPlanned: other.isPlanned,
  build: { ...stateBuild(other.build, speaker), conductorLengthMWorking: null },
  changes: other.isPlanned
    ? render(comparison['as-planned'], {}, speaker.format)
    : speaker.say(comparison, other.changes),
});
