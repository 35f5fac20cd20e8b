/** Disputed practice: both positions, what decides, what the numbers say, and the house position last. */
import type { Format } from '../format';
import type { Data, Message } from '../message';
import { bandName } from './names';
import { band, figure } from './readers';

export interface DisputeWords {
  readonly question: Message;
  readonly one: Message;
  readonly other: Message;
  /** What the numbers for this antenna say, and what measurement would decide. */
  readonly decides: Message;
  readonly house: Message;
}

const ohms = (d: Data, f: Format): string => `${f.number(Number(d.ohm) / 1000, 2)} kΩ`;

/** Whose numbers they are. */
const computedOn = (d: Data, f: Format): string =>
  d.solvedHere === true
    ? `Computed for your antenna on ${band(d)} at ${figure(d, f, 'powerW')} W, at the building entry`
    : `Computed on ${band(d)} at ${figure(d, f, 'powerW')} W, worst case at the building entry`;

const nonResonantChoke = (d: Data, f: Format): string =>
  d.solvedHere === true
    ? `${computedOn(d, f)}: no choke about ${figure(d, f, 'wiresMa')} mA, choke at the box ${figure(d, f, 'wiresBoxMa')} mA, box and house ${figure(d, f, 'wiresBothMa')} mA.`
    : `Computed for a wire of ${f.length(21.75)} with two counterpoise wires on ${band(d)} at ${figure(d, f, 'powerW')} W, worst case at the building entry: no choke about ${figure(d, f, 'wiresMa')} mA, choke at the box ${figure(d, f, 'wiresBoxMa')} mA, box and house ${figure(d, f, 'wiresBothMa')} mA.`;
const halfWaveChoke = (d: Data, f: Format): string =>
  `${d.solvedHere === true ? computedOn(d, f) : `Computed for an end-fed half-wave on ${band(d)} at ${figure(d, f, 'powerW')} W, worst case at the building entry`}: counterpoise wire and choke at the box about ${figure(d, f, 'boxMa')} mA, a twentieth of a wave down ${figure(d, f, 'twentiethMa')} mA, house only ${figure(d, f, 'houseMa')} mA, a twentieth and house ${figure(d, f, 'bothMa')} mA.`;
const boxAlone = (d: Data, f: Format): string =>
  `At the box with nothing on the ground terminal the choke takes about ${f.number(Number(d.boxShare) * 100, 1)} % of the power. House only leaves the outdoor coax free to pick up noise.`;

const tunerLosses = (d: Data, f: Format): string => {
  const sides = [
    d.costBand === undefined
      ? 'A 4:1 is worse on none of your bands.'
      : `A 4:1 is worst on ${bandName(String(d.costBand))}: the tuner loses ${figure(d, f, 'costFourDb')} dB through it and ${figure(d, f, 'costOneDb')} dB through a 1:1.`,
    d.gainBand === undefined
      ? 'It is better on none.'
      : `It is best on ${bandName(String(d.gainBand))}: ${figure(d, f, 'gainFourDb')} dB through it and ${figure(d, f, 'gainOneDb')} dB through a 1:1.`,
    `Out of the tuner’s reach: ${d.outOfReachOne} of ${d.cases} bands through a 1:1, ${d.outOfReachFour} through a 4:1.`,
  ];
  return `Computed for your wire and line into a usual T-network. ${sides.join(' ')}`;
};

const chokeKinds = (d: Data, f: Format): string => {
  const kind = `${f.number(Number(d.comparedOhm) / 1000, 2)} kΩ`;
  return `${computedOn(d, f)}, with one choke alone in the planned place: none about ${figure(d, f, 'noneMa')} mA, ${kind} resistive ${figure(d, f, 'resistiveMa')} mA, ${kind} inductive ${figure(d, f, 'inductiveMa')} mA, ${kind} capacitive, which is a choke past its own resonance, ${figure(d, f, 'capacitiveMa')} mA.`;
};

