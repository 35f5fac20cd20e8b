/** What stands on the Trim screen. */
import type { Data, Message } from '../message';

const where = ({ ends, link }: Data): string => {
  if (link !== undefined && link !== '') return ` at the ${link} link, in each leg`;
  return Number(ends) === 2 ? ' at each end' : '';
};

export const trimScreen = {
  title: 'Where is the dip?',
  meaning: 'The dip is where SWR is lowest. Read it at the radio end of the line, with people away from the wire.',
  band: 'Band',
  notYet: 'not yet',
  dipOn: ({ band }) => `Dip on ${band}, MHz`,
  last: ({ mhz }) => `last: ${mhz}`,
  swrLabel: ({ mhz }) => `SWR at ${mhz} MHz, if you read it`,
  swrWrong: 'An SWR is a number of 1 or more, such as 1.8.',
  enter: 'Take it',
  mhz: 'MHz',
  another: 'Read again',
  far: ({ mhz, band }) => `${mhz} MHz is far from ${band}.`,
  unitDoubt: ({ text, band }) => `${text} MHz is not near ${band}. Did you mean kilohertz?`,
  notNumber: ({ text }) => `“${text}” is not a frequency. Write 7.05, 7,05 or 7050 kHz.`,
  empty: 'Type where the dip is, or tap There is no dip.',
  meant: ({ mhz }) => `${mhz} MHz`,
  isOn: ({ band }) => `It is on ${band}`,
  yesIs: ({ mhz }) => `Yes, ${mhz} MHz`,
  typeAgain: 'Type again',
  tooLong: ({ band }) => `Too long for ${band}.`,
  tooShort: ({ band }) => `Too short for ${band}.`,
  fold: (d) => `Fold back${where(d)}`,
  letOut: (d) => `Let out${where(d)}`,
  foldLegs: 'Fold back the long leg',
  letOutLegs: 'Let out the long leg',
  shortLeg: (d, f) => `and the short leg ${f.length(Number(d.metres))}.`,
  half: (d, f) =>
    `${d.inAll === true ? `${f.length(Number(d.nowM))} in all, half` : 'Half'} of the ${f.length(Number(d.wholeM))} worked out. Then raise it and measure again.`,
  whole: (d, f) =>
    `${d.inAll === true ? `${f.length(Number(d.nowM))} in all. Then` : 'Then'} raise it and measure again.`,
  beyondPiece: (d, f) =>
    `By ${f.length(Number(d.wholeM))}, more than its own piece has. Is a link set wrong, or loose? Look at each in both legs, then read again.`,
  noSpare: 'Nothing folded back there? Then tie on a piece and solder it.',
  dontCut: 'Fold along the wire and tape it down. Do not cut yet.',
  stopHead: 'Good enough: stop',
  stopDip: ({ mhz, band }) => `The dip is within 1\u00a0% of ${mhz} MHz on ${band}.`,
  stopSwr: ({ swr }) => `SWR ${swr}:1 where you work is under 2:1.`,
  mayStop: ({ mhz }) => `Within 3\u00a0% of ${mhz} MHz: you may stop here. Weather and ground move a dip as much.`,
  inUse: 'Wire in use',
  inUseOn: ({ band }) => `Wire in use, ${band}`,
  inUseWas: (d, f) => `It was ${f.length(Number(d.metres))} when the dip was read.`,
  undo: 'Undo',
  inUseChange: 'It is another length',
  inUseWrong: ({ text }) => `“${text}” is not a length. Write 19.5 m or 64 ft.`,
  inUseTake: 'Take it',
  done: 'Done, measure again',
  stopHere: 'Stop here',
  goOn: 'Trim on',
  nextBand: ({ band }) => `Next: ${band}`,
  stopped: 'Trimming is over',
  stoppedWhy: 'Keep this much wire, and note it for the next antenna from this drum.',
  tapeHead: ({ way, mhz, time }) => `${way === 'up' ? 'Up' : 'Down'} ${mhz} MHz since ${time}`,
  tapeSame: ({ time }) => `No change since ${time}`,
  tapeFirst: 'Dip and aim',
  now: 'now',
  lastRead: 'last',
  aim: 'aim',
  tape: ({ was, now, aim, band, low, high }) =>
    `${band}, a tape of megahertz.${was === '' ? '' : ` The dip was at ${was},`} now ${now}, aim ${aim}. The band runs from ${low} to ${high}.`,
  aimHead: 'Aim',
  trade: 'What it does to all bands',
  dipNow: 'Dip now',
  after: 'After',
  tradeNote: 'All in MHz. “About” is worked out, not measured.',
  tradeLinked:
    'All in MHz. This piece is part of every lower band, so their dips move with it: trim them after it, the highest first. “About” is worked out, not measured.',
  linkSetting: ({ band, closedTo, atLink }) => {
    const beyond = atLink === true ? `closed up to the ${closedTo} link, open beyond` : 'all closed';
    return `Links for ${band}, both legs alike: ${closedTo === '' ? 'all open' : beyond}. Before a hand goes to a link: radio off, coax unplugged, and the wire brought down to the hand.`;
  },
  trimBefore: ({ before, band }) => `Trim ${before} first: its piece is part of ${band}`,
  favour: 'The aims share it out between the bands. To favour one where you work, at the cost of the others:',
  favourFold: (d, f) => `${d.band} at ${d.mhz} MHz: fold back ${f.length(Number(d.metres))} in all.`,
  favourLetOut: (d, f) => `${d.band} at ${d.mhz} MHz: let out ${f.length(Number(d.metres))} in all.`,
  favourAsIs: ({ band, mhz }) => `${band} at ${mhz} MHz: leave it as it is.`,
  about: ({ mhz }) => `about ${mhz}`,
  when: 'When to stop',
  whenDip: ({ low, high, band, isAlone }) =>
    `${isAlone === true ? band : 'Every band'} under SWR 2:1 where you work, or the dip on ${band} between ${low} and ${high} MHz. Whichever comes first.`,
  aimWhy: ({ band, aim, work }) =>
    `Aim for ${aim} MHz on ${band}, as the cut list says, though you work at ${work} MHz: one wire serves several bands, and their dips come right together.`,
  noDip: 'There is no dip',
  noDipHead: 'No dip at all is not a length problem',
  noDipWhy: 'Do not cut. Look for the fault in this order, then measure again:',
  noDipChecks: [
    'The wire: broken, loose in its terminal, or touching something.',
    'The transformer: wrong ratio, a turn missed, a bad joint. Test it with a resistor.',
    'Plugs and line: a short, an open shield, water in a plug.',
    'The analyser: charged, calibrated, wide enough a sweep? Try it on a dummy load.',
  ].join('|'),
  noDipBack: 'Back to the dip',
  touch: 'Touch test',
  touchHow: 'Run a hand along the coax while you read the SWR, with no more than 5 W. It should stay as it is.',
  steady: 'It stays',
  moves: 'It moves',
  touchPassed: ({ time }) =>
    `Passed ${time}: the coax does not pull at the tuning. A dipole can read steady and still send current along it; a clamp meter round the coax shows that, a tenth of the current in the wire at most.`,
  touchFailed:
    'The coax is part of the antenna: a choke is missing, too small or in the wrong place. Has it slid? Put that right first, then trim.',
  belongs: 'Where the chokes belong:',
  climbs: 'The SWR climbs while I send',
  climbsDo: ({ watts }) =>
    [
      'Stop sending: a core is getting hot.',
      'Radio off. Then feel the boxes and chokes: the hot one is the one at work.',
      'Wait ten minutes, until it is cold.',
      `Go on with ${watts} W at most, or with longer pauses.`,
      'Does it climb again? Then stop, and build it with more core.',
    ].join('|'),
  nothing: 'Nothing to trim',
  nothingWhy:
    'This wire is not cut for a dip: the tuner does the rest. Set it on each band with little power and note the settings.',
} as const satisfies Readonly<Record<string, Message>>;
