/** Headings of the caution card. */
import type { Message } from '../message';

export const cardWords = {
  title: ({ name }) => `Cautions: ${name}`,
  keepOut: (d, f) => `People stay ${f.length(Number(d.metres))} from every part of the antenna.`,
  keepOutUnknown: 'How far people must stay is not known for every band: see the exposure result.',
  lines: (d, f) => `Overhead lines are at least ${f.length(Number(d.metres))} away, or the antenna does not go up.`,
  volts: (d, f) => `Wire ends and feed point carry up to ${f.number(Number(d.volts), 2)} V: nobody touches any part.`,
} as const satisfies Readonly<Record<string, Message>>;

export const gateNames: Readonly<Record<string, string>> = {
  site: 'Before you choose the place',
  up: 'Before anybody goes up',
  launch: 'Before you launch a line',
  raise: 'Before you raise it',
  transmit: 'Before you send',
  links: 'Before you change links',
  leave: 'Before you leave',
  storm: 'Storm and emergency',
};
export const gateOrder = ['site', 'up', 'launch', 'raise', 'transmit', 'links', 'leave', 'storm'] as const;
