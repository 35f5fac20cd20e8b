/** What is said of a part the operator owns. Keys are the verdict codes of the rules. */
import type { Format } from '../format';
import type { Data, Message } from '../message';
import { conductorName, coreName, lineName, wireName } from './catalog-names';
import { placeNames } from './devices';
import { plural } from './many';
import { bandName } from './names';
import { figure, metres, ohms } from './readers';
import { ratioText } from './why';

const ratio = (d: Data, f: Format, key = 'ratio'): string => ratioText(Number(d[key]), f);
const place = (d: Data, key: string): string => placeNames[String(d[key])] ?? '';
const weakest = (d: Data, f: Format): string => `about ${ohms(d, f, 'ohm')} on ${bandName(String(d.band))}`;

export const verdictNames: Readonly<Record<string, string>> = {
  fits: 'fits',
  'fits-elsewhere': 'fits elsewhere',
  'too-small': 'too small',
  wrong: 'does not belong here',
};

const transformers: Readonly<Record<string, Message>> = {
  'transformer-fits': (d, f) =>
    d.ratingKnown === true
      ? `${ratio(d, f)} is what this feed point asks for, and the rating is enough.`
      : `${ratio(d, f)} is what this feed point asks for. Its rating is not known: it should be ${figure(d, f, 'neededW')} W or more for voice. Stop if it gets too hot to hold.`,
  'transformer-fits-nearly': (d, f) =>
    `${ratio(d, f)} instead of ${ratio(d, f, 'needed')}: usable, and adds SWR ${figure(d, f, 'swr')} of its own.`,
  'transformer-current-balanced': (d, f) =>
    `${ratio(d, f)} of the current type has the right ratio here and helps to isolate. The choke stays.`,
  'transformer-current-off-centre': (d, f) =>
    `The ratio is right, the type is not: at an off-centre feed point a current type fights the voltage on the shield, and about ${figure(d, f, 'heatW')} W would heat it. Take a ${ratio(d, f, 'needed')} voltage type and a choke of its own.`,
  'transformer-other-ratio': (d, f) =>
    `${ratio(d, f)} does not belong at this feed point, which asks for ${ratio(d, f, 'needed')}: SWR about ${figure(d, f, 'swr')} from the wrong ratio alone.`,
  'transformer-not-here': (d, f) =>
    `${ratio(d, f)} does not belong here: this feed point is near 50 Ω by itself, and the ratio would make SWR about ${figure(d, f, 'swr')} of it.`,
  'transformer-on-open-wire': (d, f) =>
    `No ${ratio(d, f)} on open-wire line: it makes the low resistances lower, where tuners lose most. A 1:1 choke belongs there.`,
  'transformer-doublet-on-coax': (d, f) =>
    `No ${ratio(d, f)} here: a doublet of no particular length shows another impedance on every band, and no one ratio suits them.`,
  'transformer-impedance-unknown': (d, f) =>
    `Leave the ${ratio(d, f)} out until the impedance of the feed point is known. Measure it, enter it, and look again.`,
  'transformer-at-tuner': (d, f) => `No ${ratio(d, f)} beside a tuner at the feed point: the tuner transforms already.`,
  'transformer-rating': (d, f) =>
    `Rated ${figure(d, f, 'ratingW', 3)} W, which is for voice. Your mode and power average ${figure(d, f, 'averageW')} W while keyed and ask for a ${figure(d, f, 'neededW')} W part.`,
  'one-to-one-is-choke': (d, f) =>
    `A 1:1 of the current type is a choke. Use it ${place(d, 'at')}, if it has ${ohms(d, f, 'ohm')} or more on your lowest band; the ratio does not tell that.`,
  'one-to-one-voltage': 'A 1:1 of the voltage type changes nothing and stops no current on the coax. Leave it out.',
  'two-in-one-fits': (d, f) =>
    `Good enough at this power: ${figure(d, f, 'averageW')} W average, and such a box stands about ${figure(d, f, 'mostW')} W. The choke before the house stays.`,
  'two-in-one-heat': (d, f) =>
    `${figure(d, f, 'averageW')} W average is too much for transformer and choke in one box: about ${figure(d, f, 'mostW')} W is its limit, 100 W of voice. Two heat sources, one lid.`,
  'two-in-one-no-return': (d, f) =>
    `It puts the choke right at the box, and your counterpoise is the coax below it: the choke would take about ${f.number(Number(d.share) * 100, 1)} % of the power while the SWR looks fair. With a counterpoise wire of ${metres(d, f, 'lengthM')} on its ground terminal it can serve at low power.`,
};

