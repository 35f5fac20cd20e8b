/** Why something people would expect is left out, and what it is called. */
import type { Message } from '../message';

export const notNeededDevices: Readonly<Record<string, string>> = {
  transformer: 'transformer at the feed point',
  '4to1-transformer': '4:1 transformer',
  '9to1-transformer': '9:1 transformer',
  '49to1-transformer': '49:1 transformer',
  '4to1-in-tuner': 'the 4:1 inside the tuner',
  choke: '1:1 choke',
  'choke-at-feed-point': '1:1 choke at the feed point',
  'choke-at-radio': '1:1 choke at the radio',
  'choke-at-entry': 'one more 1:1 choke at a wall',
  counterpoise: 'counterpoise or radials',
  'counterpoise-wire': 'separate counterpoise wire',
  'rf-earth': 'radio earth in the shack',
  tuner: 'tuner',
  'tuner-at-radio': 'second tuner at the radio',
  arrester: 'arrester',
  'coax-length': 'a special length of coax',
};

export const notNeeded: Readonly<Record<string, Message>> = {
  'transformer-centre':
    'No transformer: the middle of a half-wave is 50 to 75 Ω, which is near enough to coax. A ratio here would make the match worse.',
  'transformer-quarter-wave':
    'No transformer: a quarter-wave over radials is 36 to 60 Ω, which is near enough to coax.',
  'transformer-inverted-l':
    'No transformer to begin with: measure first. A good one reads 15 to 30 Ω plus what the ground loses; a perfect 50 Ω often means about 25 Ω of loss.',
  'transformer-on-open-wire':
    'No 4:1 on open-wire line, whatever the line is sold as: the tuner does not see 450 Ω but what the antenna has become at the end of the line. In 45 computed cases a 4:1 gained at most 0.1 dB and cost up to 2.2 dB.',
  'transformer-feed-point-tuner':
    'No transformer: the tuner at the feed point already makes 50 Ω, and a transformer before it only adds loss.',
  'transformer-near-50': 'No transformer: what you told is near enough to the line as it is.',
  'transformer-unknown':
    'No transformer can be named before the impedance is known. Measure it at the feed point, then enter it.',
  'transformer-49-on-non-resonant':
    'Not 49:1: this wire is not a half-wave, so it shows some hundreds of ohms. 300 Ω ÷ 49 is 6 Ω: SWR 8 and a hot core.',
  'transformer-9-on-half-wave':
    'Not 9:1: the end of a half-wave shows about 2500 Ω. Divided by 9 that is 270 Ω: SWR above 5.',
  'built-in-4to1':
    'Leave the 4:1 inside the tuner unused: it is usually a voltage type on one small core. Take the coax output and put a 1:1 choke on it where the line is open wire.',
  'choke-at-open-wire-feed-point':
    'No choke where open-wire line meets the wire: the line has no shield, so there is no outside for current to run on.',
  'choke-before-balanced-tuner':
    'No choke before a balanced tuner: it takes both wires of the line alike, and no coax begins there.',
  'choke-without-line':
    'No choke without a cable: there is no shield to carry current. Keep power, key and headphone leads short, and choke those if the radio misbehaves.',
  'choke-at-radio':
    'No choke at the radio for now: the one at the entry does its work. Add one if a computer, keyer or microphone misbehaves on one band.',
  'choke-second-portable': 'No choke at a wall: out here the one before the radio is that choke.',
  'counterpoise-balanced': 'No counterpoise: each half of the antenna works against the other.',
  'counterpoise-off-centre': 'No counterpoise: the short leg is what the long leg works against.',
  'counterpoise-wire-end-fed': (d, f) =>
    `No separate wire is needed: the first ${f.length(Number(d.lengthM))} of coax, down to the choke, are the counterpoise. A wire as well makes it better on the lowest band.`,
  'rf-earth': (d) =>
    d.upright === true
      ? 'No earth wire from the radio for the sake of the signal: the radials under the antenna do that. The bond at the entry is for safety and lightning.'
      : 'No earth wire from the radio for the sake of the signal: upstairs it is one more antenna. Chokes at the antenna and at the entry cure what it was meant to cure; the safety earth stays.',
  'tuner-resonant': 'No tuner: cut to length, this antenna meets the radio directly on this band.',
  'tuner-second': 'No second tuner at the radio: switch it out, or two tuners chase each other.',
  'arrester-portable':
    'No arrester in the field: nothing stays up. At the first thunder everyone goes inside or into a car, and the wire stays where it is.',
  'longer-coax':
    'No special length of coax: if its length changes the SWR, current runs on its outside, and a choke is the cure.',
};
