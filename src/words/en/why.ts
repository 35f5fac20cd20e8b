/** Why a link of the chain is there, is of that kind, or stands in that place. Keys are the reason codes of the rules. */
import type { Format } from '../format';
import type { Data, Message } from '../message';
import { lineName } from './catalog-names';
import { band, figure, metres, ohms } from './readers';

/** 0.5 as "1:2", 49 as "49:1". */
export const ratioText = (ratio: number, f: Format): string =>
  ratio < 1 ? `1:${f.number(1 / ratio, 3)}` : `${f.number(ratio, 3)}:1`;
const ratio = (d: Data, f: Format): string => ratioText(Number(d.ratio), f);
/** Nothing where it is less than half an ohm. */
const reactance = (d: Data, f: Format): string =>
  Math.abs(Number(d.x)) < 0.5 ? '' : ` (${figure(d, f, 'x')} Ω reactive)`;
const ends = (d: Data, f: Format, key = 'swr'): string =>
  Number(d[key]) > 50 ? 'above 50' : `about ${figure(d, f, key)}`;

const transformer: Readonly<Record<string, Message>> = {
  'ratio-off-centre': (d, f) =>
    `${ratio(d, f)} because a wire fed at a third shows about ${ohms(d, f)} on the bands it serves, and the coax wants 50 Ω.`,
  'voltage-type-off-centre': (d, f) =>
    `Voltage type, with the choke as a part of its own: the transformer sets the ratio, the choke stops the current, and the heat of stopping it stays out of the transformer. A 4:1 current type alone would take up to 34 W of every 100 W; this station averages ${figure(d, f, 'averageW')} W while keyed.`,
  'ratio-end-fed': (d, f) =>
    `${ratio(d, f)} because the end of a half-wave shows about ${ohms(d, f)}, which ÷ ${figure(d, f, 'ratio')} is 50 Ω. 56:1 and 64:1 fit too. At ${figure(d, f, 'powerW', 3)} W the wire end stands at about ${figure(d, f, 'peakV')} V peak: out of reach.`,
  'ratio-non-resonant': (d, f) =>
    `${ratio(d, f)} because a wire that is no half-wave on any band shows some hundreds of ohms with reactance. ${ratio(d, f)} brings that within a wide-range tuner’s reach; it does not make 50 Ω.`,
  'ratio-non-resonant-vertical': (d, f) =>
    `${ratio(d, f)} because an upright wire of no particular length shows 100 to 400 Ω with reactance on most bands. The tuner does the rest.`,
  'ratio-loop-one-band': (d, f) => `${ratio(d, f)} because a full-wave loop shows 100 to 130 Ω on its lowest band.`,
  'loop-quarter-wave-section': (d, f) =>
    `Instead of the transformer, ${metres(d, f, 'lengthM')} of 75 Ω foam coax between loop and feed line does the same on this one band: a quarter-wave of 75 Ω turns about 110 Ω into 50 Ω.`,
  'ratio-loop-bands': (d, f) =>
    `${ratio(d, f)} because a loop shows 100 to 300 Ω over several bands. SWR stays near 2. Open-wire line with a wide-range tuner is the other way.`,
  'ratio-folded-dipole': (d, f) =>
    `${ratio(d, f)} because folding the wire back on itself raises 60 to 75 Ω fourfold, to about 280 Ω.`,
  'ratio-twin-lead-end': (d, f) =>
    `${ratio(d, f)} where 300 Ω line becomes 50 Ω coax: 300 ÷ 6 is 50. The line itself matches the folded dipole.`,
  'ratio-told': (d, f) =>
    `${ratio(d, f)} for the ${figure(d, f, 'r', 3)} Ω you told${reactance(d, f)}: SWR ${ends(d, f)} after it, ${ends(d, f, 'without')} without.`,
  'ratio-computed': (d, f) =>
    `${ratio(d, f)} for the ${figure(d, f, 'r')} Ω computed here${reactance(d, f)}: SWR ${ends(d, f)} after it, ${ends(d, f, 'without')} without.`,
  'either-type-balanced':
    'Voltage or current type: both sides of this antenna are alike, so either works. The choke after it does the isolating.',
  'drains-static': 'Its winding is a path for static from the wire to the shield, so the wire cannot charge up.',
};

