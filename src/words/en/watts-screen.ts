/** Where 100 W from the radio go, band by band. */
import type { Data, Message } from '../message';

const end = ({ reaches }: Data): string => (reaches === 'wire' ? 'the wire' : 'the end of the line');

export const wattsScreen = {
  head: 'Where 100 W go',
  result: (d) => `${d.watts} W reach ${end(d)}${Number(d.bands) > 1 ? ` on ${d.band}, least of all` : ''}`,
  watts: ({ watts }) => `${watts} W`,
  part: ({ name, feedW, devicesW, lineW }) =>
    `${name} ${feedW} W, ${lineW} W lost in the line, ${devicesW} W in transformer and chokes`,
  drawing: ({ parts }) => `Of every 100 W from the radio what is left at the feed point: ${parts}.`,
  caption: (d) =>
    `A tape is 100 W from the radio. Filled: what reaches ${end(d)}. Open: what turns into heat on the way; where a tick parts it, transformer and chokes stand left of it and the line right.`,
} as const satisfies Readonly<Record<string, Message>>;
