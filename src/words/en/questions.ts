/**
 * The questions, by the answer they ask for: the question, one line of meaning, how to find out when not sure, and what is taken meanwhile.
 * Choices stand beside them by id. Everyday words; a trade term comes with its meaning.
 */
import { groundNames, lineNames, modeNames, ruleSetNames, wireNames } from './catalog-names';
import { firstQuestions, type QuestionWords } from './first-questions';

const yesNo = { true: 'Yes', false: 'No' };

export const questions = {
  ...firstQuestions,
  lengthChoice: {
    title: 'How long shall the wire be?',
    meaning:
      'Resonant: the wire fits the wave and needs no tuner there. Non-resonant: clear of every fit, always with a tuner.',
    findOut: 'No tuner, or only the one inside the radio? Then resonant.',
    taken: 'resonant on the lowest band',
    short: 'Kind of length',
    options: {
      resonant: 'Cut to fit the lowest band',
      'non-resonant': 'Any length, with a tuner',
      fixed: 'The wire I already have',
    },
  },
  wireLengthM: {
    title: 'How long is the wire you have?',
    meaning: 'All of the wire that sends: both legs together, once round a loop.',
    findOut: 'Lay it beside a tape, or count steps: a grown person paces about 0.75 m (2 ft 6 in).',
    taken: 'a length cut to fit the lowest band',
    short: 'Wire you have',
  },
  feedImpedance: {
    title: 'What does an analyser read?',
    meaning: 'At the feed point: R is the resistance, X the reactance, in ohms. X is minus when it is capacitive.',
    findOut: 'Measure right at the wire with an antenna analyser, on the lowest band, with no coax between.',
    taken: 'nothing, so no ratio can be told',
    short: 'Feed point reading',
  },
  balanced: {
    title: 'Are both sides of the feed point alike?',
    meaning: 'Two equal halves are balanced. A wire against the ground or against the coax is not.',
    findOut: 'Stand under it: if you could swap the two sides and see no difference, they are alike.',
    taken: 'not alike',
    short: 'Both sides alike',
    options: yesNo,
  },
  feedFraction: {
    title: 'How far from the nearer end is it fed?',
    meaning: 'As a part of the whole wire: one third is the usual place.',
    findOut: 'Measure both sides. Divide the shorter by the two together.',
    taken: 'one third',
    short: 'Feed place',
  },
  spanM: {
    title: 'How much room is there in a straight line?',
    meaning: 'The longest straight run the place allows, support to support.',
    findOut:
      'Pace it: a grown person’s step is about 0.75 m (2 ft 6 in). Count 24 steps, and you have 18 m (59 ft 1 in).',
    taken: 'room enough',
    short: 'Room',
  },
  heightM: {
    title: 'How high is the feed point?',
    meaning: 'Above the ground below it, where the line meets the wire.',
    findOut: 'Compare with a person or a house: each floor is about 3 m (9 ft 10 in).',
    taken: ({ metres }, format) => format.length(Number(metres)),
    short: 'Height of the feed point',
  },
  endHeightM: {
    title: 'How high are the wire ends?',
    meaning: 'The far end, or both ends when both are alike. Ends carry high voltage: keep them out of reach.',
    findOut: 'Stand below with an arm up: most people reach about 2.2 m (7 ft 2½ in).',
    taken: ({ metres }, format) => format.length(Number(metres)),
    short: 'Height of the ends',
  },
  supportHeightM: {
    title: 'How high is the highest support?',
    meaning: 'Pole, tree or roof. It decides how far power lines must be and how much rope you need.',
    findOut:
      'Poles have their length on a label. A tree: step back until its top is at 45 degrees; your distance is its height.',
    taken: ({ metres }, format) => format.length(Number(metres)),
    short: 'Highest support',
  },
  nearestPowerLineM: {
    title: 'How far is the nearest overhead line?',
    meaning: 'Any power line, along the ground from the nearest part of wire, mast or rope.',
    findOut:
      'Look all round, behind trees too. Follow every pole. If you cannot tell what a line is, treat it as a power line.',
    taken: 'none named, so the distance to keep is shown',
    short: 'Nearest overhead line',
  },
  nearestPersonM: {
    title: 'How near can anybody stay?',
    meaning: 'The closest place to any part of the antenna where somebody may stand, sit or sleep. Neighbours count.',
    findOut: 'Think of paths, seats, balconies and rooms on the other side of a wall.',
    taken: 'none named, so the distance to keep is shown',
    short: 'Nearest person',
  },
  powerW: {
    title: 'How much power does the radio send?',
    meaning: 'Watts at the peak, as set on the radio.',
    findOut: 'Most home radios send 100 W, small portable ones 5 or 10 W. The menu or the label says.',
    taken: '100 W',
    short: 'Power',
  },
  mode: {
    title: 'What do you send?',
    meaning: 'Digital and FM heat the parts much more than speech does.',
    findOut: 'If you do several, take the one with the longest overs.',
    taken: 'full carrier, the hardest on the parts',
    short: 'Mode',
    options: { ...modeNames, cw: 'Morse', data: 'Digital' },
  },
  transmitShare: {
    title: 'How much of the time do you send?',
    meaning: 'In any half hour: 50\u00a0% when you send as much as you listen.',
    findOut: 'A chat is about half. Calling all day in a contest is more, listening to a net much less.',
    taken: 'all the time',
    short: 'Time sending',
  },
  feedLine: {
    title: 'What line goes to the wire?',
    meaning: 'Coax is round with a wire in its middle. Open-wire line is two wires side by side.',
    findOut: 'Read the print along the jacket, or measure how thick it is.',
    taken: '5 mm coax (RG-58 size)',
    short: 'Feed line',
    options: lineNames,
  },
  feedLineLengthM: {
    title: 'How long is the line?',
    meaning: 'From the feed point to the radio, along the line.',
    findOut: 'Coil it, count the turns, measure round one turn, and multiply.',
    taken: ({ metres }, format) => format.length(Number(metres)),
    short: 'Length of the line',
  },
  feedLineRoute: {
    title: 'How does the coax leave the wire?',
    meaning: 'Coax that runs under or beside the wire picks up what it sends.',
    findOut: 'Stand at the feed point and look along the coax: does it go away from the wire or along it?',
    taken: 'away from it, at a right angle',
    short: 'Way of the coax',
    options: { square: 'Away at a right angle', along: 'Under or beside the wire' },
  },
  runHeightM: {
    title: 'How high does the coax run to the building?',
    meaning: 'Height of the long stretch. 0 when it lies on the ground.',
    findOut: 'On grass it is 0. Along a fence, measure the fence.',
    taken: ({ metres }, format) => format.length(Number(metres)),
    short: 'Height of the coax run',
  },
  entryDistanceM: {
    title: 'How much coax is outside?',
    meaning: 'Along the coax, from the feed point to where it enters the building or reaches your table.',
    findOut: 'Take the whole length and leave off what lies indoors.',
    taken: ({ metres }, format) => format.length(Number(metres)),
    short: 'Coax outside',
  },
  returnPath: {
    title: 'What does the wire push against?',
    meaning: 'Every wire fed at its end or foot needs another half: a wire, ground wires, or the coax itself.',
    findOut: 'Look at the second terminal of the feed point and follow what is tied to it.',
    taken: 'the usual one for this antenna',
    short: 'Pushes against',
    options: {
      'counterpoise-wire': 'A second, shorter wire',
      'coax-shield': 'The outside of the coax',
      'ground-radials': 'Wires on the ground',
      'elevated-radials': 'Raised wires',
      'ground-rod': 'A rod in the ground',
      none: 'Nothing',
    },
  },
  radialCount: {
    title: 'How many ground wires?',
    meaning: 'Also called radials: wires that spread from the foot. More lose less, up to about sixteen.',
    findOut: 'Count them. If you have none yet, the plan says how many pay.',
    taken: ({ count }) => `${count}`,
    short: 'Ground wires',
  },
  radialLengthM: {
    title: 'How long is each ground wire?',
    meaning: 'On the ground, length matters little; raised ones must all be equal.',
    findOut: 'Measure one. If you have none yet, the plan gives a length.',
    taken: 'the length worked out',
    short: 'Length of ground wires',
  },
  counterpoiseM: {
    title: 'How long is the counterpoise?',
    meaning: 'The second wire that the first one pushes against.',
    findOut: 'Measure it. If you have none yet, the plan gives a length.',
    taken: 'the length worked out',
    short: 'Counterpoise',
  },
  wire: {
    title: 'What wire is it?',
    meaning: 'A plastic coat (PVC, PE, PTFE) makes the wire act 2 to 5\u00a0% longer, so it is cut shorter.',
    findOut: 'Look at the cut end: coated or bare, one thick strand or many thin ones. The drum names the size.',
    taken: 'PVC wire, 1.5 mm²',
    short: 'Wire',
    options: wireNames,
  },
  ground: {
    title: 'What is the ground like?',
    meaning: 'Wet and rich ground reflects more and loses less.',
    findOut: 'If grass grows well and it is neither marsh nor rock, it is average.',
    taken: 'average ground',
    short: 'Ground',
    options: groundNames,
  },
  loopShape: {
    title: 'What shape is the loop?',
    meaning: 'A square needs four corners held, a triangle three.',
    findOut: 'Count the places that can hold a corner.',
    taken: 'square',
    short: 'Loop shape',
    options: { square: 'Square', triangle: 'Triangle' },
  },
  loopPlane: {
    title: 'Does the loop stand or lie?',
    meaning: 'Standing sends lower and farther, lying sends mostly overhead.',
    findOut: 'With one or two high supports it stands; with three or four equal ones it can lie.',
    taken: 'standing',
    short: 'Loop',
    options: { upright: 'Standing', flat: 'Lying flat' },
  },
  station: {
    title: 'Home or portable?',
    meaning: 'At home the coax enters a building and needs lightning parts there.',
    findOut: 'If the coax goes through a wall, it is home.',
    taken: 'home',
    short: 'Station',
    options: { home: 'Home', portable: 'Portable' },
  },
  indoors: {
    title: 'Does the wire hang indoors?',
    meaning: 'Loft, balcony or room: close to people and to the house wiring.',
    findOut: 'Under a roof or inside railings counts as indoors.',
    taken: 'no',
    short: 'Indoors',
    options: yesNo,
  },
  houseEarth: {
    title: 'What is the station end of the coax tied to?',
    meaning: 'Radio current on the outside of the coax flows on to whatever is tied there.',
    findOut: 'Is the radio fed from a wall socket? Is there a thick wire to an earth rod at the entry?',
    taken: 'the mains at home, nothing when portable',
    short: 'Station earth',
    options: {
      open: 'Nothing, battery only',
      mains: 'The mains socket',
      earth: 'An earth rod or bond',
      both: 'Mains and earth rod',
    },
  },
  rfInShack: {
    title: 'Is there trouble from your own signal?',
    meaning: 'Touch screens that jump, a keyer that sticks, a tingling microphone, hum in loudspeakers.',
    findOut: 'Send on low power, then on full power. What changes?',
    taken: 'no',
    short: 'Trouble from your signal',
    options: yesNo,
  },
  onHand: {
    title: 'Which of your parts may be used?',
    meaning: 'Each is checked against what this antenna needs.',
    findOut: 'Look in the drawer. Unknown rings are best left out.',
    taken: 'every part on your list',
    short: 'Parts on hand',
  },
  region: {
    title: 'Which part of the world?',
    meaning: 'Where bands begin and end differs from region to region.',
    findOut:
      '1 is Europe, Africa, the Middle East and northern Asia. 2 is the Americas. 3 is the rest of Asia and the Pacific.',
    taken: 'region 1',
    short: 'Part of the world',
    options: {
      1: 'Region 1 (Europe, Africa, Middle East, northern Asia)',
      2: 'Region 2 (the Americas)',
      3: 'Region 3 (rest of Asia and the Pacific)',
    },
  },
  country: {
    title: 'Which country?',
    meaning: 'Decides which limits for people near the antenna stand first.',
    findOut: 'Take the country you send from, not the one of your licence.',
    taken: 'none, international limits',
    short: 'Country',
  },
  ruleSet: {
    title: 'Which limits for people near the antenna?',
    meaning: 'Countries use different rules. Your licensing office says which are yours.',
    findOut: 'Choose your country first; its rules are then taken.',
    taken: 'those of your country, else the international ones',
    short: 'Limits',
    options: ruleSetNames,
  },
  focusMHz: {
    title: 'Which frequency shall it fit best?',
    meaning: 'Each band is cut for one frequency.',
    findOut: 'Think where you are most: Morse and digital are low in a band, speech is high.',
    taken: 'the middle of each band',
    short: 'Frequency',
  },
  name: {
    title: 'What do you call it?',
    meaning: 'A name for your list, such as the place where it hangs.',
    findOut: 'Any name will do. It can be changed.',
    taken: 'no name',
    short: 'Name',
  },
} as const satisfies Readonly<Record<string, QuestionWords>>;

const asked: Readonly<Record<string, QuestionWords>> = questions;

export function questionWords(id: string): QuestionWords {
  const found = asked[id];
  if (found === undefined) throw new RangeError(`no words for the question ${id}`);
  return found;
}

export const optionWords = (id: string, option: string): string => questionWords(id).options?.[option] ?? option;
