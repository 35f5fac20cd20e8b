/** What weight, wind and ice do to the wire, in sentences. Pulls in newtons and in kilograms-force for the hand. */
import type { Message } from '../message';

const kilograms = (newton: unknown): number => Number(newton) / 9.80665;

export const spanNames: Readonly<Record<string, string>> = {
  span: 'the wire',
  leg: 'each leg',
  top: 'the top wire',
  side: 'each side',
};

export const mechanicsWords = {
  sag: (d, f) =>
    `Hang ${spanNames[String(d.span)] ?? 'the wire'} with ${f.length(Number(d.sagM))} of sag over ${f.length(Number(d.spanM))}: it then pulls with ${f.number(Number(d.restN), 2)} N, the weight of ${f.number(kilograms(d.restN), 2)} kg, 1/${f.number(Number(d.factor), 2)} of what breaks it.`,
  'heavy-centre': (d, f) =>
    `Most of that sag comes from the ${f.number(kilograms(d.centreN), 2)} kg that hang from its middle. Hold them up with a rope or a pole of their own, or take lighter coax.`,
  weather: (d, f) =>
    `In a wind of 27 m/s (60 mph) it pulls with ${f.number(Number(d.windN), 2)} N, with 6 mm of ice and wind ${f.number(Number(d.iceN), 2)} N; it breaks at ${f.number(Number(d.breakN), 2)} N.`,
  weak: (d, f) =>
    `That leaves less than twice in hand (${f.number(Number(d.least), 2)} times). Take stronger wire, hang it with more sag, support its middle, or take it down before storm and ice.`,
  rope: (d, f) =>
    `Rope: braided polyester of ${f.number(1000 * Number(d.diameterM))} mm or thicker (breaks at ${f.number(Number(d.ropeBreakN), 2)} N; sizes from memory, read the maker’s figure). It should hold longer than the wire does.`,
  tree: (d, f) =>
    `On a tree, run the rope over a pulley to a weight of ${f.number(Number(d.weightKg), 2)} kg that can travel ${f.length(Number(d.swayM))}: trees sway farther than wire stretches.`,
  guys: (d, f) =>
    `Three guys a third of a turn apart, tied at ${f.length(Number(d.tiedAtM))}, staked ${f.length(Number(d.spreadM))} from the foot.`,
  ladder: (d, f) =>
    `A leaning ladder to that height would stand ${f.length(Number(d.ladderFootM))} out at its foot, one for four up; better launch a line from the ground.`,
  'code-met': (d, f) =>
    `The US code asks ${d.askedAwg} AWG or thicker, hard-drawn or copper-clad, for a span of ${f.length(Number(d.spanM))}; yours meets it with ${d.awg} AWG.`,
  'code-size': (d, f) =>
    `The US code asks ${d.askedAwg} AWG or thicker, hard-drawn or copper-clad, for a span of ${f.length(Number(d.spanM))}; yours is ${d.awg} AWG.`,
  'code-metal': (d, f) =>
    `The US code asks hard-drawn or copper-clad wire, ${d.askedAwg} AWG or thicker, for a span of ${f.length(Number(d.spanM))}; yours is soft copper of ${d.awg} AWG, which stretches.`,
} as const satisfies Readonly<Record<string, Message>>;

export const mechanicsScreen = {
  head: 'Weight, wind and rope',
  result: (d, f) => `Sag ${f.length(Number(d.sagM))}, pull ${f.number(Number(d.restN), 2)} N at rest`,
  rest: 'Pull at rest',
  wind: 'Pull in wind',
  ice: 'Pull with ice and wind',
} as const satisfies Readonly<Record<string, Message>>;
