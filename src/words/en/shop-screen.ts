/** What stands on the Shop screen and on the packing list. */
import { METRES_PER_INCH } from '../../base/convert';
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
  metres: ({ metres }) => `${metres}\u00a0m`,
  feet: ({ metres }) => `${Math.ceil(Number(metres) / (12 * METRES_PER_INCH))}\u00a0ft`,
  times: '×',
  use: ({ use }) => `For ${use}`,
  useOf: ({ use, count }) => (Number(count) > 1 ? `${count}\u00a0×\u00a0${use}` : String(use)),
  share: ({ name, much }) => `${name}, ${much}`,
  oneForAll: 'all of them, one after the other',
  or: 'Or:',
  partly: ({ have, of }) => `${have} of ${of} on hand`,
  withOthers: ({ count }) =>
    Number(count) === 0
      ? 'Shop for other plans too'
      : `Shopped for with it: ${many(count, 'other plan', 'other plans')}`,
  withOthersWhy: 'One list: like parts are added up, and what you have is counted once. Ticks stand in each plan.',
  offered: 'Offered transformer and choke in one box?',
  offeredIs: ({ ratio }) => `A ${ratio}:1 with a choke inside, whatever watts its label claims:`,
  undo: 'Undo',
  none: 'This plan needs no parts.',
  'wire-and-rope': 'Wire, rope and coax',
  electrical: 'Electrical',
  radio: 'Radio shop',
  hardware: 'Hardware',
  made: 'Made by you',
  tools: 'Tools',
} as const satisfies Readonly<Record<string, Message>>;
