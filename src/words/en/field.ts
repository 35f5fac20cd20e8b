/** What the field solution of this very antenna says. Currents to one digit and a half, which is all such figures bear. */
import type { Format } from '../format';
import type { Data, Message } from '../message';
import { many } from './many';
import { band, figure } from './readers';
import { swrText } from './swr';

const milliamps = (d: Data, f: Format, key: string): string => {
  const value = Number(d[key]);
  return value < 1 ? 'under 1 mA' : `about ${f.number(value, 2)} mA`;
};

/** "12 dB weaker", "3 dB stronger". */
function weaker(d: Data, f: Format, key: string): string {
  const db = Number(d[key]);
  if (Math.abs(db) < 1) return 'no weaker';
  return `${f.number(Math.abs(db), 2)} dB ${db > 0 ? 'weaker' : 'stronger'}`;
}

/** Where the coax begins. */
const feedEnd = (hasBox: boolean): string => (hasBox ? 'box' : 'feed point');
const atFeed = (distanceM: unknown): boolean => Number(distanceM) < 0.05;

/** 89 as "nearly straight up". */
function upwards(degrees: number, f: Format): string {
  if (degrees >= 75) return 'nearly straight up';
  const where = degrees >= 45 ? 'steeply' : degrees >= 25 ? 'at a middling angle' : 'low';
  return `${where}, ${f.number(degrees, 2)}° above the horizon`;
}

/** 0° and 180° lie along the wire, 90° and 270° across it. */
const sides: Readonly<Record<string, string>> = {
  round: 'about equally in every direction',
  broadside: 'across the wire, to both sides',
  along: 'along the wire, both ways',
  slanting: 'in several lobes between along the wire and across it',
  far: 'along the wire, away from the feed point',
  near: 'along the wire, over the feed point',
};

