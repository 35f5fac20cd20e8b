/** Warnings about chokes and the feed line. */
import { coreName } from './catalog-names';
import { placeNames } from './devices';
import { say, type WarningWords } from './warning-message';

type D = Readonly<Record<string, number | string | boolean>>;

const kinds: Readonly<Record<string, string>> = { choke: 'choke', beads: 'string of beads', coil: 'coil of coax' };
const owned = (d: D): string => kinds[String(d.partKind)] ?? 'choke';
const moreOhms =
  'Give the choke more ohms: 10 kΩ takes two fifths to a half off the heat of 5 kΩ, and 1 kΩ doubles it.';
const usePlanned = 'Build or buy the one in this plan.';

const otherLength = 'Take another length of open-wire line: it moves the place where volts and amps are highest.';

const over = (what: string, why: string): WarningWords => ({
  text: (d, f) =>
    `Too much ${what} for ${say.line(d)} on ${say.band(d)}: ${say.number(d, f, 'percent')} % of its rating at ${say.watts(d, f, 'powerW')}.`,
  why,
  waysOut: {
    'heavier-line': 'Use a line with a higher rating.',
    'less-power': (d, f) => `Stay at ${say.watts(d, f, 'mostW')} or less on this band.`,
    'lower-swr': 'Lower the SWR at the antenna: standing waves raise volts, amps and heat on the line.',
    'other-length': otherLength,
  },
});

