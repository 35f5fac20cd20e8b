/** What was measured on an antenna that hangs: on Trim, on the plan and as text. */
import type { Message } from '../message';

export const measured = {
  head: 'Measured so far',
  line: ({ band, mhz, swr, time }) => `${band}: dip ${mhz} MHz${swr === '' ? '' : `, SWR ${swr}:1`}, ${time}`,
  wire: (d, f) => `with ${f.length(Number(d.metres))} of wire`,
  remove: ({ what }) => `Remove: ${what}`,
  removeShort: 'Remove',
  removed: ({ what }) => `Removed: ${what}`,
  noteLabel: 'How it hung, weather',
  noteOf: ({ what }) => `Kept with the last reading, ${what}.`,
  noteWas: ({ note }) => `It said: ${note}`,
} as const satisfies Readonly<Record<string, Message>>;