const antennaChoke: Readonly<Record<string, Message>> = {
  'choke-centre-fed': (d, f) =>
    `At the feed point, ${ohms(d, f)} or more: the inside of the shield meets one leg, and so does the outside. Without the choke the outside of the coax is a third leg that ends at the radio. 1 kΩ takes 10 dB off that current, 5 kΩ takes 22 dB.`,
  'choke-loop': (d, f) =>
    `At the feed point, ${ohms(d, f)} or more: both sides of the antenna are alike, coax is not. The choke keeps the outside of the shield from becoming a third side.`,
  'choke-noise':
    'Against noise from the house ask for 5 kΩ: what lowers the current when sending lowers the noise by as many decibels.',
  'choke-off-centre': (d, f) =>
    `${ohms(d, f)} or more, ${metres(d, f, 'distanceM')} below the transformer: off the centre the shield stands at some hundreds of volts, and the transformer does not stop that. Anywhere from ${f.length(0.3)} to ${f.length(1)} differs by 3 dB at most.`,
  'choke-off-centre-heat': (d, f) =>
    `This is hard work for a choke: on ${band(d)} about ${figure(d, f, 'heatW')} W of heat at ${figure(d, f, 'averageW')} W average in 5 kΩ. 10 kΩ takes two fifths off that, 1 kΩ doubles it. Give it air and more core, or lower the power.`,
  'choke-end-fed': (d, f) =>
    `${ohms(d, f)} or more, ${metres(d, f, 'distanceM')} down the coax, one twentieth of the wave on ${band(d)}: the coax above it is the counterpoise and ends here. In a choke of no more ohms than that, up to about ${figure(d, f, 'heatW')} W of heat at your power.`,
  'choke-end-fed-more-room': (d, f) =>
    `Where there is room, ${metres(d, f, 'distanceM')} is better: on the lowest band about a third of the current reaches the house.`,
  'choke-end-fed-short-line':
    'The coax is too short to be the counterpoise and still end before the radio. Add a counterpoise wire at the box, or take longer coax.',
  'choke-beside-wire':
    'It stays down the coax although a counterpoise wire is fitted: right at the box it takes only a little off the current on the low bands.',
  'choke-at-box': (d, f) =>
    `At the box, ${ohms(d, f)} or more: what hangs on the ground terminal carries the return current, and the coax is cut off. Never with nothing there: the choke would take 60 to 90 % of the power while the SWR looks fair.`,
  'choke-non-resonant-shield': (d, f) =>
    `${ohms(d, f)} or more, ${metres(d, f, 'distanceM')} down the coax, because the coax above it is all the wire works against. Better: counterpoise wires at the box and the choke there. On 80 m this choke can take most of the power.`,
  'choke-vertical': (d, f) =>
    `At the base, ${ohms(d, f)} or more: otherwise the outside of the coax is one more radial, and it leads into the house.${Number(d.ohm) > 1000 ? '' : ' More ohms bring nothing here.'}`,
  'choke-vertical-radials':
    'Join the shield to the radials at the base; the choke goes on the house side of that joint.',
  'choke-vertical-no-radials':
    'What the upright works against has to be fitted before the choke: the choke takes the coax out of that task.',
  'choke-doublet-on-coax': (d, f) =>
    `At the feed point, ${ohms(d, f)} or more: a doublet of no particular length can show thousands of ohms, and a small choke would be no obstacle.`,
  'choke-other-balanced': (d, f) =>
    `At the feed point, ${ohms(d, f)} or more: both sides are alike and the coax is not.`,
  'choke-other-unbalanced': (d, f) =>
    `Near the feed point, ${ohms(d, f)} or more: one side of an unbalanced antenna is the shield, and the choke decides where that side ends.`,
  'choke-below-tuner': (d, f) =>
    `Below the tuner, ${ohms(d, f)} or more: the tuner matches, it does not isolate. Its control cable needs a choke too.`,
  'choke-cannot-stop-pick-up':
    'Your coax runs under or beside the wire: this choke cannot stop what the cable picks up there. Move the cable, or rely on the choke at the house.',
  'choke-reactive-minimum': (d, f) =>
    `Mostly resistive ferrite, mix 31 or 43, cannot resonate with the cable. A coil of coax or a mix 61 choke is mostly reactive: with ${ohms(d, f)} or more on every band it does as well and runs cooler, with fewer it can resonate and raise the current.`,
  'choke-raised': (d, f) => `${ohms(d, f)} and not less, because there is trouble in the shack already.`,
  'choke-no-cable': (d, f) =>
    `How to make it is not told: every coax of our list that can be wound gets too hot inside a choke at ${figure(d, f, 'averageW')} W on average. Buy one made for that power, send with less, or choose a mode with pauses.`,
  'choke-ohms-solved': (d, f) =>
    `${ohms(d, f)} or more here, as solved for this antenna: with fewer too much current reaches the building.`,
  'choke-further': (d, f) =>
    `One choke more, ${ohms(d, f)} at ${metres(d, f, 'distanceM')}, as solved for this antenna: the two usual ones leave too much current at the building.`,
  'choke-is-both':
    'The coax is short, so one choke stands for both: the one at the antenna and the one before the house.',
};

