/** What stands on the Raise screen. */
import type { Message } from '../message';

export const raiseScreen = {
  step: ({ now, count }) => `Step ${now} of ${count}`,
  before: ({ step }) => `${step}: check first`,
  all: ({ count }) => `All ${count} steps`,
  doneAt: ({ time }) => `Done ${time}`,
  hereNow: 'here now',
  next: 'Done, next',
  last: 'Done, that was all',
  allDone: 'It is up',
  allDoneWhy: 'Every step is done. Keep the cautions for people and storms in mind while it hangs.',
  again: 'Start again',
  toCut: 'Open the cut list',
  toTrim: 'Open Trim',
  toPlan: 'See how to make them',
  toShop: 'Open the shopping list',
  packing: 'Packing list',
  clearPack: 'Clear the ticks',
  chokes: 'Where the chokes go',
  none: 'This plan has no steps. See on the plan what stops it.',
  fallCaption: (d, f) =>
    `No overhead line over the striped ground: ${f.length(Number(d.distanceM))} from every wire and support, on all sides. 1 square is ${f.length(Number(d.squareM))}.`,
  checksRead: 'Checks read before this step',
} as const satisfies Readonly<Record<string, Message>>;
