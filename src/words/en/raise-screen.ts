/** What stands on the Raise screen. */
import type { Format } from '../format';
import type { Data, Message } from '../message';
import { placeNames } from './devices';

const toldLine = (d: Data, f: Format): string => {
  if (d.lineM === undefined) return '';
  const near = d.near === true ? 'That is too near.' : 'Look where it is before you trust that.';
  return d.drawn === true
    ? ` Your nearest line, ${f.length(Number(d.lineM))} away, is somewhere on the heavy outline. ${near}`
    : ` Your nearest line, ${f.length(Number(d.lineM))} away, lies outside this drawing.`;
};

/** What goes along besides the antenna, by code. */
export const packedTools: Readonly<Record<string, string>> = {
  'tape-measure': 'tape measure',
  analyser: 'antenna analyser',
  cutters: 'cutters and knife',
  gloves: 'gloves',
  headgear: 'helmet and eye protection',
  'first-aid': 'first-aid kit',
};

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
  allDown: 'It is down',
  allDownWhy: 'Every step is done. Note on Trim how it hung, while you remember.',
  again: 'Start again',
  deviceAt: ({ name, at }) => `${name} ${placeNames[String(at)] ?? ''}`.trim(),
  toCut: 'Open the cut list',
  toTrim: 'Open Trim',
  toPlan: 'See how to make them',
  toShop: 'Open the shopping list',
  packing: 'Packing list',
  clearPack: 'Clear the ticks',
  chokes: 'Where the chokes go',
  none: 'This plan has no steps. See on the plan what stops it.',
  fallCaption: (d, f) =>
    `No overhead line over the striped ground: ${f.length(Number(d.distanceM))} from every wire and support, on all sides. 1 square is ${f.length(Number(d.squareM))}.${toldLine(d, f)}`,
  checksRead: 'Checks read before this step',
} as const satisfies Readonly<Record<string, Message>>;