const chokes: Readonly<Record<string, Message>> = {
  'choke-fits': (d, f) =>
    `${weakest(d, f)}, its weakest band, against ${ohms(d, f, 'needed')} needed: good for every choke here.`,
  'choke-fits-first': (d, f) =>
    `${weakest(d, f)}, its weakest band, against ${ohms(d, f, 'needed')} needed ${place(d, 'at')}: there it fits. It is not enough for the ${ohms(d, f, 'otherOhm')} ${place(d, 'elsewhere')}.`,
  'choke-fits-elsewhere': (d, f) =>
    `${weakest(d, f)}: too little ${place(d, 'at')}, where ${ohms(d, f, 'needed')} are needed, but enough for the ${ohms(d, f, 'otherOhm')} ${place(d, 'elsewhere')}.`,
  'choke-too-small': (d, f) =>
    `Too small: ${weakest(d, f)}, and ${ohms(d, f, 'needed')} are needed. More turns, one more ring, or a second one in series.`,
  'choke-reactive': (d, f) =>
    `Too small for its kind: ${weakest(d, f)}, nearly all of it reactance. Below ${ohms(d, f, 'needed')} such a choke can resonate with the cable and raise the current.`,
  'choke-capacitive': (d, f) =>
    `Too many turns for the high bands: on ${bandName(String(d.band))} it is past its own resonance and has ${ohms(d, f, 'ohm')} of ${ohms(d, f, 'needed')} needed. Put a second one with fewer turns in series.`,
  'choke-not-here': 'No place for a choke here: nothing in this chain has a shield whose outside could carry current.',
  'choke-turns': (d, f) =>
    `${figure(d, f, 'turns')} turns of ${lineName(String(d.line))} do not go through a ${coreName(String(d.core))}: ${Number(d.fit) === 0 ? 'none fit' : `${d.fit} fit`} in one layer. Count the passes through the hole again.`,
  'choke-of-open-line':
    'Open-wire line cannot be wound tightly without upsetting it. Wind a choke of thin coax or a close pair of insulated wires.',
  'core-for-transformer': (d) =>
    `Makes the transformer: ${d.turns} and ${d.secondaryTurns} turns on ${plural(d.count, 'one ring', `${d.count} stacked rings`)}.`,
  'core-for-planned-choke': (d) =>
    `Makes the choke ${place(d, 'at')}, as planned: ${Number(d.secondTurns) > 0 ? `${d.turns} and ${d.secondTurns} turns` : `${d.turns} turns`} of ${conductorName(String(d.line))}.`,
  'core-is-part': (d) =>
    `Goes into the ${d.device === 'choke' ? 'choke' : 'transformer'} ${place(d, 'at')}: ${d.have} of the ${d.count} rings that the plan asks for.`,
  'core-for-choke': (d, f) =>
    `Makes a choke: ${d.turns} turns of ${lineName(String(d.line))} have ${weakest(d, f)}, its weakest band, against ${ohms(d, f, 'needed')} needed.`,
  'core-for-first-choke': (d, f) =>
    `Makes the choke ${place(d, 'at')}: ${d.turns} turns of ${lineName(String(d.line))} have ${weakest(d, f)} against ${ohms(d, f, 'needed')} needed. It is not enough for the ${ohms(d, f, 'otherOhm')} ${place(d, 'elsewhere')}.`,
  'core-for-other-choke': (d, f) =>
    `${d.turns} turns of ${lineName(String(d.line))} have ${weakest(d, f)}: too little ${place(d, 'at')}, but enough for the ${ohms(d, f, 'otherOhm')} ${place(d, 'elsewhere')}.`,
  'core-too-small': (d) =>
    `Too small: ${lineName(String(d.line))} does not go through often enough. It still serves on a power or computer lead.`,
  'core-too-few-ohms': (d, f) =>
    `Not enough alone: the best winding, ${d.turns} turns of ${lineName(String(d.line))}, has ${weakest(d, f)} against ${ohms(d, f, 'needed')} needed. With a second winding in series, one for the low and one for the high bands, it may do.`,
  'core-not-here': (d) => `Nothing in this chain is wound on a ring, so the ${coreName(String(d.core))} is not needed.`,
};