const otherChokes: Readonly<Record<string, Message>> = {
  'entry-two-ways': (d, f) =>
    `RF reaches your house in two ways: out of the feed point, and picked up by the cable. One choke at each end deals with both. ${ohms(d, f)} or more.`,
  'entry-if-only-one':
    'If there is only one choke: here against RF in the house or noise from the house, at the antenna for a stable SWR and noise picked up outdoors.',
  'entry-earth-first':
    'Order at the wall: first arrester and bond, then the choke, then inside. Lightning and shield current leave outside; noise from the house stays inside.',
  'entry-portable': 'With no wall it stands before the radio; it is the same choke, not one more.',
  'radio-end-fed': (d, f) =>
    `One more at the radio, ${ohms(d, f)} or more: end-feds leave most on the cable, and wiring indoors picks up its own.`,
  'radio-trouble': (d, f) =>
    `One at the radio, ${ohms(d, f)} or more, because RF is in the shack already. Choke the power, computer and key leads too: 8 to 12 turns on a 36 mm mix 31 ring each.`,
  'open-wire-becomes-coax': (d, f) =>
    `Where open-wire line becomes coax, ${ohms(d, f)} or more: both wires of the line are alike, the socket is not. One wire on the pin and the other on the shell would put half the power on the outside of everything.`,
  'open-wire-meets-tuner': (d, f) =>
    `Between open-wire line and a tuner whose output is unbalanced, ${ohms(d, f)} or more: the line goes to the choke, the choke to the coax socket of the tuner.`,
  'choke-behind-transformer': (d, f) =>
    `Behind the transformer, ${ohms(d, f)} or more: both wires of the line are alike, coax is not. The choke keeps the outside of the coax out of the antenna.`,
  'never-4to1': (_d, f) =>
    `1:1 and never 4:1: on a short doublet the line shows 10 or 20 Ω on the lowest band, and 4:1 makes that 3 or 5 Ω, where tuners lose most. If a band will not tune, change the line by ${f.length(1)} to ${f.length(2)}, not the ratio.`,
};