export const fieldWords = {
  'shield-currents': (d, f) =>
    `On ${band(d)} at ${figure(d, f, 'powerW', 3)} W, current on the outside of the coax where it enters: with no choke ${milliamps(d, f, 'noneMa')}, with the planned chokes ${milliamps(d, f, 'plannedMa')}${d.ownedMa === undefined ? '' : `, with what you own ${milliamps(d, f, 'ownedMa')}`}.${d.hasRadio === true ? ` At the radio ${milliamps(d, f, 'noneRadioMa')} and ${milliamps(d, f, 'plannedRadioMa')}${d.ownedMa === undefined ? '' : `, with your own ${milliamps(d, f, 'ownedRadioMa')}`}.` : ''}`,
  reception: (d, f) =>
    `The same backwards: with the planned chokes, noise from ${d.isPortable === true ? 'where you operate' : 'the house'} reaches the receiver ${weaker(d, f, 'houseDb')} on ${band(d)} than with none${d.outdoorsDb === undefined ? '' : `, and noise that the coax picks up outdoors ${weaker(d, f, 'outdoorsDb')}`}.`,
  'choke-duty': (d, f) =>
    `The choke ${atFeed(d.distanceM) ? `at the ${feedEnd(d.hasBox === true)}` : `${f.length(Number(d.distanceM))} down the coax`} stands at about ${figure(d, f, 'voltageV')} V and takes about ${figure(d, f, 'heatW')} W while keyed on ${band(d)}.`,
  'where-power-goes': (d, f) =>
    `Of ${figure(d, f, 'powerW', 3)} W from the radio on ${band(d)} about ${figure(d, f, 'radiatedW')} W are radiated: ${figure(d, f, 'lineW')} W stay in the line,${Number(d.devicesW) < 0.5 ? '' : ` ${figure(d, f, 'devicesW')} W in transformer and chokes on the way through,`} ${figure(d, f, 'nearW')} W warm ground, wire and shield chokes.`,
  'where-it-sends': (d, f) =>
    `On ${band(d)} it sends strongest ${upwards(Number(d.takeOffDeg), f)}${d.side === undefined || Number(d.takeOffDeg) >= 75 ? '' : `, ${sides[String(d.side)] ?? ''}`}. Low down, up to 15°, goes ${figure(d, f, 'lowPercent')} % of what it radiates; above 60° ${figure(d, f, 'highPercent')} %.`,
  'choke-house-holds': (d, f) =>
    `The usual places and ohms hold here: ${milliamps(d, f, 'houseMa')} per 100 W at most where the coax enters (${band(d, 'houseBand')}), against a goal of ${figure(d, f, 'goalMa')} mA.`,
  'choke-changed': (d, f) =>
    `The usual chokes would leave ${milliamps(d, f, 'houseMa')} per 100 W on ${band(d, 'houseBand')}; the chosen ones leave ${milliamps(d, f, 'chosenMa')} on ${band(d, 'chosenBand')}, ${figure(d, f, 'gainDb')} dB less. The goal is ${figure(d, f, 'goalMa')} mA.`,
  'choke-goal-missed': (d, f) =>
    `No set of chokes tried reaches the goal of ${figure(d, f, 'goalMa')} mA per 100 W: the best leaves ${milliamps(d, f, 'chosenMa')} on ${band(d, 'chosenBand')}. Lead the coax away from the wire, or lower the power.`,
  'choke-built-holds': (d, f) =>
    `Wound as this plan has them, and with rings from the worse end of their tolerance, ${milliamps(d, f, 'worstMa')} per 100 W enter at most, on ${band(d)}; with rings as their maker states them ${milliamps(d, f, 'nominalMa')}.`,
  'choke-built-raised': (d, f) =>
    `Wound for the usual ohms, and with rings from the worse end of their tolerance, they would leave ${milliamps(d, f, 'beforeMa')}. So more ohms are asked for: that leaves ${milliamps(d, f, 'worstMa')} at most, on ${band(d)}.`,
  'choke-built-misses': (d, f) =>
    `As they can be wound, and with rings from the worse end of their tolerance, ${milliamps(d, f, 'worstMa')} enter on ${band(d)}, more than the goal; with rings as their maker states them ${milliamps(d, f, 'nominalMa')}. Nothing that was tried with more ohms does better: measure, and lower the power if the shack feels it.`,
  'owned-untried': (d) =>
    `${many(Number(d.count), 'choke', 'chokes')} of yours with fewer ohms than the rest ${Number(d.count) === 1 ? 'was' : 'were'} not tried: together there are too many ways to place them.`,
  'ten-already': 'That is below 10 mA per 100 W, as low as is of any use.',
  'ten-possible': (d, f) =>
    `${figure(d, f, 'chokes')} chokes would bring it to ${milliamps(d, f, 'tenMa')} per 100 W on every band: ${String(d.set)}.`,
  'ten-impossible': 'None of the sets tried brings every band to 10 mA per 100 W.',
  'length-resonance': (d, f) =>
    `Solved for your height, ground and wire: ${f.length(Number(d.chosenM))} has its dip where you want it; the rule of thumb gives ${f.length(Number(d.ruleM))}.`,
  'length-worst-swr': (d, f) =>
    `Solved for your site: ${f.length(Number(d.chosenM))} leaves the worst band (${band(d, 'worstBand')}) at an SWR of ${figure(d, f, 'worstSwr')} behind the transformer; ${f.length(Number(d.ruleM))} by rule would leave ${figure(d, f, 'ruleSwr')} on ${band(d, 'ruleBand')}.`,
  'length-rule-holds': (d, f) =>
    `Solved for your site: the ${f.length(Number(d.ruleM))} of the rule of thumb hold, no length near them does better. The worst band (${band(d, 'worstBand')}) stands at an SWR of ${figure(d, f, 'worstSwr')} behind the transformer.`,
  'length-differs': (d, f) =>
    `The two differ by ${figure(d, f, 'percent')} %, more than a rule of thumb should. Check height, wire and ground in your answers, cut to the longer one and trim.`,
  'length-pays': (d, f) =>
    `${band(d)} pays for the others: it stands at an SWR of ${figure(d, f, 'chosen')}, and a wire cut for that band alone would bring it to ${figure(d, f, 'alone')}.`,
  'linked-leg': (d, f) =>
    `For ${band(d)} each leg is ${f.length(Number(d.chosenM))} up to its open link, solved at your place with the open pieces hanging on; the rule of thumb gives ${f.length(Number(d.ruleM))}.`,
  'linked-pieces':
    'What the open pieces do: joined to nothing, they hang on by the small gap of the link, and lower the dip by about half a per cent. A piece near a half-wave long takes part and moves it by 2 to 6 %.',
  'pair-of-its-own': (d) =>
    `${band(d)} gets legs of its own: on the third resonance of longer legs it would show SWR ${swrText(Number(d.swr))}.`,
  'pair-differs': (d, f) =>
    `The pair for ${band(d)} comes out at ${f.length(Number(d.chosenM))} tip to tip where the rule of thumb gives ${f.length(Number(d.ruleM))}, ${figure(d, f, 'percent')} % apart: its neighbours pull at it. Trim it after the longest.`,
  'feed-third-holds':
    'A third of the wire is the place to feed it: solved for your wire and ground, no other place tried does clearly better on your bands.',
  'feed-moved': (d, f) =>
    `Fed at ${figure(d, f, 'percent')} % of the wire and not at a third, the usual place: the worst band (${band(d, 'worstBand')}) then stands at an SWR of ${figure(d, f, 'worstSwr')} behind the transformer, at a third ${band(d, 'ruleBand')} would stand at ${figure(d, f, 'ruleSwr')}.`,
  'feed-told-holds': (d, f) =>
    `No other place tried does clearly better on your bands than the ${figure(d, f, 'percent')} % you named.`,
  'feed-better': (d, f) =>
    `You feed it at ${figure(d, f, 'percent')} % of the wire, and the plan keeps to that. Fed at ${figure(d, f, 'betterPercent')} % the worst band (${band(d, 'worstBand')}) would stand at an SWR of about ${figure(d, f, 'worstSwr')} behind the transformer; now ${band(d, 'ruleBand')} stands at about ${figure(d, f, 'ruleSwr')}.`,
  'radial-resonance': (d, f) =>
    `Solved at their height: a pair of raised radials resonates by itself at ${f.length(Number(d.chosenM))} each; the rule of thumb gives ${f.length(Number(d.ruleM))}.`,
  'radial-differs': (d, f) =>
    `Radials and rule differ by ${figure(d, f, 'percent')} %: ground so near below slows the wave on them. Keep them all alike and at one height.`,
  'radials-by-rule':
    'Radials on the ground keep the length found by measurement: the solver takes no wire on the surface itself, and a little more or less does not matter.',
  'counterpoise-holds': (d, f) =>
    `The usual counterpoise of ${f.length(Number(d.chosenM))} holds here: no other length tried takes clearly more work off the chokes, which take ${figure(d, f, 'chosenW')} W per 100 W at most.`,
  'counterpoise-moved': (d, f) =>
    `With a counterpoise of ${f.length(Number(d.chosenM))} the hottest choke takes ${figure(d, f, 'chosenW')} W per 100 W on the worst band; with the usual ${f.length(Number(d.ruleM))} it would take ${figure(d, f, 'ruleW')} W.`,
  'confidence-two': 'Currents with chokes at both ends of the coax are good to 3 dB, a factor of 1.4.',
  'confidence-one':
    'Currents with one choke or none are good to 6 dB, a factor of 2: the length of the coax and what the house ties it to decide them.',
  'confidence-heat': 'Heat in a choke is good to 25 %.',
  'confidence-solver': (d, f) =>
    `The solver puts its own error in impedance at ${figure(d, f, 'percent', 1)} % here. What is not in it: sag, other wires, buildings, and ground that differs from its class.`,
  'wires-close':
    'Two wires lie nearer to each other than four times their thickness, or leave a joint almost side by side: the solver is less sure of the current on both. Spread them if you can.',
  'segment-short':
    'A piece of wire is hardly longer than it is thick: the solver is less sure of the ohms there. Trust the measured dip over the computed one.',
  'segment-thick':
    'A conductor is thicker than a fiftieth of the wavelength: the solver takes it for a thin wire, so lengths and ohms are rougher on that band.',
  'ground-close':
    'A wire lies almost on the ground: its loss there and the dip depend on grass, damp and sag more than on what the solver knows. Raise it a little, or measure often.',
  'confidence-range':
    'Checked over average ground, 8 to 10 m up, with 15 to 35 m of coax on the ground. This antenna lies outside of that: read the currents with more doubt.',
} as const satisfies Readonly<Record<string, Message>>;

interface Placed {
  readonly name: string;
  readonly distanceM: number;
}

/** "20 beads at the box, 12 turns at 20.7 m along the coax from the box". */
export function placedText(chokes: readonly Placed[], hasBox: boolean, f: Format): string {
  const each = [...chokes]
    .sort((a, b) => a.distanceM - b.distanceM)
    .map(({ name, distanceM }) => `${name} at ${atFeed(distanceM) ? `the ${feedEnd(hasBox)}` : f.length(distanceM)}`);
  const areSome = chokes.some(({ distanceM }) => !atFeed(distanceM));
  return `${each.join(', ')}${areSome ? ` along the coax from the ${feedEnd(hasBox)}` : ''}`;
}

/** "5 kΩ at 1 m, 5 kΩ at 20.7 m along the coax from the box". */
export const chokeSetText = (
  chokes: readonly { readonly distanceM: number; readonly ohm: number }[],
  hasBox: boolean,
  f: Format,
): string =>
  placedText(
    chokes.map(({ distanceM, ohm }) => ({ distanceM, name: `${f.number(ohm / 1000, 2)} kΩ` })),
    hasBox,
    f,
  );
