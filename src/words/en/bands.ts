/** Notes beside a band of the plan. */
import type { Message } from '../message';

export const bandNotes = {
  'impedance-unknown': 'Nothing is known of the impedance here. Measure it at the feed point and enter it.',
  'closed-form': 'Worked out from formulas: the real SWR can be half or twice this.',
  'order-of-size': 'The wire is near a voltage maximum here: only the order of size of these figures is certain.',
  'above-limit': (d, f) =>
    `SWR ${f.number(Number(d.swr), 2)} at the shack end of the line. Most radios turn their power down above ${f.number(Number(d.limit), 2)}; a tuner must bring it down.`,
  'dip-above': (d, f) =>
    `The dip falls at ${f.number(Number(d.resonanceMHz), 4)} MHz, above the ${f.number(Number(d.focusMHz), 4)} MHz asked for: one wire cannot meet every band.`,
  'dip-below': (d, f) =>
    `The dip falls at ${f.number(Number(d.resonanceMHz), 4)} MHz, below the ${f.number(Number(d.focusMHz), 4)} MHz asked for: one wire cannot meet every band.`,
  'dip-solved-above': (d, f) =>
    `The lowest SWR of this band lies at ${f.number(Number(d.resonanceMHz), 4)} MHz, above the ${f.number(Number(d.focusMHz), 4)} MHz asked for.`,
  'dip-solved-below': (d, f) =>
    `The lowest SWR of this band lies at ${f.number(Number(d.resonanceMHz), 4)} MHz, below the ${f.number(Number(d.focusMHz), 4)} MHz asked for.`,
  'dip-below-band': 'The SWR still falls towards the lower end of this band: the dip lies there or below it.',
  'dip-above-band': 'The SWR still falls towards the upper end of this band: the dip lies there or above it.',
} as const satisfies Readonly<Record<string, Message>>;
