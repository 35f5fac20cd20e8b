/** What stands on the screen where turns are counted, and what it says aloud. */
import type { Message } from '../message';
import { many } from './many';

export const windScreen = {
  title: 'Count the turns',
  winding: ({ now, count, onRing }) => `${onRing === true ? 'ring' : 'winding'} ${now} of ${count}`,
  side: ({ now }) => (now === 1 ? 'for the coax' : 'for the antenna'),
  stacked: ({ rings }) => `${rings} rings stacked, wound as one.`,
  ofTurns: ({ turns }) => `of ${many(turns, 'turn', 'turns')}`,
  sideBySide: ({ strands }) => `${strands} wires side by side as one: each pass takes all of them.`,
  countIt: 'One more turn',
  undo: 'Undo one',
  nothingOn: 'No turn yet',
  backTo: ({ turns }) => `Back to ${turns}`,
  sayEach: 'Say each turn',
  noVoice: 'This phone has no English voice of its own that works with no signal. Read the number instead.',
  start: 'One pass through the hole is one turn. Tap after each.',
  going: ({ left }) => `${many(left, 'turn', 'turns')} to go.`,
  tap: ({ done }) => `${done}: tap here. Bring the wire out, then wind on.`,
  cross: ({ done }) => `${done}: cross over here, to the other side of the ring. The crossing is no turn of its own.`,
  windingDone: ({ done, onRing }) =>
    onRing === true
      ? `${many(done, 'turn', 'turns')}: this ring is done, ${done} in the hole. The next turn goes on the other ring.`
      : `${many(done, 'turn', 'turns')}: this winding is on. The next one touches it nowhere.`,
  allDone: ({ done, onRing, isOne }) =>
    onRing === true || isOne === true
      ? `${many(done, 'turn', 'turns')}: all on. Look: ${done} in the hole, ${Number(done) - 1} round the outside.`
      : `${many(done, 'turn', 'turns')}: all on.`,
  saidTap: ({ done }) => `${done}. Tap here.`,
  saidCross: ({ done }) => `${done}. Cross over.`,
  saidWindingDone: ({ done }) => `${done}. This winding is on.`,
  saidAllDone: ({ done }) => `${done}. All on.`,
  picture: ({ done, turns }) =>
    `A wound ring seen from the front: ${done} of ${many(turns, 'turn', 'turns')} drawn solid, the rest to come.`,
  unsettled: 'Turns still being worked out',
  unsettledWhy: 'The turns may still change while this antenna is worked out. Wind when that is done.',
  changed: ({ done, of }) =>
    `The plan has changed since you counted: ${done} of ${many(of, 'turn', 'turns')} were on then. Here is what it asks for now.`,
  again: 'Count again',
  wrongCount: 'The count is wrong',
  seen: 'Passes you see in the hole, of this winding',
  seenWhy: 'Round the outside you see one fewer. Wires that lie side by side are one.',
  setCount: 'Set the count',
  notCount: ({ turns }) => `Type a whole number from 0 to ${turns}.`,
  next: ({ name }) => `Next: ${name}`,
  toPlan: 'Back to the plan',
  nothing: 'Nothing to wind',
  nothingWhy: 'No device of this plan is wound by hand.',
  open: 'Count the turns',
  openFor: ({ name }) => `Count the turns: ${name}`,
} as const satisfies Readonly<Record<string, Message>>;
