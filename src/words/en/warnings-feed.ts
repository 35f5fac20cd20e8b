/** Warnings about feed point, return path, transformer and tuning. */
import { say, type WarningWords } from './warning-message';

type D = Readonly<Record<string, number | string | boolean>>;

const radiators: Readonly<Record<string, string>> = {
  'straight-wire': 'a straight wire',
  'inverted-v': 'an inverted V',
  sloper: 'a sloper',
  vertical: 'a vertical',
  'inverted-l': 'an inverted-L',
  loop: 'a loop',
  'parallel-wires': 'parallel dipoles',
  'linked-wire': 'a linked dipole',
  'folded-wire': 'a folded dipole',
  other: 'this antenna',
};
const places: Readonly<Record<string, string>> = {
  centre: 'in the middle',
  'off-centre': 'off the middle',
  end: 'at its end',
  base: 'at its base',
  corner: 'at a corner',
  'side-middle': 'in the middle of a side',
};
const radiator = (d: D): string => radiators[String(d.radiator)] ?? String(d.radiator);
const place = (d: D): string => places[String(d.fedAt)] ?? String(d.fedAt);

const dropBand = (d: D): string => `Leave ${say.band(d)} out.`;
const ownWire = (d: D): string => `Hang a wire of its own for ${say.band(d)}, on the same feed point or apart.`;
const asked = (d: D): string =>
  ({
    radio: 'The radio alone stands',
    'radio-tuner': 'The radio’s own tuner reaches',
    'feed-point-tuner': 'A tuner at the feed point reaches',
  })[String(d.shackEnd)] ?? 'A tuner like yours reaches';