const lines: Readonly<Record<string, Message>> = {
  'line-twin-matched': (d) =>
    `${lineName(String(d.line))} has the ohms of the folded dipole: on the band it is cut for the SWR on it is low, and so is the loss. Keep it a hand’s width from metal and twist it once every metre or so.`,
  'line-coax': (d) => `${lineName(String(d.line))}: its inside carries the signal, its outside should carry nothing.`,
  'line-square': (d, f) =>
    `Lead it away at a right angle to the wire for ${metres(d, f, 'legM')}, the length of a leg, then along the ground: the cable then picks up least, and the ground soaks up what is left.`,
  'line-under-wire':
    'It runs under or beside the wire, where it picks up current whatever choke is at the feed point. Re-route it if you can; if not, the choke at the entry is the one that counts.',
  'line-is-counterpoise': (d, f) =>
    `These ${metres(d, f, 'lengthM')} of coax are the counterpoise: their outside carries the wire’s end current. Lay them out straight, out of reach, and do not coil them.`,
  'line-part-of-antenna': (d, f) =>
    `These ${metres(d, f, 'lengthM')} of coax belong to the antenna. Let them hang straight down.`,
  'line-75-ohm':
    '75 Ω coax is fine: on a matched antenna the radio sees 2.25:1 at worst and mostly less, and the extra loss is below 0.2 dB. Use plugs made for it and do not coil it tightly.',
  'line-doublet-on-coax':
    'A doublet of no particular length belongs on open-wire line: on coax the mismatch turns much of the power into heat. Change the line, or cut the wire to resonance.',
  'line-open-wire': (d) =>
    `${lineName(String(d.line))}: it loses little at any SWR, so the tuner can sit indoors. Keep it a hand’s width from metal and twist it once every metre or so.`,
  'line-clear-length': (d, f) =>
    `${metres(d, f, 'lengthM')} of it tunes more easily than ${metres(d, f, 'toldM')}: one leg plus line then stays away from a half-wave on every band.`,
  'line-open-after-tuner':
    'The tuner at the feed point makes 50 Ω, so coax belongs after it. Open-wire line here turns the 50 Ω into something else again.',
  'line-inside':
    'Inside it carries nothing on its outside any more, as long as the choke at the entry stays the last thing outdoors. Keep it away from mains and computer leads.',
  'line-jumper': (d, f) =>
    `${metres(d, f, 'lengthM')} of thick coax from choke to tuner, shorter if the room allows and never more than ${f.length(5)}: the SWR on this piece is high.`,
  'line-jumper-matched': (d, f) =>
    `${metres(d, f, 'lengthM')} of coax from choke to radio. The transformer has made 50 Ω of the line, so any 50 Ω coax does, and it may be as long as the room needs.`,
};

const shack: Readonly<Record<string, Message>> = {
  'arrester-bond':
    'Arrester and a short thick bond to the main earth where the coax comes in: they protect the house. Unplugging, outside, before the storm protects the radio. Follow your local code.',
  'arrester-open-wire':
    'One arrester or spark gap for each wire of the line, with a short thick bond to the main earth, where the line comes in. Follow your local code.',
  'arrester-indoors':
    'A wire on a balcony is outdoors for lightning. For one wholly under the roof, ask your local code whether arrester and bond are wanted.',
  'tuner-inside-radio':
    'The tuner inside the radio evens out the band edges, up to SWR 3. It does not make a wrong antenna right.',
  'tuner-inside-too-narrow':
    'A wide-range tuner belongs here: the one inside the radio reaches SWR 3, and this antenna shows 5 to 10 on some bands.',
  'tuner-wide': 'Your wide-range tuner does the matching. Losses in the line before it stay.',
  'tuner-wide-skip-4to1':
    'Your wide-range tuner does the matching, from its coax output. Leave its built-in 4:1 alone.',
  'tuner-balanced':
    'Both wires of the line go straight to the balanced tuner: it treats them alike, so no choke and no 4:1 before it.',
  'tuner-balanced-on-coax':
    'A balanced tuner works on coax too: centre to one post, shield to the post that can be earthed.',
  'tuner-feed-point':
    'The tuner at the feed point takes the place of the transformer: it matches where the mismatch is, so the coax runs at low SWR.',
  'tuner-missing':
    'A wide-range tuner is missing: this antenna shows SWR 5 to 10 and more, and the radio alone would turn its power down.',
  'radio-50-ohm': 'The radio wants 50 Ω and a shield that carries no current.',
};

export const why: Readonly<Record<string, Message>> = {
  ...transformer,
  ...antennaChoke,
  ...otherChokes,
  ...lines,
  ...shack,
};