export const disputes: Readonly<Record<string, DisputeWords>> = {
  D1: {
    question: 'Off-centre feed point: a 4:1 voltage transformer, or a 4:1 current transformer?',
    one: 'Current type: it forces equal currents into both sides, so one part transforms and isolates.',
    other:
      'Voltage type with a choke of its own: the ratio is defined, and isolation is done by a part made for it, in a place of its own.',
    decides: (d, f) =>
      `${computedOn(d, f)}: current type alone about ${figure(d, f, 'currentAloneMa')} mA, voltage type with 5 kΩ below it ${figure(d, f, 'voltageChokeMa')} mA. With a choke at the entry as well both are alike: ${figure(d, f, 'currentEntryMa')} and ${figure(d, f, 'voltageEntryMa')} mA. What differs is where the heat lands: about ${figure(d, f, 'transformerHeatW')} W in the current transformer, or ${figure(d, f, 'chokeHeatW')} W in the separate choke. A clamp meter on the coax and a hand on the core after ten minutes decide it for you.`,
    house: (_d, f) =>
      `4:1 voltage transformer, a 1:1 choke of 5 kΩ or more ${f.length(0.3)} to ${f.length(1)} below it, and one more before the house.`,
  },
  D2: {
    question: 'End-fed: the choke at the box, a twentieth of a wave down the coax, or only at the house?',
    one: 'At the box: nothing outdoors carries current but the wire. At the house: all the coax is counterpoise, and nothing is lost in a choke.',
    other: (d, f) =>
      `${f.length(Number(d.distanceM))} down the coax: the coax above the choke is the counterpoise, and there is no wire to trip over.`,
    decides: (d, f) => `${d.nonResonant === true ? nonResonantChoke(d, f) : halfWaveChoke(d, f)} ${boxAlone(d, f)}`,
    house: (d) =>
      d.nonResonant === true
        ? 'With its own counterpoise wires: the choke at the box, and one before the house. Without them: down the coax, never at the box.'
        : 'A twentieth of the wave on the lowest band down the coax, a tenth where there is room, and always one before the house.',
  },
  D3: {
    question: 'Does an end-fed need a counterpoise?',
    one: 'No: thousands work with nothing but the coax, and the SWR is the same.',
    other: 'Yes: what flows into the wire must flow out of something.',
    decides: (d, f) =>
      `Both see the same thing. The shield at the box carries the wire’s end current, about ${figure(d, f, 'endCurrentMa')} mA at ${figure(d, f, 'powerW')} W, whatever the SWR says. With no choke up to ${figure(d, f, 'houseMa')} mA of it reach the house on ${band(d)}; with two chokes about ${figure(d, f, 'bothMa')} mA.`,
    house: 'The coax is your counterpoise: decide how much of it. The choke is where it ends.',
  },
  D4: {
    question: 'Open-wire line to a tuner: 4:1 or 1:1?',
    one: '4:1: the line is sold as 450 Ω and the radio is 50 Ω, and some tuners dislike a thousand ohms and more.',
    other:
      '1:1: the tuner sees the antenna, changed by the line, and that is often a few ohms, where tuners lose most.',
    decides: (d, f) =>
      d.solvedHere === true
        ? tunerLosses(d, f)
        : `Of ${d.cases} computed doublets and lines a 4:1 was better in about half, never by more than ${figure(d, f, 'gainDb')} dB, and worse in the others by up to ${figure(d, f, 'costDb')} dB.`,
    house: (_d, f) =>
      `1:1 always. If a band will not tune, make the line ${f.length(1)} to ${f.length(2)} longer or shorter.`,
  },
  D5: {
    question: 'A resistive or a reactive choke?',
    one: 'Resistive, mix 31 or 43: it cannot resonate with the cable.',
    other: 'Reactive, mix 61 or a coil of coax: it runs cool.',
    decides: (d, f) =>
      d.solvedHere === true
        ? chokeKinds(d, f)
        : d.endFed === true
          ? `Resistive chokes never raised a current that came out of the feed point. Reactive ones below ${ohms(d, f)} did at end-feds, up to 12 times on 80 m. A choke past its own resonance counts as reactive.`
          : `Resistive chokes never raised a current that came out of the feed point. Reactive ones below ${ohms(d, f)} did, up to about twice. A choke past its own resonance counts as reactive.`,
    house: (d, f) =>
      `Resistive by default. Reactive only with ${ohms(d, f)} or more on every band, below its own resonance.`,
  },
  D6: {
    question: 'Do drooping legs lower or raise the resonance?',
    one: 'Lower: the ends come near the ground, so cut shorter.',
    other: 'Higher: the legs partly cancel each other, so cut longer.',
    decides: (d, f) =>
      `Computed at a fixed apex on 40 m: ${figure(d, f, 'blunt')} % up with 120° between the legs, ${figure(d, f, 'right')} % up with 90°. It falls only when the ends hang within about ${f.length(Number(d.endHeightM))} of the ground, six hundredths of the wave.`,
    house: 'Within 2 % either way: correct nothing beforehand. Cut long, measure, trim.',
  },
  D7: {
    question: 'At the wall: earth the shield before or after the choke?',
    one: 'Choke first: it keeps antenna current off the earth lead.',
    other:
      'Earth and arrester first, outside: lightning and shield current leave before the house, and the choke keeps the rest out.',
    decides: (d, f) =>
      `Computed indoors per 100 W, with a choke at the antenna too: earth first ${figure(d, f, 'earthFirstFrom')} to ${figure(d, f, 'earthFirstTo')} mA, choke first ${figure(d, f, 'chokeFirstFrom')} to ${figure(d, f, 'chokeFirstTo')} mA, earth and no choke up to ${figure(d, f, 'earthOnlyTo')} mA. One exception, when receiving: noise that rides on the earth lead is stopped only by a choke on its antenna side.`,
    house:
      'Earth and arrester first, then the choke, then inside. If noise comes up the earth lead, one choke on each side.',
  },
};
