/** What is looked up when something is wrong: at each step one thing to do, and what its outcome means. */
import type { Message } from '../message';

interface StepWords {
  readonly act: Message;
  readonly means: Message;
}

interface LookUpWords {
  readonly title: Message;
  /** What can injure on the way; comes first. */
  readonly danger: Message;
  /** What people try and should not. */
  readonly last?: Message;
}

export const lookUpScreen = {
  head: 'When something is wrong',
  jump: 'Trouble?',
} as const satisfies Readonly<Record<string, Message>>;

export const lookUps: Readonly<Record<'radio-upset' | 'noise' | 'folds-back' | 'conducting-pole', LookUpWords>> = {
  'radio-upset': {
    title: 'Radio, key or computer plays up on one band',
    danger: 'Nobody touches bare wire, plugs or terminals while you send. Move coax by its jacket.',
    last: 'A better earth at the radio mostly moves the trouble elsewhere. Leave the safety earth as it is.',
  },
  noise: {
    title: 'Noise: is it the feed line?',
    danger:
      'Do not send while the wire is off. Outdoors look up for power lines each time the antenna comes down or goes up.',
    last: 'What is left with both chokes in, the wire itself hears.',
  },
  'folds-back': {
    title: 'Low SWR on the analyser, yet the radio turns down',
    danger:
      'Radio off before a hand goes to a plug, a lead or the wire. While you send, everybody stays away from the wire.',
  },
  'conducting-pole': {
    title: 'The pole is metal or carbon',
    danger:
      'Metal and carbon carry mains to whoever holds them, and so does a wet pole of glass fibre. Keep the plan’s distance from every power line.',
  },
};

export const lookUpSteps: Readonly<Record<string, StepWords>> = {
  'upset-little-power': {
    act: (d, f) => `Send with ${f.number(Number(d.watts), 2)} W.`,
    means: 'It stops: radio current on your cables, go on. It stays just as bad: supply or plug first.',
  },
  'upset-move-coax': {
    act: 'Lay the coax another way, a metre or two, and send again.',
    means:
      'It changes: the outside of the coax brings it, strongest on the band where its length suits. It does not: go to the leads.',
  },
  'upset-entry-choke': {
    act: ({ isPortable }) =>
      isPortable === true
        ? 'Look for the choke before the radio.'
        : 'Look for the choke where the coax enters the house.',
    means: 'Missing or by-passed: put it there. Of single chokes this one does most for the radio. It is there: go on.',
  },
  'upset-antenna-choke': {
    act: (d, f) =>
      Number(d.metres) < 0.05
        ? 'Look for the choke at the feed point.'
        : `Look for the choke ${f.length(Number(d.metres))} along the coax, counted from the feed point.`,
    means:
      'Missing or slid: put it back. It is there, and the coax runs under or beside the wire: lead it away at a right angle, for no choke there stops what the cable picks up.',
  },
  'upset-counterpoise-try': {
    act: (d, f) =>
      `Clip ${f.length(Number(d.metres))} of wire to the ground terminal of the ${d.isTuner === true ? 'tuner' : 'box'}, and send again.`,
    means: 'Better: the wire had too little to push against, leave it on. The same: take it off.',
  },
  'upset-counterpoise-there': {
    act: 'Look at the counterpoise wires: on their terminal, laid out, unbroken.',
    means: 'One is off: the coax does its work, and brings it to you. All on: go on.',
  },
  'upset-leads': {
    act: 'Unplug one lead after the other: computer, key, microphone, second supply.',
    means:
      'It stops with one: wind 8 to 12 turns of that lead on a 36 mm ring, mix 31, close to the radio. With none: ask somebody with a clamp meter.',
  },
  'noise-note': {
    act: 'Note what the meter shows on a free frequency. Do not send until the wire is back on.',
    means: 'That is what each step is held against.',
  },
  'noise-unplug': {
    act: 'Unplug the feed line at the radio.',
    means: 'It stays: it comes by the supply or another lead. It goes: plug in again, and go on.',
  },
  'noise-wire-off': {
    act: 'Lower the antenna, take the wire off at the feed point, leave the coax on.',
    means:
      'It stays: the coax brings it, and chokes cure that. It goes: the wire hears it, and only distance or another direction helps.',
  },
  'noise-house-off': {
    act: 'Run the radio from a battery, and switch the house off circuit by circuit.',
    means: 'It goes with one circuit: something on it makes the noise. Cure it there too.',
  },
  'noise-things-off': {
    act: 'Switch off chargers, lamps, computer and vehicle one by one.',
    means: 'It goes with one: leave that off, or put it far from the coax.',
  },
  'noise-chokes': {
    act: 'Put in both chokes: at the antenna and where the coax enters the house.',
    means: ({ isAlong }) =>
      `Noise from the house falls by ${isAlong === true ? '12 to 24 dB, with coax under or beside the wire' : '20 to 40 dB, with coax at a right angle to the wire'}. One at the entry alone does nothing for noise picked up outdoors, and can add to it.`,
  },
  'folds-at-radio': {
    act: 'Measure at the radio’s end of this very line, everything else plugged in.',
    means: 'High now: the reading before was of another place or another cable. Look there. Still low: go on.',
  },
  'folds-case': {
    act: 'Join the analyser’s shield to the radio’s case with a clip lead, and read again.',
    means:
      'It moves: current on the outside of the coax, which a lone analyser gives no road. A choke is missing or has slid. It stays: go on.',
  },
  'folds-little-power': {
    act: (d, f) => `Plug the line into the radio, send with ${f.number(Number(d.watts), 2)} W, and read its own SWR.`,
    means: 'High at once: change plugs and short leads one by one. Low: it comes with power.',
  },
  'folds-up': {
    act: 'Raise the power in steps, ten seconds each.',
    means:
      'It climbs slowly: a core is getting hot, stop. It jumps at one power: a spark at a joint, plug or wire end. Radio off, then look there.',
  },
  'folds-sweep-again': {
    act: 'Sweep twice with the analyser and compare.',
    means: 'The two differ: a strong broadcast station drowns it. Believe the radio.',
  },
  'pole-conducts': {
    act: 'Look at a cut end, or hold an ohmmeter to two scratched spots.',
    means: 'Metal, black weave, or any reading: it conducts. No reading: glass fibre, nothing to do.',
  },
  'pole-along': {
    act: 'Look which way the wire runs from it.',
    means: (_d, f) =>
      `Away at an angle: little harm. Down beside it: it detunes and takes power. Slant that part away, or keep it ${f.length(0.5)} off.`,
  },
  'pole-along-upright': {
    act: (_d, f) => `Hold the upright wire ${f.length(0.5)} or more off the pole.`,
    means:
      'It cannot be: take a pole of glass fibre. Carbon is no support for an upright wire; it detunes it and takes power.',
  },
  'pole-top': {
    act: (_d, f) =>
      `Make the last ${f.length(1)} to ${f.length(2)} of glass fibre, or hang the insulator on as much rope.`,
    means: 'Where wire and pole come near each other, nothing conducts now.',
  },
  'pole-dip': {
    act: (_d, f) => `Measure the dip, hold the wire ${f.length(0.5)} farther off, measure again.`,
    means: 'It moves: the pole is part of the antenna, leave the wire there. It stays: the pole does no harm.',
  },
};
