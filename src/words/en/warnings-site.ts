/** Warnings about the place: frequencies, units, power lines, room, height, wire, radials. */
import { say, type WarningWords } from './warning-message';

function strength({ leastFactor, wantedFactor }: Readonly<Record<string, number | string | boolean>>): string {
  if (Number(leastFactor) >= Number(wantedFactor)) return ': it holds';
  return Number(leastFactor) >= 1 ? ': it holds, with less than twice in hand' : ': it would part';
}

/** Section of the gauges that the code asks, mm². */
const squares: Readonly<Record<number, string>> = { 10: '5.3', 12: '3.3', 14: '2.1' };

const ends: Readonly<Record<string, string>> = {
  end: 'the far end is',
  ends: 'the ends are',
  'short-leg': 'the end of the short leg is',
};

const dropBand = (d: Readonly<Record<string, number | string | boolean>>): string => `Leave ${say.band(d)} out.`;

export const siteWarnings = {
  'power-line-too-near': {
    text: (d, f) =>
      `Do not put it up here: a power line is ${say.length(d, f, 'nearestM')} away, and this antenna needs ${say.length(d, f, 'distanceM')}.`,
    why: 'A mast, wire or rope can fall or swing its full length in any direction. Touching a line, or only coming near it, can kill.',
    waysOut: {
      'other-place': (d, f) =>
        `Choose a place where every overhead line is at least ${f.length(Number(d.distanceM))} away.`,
      'shorter-and-lower': 'Plan a shorter wire on a lower support, and look at the new distance.',
    },
  },
  'power-line-ask': {
    text: (d, f) =>
      `Do not raise it yet: a power line is ${say.length(d, f, 'nearestM')} away, and this antenna needs ${say.length(d, f, 'distanceM')}.`,
    why: 'A mast, wire or rope can fall or swing its full length in any direction. The line’s operator knows its voltage and the true clearance.',
    waysOut: {
      'ask-operator': 'Ask the line’s operator, and raise nothing until they have agreed.',
      'other-place': (d, f) =>
        `Choose a place where every overhead line is at least ${f.length(Number(d.distanceM))} away.`,
      'shorter-and-lower': 'Plan a shorter wire on a lower support, and look at the new distance.',
    },
  },
  'frequency-unit': {
    text: (d, f) =>
      `Is ${f.number(Number(d.focusMHz), 9)} MHz right? In ${d.unit} the same number is ${say.mhz(d, f, 'readMHz')}.`,
    why: (d) => `No length can be worked out for ${say.band(d)} before this is settled.`,
    waysOut: {
      'it-is': (d, f) => `It is ${say.mhz(d, f, 'readMHz')}.`,
      'use-middle': (d, f) => `Use the middle of the band, ${say.mhz(d, f, 'middleMHz')}.`,
    },
  },
  'wire-unit': {
    text: (d, f) =>
      `Is the wire really ${say.length(d, f, 'metres')} long? ${say.number(d, f, 'digits', 4)} feet would be ${say.length(d, f, 'readM')}.`,
    why: (d, f) =>
      `As metres it fits neither the bands nor the room you gave; as feet it does. One resonant on your lowest band is ${say.length(d, f, 'fitM')}. Feet read as metres is the classic mistake.`,
    waysOut: {
      'is-feet': (d, f) => `The number was feet: take ${say.length(d, f, 'readM')}.`,
      'is-metres': (d, f) =>
        `It is ${say.length(d, f, 'metres')}: measure it once more, and tell a longer span if there is one.`,
    },
  },
  'height-unit': {
    text: (d, f) =>
      `Is the height really ${say.length(d, f, 'metres')}? ${say.number(d, f, 'digits', 4)} feet would be ${say.length(d, f, 'readM')}.`,
    why: 'Hardly any wire antenna hangs so high, and height decides the distance from power lines, the resistance and the ropes.',
    waysOut: {
      'is-feet': (d, f) => `The number was feet: take ${say.length(d, f, 'readM')}.`,
      'is-metres': (d, f) => `It is ${say.length(d, f, 'metres')}. Check every height of this plan with that in mind.`,
    },
  },
  'outside-band': {
    text: (d, f) => `${say.mhz(d, f, 'focusMHz')} is no amateur frequency of ${say.band(d)} in region ${d.region}.`,
    why: (d, f) =>
      `There the band runs from ${say.mhz(d, f, 'lowMHz')} to ${say.mhz(d, f, 'highMHz')}. Transmitting outside it is not allowed; your licence may narrow it further.`,
    waysOut: {
      'use-band': (d, f) => `Cut for the middle of the band, ${say.mhz(d, f, 'middleMHz')}.`,
      'change-region': 'Correct the region or country, if you are somewhere else.',
      'drop-band': dropBand,
    },
  },
  'national-permission': {
    text: (d, f) => `${say.mhz(d, f, 'focusMHz')} is allowed in some countries of region ${d.region} only.`,
    why: 'The region has no allocation there; many countries permit it, often with little power. Your own licence decides.',
    waysOut: {
      'check-licence': 'Look it up in your licence before you transmit.',
      'use-band': (d, f) => `Or cut for ${say.mhz(d, f, 'middleMHz')}, which the whole region has.`,
    },
  },
  'power-limit-60m': {
    text: (d, f) =>
      `Too much power on 60 m: ${say.watts(d, f, 'powerW')} into this antenna is like ${say.watts(d, f, 'sentW')} sent in all directions, and the limit is ${say.watts(d, f, 'limitW')}.`,
    why: (d, f) =>
      `The limit counts what the antenna adds; ${say.number(d, f, 'gainDbi')} dB was reckoned here, with the ground below. Some countries have rules of their own.`,
    waysOut: {
      'less-power': (d, f) => `Use at most ${say.watts(d, f, 'mostW')} on 60 m.`,
      'national-rule': 'Follow the rule of your own country where it differs.',
      'leave-60m': 'Leave 60 m out.',
    },
  },
  'does-not-fit': {
    text: (d, f) =>
      `It does not fit: the antenna needs ${say.length(d, f, 'neededM')} in a straight line, you have ${say.length(d, f, 'spanM')}, so ${say.length(d, f, 'shortM')} is missing.`,
    why: (d) => `The lowest band, ${say.band(d, 'lowestBand')}, sets the length.`,
    waysOut: {
      'bend-ends': (d, f) =>
        `Let ${say.length(d, f, 'hangM')} at each end hang down or turn aside, out of reach. It works nearly as well; trim again.`,
      'inverted-v':
        'Hang it as an inverted V, its middle over a high support and both ends low: it takes less room on the ground.',
      'cut-doublet': (d, f) =>
        `Cut it to ${say.length(d, f, 'spanM')}: with a tuner a doublet, a wire fed in its middle, needs no resonance, and ${say.length(d, f, 'shortestM')} is enough.`,
      'shorter-with-tuner':
        'Take a shorter wire with a tuner: a doublet (fed in its middle) on open-wire line (two bare wires held apart), or a non-resonant end-fed (fed at one end, in a length that no band of yours finds hard).',
      'higher-band': (d) => `Start with ${say.band(d)}: an antenna for that band fits.`,
      'longer-span': (d, f) => `Find supports ${say.length(d, f, 'neededM')} apart, or run it along the diagonal.`,
    },
  },
  'does-not-fit-height': {
    text: (d, f) =>
      `Too tall for its support: the top would stand at ${say.length(d, f, 'topM')}, you have ${say.length(d, f, 'supportHeightM')}, so ${say.length(d, f, 'shortM')} is missing.`,
    why: (d) => `The lowest band, ${say.band(d, 'lowestBand')}, sets the size.`,
    waysOut: {
      'feed-lower': (d, f) => `Start it at ${say.length(d, f, 'lowerM')} above ground: then its top meets the support.`,
      'flat-loop': 'Hang the loop flat, from supports round it: it sends more upward.',
      'inverted-l': 'Lead the rest along: an inverted L goes up as far as the support and then level.',
      'higher-support': (d, f) => `Find a support of ${say.length(d, f, 'topM')}.`,
    },
  },
  'end-out-of-reach': {
    text: (d, f) =>
      d.place === 'top'
        ? `The wire does not come up to the support: its top hangs at ${say.length(d, f, 'reachedM')}, not at ${say.length(d, f, 'toldM')}.`
        : `Too short ${d.isShort === true ? 'to come down' : 'to go up'} so far: ${ends[String(d.place)]} at ${say.length(d, f, 'reachedM')}, not at ${say.length(d, f, 'toldM')}.`,
    why: (d, f) =>
      `${say.length(d, f, 'lengthM')} of wire that starts at ${say.length(d, f, 'fromM')} reaches that height at a slope of 64°, the steepest this plan reckons with. All is drawn and worked out so.`,
    waysOut: {
      'rope-on': (d, f) => `Let it be ${say.length(d, f, 'reachedM')}: a rope leads on from there.`,
      'feed-at': (d, f) =>
        `Feed it at ${say.length(d, f, 'feedM')}: then it comes ${d.isShort === true ? 'down' : 'up'} to ${say.length(d, f, 'toldM')}.`,
      'hang-lower': (d, f) => `Let it hang at ${say.length(d, f, 'reachedM')}, on a rope over the support.`,
    },
  },
  'low-height': {
    text: (d, f) =>
      `Low for ${say.bands(d)}: ${say.length(d, f, 'heightM')} is ${say.number(d, f, 'waves')} of a wave, so the ground takes much of the power.`,
    why: 'Below a tenth of a wave the wire sends mostly straight up, warms the ground, and its dip shifts when you raise it. A low SWR can be that loss.',
    waysOut: {
      raise: (d, f) => `Hang the wire’s middle at ${say.length(d, f, 'wantedM')} or more.`,
      'accept-near': 'Keep it so for contacts out to some hundred kilometres.',
      'use-vertical': 'For distance from low supports use a vertical with radials.',
    },
  },
  indoors: {
    text: (d, f) => `Indoors the wire is close to people and house wiring: mind ${say.watts(d, f, 'powerW')}.`,
    why: 'House wiring picks up the power and brings noise back, walls shift the tuning, and people are within a few steps. Check the keep-out distances of this plan, above and below too.',
    waysOut: {
      'less-power': 'Stay at 50 W or less and look at the distances again.',
      'keep-from-wiring':
        'Keep the wire and above all its ends away from cables, pipes and beds; put chokes on every cable.',
      'go-outside': 'Move it outside, even a few metres.',
    },
  },
  'wires-interact': {
    text: (d) => `The ${d.pairs} pairs of wires detune each other: trimming one moves the others.`,
    why: (d, f) =>
      `Start with the longest, legs of ${say.length(d, f, 'longestM')}, and cut each shorter one 2 to 5 % long.`,
    waysOut: {
      'longest-first': 'Trim the longest pair first, then the next, then check the first again.',
      'spread-ends': (_d, f) =>
        `Spread the ends of neighbours by ${f.length(1)}, as this plan was computed, or by a fifth of a short leg. Nearer together, each shorter pair has to be longer still.`,
    },
  },
  'links-by-hand': {
    text: (d) => `Each change of band is made at the wire, antenna down: it has ${d.links} links.`,
    why: (d) =>
      `On every band the wire is a half-wave of its own and needs no tuner. From one band to the next ${d.eachTime} links change, one in each leg.`,
    waysOut: {
      'in-reach': 'Hang it over one support with its ends low, so that a link is soon down in your hand.',
      'one-link-each': 'Work the bands in order of wavelength: then one link in each leg changes at a time.',
      'parallel-wires': 'Or hang a pair of legs for each band on one feed point: nothing to change, more wire.',
    },
  },
  'open-piece-half-wave': {
    text: (d, f) =>
      `On ${say.band(d)} the open piece beyond the link, ${say.length(d, f, 'pieceM')}, is ${say.number(d, f, 'percent')} % of a half-wave: it takes part.`,
    why: (d) =>
      `Such a piece resonates on ${say.band(d)} by itself. Through the small gap it carries current: the wire in use wants up to 6 % more than by rule, SWR may come to 2.3, and trimming ${say.band(d, 'lower')} afterwards moves the dip again.`,
    waysOut: {
      'add-band': (d) => `Take ${say.band(d, 'middle')} too: its link parts the piece.`,
      'split-piece': (d, f) =>
        `Put one more link into the middle of that piece, ${say.length(d, f, 'halfM')} from either end, and open it on ${say.band(d)}.`,
      'as-found': (d) =>
        `Leave it, trim ${say.band(d)} with the open piece in place, and look at it once more when ${say.band(d, 'lower')} is done.`,
    },
  },
  'thin-wire': {
    text: (d, f) =>
      `For an antenna that stays up over ${say.length(d, f, 'spanM')} the US code asks ${d.asked} AWG wire or thicker; yours is ${d.awg} AWG.`,
    why: (d, f) =>
      `${
        d.known === true
          ? `A wind of 27 m/s (60 mph) pulls it with about ${say.number(d, f, 'windN')} N, ice with wind about ${say.number(d, f, 'iceN')} N, and it breaks at ${say.number(d, f, 'breakN')} N${strength(d)}.`
          : `It breaks at about ${say.number(d, f, 'breakN')} N.`
      } A broken wire falls on whatever is below. Codes differ by country: look at yours.`,
    waysOut: {
      thicker: (d) =>
        `If it stays up, take ${d.asked} AWG (${squares[Number(d.asked)]} mm²) or thicker, hard-drawn copper or copper-clad steel.`,
      'rope-carries': 'Let a rope run along it and carry the pull.',
      'before-storm': 'Take it down before storm and ice, and let nobody stay below it.',
    },
  },
  'few-radials': {
    text: (d, f) =>
      `The ground takes about ${say.number(d, f, 'lossDb')} dB on ${say.band(d)}: ${d.count} radials of ${say.length(d, f, 'lengthM')} are few or short.`,
    why: (d, f) =>
      `They leave about ${say.ohms(d, f, 'lossOhm')} of loss in series with the antenna. More short wires help more than a few long ones.`,
    waysOut: {
      sixteen: (d, f) => `Lay sixteen or more of ${say.length(d, f, 'lengthM')} each. They need no exact length.`,
      elevated: 'Or raise the base and use four equal radials in the air.',
    },
  },
  'rod-only': {
    text: (d, f) =>
      `A ground rod alone loses about ${say.number(d, f, 'lossDb')} dB on ${say.band(d)}: it is for lightning, not for radio.`,
    why: 'The radio current returns through the skin of the soil around the base, where a rod does not reach it.',
    waysOut: {
      sixteen: (d, f) => `Keep the rod and lay sixteen or more radials of ${say.length(d, f, 'lengthM')} each.`,
      elevated: 'Or raise the base and use four equal radials in the air.',
    },
  },
  'one-elevated': {
    text: 'One raised radial makes half a dipole, bent: it sends to one side and its end carries high voltage.',
    why: 'Two opposite radials cancel each other’s share of the radiation. One cannot.',
    waysOut: {
      'second-opposite': 'Add a second one of the same length, opposite.',
      'four-even': 'Better: four, evenly spread.',
    },
  },
  'radial-symmetry': {
    text: (d) => `All ${d.count} raised radials must be equal, and evenly spread.`,
    why: 'With so few, a longer or lower one takes most of the current, and the antenna leans to its side.',
    waysOut: {
      'same-length': 'Cut them to one length and tune them together.',
      'even-angles': 'Spread them evenly round the base, at one height.',
    },
  },
  'static-drain': {
    text: 'The wire has no path to let static charge go.',
    why: 'Wind, snow and dust charge a floating wire to thousands of volts, which can end in the radio. This drains static; it is no protection against lightning.',
    waysOut: {
      resistors:
        'Fit resistors of 100 kΩ to 1 MΩ in all, several in series, 2 W and 2 kV or more, from each wire to the earthed side.',
      'short-first': 'At least short the plug with something insulated before you connect it.',
    },
  },
} as const satisfies Readonly<Record<string, WarningWords>>;