export const lineWarnings = {
  'choke-at-voltage-maximum': {
    text: (d, f) =>
      `Hard work for the choke ${Number(d.distanceM) < 0.01 ? 'at the feed point' : `${say.length(d, f, 'distanceM')} down the coax`}: about ${say.number(d, f, 'voltageV')} V and ${say.watts(d, f, 'heatW')} of heat on ${say.band(d)} at ${say.watts(d, f, 'powerW')} in this mode.`,
    why: (d, f) =>
      `Here the outside of the coax stands at high voltage. A choke must have ${say.ohms(d, f, 'ohm')} or more and stand that heat; the one in this plan has ${say.ohms(d, f, 'hasOhm')} on that band. From our own field solutions, within a quarter.`,
    waysOut: {
      'more-ohms': moreOhms,
      apart:
        'Heat is no matter here, the volts are: keep its first turn well apart from its last, and both ends of the coax clear of the box and of each other.',
      'air-and-core': 'It has ohms enough: give it a box with holes, in the shade, or wind the coolest of the list.',
      'choke-further': (d, f) =>
        `Move it to ${say.length(d, f, 'distanceM')}, a tenth of the wave, where there is room: easier on the lowest band, harder on others.`,
      'less-power': 'Or use less power: volts fall with its square root, heat with the power itself.',
    },
  },
  'choke-too-small': {
    text: (d, f) =>
      `Your ${owned(d)} is too small for the antenna end: ${say.ohms(d, f, 'ohm')} on ${say.band(d)}, and ${say.ohms(d, f, 'neededOhm')} is needed.`,
    why: 'Too few ohms let the current pass along the outside of the coax, and make the choke hotter, not cooler.',
    waysOut: {
      'more-turns-or-cores': 'Add turns or rings, or put a second one in series.',
      'at-radio': 'Use it at the radio instead, where 1 kΩ is enough.',
      'use-planned': usePlanned,
    },
  },
  'choke-too-hot': {
    text: (d, f) =>
      `Your ${owned(d)} would get too hot: ${say.number(d, f, 'riseK')} °C above the air, and ${say.number(d, f, 'limitK')} is the most.`,
    why: (d, f) =>
      `At ${say.watts(d, f, 'powerW')} in this mode it takes more heat than its cores can give off. A hot core loses ohms and gets hotter still.`,
    waysOut: {
      'less-power': (d, f) => `Stay at ${say.watts(d, f, 'mostW')} in this mode.`,
      'more-turns-or-cores': 'Add turns or rings, or put a second one in series.',
      'use-planned': usePlanned,
    },
  },
  'reactive-choke': {
    text: (d, f) =>
      `Your ${owned(d)} can make things worse on ${say.band(d)}: ${say.ohms(d, f, 'ohm')}, mostly reactance, and such a one needs ${say.ohms(d, f, 'neededOhm')}.`,
    why: 'A reactive choke can resonate with the cable and raise the current on it, up to twelvefold at an end-fed. One with loss in its core cannot.',
    waysOut: {
      'lossy-core': 'Use rings of mix 31 or 43, which are resistive here.',
      'use-planned': usePlanned,
    },
  },
  'core-heat': {
    text: (d, f) =>
      d.device === 'choke'
        ? `The choke would get too hot on ${say.band(d)}: ${say.watts(d, f, 'heatW')} of heat in its ${Number(d.count) > 1 ? 'cores' : 'core'}, with what its own cable loses ${say.number(d, f, 'riseK')} °C above the air.`
        : `The transformer${Number(d.count) > 1 ? '’s cores' : '’s core'} would get too hot on ${say.band(d)}: ${say.watts(d, f, 'heatW')} of heat, ${say.number(d, f, 'riseK')} °C above the air.`,
    why: (d, f) =>
      `${d.count} × ${coreName(String(d.core))} ${d.isClosed === true ? 'in a closed box in the sun' : 'in free air'}, and ${say.number(d, f, 'limitK')} °C is what to keep to. Full power may be keyed ${f.number(Math.min(100, Number(d.dutyPercent)), 2)} % of the time.${Number(d.swr) > 2 ? ` SWR ${say.number(d, f, 'swr')} at the feed point drives it harder than its match would.` : ''} Heat within a quarter, rings within a fifth and more.`,
    waysOut: {
      'less-power': (d, f) => `Key ${say.watts(d, f, 'mostW')} at most without pause.`,
      'more-ohms': moreOhms,
      'lower-swr': 'Bring the SWR down at the antenna on this band, or leave the band out.',
      'cooler-box': 'Choose another ring from the list, or a box with holes, in the shade.',
      'shorter-overs': 'Or send shorter and let it cool; stop when the SWR begins to climb.',
    },
  },
  'planned-choke-too-small': {
    text: (d, f) =>
      `No choke of the list reaches what is needed ${placeNames[String(d.at)] ?? ''} on ${say.band(d)}: ${say.ohms(d, f, 'ohm')}, and ${say.ohms(d, f, 'neededOhm')} is needed.`,
    why: (d) =>
      d.isReactive === true
        ? 'Mostly reactance there, and such a choke can resonate with the cable.'
        : 'One winding that is good on the low bands is past its own resonance on the high ones.',
    waysOut: {
      'two-in-series': 'Put a second one of the same in series.',
      'fewer-bands': 'Or leave out the lowest or the highest band.',
    },
  },
  'line-under-wire': {
    text: 'The coax runs under or beside the wire: the choke at the feed point cannot stop what the cable picks up there.',
    why: 'The cable is itself a wire in the antenna’s field. Field solutions found 290 to 340 mA per 100 W at the building with a perfect choke at the feed, 12 to 32 mA with one at the entry.',
    waysOut: {
      're-route': 'Lead the coax away at a right angle for the length of a leg, on the ground.',
      'choke-at-entry': 'Keep the choke at the building entry: here it is the one that counts.',
    },
  },
  'line-too-short': {
    text: (d, f) =>
      `The line does not reach the ground: ${say.length(d, f, 'lineM')} of it, and the feed point hangs at ${say.length(d, f, 'heightM')}.`,
    why: (_d, f) =>
      `It has to come down to ${f.length(1)} above the ground before it can go anywhere. All that this plan says of the coax holds for a line that reaches.`,
    waysOut: {
      'longer-line': (d, f) => `Take at least ${say.length(d, f, 'lengthM')} of line.`,
      'lower-feed-point': (d, f) => `Or hang the feed point no higher than ${say.length(d, f, 'lengthM')}.`,
    },
  },
  'line-ends-before-entry': {
    text: (d, f) =>
      `More coax is told to lie outside than there is: ${say.length(d, f, 'entryM')} outside, ${say.length(d, f, 'lineM')} in all.`,
    why: 'Both cannot be. This plan takes all of it to lie outside.',
    waysOut: {
      'longer-line': (d, f) => `Take at least ${say.length(d, f, 'lengthM')} of line.`,
      'nearer-entry': (d, f) => `Or correct the coax outside: ${say.length(d, f, 'lengthM')} or less.`,
    },
  },
  'line-shorter-than-counterpoise': {
    text: (d, f) =>
      `The coax is too short to be the counterpoise: ${say.length(d, f, 'lineM')}, and ${say.band(d)} asks for ${say.length(d, f, 'neededM')}.`,
    why: 'One twentieth of the wave has to carry the return current before the choke. Shorter, the radio and your hands become part of the antenna.',
    waysOut: {
      'counterpoise-wire': (d, f) =>
        `Put a counterpoise wire of ${say.length(d, f, 'lengthM')} or more on the ground terminal, with chokes at the box and at the radio.`,
      'longer-line': (d, f) => `Or use at least ${say.length(d, f, 'lengthM')} of coax.`,
    },
  },
  'over-voltage': over(
    'voltage',
    'At a voltage maximum the insulation can break through, and what has burnt once burns again.',
  ),
  'over-current': over('current', 'At a current maximum the thin conductor gets hot and softens the insulation.'),
  'over-power': over('heat', 'The centre conductor softens the insulation, moves, and in the end touches the shield.'),
  'over-plug': {
    ...over('voltage', ''),
    text: (d, f) =>
      `Too much voltage for the common screw plug on ${say.band(d)}: ${say.number(d, f, 'percent')} % of ${say.number(d, f, 'plugPeakV')} V peak at ${say.watts(d, f, 'powerW')}.`,
    why: 'Standing waves raise the voltage on the line; a plug at the wrong place sparks over. What a plug stands is from memory.',
    waysOut: {
      'lower-swr': 'Lower the SWR at the antenna: standing waves raise volts on the line.',
      'other-length': otherLength,
      'less-power': (d, f) => `Stay at ${say.watts(d, f, 'mostW')} or less on this band.`,
      'other-plug':
        'Or fit plugs and sockets of the N type, which stand about three times that, or solder the coax without a plug.',
    },
  },
  'line-loss': {
    text: (d, f) =>
      `On ${say.band(d)} the line turns ${say.number(d, f, 'lostOf100W')} W of every 100 W into heat (${say.number(d, f, 'lossDb')} dB).`,
    why: (d, f) =>
      `${say.length(d, f, 'lineM')} of ${say.line(d)}, with what standing waves add: ${say.watts(d, f, 'lostW')} of your ${say.watts(d, f, 'powerW')}.${String(d.bands).includes(',') ? ` A fifth or more is lost on ${say.bands(d)}.` : ''}`,
    waysOut: {
      'heavier-line': 'Use thicker or foam coax.',
      'shorter-line': 'Shorten the line.',
      'mend-match':
        'Mend the match at the antenna: most of this loss comes from the SWR on the line, and no tuner in the shack takes it away.',
      'open-wire': 'Or use open-wire line, which stands a high SWR.',
      'tuner-at-feed-point': 'Put an automatic tuner at the feed point: the line then stands at a low SWR.',
      'wider-line': 'Use open-wire line of thicker wires held apart by spreaders: it loses least.',
      'longer-wire':
        'Hang a longer wire: the nearer its whole comes to half a wave on the lowest band, the weaker the currents in the line.',
      'other-length': otherLength,
    },
  },
  'swr-is-not-proof': {
    text: (d, f) =>
      `SWR ${say.number(d, f, 'swr')} at the radio on ${say.band(d)} is no proof: without the loss on the way it would be ${say.swr(d, f, 'feedSwr')}.`,
    why: (d, f) =>
      `${say.number(d, f, 'lossDb')} dB of loss hides the rest${d.hasDevices === true ? `, ${say.number(d, f, 'lineDb')} dB in the line and ${say.number(d, f, 'deviceDb')} dB in transformer and chokes` : ''}: what comes back is used up on the way. A dummy load reads 1 too.`,
    waysOut: {
      'measure-at-feed-point': 'Measure at the feed point, or take the loss off.',
      'compare-signals': 'Judge by signals heard and reports, not by this reading.',
    },
  },
  'wet-line': {
    text: (d, f) =>
      d.known === true
        ? `Rain shifts the tuning: wet ${say.line(d)} is about ${say.number(d, f, 'percent')} % longer for the wave.`
        : `Rain shifts the tuning of ${say.line(d)}.`,
    why: 'Water between the wires slows the wave and adds a little loss, more when the line is dirty.',
    waysOut: {
      'tune-again': 'Tune again in rain, and note both settings.',
      'keep-clear': 'Keep it twisted, clean and a hand’s breadth from everything.',
    },
  },
} as const satisfies Readonly<Record<string, WarningWords>>;
