/**
 * The cautions, by the number of their line: one sentence to act on, one reason. Data: lineDistanceM, keepOutM (0: not known), awg, codeAwg,
 * runM, walkwayM, bands, powerW, mode, ruleSet, nerveVPerM, endV, hot (ends, links, loop, wire, feed, line), minutes. Every screen that shows one of
 * them ends with line 44.
 */
import type { Format } from '../format';
import type { Data, Message } from '../message';
import { modeName, ruleSetName } from './catalog-names';
import { bandName } from './names';
import { metres } from './readers';

export interface CautionWords {
  readonly act: Message;
  readonly reason: Message;
  /** A key of catalog/sources.ts. */
  readonly source: string;
}

const line = (act: Message, reason: Message, source: string): CautionWords => ({ act, reason, source });
/** Volts to two figures: the resistance behind them is no better known. */
const volts = (d: Data, f: Format): string => f.number(Number(d.endV), 2);

const keepOut = (d: Data, f: Format): string =>
  Number(d.keepOutM) > 0 ? metres(d, f, 'keepOutM') : 'the distance of the exposure result';

const hotPlaces: Readonly<Record<string, string>> = {
  ends: 'the wire ends',
  links: 'the open links',
  loop: 'the whole loop',
  wire: 'the whole wire',
  feed: 'the feed point',
  line: 'the open-wire line',
};

/** "the wire ends, the feed point and the open-wire line" */
function hotText({ hot }: Data): string {
  const names = String(hot)
    .split(' ')
    .map((place) => hotPlaces[place] ?? '');
  const last = names.pop() ?? '';
  return names.length === 0 ? last : `${names.join(', ')} and ${last}`;
}

function stationText(d: Data, f: Format): string {
  const bands = String(d.bands).split(' ').map(bandName).join(', ');
  const mode = d.mode === 'not-told' ? '' : ` ${modeName(String(d.mode))}`;
  return `${bands} with ${f.number(Number(d.powerW))} W${mode}`;
}

export const cautionNames: Readonly<Record<string, string>> = {
  'power-lines': 'Overhead power lines',
  'fall-path': 'Fall path',
  airfield: 'Airfields',
  'rf-exposure': 'People near the antenna',
  'not-alone': 'Do not work alone',
  climbing: 'Going up',
  launching: 'Launching a line',
  'wind-and-weather': 'Wind and weather',
  'mast-and-ropes': 'Mast and ropes',
  'trip-and-tread': 'Trip and tread',
  'wire-ends-voltage': 'High voltage on the wire',
  'fuel-and-implants': 'Implants and fuel',
  leaving: 'Leaving the place',
  lightning: 'Lightning',
  'local-codes': 'Local codes',
};