export const feedWarnings = {
  'no-such-feed-point': {
    text: (d) => `There is no feed point ${place(d)} on ${radiator(d)}.`,
    why: 'The place of the feed point decides what the antenna needs, so nothing can be planned before it is settled. All other answers are kept.',
    waysOut: {
      'feed-at': (d) => `Feed ${radiator(d)} ${place(d)}.`,
      'other-radiator': (d) => `Choose another radiator, one that can be fed ${place(d)}.`,
    },
  },
  'open-wire-on-one-wire': {
    text: (d) => `${say.line(d)} does not belong on this feed point: it has one wire, and the line has two alike.`,
    why: (d) =>
      `On the ${say.system(d)} the two wires of the line would carry different currents and radiate, in the house too. Coax with a choke keeps that outside.`,
    waysOut: {
      'use-coax': 'Feed it with coax, with the transformer and chokes that the system asks for.',
      'feed-centre': 'Or feed a wire in its middle with this line: a doublet.',
    },
  },
  'coax-on-doublet': {
    text: (d) =>
      `${say.line(d)} does not belong on a doublet that is not resonant: the SWR on it would waste most of the power.`,
    why: 'Such a wire shows tens to thousands of ohms. Open-wire line stands that with little loss; coax turns it into heat and overvoltage.',
    waysOut: {
      'use-open-wire':
        'Use open-wire or window line, two wires held apart, down to a 1:1 choke and a wide-range tuner.',
      'cut-resonant': 'Or cut the wire to a half-wave, half as long as the wave of its band, and keep the coax.',
      'tuner-at-feed-point': 'Or put an automatic tuner at the feed point, where line and wire meet.',
    },
  },
  'return-path-needed': {
    text: (d) => `Something is missing: the ${say.system(d)} has nothing to work against.`,
    why: 'What flows into the wire must flow out of something else. If you provide nothing, the outside of the coax does it, as far as the radio and your hand.',
    waysOut: {
      'counterpoise-wire': 'Put a counterpoise wire, which the antenna works against, on the ground terminal.',
      'coax-as-counterpoise':
        'Or let the first metres of coax do it, with a choke where they end: it stops the current on the outside.',
      'feed-with-coax': 'Or feed it with coax, whose first metres up to a choke can do it.',
      'ground-radials': 'Lay radials on the ground, sixteen or more wires that spread from the foot.',
      'elevated-radials': 'Or raise the base and stretch four equal radials.',
    },
  },
  'choke-without-return': {
    text: (d, f) =>
      `A choke at this box would take ${say.number(d, f, 'lowW')} to ${say.number(d, f, 'highW')} W of your ${say.watts(d, f, 'powerW')}.`,
    why: 'With no counterpoise the coax is what the wire works against. A choke at its very beginning stands in the way of the whole current, gets hot, and the SWR still reads a harmless 2 to 4. From our own field solutions.',
    waysOut: {
      'choke-further': (d, f) =>
        `Put the choke ${say.length(d, f, 'distanceM')} down the coax, one twentieth of the wave, in a box of its own; the coax above it is then the counterpoise.`,
      'counterpoise-wire': (d, f) =>
        `Or put a counterpoise wire of ${say.length(d, f, 'lengthM')} or more on the ground terminal.`,
    },
  },
  'open-wire-needs-choke': {
    text: (d) => `Do not run ${say.line(d)} straight into a coax socket.`,
    why: 'One wire would be earthed in the radio, the other not: the line then radiates all the way into the house, and the radio sees hundreds or thousands of ohms.',
    waysOut: {
      'choke-and-tuner':
        'End the line in a 1:1 choke, which keeps the currents of both wires equal, then a short piece of coax and a wide-range tuner. Not 4:1.',
      'balanced-tuner': 'Or use a balanced tuner, made for two-wire line, and keep the line up to it.',
      'coax-and-resonant': 'Or feed a resonant wire, one cut to the length of its band, with coax.',
    },
  },
  'band-not-served': {
    text: (d, f) => `This antenna does not work on ${say.band(d)}: SWR ${say.swr(d, f)} at the feed point.`,
    why: (d, f) =>
      `There the ${say.system(d)} shows about ${say.ohms(d, f, 'ohm')}. A tuner in the shack would only hide it: the power stays in the coax.`,
    waysOut: {
      'own-wire': ownWire,
      'open-wire-doublet': 'Feed a wire in its middle with open-wire line and a tuner: it works on every band.',
      'drop-band': dropBand,
    },
  },
  'off-centre-null': {
    text: (d, f) =>
      `No use on ${say.band(d)}: a feed point at ${say.number(d, f, 'percent')} % of the wire stands at a current minimum there, SWR ${say.swr(d, f)}.`,
    why: 'At such a place the wire shows thousands of ohms, and the coax would burn what a tuner lets through. The formula is rough so near the minimum; that it is unusable is certain.',
    waysOut: {
      'own-wire': ownWire,
      'other-fraction': (d, f) =>
        d.isSolved === true
          ? `Feed at ${say.number(d, f, 'percent')} % of the wire: solved for your wire, the worst of your bands is then clearly better off.`
          : 'Feed at another part, near a fifth of the wire. Another band may suffer instead.',
      'drop-band': dropBand,
    },
  },
  'wire-near-half-wave': {
    text: (d, f) =>
      `${say.length(d, f, 'lengthM')} of ${d.piece === 'counterpoise' ? 'counterpoise' : 'wire'} is within 5 % of ${d.n === 1 ? 'a half-wave' : `${d.n} half-waves`} on ${say.band(d)}.`,
    why: 'At a half-wave multiple the end shows thousands of ohms: the transformer runs hot, and few tuners cope.',
    waysOut: {
      'cut-to': (d, f) => `Cut it to ${say.length(d, f, 'lengthM')}, which is clear on every band you want.`,
      'change-length': 'Make it a tenth longer or shorter.',
      'drop-band': dropBand,
    },
  },
  'tuner-range': {
    text: (d, f) =>
      `Beyond ${d.shackEnd === 'radio' ? 'what the radio takes' : 'the tuner'} on ${say.band(d)}: SWR ${say.swr(d, f)}.`,
    why: (d, f) =>
      `${asked(d)} ${say.number(d, f, 'reach')} at most (common practice). ${d.shackEnd === 'radio' ? 'Above that it turns its power down.' : 'It may tune on one day and not on another.'}`,
    waysOut: {
      'wide-tuner': 'Use a wide-range tuner.',
      'tuner-at-feed-point': 'Put an automatic tuner at the feed point.',
      'other-length': 'Take another length of wire or line.',
      'free-length':
        'Let the plan choose a length that tunes on all bands: on open-wire line the wire need not resonate.',
      'easier-line': (d, f) =>
        `Make the line ${say.length(d, f, 'addedM')} longer, ${say.length(d, f, 'lengthM')} in all: SWR ${say.number(d, f, 'worstSwr')} at worst over your bands.`,
      'drop-band': dropBand,
    },
  },
  'tuner-zone': {
    text: (d, f) =>
      `Hard to tune on ${say.band(d)}: the wire is ${say.number(d, f, 'percent')} % from its first half-wave; expect SWR ${say.swr(d, f)}.`,
    why: (d, f) =>
      `Near its first half-wave a wire is high in resistance and reactance; behind 9:1 it takes about 30 % of distance to fall below SWR 5. ${asked(d)} ${say.number(d, f, 'reach')}.`,
    waysOut: {
      'wide-tuner': 'Use a wide-range tuner.',
      'tuner-at-feed-point': 'Put an automatic tuner at the feed point.',
      'other-length': 'Take another of the lengths that this plan lists.',
      'drop-band': dropBand,
    },
  },
  'leg-plus-line-half-wave': {
    text: (d, f) =>
      `Hard to tune on ${say.bands(d)}: one leg plus line is ${say.length(d, f, 'electricalM')} for the wave, ${say.number(d, f, 'waves')} of a wave from a half-wave multiple.`,
    why: 'There the tuner meets thousands of ohms. The wire is not at fault, and the ratio does not help: the length of the line does.',
    waysOut: {
      'line-to': (d, f) => `Make the line ${say.length(d, f, 'addedM')} longer: ${say.length(d, f, 'lengthM')} in all.`,
      'change-line': (_d, f) => `Add or remove ${f.length(1)} to ${f.length(2)} of line.`,
      'change-leg': 'Or change both legs by the same amount.',
    },
  },
  'harmonics-high': {
    text: (d, f) =>
      `One wire cannot meet every band: it favours ${say.band(d, 'favoured')}, and on ${say.band(d)} the dip falls at ${f.number(Number(d.resonanceMHz), 4)} MHz, ${f.number(Math.abs(Number(d.percent)), 2)} % ${Number(d.percent) > 0 ? 'above' : 'below'} what you asked.`,
    why: 'Only the two ends of a wire shorten it, so its higher resonances lie above exact multiples. That is so with every wire, and no fault of yours.',
    waysOut: {
      'do-not-cut-on': 'Do not go on cutting for the higher band: the lower one moves away.',
      'small-coil': (_d, f) => `A small coil about ${f.length(2)} from the transformer pulls the higher bands down.`,
    },
  },
  'wrong-transformer': {
    text: (d, f) =>
      `Your ${say.number(d, f, 'ratio')}:1 transformer does not belong here: SWR ${say.swr(d, f)} on ${say.band(d)}.`,
    why: (d, f) =>
      `${d.others === '' ? '' : `SWR ${say.swr(d, f, 'leastSwr')} or more on ${say.bands(d, 'others')} too. `}This feed point asks for ${Number(d.needed) === 1 ? 'no transformer at all' : `${say.number(d, f, 'needed')}:1`}. The ratio must fit the place on the wire.`,
    waysOut: {
      'use-needed': (d, f) =>
        Number(d.needed) === 1
          ? 'Leave the transformer out and use a 1:1 choke.'
          : `Use ${say.number(d, f, 'needed')}:1.`,
      'other-feed-point': 'Or keep it for an antenna whose feed point it fits.',
    },
  },
  'wrong-transformer-unknown': {
    text: (d, f) => `Your ${say.number(d, f, 'ratio')}:1 transformer may not belong here.`,
    why: 'Too little is known of this feed point to say which SWR it would give. Measure its impedance before you choose a ratio.',
    waysOut: {
      'use-needed': 'Measure at the feed point and enter what you find.',
      'other-feed-point': 'Or keep it for an antenna whose feed point it fits.',
    },
  },
  'two-in-one-box': {
    text: (d, f) =>
      `Too much for a two-in-one box: ${say.watts(d, f, 'averageW')} average while sending, and ${say.watts(d, f, 'limitW')} is the most.`,
    why: 'Transformer and choke heat each other in one box, the choke cannot stand where the system wants it, and a fault cannot be found.',
    waysOut: {
      'two-parts': 'Use a transformer and a choke in boxes of their own.',
      'less-power': (d, f) => `Or stay at ${say.watts(d, f, 'mostW')} in this mode.`,
    },
  },
  'current-4to1-off-centre': {
    text: (d, f) =>
      `A ${say.number(d, f, 'ratio')}:1 current transformer alone gets hot off the centre: up to ${say.watts(d, f, 'heatW')} of heat at your power.`,
    why: 'It has to transform and to stop the current on the coax in one part. The heat of stopping lands in the cores that carry the power, and what is left still enters the house.',
    waysOut: {
      'voltage-type': 'Use a 4:1 voltage transformer and a choke of its own below it.',
      'add-choke': 'If you keep it, add the separate choke as well, and one at the building entry.',
    },
  },
  'no-4to1-on-open-wire': {
    text: (d, f) => `No ${say.number(d, f, 'ratio')}:1 on open-wire line: use a 1:1 choke.`,
    why: 'The tuner does not see the line’s own ohms but the antenna through it. Where that is low, a ratio makes it lower, and the tuner loses up to 2 dB; where it is high, a ratio gains next to nothing.',
    waysOut: {
      'one-to-one-choke': 'End the line in a 1:1 choke.',
      'balanced-tuner': 'Or use a balanced tuner.',
    },
  },
  'built-in-4to1': {
    text: 'Do not use the tuner’s line posts: the 4:1 built in there costs power and balance.',
    why: 'It is usually a small voltage type. On a short wire the line presents some ohms, and 4:1 makes it a quarter of that: more current, up to 2 dB more loss.',
    waysOut: {
      'unbalanced-socket': 'Use the tuner’s coax socket, with a 1:1 choke between line and coax.',
      'one-to-one-choke': 'Any 1:1 choke rated for your power does it.',
      'balanced-tuner': 'Or use a balanced tuner.',
    },
  },
} as const satisfies Readonly<Record<string, WarningWords>>;
