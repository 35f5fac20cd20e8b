/** What stands on the screens Make it surer, On hand, Settings and Receive. They come after the first load. */
import type { Message } from '../message';
import { many, plural } from './many';

export const receive = {
  title: 'Receive',
  meaning: 'A plan comes from another phone as a code, as a link, or from a file.',
  scan: 'Scan a code',
  linkLabel: 'Paste the link here',
  readLink: 'Read the link',
  file: 'Open a file',
  found: 'A plan came with this link',
  keep: 'Keep it on this phone',
  leave: 'Not now',
  cut: 'The link is not whole. A part of it was lost on the way: ask for it again, or for the plan as a file.',
  wrong: 'The link holds answers that this version cannot use:',
  notLink:
    'This is no link of a plan. Copy all of it, from the start to its last letter, or ask for the plan as a file.',
  fileHead: 'What the file brought',
  took: ({ count }) => `${many(count, 'plan', 'plans')} taken in.`,
  tookParts: ({ count }) => `${many(count, 'part', 'parts')} taken in.`,
  already: ({ count }) => `${many(count, 'plan was', 'plans were')} here already, the same.`,
  refused: ({ count }) => `${many(count, 'record', 'records')} refused:`,
  refusedPlan: ({ place, name }) => `Plan ${place}${name === '' ? '' : `, ${name}`}`,
  refusedPart: ({ place }) => `Part ${place}`,
  newer: 'was written by a newer version of Halyard. Update, then open the file again.',
  notWritten: 'Nothing was taken in, because it could not be written down.',
  record: 'the record',
} as const satisfies Readonly<Record<string, Message>>;

export const fileRefusals = {
  'too-big': 'This file is larger than 20 MB. A file of plans is never that large. Choose another.',
  'not-json':
    'This file is not a file of plans, or it was cut short. Choose another, or make it again on the phone it came from.',
  'not-ours': 'This file holds no plans. A file of plans ends in .json and is made with “Keep all as a file”.',
  'newer-file': 'This file was made by a newer version of Halyard. Update, then open it again.',
} as const;

export const surer = {
  title: 'Make it surer',
  meaning: 'Halyard has assumed these. What would change most comes first.',
  told: 'You have told',
  assumedMark: 'assumed',
  standIn: 'not sure',
  plan: 'See the plan',
  back: 'Plans',
  first: 'The four questions',
} as const satisfies Readonly<Record<string, Message>>;

export const onHand = {
  title: 'On hand',
  meaning: 'Rings, boxes, coax and wire you own. Every plan checks them against its need.',
  none: 'Nothing on the list yet.',
  add: 'Add a part',
  kindTitle: 'What kind of part?',
  save: 'Put it on the list',
  saveChange: 'Keep the change',
  cancel: 'Cancel',
  change: 'Change',
  remove: 'Remove',
  removed: ({ name }) => `Removed: ${name}.`,
  unreadable: ({ count }) =>
    `${many(count, 'part', 'parts')} cannot be read by this version, and ${plural(count, 'is kept as it is', 'are kept as they are')}.`,
  ratio: 'Ratio, such as 4 for 4:1',
  kind: 'Type',
  kindHint:
    'A current type makes both its sides carry the same current. A voltage type does not, and a choke goes with it. Not on the label? Take voltage type.',
  mixHint: 'The material: a number printed on the packet. Rings of unknown material are best left out.',
  voltage: 'Voltage type',
  current: 'Current type',
  unknownRating: 'Power it stands, W (leave empty when not known)',
  core: 'Ring size',
  ringSize: ({ mm, code }) => `${mm} mm (${code})`,
  mix: 'Mix',
  count: 'How many',
  countStacked: 'Rings stacked',
  turns: 'Turns (passes through the hole)',
  coilTurns: 'Turns',
  line: 'Coax or line',
  windingLine: 'Coax it is wound with',
  beadLine: 'Coax it sits on',
  diameter: 'Diameter of the coil',
  wire: 'Wire',
  length: 'Length',
} as const satisfies Readonly<Record<string, Message>>;

