/**
 * What was read on a box with the resistor on. It is kept under the box as it was wound then: one of other rings or turns is another box,
 * of which an older reading says nothing.
 */
import type { SavedPlan } from '../../../design/saved-plan';
import { sumOf, turnsOfCode } from '../../jobs/winding-code';
import { codeOf, type WoundDevice } from '../../jobs/windings';

export interface BoxReading {
  readonly band: string;
  /** As `boxBuild` writes it; empty where none was kept. */
  readonly build: string;
  /** SWR. */
  readonly value: number;
  readonly at: number;
}

/** Rings and turns of a box, as text without spaces: "ft240-43:2:21/3". */
export const boxBuild = ({ item: { build }, windings }: WoundDevice): string =>
  [build?.core, build?.count, codeOf(windings)].join(':');

/** The parts of such a text that are told. No turns where it says none. */
export function partsOfBuild(build: string): {
  readonly core: string;
  readonly rings: number;
  readonly turns: number;
} {
  const [core = '', rings = '', code = ''] = build.split(':');
  const turns = sumOf(turnsOfCode(code));
  return { core, rings: Number(rings), turns: Number.isFinite(turns) ? turns : 0 };
}

const start = (device: string): string => `box ${device} `;
/** Under which a reading of this device, wound so, is kept. */
export const boxReadingKey = (device: string, build: string, band: string): string =>
  `${start(device)}${build} ${band}`;

/** All readings of this device, however it was wound, the newest first. */
export function boxReadings({ readings }: SavedPlan, device: string): readonly BoxReading[] {
  return Object.entries(readings)
    .flatMap(([key, { value, at }]) => {
      if (value === null || !key.startsWith(start(device))) return [];
      const words = key.slice(start(device).length).split(' ');
      const band = words.pop() ?? '';
      return [{ band, build: words.join(' '), value, at }];
    })
    .sort((a, b) => b.at - a.at);
}

/** The build that readings are of: the plan's, or, as long as the plan's may still move, the last one read. */
export const buildInHand = (planned: string, isSettled: boolean, readings: readonly BoxReading[]): string =>
  isSettled ? planned : (readings.find(({ build }) => build !== '')?.build ?? planned);
