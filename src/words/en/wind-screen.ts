/** What stands on the screen where turns are counted, and what it says aloud. */
import type { Message } from '../message';
import { many } from './many';

export const windScreen = {
  title: 'Count the turns',
  winding: ({ now, count }) => `winding ${now} of ${count}`,
  ofTurns: ({ turns }) => `of ${many(turns, 'turn', 'turns')}`,
  sideBySide: ({ strands }) => `${strands} wires side by side as one: each pass takes all of them.`,
  countIt: 'One more turn',
  undo: 'Undo one',
  nothingOn: 'No turn yet',
  sayEach: 'Say each turn',
  noVoice: 'This phone has no English voice of its own that works with no signal. Read the number instead.',
  start: 'One pass through the hole is one turn. Tap after each.',
  going: ({ left }) => `${many(left, 'turn', 'turns')} to go.`,
  tap: ({ done }) => `${done}: tap here. Bring the wire out, then wind on.`,
  cross: ({ done }) => `${done}: cross over here. Go on up the other side of the ring.`,
  windingDone: ({ done }) =>
    `${many(done, 'turn', 'turns')}: this winding is on. The next turn starts the next winding.`,
  allDone: ({ done }) => `${many(done, 'turn', 'turns')}: all on.`,
  saidTap: ({ done }) => `${done}. Tap here.`,
  saidCross: ({ done }) => `${done}. Cross over.`,
  saidWindingDone: ({ done }) => `${done}. This winding is on.`,
  saidAllDone: ({ done }) => `${done}. All on.`,
  picture: ({ done, turns }) =>
    `A wound ring seen from the front: ${done} of ${many(turns, 'turn', 'turns')} drawn solid, the rest to come.`,
  unsettled: 'Turns still being worked out',
  unsettledWhy: 'This very antenna is still being worked out, and the turns may change. Wind when that is done.',
  changed: ({ done, of }) =>
    `The plan has changed since you counted: ${done} of ${many(of, 'turn', 'turns')} were on then. Here is what it asks for now.`,
  again: 'Count again',
  next: ({ name }) => `Next: ${name}`,
  toPlan: 'Back to the plan',
  nothing: 'Nothing to wind',
  nothingWhy: 'No device of this plan is wound by hand.',
  open: 'Count the turns',
  openFor: ({ name }) => `Count the turns: ${name}`,
} as const satisfies Readonly<Record<string, Message>>;
