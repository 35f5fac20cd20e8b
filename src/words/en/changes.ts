/** What is named when a plan changes with an answer. Pieces, devices and warnings bring their own names along. */
import type { Message } from '../message';
import { bandName, systemName } from './names';

export const changes = {
  system: 'Antenna',
  systemIs: ({ system }) => systemName(String(system)),
  distance: ({ device }) => `${device}, along the line`,
  turns: ({ device }) => `${device}, turns`,
  cores: ({ device }) => `${device}, rings`,
  device: 'Device',
  swr: ({ band }) => `SWR at the radio, ${bandName(String(band))}`,
  swrIs: ({ swr }) => `${swr}:1`,
  tuner: ({ band }) => `Tuner, ${bandName(String(band))}`,
  tunerNeeded: 'needed',
  tunerNotNeeded: 'not needed',
  people: ({ band }) => `People stay away, ${bandName(String(band))}`,
  keepAway: 'Power lines stay away',
  warning: 'Warning',
  nothing: 'Nothing in the plan changes with it.',
  more: ({ count }) => `and ${count} more on the plan`,
  gone: 'no longer',
  fresh: 'new',
} as const satisfies Readonly<Record<string, Message>>;
