/** What stands on the Shop screen and on the packing list. */
import type { Message } from '../message';
import { many } from './many';

export const shopScreen = {
  title: 'Shop',
  total: ({ have, buy }) => `${have} have, ${buy} buy`,
  packed: ({ have, buy }) => (Number(buy) === 0 ? 'All packed' : `${have} packed, ${buy} to go`),
  tick: 'Tick what you have.',
  have: 'have',
  buy: 'buy',
  in: 'packed',
  out: 'pack',
  metres: 'm',
  times: '×',
  use: ({ use }) => `For ${use}`,
  or: 'Or:',
  partly: ({ have, of }) => `${have} of ${of} on hand`,
  withOthers: ({ count }) =>
    Number(count) === 0
      ? 'Shop for other plans too'
      : `Shopped for with it: ${many(count, 'other plan', 'other plans')}`,
  withOthersWhy: 'One list: like parts are added up, and what you have is counted once. Ticks stand in each plan.',
  offered: 'Offered transformer and choke in one box?',
  offeredIs: ({ ratio }) => `A ${ratio}:1 with a choke inside, whatever watts its label claims.`,
  undo: 'Undo',
  none: 'This plan needs no parts.',
  'wire-and-rope': 'Wire, rope and coax',
  electrical: 'Electrical',
  radio: 'Radio shop',
  hardware: 'Hardware',
  made: 'Made by you',
} as const satisfies Readonly<Record<string, Message>>;
