/** What stands on the large display with and without the choke. */
import type { Share } from '../../base/share';
import type { Message } from '../message';

const parts: Readonly<Record<number, string>> = {
  2: 'half',
  3: 'third',
  4: 'quarter',
  5: 'fifth',
  6: 'sixth',
  8: 'eighth',
  10: 'tenth',
  20: 'twentieth',
  50: 'fiftieth',
  100: 'hundredth',
  200: 'two-hundredth',
  500: 'five-hundredth',
  1000: 'thousandth',
};

/** "about a third of", "less than a twentieth of". */
export function shareText(share: Share): string {
  if (share.kind === 'more') return 'more than';
  if (share.kind === 'less') return `less than a ${parts[share.parts] ?? ''} of`;
  if (share.parts === 1) return 'about as much as';
  if (share.parts === 2) return 'about half of';
  if (share.of === 1) return `about ${share.parts === 8 ? 'an' : 'a'} ${parts[share.parts] ?? ''} of`;
  return `about ${share.of === 2 ? 'two' : 'three'} ${parts[share.parts] ?? ''}s of`;
}

export const stand = {
  title: 'With and without the choke',
  open: 'Show large, with and without',
  without: ({ chokes }) => (Number(chokes) > 1 ? 'Chokes out' : 'Choke out'),
  with: ({ chokes }) => (Number(chokes) > 1 ? 'Chokes in' : 'Choke in'),
  milliamps: 'mA on the coax',
  amperes: 'A on the coax',
  under: '< 1',
  measured: 'measured',
  computed: 'computed',
  computedHow: 'Computed for 100 W, where the coax enters or you operate.',
  ofWire: ({ share }) => `${share} the wire’s current`,
  notYet: 'not yet',
  change: ({ share, db }) => `With the choke: ${share} what it was, ${db} dB less.`,
  noLess: 'With the choke it is not less. Look where the choke sits, and whether it is by-passed.',
  alsoComputed: ({ without, with: kept, where }) =>
    `Computed for 100 W, ${where}: ${without} mA without, ${kept} mA with.`,
  atEntry: 'where the coax enters or you operate',
  atFoot: 'at the foot of the drop',
  band: 'Band',
  type: 'Read off the clamp meter',
  how: 'All three at one power and on one band, the meter always at the same mark on the coax. Low power will do: 10 W.',
  wire: 'On the wire, mA',
  coaxWithout: 'On the coax, choke out, mA',
  coaxWith: 'On the coax, choke in, mA',
  wrong: 'Type milliamps, such as 85. Leave the field empty to take it back.',
  noneComputed: 'No currents are computed for this antenna yet. Type what the clamp meter reads.',
  underway: 'The currents of this antenna are being worked out; they come by themselves.',
  warning:
    'The bare end of the wire and the coax without a choke carry high voltage: nobody touches them while you send.',
} as const satisfies Readonly<Record<string, Message>>;