export const cautionLines: Readonly<Record<number, CautionWords>> = {
  1: line(
    'Walk the whole area and look up for overhead lines before you unpack.',
    'Most antenna electrocutions happen while something is going up or coming down.',
    'antenna-electrocutions',
  ),
  2: line(
    (d, f) => `Choose another spot if any overhead line is nearer than ${metres(d, f, 'lineDistanceM')}.`,
    'A mast, wire or rope can fall or swing its full length, any way. The rule asks for twice that, and more where the voltage is unknown.',
    'line-distance-rule',
  ),
  3: line(
    'Treat every overhead wire as live and bare, telephone-looking ones too.',
    'You cannot tell voltage or insulation by eye, and one pole may carry both.',
    'live-and-bare',
  ),
  4: line('Never lift a pole to gauge how high a line is.', 'Current can jump a gap to the tip.', 'line-height-sheet'),
  5: line(
    (_d, f) => `Reject any tree that stands or leans within ${f.length(3)} of a power line.`,
    'Work there belongs to line-clearance crews.',
    'line-clearance-trees',
  ),
  6: line(
    (_d, f) =>
      `Ask the line’s operator before working under a line, or in the UK within ${f.length(9)} of pole lines or ${f.length(15)} of pylon lines.`,
    'They know the voltage and the true clearance.',
    'work-near-lines',
  ),
  7: line(
    (_d, f) => `Check the distance to the nearest airfield or heliport: your support is over ${f.length(6)}.`,
    'Even a temporary mast can need notice close to a runway.',
    'airfield-rules',
  ),
  8: line(
    (d, f) =>
      `Get the landowner’s leave, and plan routes that keep the public ${keepOut(d, f)} from every part of the antenna.`,
    'You answer for people who do not know you are transmitting.',
    'exposure-of-others',
  ),
  9: line(
    'Note your grid reference, access road and phone coverage before you start.',
    'Help finds you only if you can say where you are.',
    'forestry-climbing',
  ),
  10: line(
    'Bring a second person for masts, ladders and anything above head height.',
    'Alone, a small slip becomes a long wait.',
    'lone-work',
  ),
  11: line(
    'Launch a line from the ground instead of climbing.',
    'The climb is the part most likely to hurt you.',
    'work-at-height',
  ),
  12: line(
    'Leave tree climbing to trained pairs with a rescuer on the ground.',
    'Rescue has to start at once if a climber is hurt or stuck.',
    'forestry-climbing',
  ),
  13: line(
    'Set a leaning ladder one out for four up, on firm level ground, tied or held.',
    'Steeper tips back, flatter slides.',
    'ladder-rules',
  ),
  14: line(
    'Keep three points of contact and your belt between the rails.',
    'Overreaching is what topples people.',
    'ladder-rules',
  ),
  15: line(
    'Keep metal ladders and poles away from anywhere a line could be touched.',
    'Metal in the hand makes you the path to earth.',
    'ladder-rules',
  ),
  16: line(
    'Switch the transmitter off and unplug the feed line before anyone goes up.',
    'Someone may key it while a hand is on the wire.',
    'navy-radio-course',
  ),
  17: line(
    'Clear the ground behind and beyond the branch before you throw or fire.',
    'Weights miss, bounce and whip back.',
    'engineering-judgement',
  ),
  18: line(
    'Wear eye and head protection, and gloves on running line.',
    'Eyes, heads and palms are the usual injuries when antennas go up.',
    'mast-raising-notes',
  ),
  19: line(
    'Never launch toward lines, roads, paths, roofs or people.',
    'A thrown line over a power wire is as deadly as a mast against it.',
    'live-and-bare',
  ),
  20: line(
    'Learn the local rules on slingshots, bows and air launchers before you use one.',
    'Some places treat them as weapons.',
    'local-law',
  ),
  21: line(
    'Let a snagged line go rather than pulling hard under it.',
    'The weight, or the branch, comes down where you stand.',
    'engineering-judgement',
  ),
  22: line(
    'Stop if the wind is moving branches or the mast will not stand steady.',
    'A half-raised mast has no guys to hold it.',
    'mast-weather',
  ),
  23: line('Work in dry weather.', 'Wet rope, wood and glass fibre conduct.', 'mast-weather'),
  24: line(
    'Use at least three guys, evenly spread, and double the stakes in soft soil.',
    'Single stakes pull out and the mast follows.',
    'mast-raising-notes',
  ),
  25: line(
    'Inspect ropes, guys and joints each time, and mix no parts from other masts.',
    'Hidden wear shows itself at full load.',
    'mast-raising-notes',
  ),
  26: line(
    'Let go and step away if the mast falls toward a line.',
    'Holding on connects you to it.',
    'line-distance-rule',
  ),
  27: line(
    'Leave slack or a weight on any end tied to a tree.',
    'Trees sway farther than wire stretches.',
    'engineering-judgement',
  ),
  28: line(
    (d, f) =>
      `Use strong wire: for a span of ${metres(d, f, 'runM')} the US code asks ${d.codeAwg} AWG or thicker, and yours is ${d.awg} AWG.`,
    'Thin wire breaks in wind or ice and falls on whatever is below.',
    'antenna-wire-code',
  ),
  29: line(
    'Flag every guy and low wire with bright streamers and keep them off paths.',
    'People and bicycles do not see thin line.',
    'mast-raising-notes',
  ),
  30: line(
    (d, f) =>
      `Keep wire over walkways above ${metres(d, f, 'walkwayM')} and over vehicle ways much higher, or close the way.`,
    'A raised arm, rider or load reaches farther than you think.',
    'overhead-clearance',
  ),
  31: line(
    (d, f) =>
      `Check the exposure result for ${stationText(d, f)}: keep people ${keepOut(d, f)} from any part of the antenna, counterpoise included.`,
    (d) =>
      `Close to the wire, electric and magnetic fields must each meet their own limit under the ${ruleSetName(String(d.ruleSet))}.`,
    'exposure-limits',
  ),
  32: line(
    'Treat neighbours, visitors and passers-by by the public limit.',
    'They have not been told and cannot choose.',
    'exposure-of-others',
  ),
  33: line(
    (d, f) => `Take no time-averaging credit for the ${f.number(Number(d.nerveVPerM))} V/m check below 10 MHz.`,
    'It guards against nerve effects that do not wait six minutes.',
    'exposure-limits',
  ),
  34: line(
    (d) => `Put ${hotText(d)} beyond reach.`,
    (d, f) => `They can carry about ${volts(d, f)} volts at your power and burn deep.`,
    'antenna-wire-code',
  ),
  35: line(
    'Keep counterpoise and radials where nobody treads or touches, and mark them.',
    'They are part of the antenna and can be as hot as the wire.',
    'exposure-of-others',
  ),
  36: line(
    'Start at the lowest power while someone watches the wire.',
    'Arcs, touching branches and wandering people show before harm is done.',
    'engineering-judgement',
  ),
  37: line(
    'Stop sending the moment anyone comes inside the keep-out line.',
    'The limit concerns people, and power is yours to remove.',
    'us-exposure-bulletin',
  ),
  38: line(
    'Ask anyone with a pacemaker, pump or other implant to stay well back and follow their doctor’s advice.',
    'Exposure limits were not set for devices.',
    'implants-and-fuel',
  ),
  39: line('Do not transmit beside refuelling or open fuel.', 'A spark from RF can light vapour.', 'implants-and-fuel'),
  40: line(
    'Lower the antenna with the radio disconnected and lines checked again.',
    'Lines and people may have arrived since you came.',
    'antenna-electrocutions',
  ),
  41: line(
    'Take every stake, wire and cord with you.',
    'Leftover line trips walkers and snares animals.',
    'engineering-judgement',
  ),
  42: line(
    'Never leave a wire up unattended where people can reach it.',
    'Others will touch, cut or climb it.',
    'exposure-of-others',
  ),
  43: line(
    (d, f) =>
      `Stop, leave everything and get into a building or hard-top vehicle at the first thunder, and stay ${f.number(Number(d.minutes))} minutes after the last.`,
    'A wire in the air carries a strike to your hands, and lowering it then is the worst moment.',
    'lightning-advice',
  ),
  44: line(
    'Follow local codes, the landowner and licensed or qualified trades wherever they ask for more than this app.',
    'These notes are general and cannot see your site.',
    'local-law',
  ),
  45: line(
    (_d, f) =>
      `Keep ${f.length(10.7)} from any wire, mast or person touching a power line and call the emergency number and the utility.`,
    'The ground itself may be live, and a second victim helps nobody.',
    'fallen-line',
  ),
  46: line(
    'Treat an RF burn as deep and see a doctor.',
    'The skin mark is smaller than the injury.',
    'navy-radio-course',
  ),
  47: line(
    'Never open or close a link with power on: radio off, coax unplugged, and its plug with whoever goes to the wire.',
    (d, f) => `An open link stands at about ${volts(d, f)} volts while you send, and burns deep.`,
    'antenna-wire-code',
  ),
  48: line(
    'Lower the wire to change a link: do not climb to it or lean a ladder on it.',
    'Links are changed often, and one slip is enough.',
    'work-at-height',
  ),
  49: line(
    'Look up for lines each time the wire comes down or goes up, and leave the links alone in wind or thunder.',
    'Every change of band is a raising of its own.',
    'mast-weather',
  ),
};
