/** What stands on the Plan screen around the plan's own sentences. */
import type { Data, Message } from '../message';
import { many, plural } from './many';
import { bandName } from './names';

const befores: Readonly<Record<string, string>> = {
  site: 'On the site',
  up: 'Before anyone goes up',
  launch: 'Before a line is thrown',
  raise: 'Before raising',
  transmit: 'Before sending',
  links: 'Before changing links',
  leave: 'Before leaving',
  storm: 'In a storm',
};

const from = ({ hasBox }: Data): string => (hasBox === true ? 'box' : 'feed point');
const list = (names: unknown): string => String(names);

export const planScreen = {
  danger: 'Danger',
  stop: 'This stops the plan',
  waysOut: 'Ways out',
  changeAnswer: ({ what }) => `Change: ${what}`,
  sets: ({ what, value }) => `${what}: ${value}`,
  answer: 'The answer',
  onThisPage: 'On this page',
  site: 'The site',
  sideScale: (d, f) => `1 square is ${f.length(Number(d.squareM))}. Stripes: stay out.`,
  sideOpen: 'What it shows',
  sideCaption: ({ hasEnds }, f) =>
    `To scale in both directions. The person is ${f.length(1.75)} tall. Stripes${hasEnds === true ? ' at wire ends: do not touch;' : ''} round the wire: as far as people stay away. Dashes: rope.`,
  supportsGuessed: 'Where poles and trees stand is a guess: yours may differ.',
  lineTurned: 'The line to the radio leaves at a right angle; here it is turned into the picture.',
  chokeAt: (d, f) => `${d.name}, ${f.length(Number(d.metres))} along the coax, counted from the ${from(d)}`,
  chokeAtFeed: ({ name }) => `${name}, at the feed point`,
  fromAbove: 'From above',
  topCaption: (d, f) => `To scale: 1 square is ${f.length(Number(d.squareM))}. Rings: supports.`,
  topKeepOut: (d, f) =>
    `Stripes: people stay outside, at any height, on the band that asks for most; farthest ${f.length(Number(d.keepOutM))}.`,
  chain: 'From wire to radio',
  wire: 'Wire',
  does_transformer: 'Changes the ohms of the feed point to those of the line.',
  does_choke: 'Stops radio current on the outside of the coax. The inside does not notice.',
  does_tuner: 'Brings what the line shows down to the 50 ohms of the radio.',
  does_arrester: 'Leads static and stray lightning current to the earth, outdoors.',
  isCounterpoise: 'This piece is the counterpoise: the other half the wire pushes against. Keep hands off it.',
  why: 'Why',
  howToMake: 'How to make it',
  orBuy: 'Or buy it',
  toBuy: 'To buy',
  whatItDoes: 'What it does',
  alternatives: 'What if I only have other rings?',
  takeRings: 'Plan with these',
  takenRings: 'The plan then takes these rings as parts you have.',
  planned: 'planned',
  enough: ({ ohms }) => `${ohms}: enough`,
  shortBy: ({ ohms, by }) => `${ohms}: short by ${by}`,
  heatIs: ({ watts }) => `${watts} W of heat`,
  resistance: 'resistance',
  reactance: 'reactance',
  askedFor: ({ ohms }) => `asked ${ohms}`,
  chokeAtBand: ({ band, r, x }) => `${band} ${r} resistance and ${x} reactance`,
  chokeDrawing: ({ parts }) => `Resistance and reactance of this choke over the wanted bands: ${parts}.`,
  chokeCaption: ({ square }) =>
    `Heavy line: resistance, which turns the current into heat. Fine line: reactance, which another length of coax may cancel. Upright brackets: how far real rings may lie. From one line of the paper to the next: ${square}.`,
  ohmsAre: ({ least, most }) => `${least} to ${most}`,
  ohmsColumn: 'Ohms it has',
  neededColumn: 'Asked for',
  lossColumn: 'Loss',
  heatColumn: 'Heat',
  dbIs: ({ db }) => `${db} dB`,
  wattsIs: ({ watts }) => `${watts} W`,
  studying: ({ done, of }) =>
    Number(of) > 0
      ? `Working out this very antenna: ${done} of ${of} steps. Numbers below may still move.`
      : 'Working out this very antenna. Numbers below may still move.',
  studied: 'Worked out for this very antenna over its ground, coax and chokes included.',
  notStudied: 'Numbers come from formulas: this antenna could not be worked out as a whole.',
  atFeedPoint: 'At the feed point.',
  alongLine: 'Tape it so that it cannot slide:',
  atEntry: ({ away }) => (away === true ? 'At the building entry:' : 'At the building entry.'),
  atRadio: 'At the radio.',
  /** A size such as RG-58 is not broken at its hyphen. */
  stretch: ({ line }) => String(line).replaceAll('-', '\u2060-\u2060'),
  counted: (d, f) => `${f.length(Number(d.metres))} along the line, counted from the ${from(d)}.`,
  atLeast: (d, f) => `${f.number(Number(d.ohm))} ohms or more on ${bandName(String(d.band))}`,
  inBox: ({ box }) => `In a ${box}.`,
  cut: 'Cut',
  piece: 'Piece',
  cutLength: 'Cut this long',
  times: ({ count }) => `${count} of these`,
  legUpTo: (d, f) => `${f.length(Number(d.legM))} of leg from the feed point to its outer end`,
  finished: (d, f) => `${f.length(Number(d.finishedM))} finished`,
  cutAsIs: 'no spare',
  cutFound: 'How exact, and how these lengths were found',
  exact: (d, f) => `Good within ${f.length(Number(d.toleranceM))}.`,
  startCutting: 'Start cutting',
  bands: 'Bands',
  bandResult: ({ swr, tuner }) =>
    `${swr === '' ? 'SWR not known' : `SWR ${swr}:1`}${tuner === 'beyond' ? ', beyond the tuner' : tuner === true ? ', needs a tuner' : tuner === false ? ', no tuner' : ''}`,
  bandSwr: ({ swr }) => `SWR about ${swr}:1 at the radio.`,
  bandSwrHigh: ({ swr }) => `SWR about ${swr}:1 at the radio end of the line.`,
  noTuner: 'No tuner needed.',
  tuner: 'A tuner is needed.',
  loss: ({ watts }) => `${watts} of 100 W reach the wire.`,
  lossLine: ({ watts }) => `${watts} of 100 W reach the end of the line.`,
  radiated: ({ watts, radiatedW }) => `${watts} of 100 W reach the wire, ${radiatedW} W leave as radio.`,
  ofHundred: 'Of 100 W from the radio',
  wattsColumn: 'Watts',
  inLine: 'Stay in the line',
  inDevices: 'Stay in transformer and chokes on the way through',
  inGround: 'Warm ground, wire and shield chokes',
  asRadio: 'Leave as radio',
  onTheCoax: ({ ma, least, most, atHouse }) =>
    `${ma} mA (${least} to ${most}) on the coax ${atHouse === true ? 'at the house' : 'where you operate'} for 100 W.`,
  hardlyAny: ({ atHouse }) =>
    `Under 1 mA on the coax ${atHouse === true ? 'at the house' : 'where you operate'} for 100 W.`,
  unknownBand: 'Not known for this band yet: measure it.',
  figures: 'Figures',
  feedPoint: ({ r, x }) => `At the feed point ${r} ohms, reactance ${x} ohms.`,
  swrAtFeedPoint: ({ swr }) => `SWR there ${swr}:1.`,
  lineLoss: ({ db }) => `Line loss ${db} dB.`,
  deviceLoss: ({ db }) => `Loss in transformer and chokes ${db} dB.`,
  shieldCurrent: ({ db }) => `Current on the coax outside, against the wire’s own: ${db} dB.`,
  tapeAim: ({ aim }) => `yours ${aim}`,
  tapeDip_at: ({ dip }) => `dip ${dip}`,
  tapeDip_lower: 'dip lower',
  tapeDip_higher: 'dip higher',
  thickGood: 'thick: under 2:1',
  nowhereGood: 'nowhere under 2:1',
  swrTape: ({ band, dip, aim, low, high, good, known }) =>
    `${band}, ${low} to ${high} MHz. Your frequency is ${aim} MHz. ${
      known !== true
        ? 'The SWR over the band is being worked out.'
        : `${good === '' ? 'The SWR is nowhere under 2:1' : `SWR under 2:1: ${good} MHz`}; the dip lies ${
            dip === 'lower'
              ? 'at the low edge or below'
              : dip === 'higher'
                ? 'at the high edge or above'
                : `at ${dip} MHz`
          }.`
    }`,
  underway: 'working it out',
  studyLabel: 'How these numbers were found',
  studiedMoved: 'Worked out for this very antenna. Some numbers moved.',
  whatMoved: ({ count }) => `What moved: ${count}`,
  sends: 'Where it sends',
  sendsResult: ({ up, low }) =>
    up === ''
      ? `Toward the horizon on ${list(low)}`
      : low === ''
        ? `Mostly upward on ${list(up)}`
        : `Mostly upward on ${list(up)}, toward the horizon on ${list(low)}`,
  overhead: 'overhead',
  upToKm: ({ km }) => `${km}\u00a0km`,
  alongOne: 'along',
  alongTwo: 'the wire',
  acrossWire: 'across the wire',
  angleAndGain: ({ km, isUp, gain, dbi }) =>
    `That way leaves ${gain} times what would leave if it went out equally every way (${dbi} dBi)${
      isUp === true ? ', for contacts nearby' : `, about ${km} km in one hop`
    }.`,
  sideSpokes: ({ low, middle, up }) =>
    `From the side. Against the strongest direction ${low} % of the power leaves at 10 degrees above the horizon, ${middle} % at 30 degrees, ${up} % straight up.`,
  sideSpokesCaption:
    'From the side: the longer the heavy spoke, the more power leaves that way. Kilometres: one hop by way of a layer 300 km up, when the band is open.',
  topSpokes: ({ along, across }) =>
    `From above. Against the strongest direction ${along} % of the power leaves along the wire, ${across} % across it.`,
  topSpokesCaption: 'From above, at the height where most leaves. The square is the feed point.',
  outside: 'On the outside of the coax',
  outsideMost: ({ ma, band }) => `At most ${ma} for 100 W, on ${bandName(String(band))}`,
  outsideIntro: ({ hasRadio }) =>
    hasRadio === true ? 'For 100 W, where the coax enters; below it, at the radio.' : 'For 100 W, where you operate.',
  outside_noChoke: 'No choke',
  outside_planned: 'As planned',
  outside_owned: 'With what you own',
  underOneMa: 'under 1 mA',
  maIs: ({ ma }) => `${ma}\u00a0mA`,
  radioMa: ({ ma }) => `radio ${ma}`,
  usualPlaces: 'Usual places',
  chosenPlaces: 'Chosen for this antenna',
  noChokeAtAll: 'no choke',
  asWound: 'As wound',
  woundIs: ({ ma, band }) =>
    `At most ${ma}, on ${bandName(String(band))}, with rings from the worse end of their tolerance.`,
  ownedPlaces: 'Your own',
  noiseIntro: 'The same backwards: noise that comes in by the coax reaches the radio, against no choke:',
  noise_fromHouseDb: ({ isPortable }) => (isPortable === true ? 'From where you operate' : 'From the house'),
  noise_outdoorsDb: 'Picked up outdoors',
  noiseOwned: ({ weaker }) => `with yours ${weaker}`,
  weakerIs: ({ db, isWeaker }) => `${db}\u00a0dB ${isWeaker === true ? 'weaker' : 'stronger'}`,
  noWeaker: 'no weaker',
  setIs: ({ set, ma, band }) => `${set}: at most ${ma}, on ${bandName(String(band))}.`,
  difference: 'Difference',
  noDifference: 'None.',
  differenceIs: ({ db, isLess }) => `${db} dB ${isLess === true ? 'less' : 'more'} current where the coax enters.`,
  inDecibels: 'In decibels',
  decibelsIs: ({ what, entry, radio }) =>
    `${what} ${entry}\u00a0dB${radio === '' ? '' : ` where it enters, ${radio}\u00a0dB at the radio`}`,
  decibelsOf: 'Against the current at the feed point.',
  warnings: 'Mind this',
  notesAll: ({ count }) => `Good to know: ${many(count, 'note', 'notes')}`,
  notNeeded: 'Not needed',
  notNeededAll: ({ count }) => plural(count, 'One thing, and why', `${count} things, and why`),
  verdicts: 'Your parts',
  verdictResult: ({ count, verdict }) => `${count} ${list(verdict)}`,
  exposure: 'People near the antenna',
  nearestPerson: (d, f) => `Nearest person: stay ${f.length(Number(d.metres))} away`,
  nearestUnknown: 'How far to stay away is not known on every band',
  exposureIntro: ({ rules }) => `Keep this far from every part of the antenna. By: ${rules}.`,
  band: 'Band',
  knowing: 'People who know',
  anyone: 'Anyone else',
  notKnown: 'not known',
  nearestOk: ({ bands }) => `Where your nearest person is, the limit is kept on ${list(bands)}.`,
  nearestNot: ({ bands, watts }) =>
    `Where your nearest person is, the limit is not kept on ${list(bands)}. Move the antenna, or send with at most ${watts} W at the crest.`,
  decided: 'What decides it',
  cautions: 'All cautions',
  cautionsAll: 'By the moment they belong to',
  cautionsBefore: ({ before }) => befores[String(before)] ?? '',
  change: 'Change',
  assumed: 'Assumed',
  assumedIntro: 'Not asked yet. What would change most comes first.',
  assumedResult: ({ count, first }) => `${many(count, 'answer', 'answers')}, first of all: ${list(first)}`,
  disputes: 'Where people differ',
  disputesAll: ({ count }) => plural(count, 'One question', `${count} questions`),
  oneSide: 'Some say',
  otherSide: 'Others say',
  settles: 'What the numbers say',
  house: 'For this antenna',
  working: 'Show the working',
  workingFor: ({ what }) => `Show the working: ${what}`,
  loadingWorking: 'Fetching the calculator',
  workingFailed: 'The calculator could not be loaded.',
  is: ({ name, value }) => `${name} = ${value}`,
  from_answer: 'you said so',
  from_assumed: 'assumed',
  from_catalogue: 'from the catalogue',
  from_solved: 'worked out',
  onPaper: 'On paper',
  paperHint:
    'For a clipboard, print the sheet instead: “On paper” at the end of this page. It has lists to tick and room for readings.',
  onward: 'On from this plan',
  surer: 'Make it surer',
  whyScreen: 'Why a choke',
} as const satisfies Readonly<Record<string, Message>>;