export const partKinds = {
  transformer: 'Transformer',
  'two-in-one': 'Two-in-one box: transformer and choke',
  choke: 'Choke wound on a ring',
  beads: 'Choke of beads on coax',
  coil: 'Coiled coax',
  core: 'Loose rings',
  wire: 'Wire',
  line: 'Coax or other line',
} as const;

export const partNames = {
  transformer: ({ ratio, kind }) => `${ratio}:1 transformer, ${kind === 'voltage' ? 'voltage' : 'current'} type`,
  'two-in-one': ({ ratio }) => `${ratio}:1 two-in-one box`,
  choke: ({ core, count, turns, line }) =>
    `1:1 choke, ${turns} turns of ${line} on ${plural(count, '', `${count} stacked `)}${core}`,
  beads: ({ count, line }) => `1:1 choke, ${count} beads on ${line}`,
  coil: ({ turns, diameterM, line }, format) =>
    `Coiled ${line}, ${turns} turns of ${format.length(Number(diameterM))} diameter`,
  core: ({ core, count }) => `${count} × ${core}`,
  wire: ({ wire, lengthM }, format) => `${format.length(Number(lengthM))} of ${wire}`,
  line: ({ line, lengthM }, format) => `${format.length(Number(lengthM))} of ${line}`,
  rated: ({ ratingW }) => `, ${ratingW} W`,
} as const satisfies Readonly<Record<string, Message>>;

export const settings = {
  title: 'Settings',
  units: 'Which unit stands first?',
  unitsWhy: 'Both are always shown. A plan that does not say has metres first.',
  asThePlan: 'As the plan',
  metric: 'Metres first',
  imperial: 'Feet first',
  light: 'Day or night?',
  lightWhy: 'Night is amber on black, for eyes used to the dark.',
  auto: 'As the phone',
  day: 'Day',
  night: 'Night',
  hand: 'Which thumb?',
  handWhy: 'Puts the main button under it.',
  left: 'Left',
  right: 'Right',
  place: 'Where you are',
  placeWhy: 'Taken for every plan that does not say otherwise.',
  region: 'Part of the world',
  regionWhy: 'Where bands begin and end. Not set: region 1, with Europe and Africa.',
  country: 'Country',
  countryWhy: 'Which limits stand first.',
  ruleSet: 'Limits for people near the antenna',
  ruleSetWhy: 'Not set: those of your country, else the international ones.',
  notSet: 'Not set',
  keepingHead: 'Will your plans stay?',
  keepHead: 'Works with no signal?',
  check: 'Check now',
  checking: 'Checking',
  allHere: ({ count }) => `All ${count} parts of the app are on this phone. It opens with no signal.`,
  missing: ({ missing, count }) =>
    `${missing} of ${count} parts of the app are not on this phone yet. Stay where there is a signal and fetch them.`,
  damaged: ({ damaged, count }) =>
    `${damaged} of ${count} parts of the app are on this phone but not as they were made. Fetch them again where there is a signal.`,
  fetchAgain: 'Fetch them again',
  noWorker: 'This browser does not keep the app. It opens only with a signal.',
  promised: 'The browser has promised to keep your plans.',
  'not-promised':
    'The browser has not promised to keep your plans: it may clear them when the phone runs full. Put Halyard on the home screen, and keep a file now and then.',
  'cannot-tell': 'The browser does not say whether it keeps your plans. Keep a file now and then.',
  askToKeep: 'Ask it to keep them',
  room: ({ usedMb, allowedGb }) => `${usedMb} MB used. ${allowedGb} GB allowed.`,
  wrote: 'A test record was written and read back.',
  notWrote: 'A test record could not be written. Plans last only until the page is closed.',
  files: 'Files',
  version: ({ version }) => `Version ${version}`,
  checkUpdate: 'Look for a newer version',
  noUpdate: 'No newer version was found.',
  privacy: 'Nothing leaves this phone unless you send it.',
  unreadable: 'Settings were written by another version and are left as they are.',
} as const satisfies Readonly<Record<string, Message>>;