const wiresAndLines: Readonly<Record<string, Message>> = {
  'wire-fits': (d, f) =>
    `Enough: ${metres(d, f, 'lengthM')} of ${metres(d, f, 'neededM')} needed with what is cut long.`,
  'wire-other-kind': (d) =>
    `Long enough, but the plan is made for ${wireName(String(d.planned))}: choose ${wireName(String(d.wire))} as the wire, because insulation changes the length by 2 to 3 %.`,
  'wire-part': (d, f) =>
    `Enough for the longest piece, ${metres(d, f, 'longestM')}, not for all pieces, ${metres(d, f, 'neededM')}.`,
  'wire-return': (d, f) =>
    `Too short for the radiator, but enough for a radial or the counterpoise of ${metres(d, f, 'pieceM')}.`,
  'wire-too-short': (d, f) =>
    `Too short: ${metres(d, f, 'lengthM')} of ${metres(d, f, 'neededM')}. Two pieces well joined and soldered do as well as one.`,
  'line-fits': (d, f) => `Right kind, and long enough: ${metres(d, f, 'neededM')} are used.`,
  'line-other-coax': (d, f) =>
    `${lineName(String(d.line))} serves as well: ${figure(d, f, 'lossDb')} dB on the highest band over ${metres(d, f, 'neededM')}. Choose it as the feed line to have the plan count with it.`,
  'line-lossy': (d, f) =>
    `Serves, at a price: ${metres(d, f, 'neededM')} of ${lineName(String(d.line))} lose ${figure(d, f, 'lossDb')} dB on the highest band even when matched. Thicker coax or a shorter run loses less.`,
  'line-75-ohm': (d, f) =>
    `75 Ω coax serves: ${figure(d, f, 'lossDb')} dB over ${metres(d, f, 'neededM')}, SWR up to 2.25 at the radio on a matched antenna. Choose it as the feed line to have the plan count with it.`,
  'line-for-jumper': (d, f) =>
    `Not the feed line here, but the jumper of ${metres(d, f, 'lengthM')} between choke and tuner.`,
  'line-too-short': (d, f) =>
    `Too short: ${metres(d, f, 'lengthM')} of ${metres(d, f, 'neededM')}. Joined with good plugs and sealed, two pieces serve.`,
  'line-power': (d, f) =>
    `${lineName(String(d.line))} stands about ${figure(d, f, 'mostW')} W on the highest band when matched, and you average ${figure(d, f, 'averageW')} W while keyed.`,
  'line-open-for-coax':
    'Open-wire line does not take the place of coax: it asks for a 1:1 choke at its end and a wide-range tuner. Choose it as the feed line to see that plan.',
  'line-coax-for-open': (d) =>
    `${lineName(String(d.line))} does not take the place of open-wire line: at the SWR of this antenna it turns much of the power into heat.`,
  'line-not-here': 'This plan has no feed line.',
};

export const verdicts: Readonly<Record<string, Message>> = { ...transformers, ...chokes, ...wiresAndLines };
