/** What depends on each answer that was not given. One sentence each: what changes when it is told. */
import type { Message } from '../message';

export const assumed: Readonly<Record<string, Message>> = {
  units: 'Only which unit stands first; both are always shown.',
  region: 'Decides the edges of the bands, and with them where a wire is cut.',
  ruleSet: 'Decides how far people must stay from the antenna.',
  station: 'At home the coax enters a building, with an arrester and a bond; a portable place has neither.',
  indoors: 'Indoors the wire hangs close to people and to house wiring.',
  powerW: 'Sizes cores, chokes and wire, and the distance to people.',
  mode: 'Digital and FM heat cores five times as much as voice of the same peak power; told nothing, full carrier is taken.',
  transmitShare: 'Told nothing, the transmitter is taken to be keyed all the time.',
  feedFraction: 'A third suits 80, 40, 20 and 10 m; a fifth suits others.',
  'feedFraction-solved':
    'Looked for on your own wire and bands by the field solver; name another part and the plan keeps to it.',
  lengthChoice: 'A resonant wire needs no tuner on its own bands.',
  loopShape: 'Changes the feed resistance a little and the room the loop needs.',
  loopPlane: 'An upright loop sends lower, a flat one mostly overhead.',
  feedImpedance: 'Without it no ratio can be told: measure at the feed point with an analyser.',
  balanced: 'Two equal halves are balanced; a wire against ground is not.',
  spanM: 'Tells whether the wire fits between your supports.',
  heightM: 'Moves resonance by up to 3 % and decides how low the antenna sends.',
  endHeightM: 'Low ends pull the resonance down and must stay out of reach.',
  'endHeightM-reached': (d, f) => {
    const [farM, otherM] = [Number(d.farM), Number(d.otherM)];
    const ends =
      Math.abs(farM - otherM) < 0.1
        ? `ends at ${f.length(farM)}`
        : `ends at ${f.length(farM)} with its long leg and at ${f.length(otherM)} with its short one`;
    return `Too short for ${f.length(Number(d.usualM))} at the usual slope, the wire ${ends}, as drawn. Low ends pull the resonance down and must stay out of reach.`;
  },
  supportHeightM: 'Sets the distance to overhead lines and the rope to buy.',
  wire: 'Insulation shortens the wire by 2 to 5 %.',
  ground: 'Changes loss and resonance of low wires and of verticals.',
  returnPath: 'What the wire works against decides where the current goes, and where chokes belong.',
  radialCount: 'More radials lose less, up to about sixteen.',
  feedLine: 'Decides loss, what power the line stands, and which cores it can be wound on.',
  feedLineLengthM: 'Decides loss and whether the coax is long enough for the choke places.',
  feedLineRoute: 'Coax under or beside the wire picks its field up, and a choke at the feed point cannot stop that.',
  runHeightM: 'Coax on the ground loses what it picks up; in the air it carries it to the house.',
  entryDistanceM: 'Where the last choke goes.',
  houseEarth: 'What the far end of the coax is tied to changes the current on it.',
  rfInShack: 'If radio current troubles the station already, chokes get larger and more of them.',
  nearestPersonM: 'Tells whether your power keeps to the limit at that place.',
  nearestPowerLineM: 'An overhead line too near forbids the place.',
};

/** For a band whose frequency was not told. */
export const assumedFocus: Message = 'The wire is cut for the middle of the band; name your own part of it.';
