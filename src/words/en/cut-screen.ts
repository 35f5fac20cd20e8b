/** What stands on the Cut screen. */
import type { Message } from '../message';

export const cutScreen = {
  title: 'Cut',
  piece: ({ now, count }) => `piece ${now} of ${count}`,
  many: ({ count }) => `Cut ${count} of these`,
  sayIt: 'Say it',
  noVoice: ({ text }) => `This phone has no English voice of its own that works with no signal. Read it out: ${text}.`,
  cutNext: 'Cut, next',
  cutDone: 'Cut, that was all',
  target: 'Target',
  targetAndSpare: (d, f) => `${f.length(Number(d.finishedM))} finished, then ${f.length(Number(d.spareM))} spare.`,
  targetPlain: (d, f) => `${f.length(Number(d.finishedM))}, nothing to add.`,
  markAt: 'Mark at',
  marks: ({ marks }) => `${marks}, counted from the end where you start`,
  offBy: 'Off by',
  off: (d, f) => `${f.length(Number(d.toleranceM))} either way is fine.`,
  offLonger: 'Longer is fine, shorter is not.',
  note: 'Note',
  stop: 'Stop',
  mark: 'mark',
  allCut: 'All cut',
  allCutWhy: 'Every piece is done. Next comes raising it.',
  again: 'Start again',
  toRaise: 'Raise it',
  none: 'This plan has nothing to cut.',
  cautionsFirst: 'Cautions first',
} as const satisfies Readonly<Record<string, Message>>;
