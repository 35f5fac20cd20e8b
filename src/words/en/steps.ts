/** The steps of the job, by code. Short enough to read out to a second person. Data: the numbers named in advice/steps. */
import type { Format } from '../format';
import type { Data, Message } from '../message';
import { plural } from './many';
import { spanNames } from './mechanics';
import { bandName } from './names';
import { metres } from './readers';

const bandList = (d: Data): string => String(d.bands).split(' ').map(bandName).join(', ');

/** Above a raised hand an end is out of reach; lower ones have to be kept from people some other way. */
const OUT_OF_REACH_M = 2.5;
const kept = (heightM: number, f: Format): string =>
  heightM >= OUT_OF_REACH_M ? `${f.length(heightM)}, out of reach` : `${f.length(heightM)}, and keep people away`;

/** Ends of two legs: a shorter leg may not come down as far as the other. */
function tiedEnds(d: Data, f: Format): string {
  const [longM, shortM] = [Number(d.endHeightM), Number(d.shortEndHeightM)];
  if (Math.abs(longM - shortM) < 0.1) return `them at ${kept(longM, f)}`;
  return `the long leg at ${kept(longM, f)}; the short leg ends at ${kept(shortM, f)}`;
}

/** "at the box and at 10.7 m (35 ft)": places counted from the feed-point end of the line. */
function places(d: Data, f: Format): string {
  const list = String(d.chokesM)
    .split('|')
    .filter((place) => place !== '')
    .map((place) => (Number(place) < 0.05 ? 'at the feed point' : `at ${f.length(Number(place))}`));
  const last = list.at(-1);
  if (last === undefined) return '';
  const text = list.length === 1 ? last : `${list.slice(0, -1).join(', ')} and ${last}`;
  const what = d.transformed === true ? 'Transformer and choke go' : plural(list.length, 'The choke goes', 'Chokes go');
  return ` ${what} ${text}, counted along the line from the feed point.`;
}

/** Bands of a wire with links, highest first. */
const ordered = (d: Data): readonly string[] => String(d.order).split(' ').map(bandName);
const orderText = (d: Data): string => ordered(d).join(', then ');
const linkNames = (d: Data): string => ordered(d).slice(0, -1).join(', ');

/** "for 15 m every link open; for 20 m closed up to the 15 m link, open beyond; for 40 m every link closed". */
function settings(d: Data): string {
  const all = ordered(d);
  return all
    .map((name, index) => {
      if (index === 0) return `for ${name} every link open`;
      if (index === all.length - 1) return `for ${name} every link closed`;
      return `for ${name} closed up to the ${all[index - 1]} link, open beyond`;
    })
    .join('; ');
}

const box = (d: Data): string => (d.box === true ? 'Hang the box so that the wire, not the box, takes the pull.' : '');
const route = (d: Data): string =>
  d.square === true
    ? ' Lead the coax away from the wire at a right angle.'
    : ' The coax runs under or beside the wire: keep it on the ground there.';

/** How slack it hangs, and what keeps it so on a tree. */
const slack = (d: Data, f: Format): string => {
  if (d.sagM === undefined) return '';
  const sag = ` Let ${spanNames[String(d.span)] ?? spanNames.span} sag ${metres(d, f, 'sagM')}: never pull it straight.`;
  return d.weightKg === undefined
    ? sag
    : `${sag} On a tree, hang ${f.number(Number(d.weightKg), 2)} kg on the rope over a pulley, with ${metres(d, f, 'swayM')} to travel.`;
};

export const stepNames: Readonly<Record<string, string>> = {
  pack: 'Pack',
  'make-boxes': 'Make the boxes',
  'walk-site': 'Walk the site',
  thunder: 'Agree on thunder',
  'cut-wire': 'Cut the wire',
  'lay-out': 'Lay it out',
  'plan-lift': 'Plan the lift',
  launch: 'Launch the line',
  raise: 'Raise the wire',
  'return-wires': 'Lay the return wires',
  connect: 'Connect the feed line',
  entry: 'Bring it inside',
  mark: 'Mark ropes and low wire',
  measure: 'Measure',
  trim: 'Trim',
  'set-tuner': 'Set the tuner',
  'transmit-test': 'Test on low power',
  'change-links': 'Change the band',
  leave: 'Take it down and leave',
  storm: 'When a storm comes',
};

export const steps: Readonly<Record<string, Message>> = {
  'pack-portable': 'Tick each thing into the bag.',
  'pack-home': 'Lay everything out and tick it off.',
  'make-boxes': (d) =>
    `Wind ${plural(d.count, 'the core', 'the cores')} and close the ${plural(d.count, 'box', 'boxes')} at a table, not in the field. Test with a resistor if you have an analyser.`,
  'walk-site': (d, f) =>
    `Walk the whole place and look up. No overhead line may be nearer than ${metres(d, f, 'lineDistanceM')}. Choose supports, coax route and where people walk.`,
  'thunder-portable': 'Agree who goes where at the first thunder. The antenna then stays as it is.',
  'thunder-home': 'Agree what happens at the first thunder: the antenna stays as it is, and you stay inside.',
  'cut-wire': (d) =>
    `Cut ${plural(d.count, 'the piece', `the ${d.count} pieces`)} by the cut list, one number at a time, and mark each at its finished length.`,
  'cut-linked': (d) =>
    `Cut the ${d.count} pieces by the cut list, one number at a time, and mark each at its finished length. Join them outward through the link insulators, which take the pull, and fit a plug to both sides of each. Label the links by the band that ends there, both legs alike: ${linkNames(d)}. Close every link, measure each leg once more, then open them all.`,
  'lay-out': (d, f) =>
    Number(d.runM) > 0.5
      ? `Lay the wire on the ground along its run of ${metres(d, f, 'runM')}, free of kinks. Tie on insulators and ropes.`
      : `Lay the wire beside its support, ${metres(d, f, 'riseM')} from foot to top. Tie on insulator and rope.`,
  'plan-throw': 'Choose the branch or top that the line goes over, from the ground. See what is behind and beyond it.',
  'plan-pole': 'Choose where the pole stands and which way it goes up. See that it can fall without reaching anyone.',
  launch: 'Throw the line over, let the weight down slowly, and pull the rope through.',
  'raise-straight-wire': (d, f) =>
    d.endFed === true
      ? `Pull up the far end to ${metres(d, f, 'endHeightM')}, then the feed end to ${metres(d, f, 'heightM')}.${slack(d, f)}`
      : `Pull up one end, then the other, to ${metres(d, f, 'endHeightM')}.${slack(d, f)}`,
  'raise-inverted-v': (d, f) =>
    d.endFed === true
      ? `Pull the middle up to ${metres(d, f, 'topM')}. Lead the far end out and tie it at ${kept(Number(d.endHeightM), f)}; the feed end hangs at ${metres(d, f, 'heightM')}.${slack(d, f)}`
      : `Pull the middle up to ${metres(d, f, 'topM')}. Lead the ends out to opposite sides and tie ${tiedEnds(d, f)}.${slack(d, f)}`,
  'raise-sloper': (d, f) =>
    `Pull the high end up to ${metres(d, f, 'topM')}, then tie the low end at ${kept(Math.min(Number(d.heightM), Number(d.endHeightM)), f)}.${slack(d, f)}`,
  'raise-vertical': (d, f) =>
    `Fasten the wire along the pole. Walk the pole up and tighten three guys of ${metres(d, f, 'guyM')}, one at a time.`,
  'raise-inverted-l': (d, f) =>
    `Pull up the corner first, then the far end. Tie the foot of the wire off so that it hangs clear of the support.${slack(d, f)}`,
  'raise-loop': (d, f) =>
    `Pull up the corners one after the other, a little at a time. Keep the feed point where you can reach its rope.${slack(d, f)}`,
  'raise-parallel-wires': (d, f) =>
    `Pull the middle up to ${metres(d, f, 'heightM')}. Fan the pairs out: the ends of each shorter one hang ${f.length(1)} below the wire above, a fifth of its leg where that is short.${slack(d, f)}`,
  'raise-folded-wire': (d, f) =>
    `Pull it up to ${metres(d, f, 'heightM')} with both wires flat and the spacers untwisted.${slack(d, f)}`,
  'raise-other': 'Raise it as its own instructions say.',
  'hang-indoors': (d, f) =>
    `Hang the wire along its run of ${metres(d, f, 'runM')}, as far as you can from mains wiring, metal and people.`,
  'lay-counterpoise': (d) =>
    `Join ${plural(d.count, 'the counterpoise wire', `the ${d.count} counterpoise wires`)} to the ground terminal and lead ${plural(d.count, 'it', 'them')} away from the coax, where nobody treads.`,
  'lay-ground-radials': (d, f) =>
    `Spread ${d.count} radials of ${metres(d, f, 'lengthM')} evenly from the base, pin them flat, and join them to the shield side.`,
  'lay-elevated-radials': (d, f) =>
    `Lead ${d.count} radials of ${metres(d, f, 'lengthM')} out evenly from the base, all alike, and tie their ends at ${kept(Number(d.heightM), f)}.`,
  'connect-coax': (d, f) =>
    `${box(d)}${route(d)}${places(d, f)} Seal every plug outdoors and leave a drip loop.`.trim(),
  'connect-open-wire': (d, f) =>
    `${box(d)} Lead the open-wire line straight down, a hand away from metal, with a twist every metre.${places(d, f)}`.trim(),
  'connect-none': (d, f) => `${box(d)} Join the wire straight to its device.${places(d, f)}`.trim(),
  'entry-coax':
    'Outside, before the wall: arrester with a short, thick bond to the main earth, then the choke, then in.',
  'entry-open-wire': 'Outside, before the wall: arrester for both wires with a short, thick bond to the main earth.',
  mark: 'Flag ropes, guys and low wire ends with bright streamers. Check that ends hang out of reach.',
  'mark-loop':
    'Flag ropes, guys and the lowest run of the wire with bright streamers. Check that every side and corner hangs out of reach.',
  'measure-dip': (d, f) =>
    `Measure at the radio end of the coax, with everything connected and people away. Find the dip nearest ${f.number(Number(d.dipMHz), 4)} MHz and note it. Then look at each band: ${bandList(d)}.`,
  'measure-linked': (d, f) =>
    `Begin on ${bandName(String(d.band))}, with every link open. Measure at the radio end of the coax, everything connected and people away. Find the dip nearest ${f.number(Number(d.dipMHz), 4)} MHz and note it. The lower bands come one by one, each when the one above it is trimmed.`,
  'set-tuner': (d) =>
    `Set the tuner on each band with the lowest power that lets it work: ${bandList(d)}. Note the settings. There is nothing to trim.`,
  trim: 'Enter the dip on Trim. Lower, fold what it says, raise, measure again. Stop when it says stop.',
  'trim-linked': (d) =>
    `Enter the dip on Trim. ${d.indoors === true ? 'Unplug the coax' : 'Unplug the coax and lower the wire'}, fold at the link of that band in both legs alike, ${d.indoors === true ? 'and' : 'hoist,'} measure again. When it says stop, ${d.indoors === true ? 'unplug again' : 'unplug and lower once more'}, close that link in both legs and go on to the next: ${orderText(d)}. Highest first, since its piece is part of every lower band.`,
  'transmit-test': (d, f) =>
    `Send with ${f.number(Number(d.firstW))} W for ten seconds on each band${d.linked === true ? ', with the links set for it' : ''}. If the SWR wanders when the coax is moved, the coax is sending too: check the chokes.${Number(d.powerW) > Number(d.firstW) ? ` Then go up to ${f.number(Number(d.powerW))} W.` : ''} If the SWR climbs, stop and let the cores cool.`,
  'change-links': (d) =>
    `Stop sending, radio off, coax unplugged, and take its plug along.${d.indoors === true ? '' : ' Lower the ends until you reach the links from the ground.'} Set both legs alike: ${settings(d)}. ${d.indoors === true ? 'Step back' : 'Hoist it again'}, see everybody away from the wire, and look at the SWR with little power before you send.`,
  'leave-linked':
    'Disconnect the radio. Look up again, lower the antenna, and close every link so that no piece stays behind. Wind each leg up from its far end, plugs on the inside, and tie it. Count every part back into the bag.',
  leave: 'Disconnect the radio. Look up again, lower the antenna, and count every part back into the bag.',
  'storm-home':
    'Unplug the feed line before a storm is near and leave its end outside or on the earthed plate. At the first thunder touch nothing.',
  'storm-indoors': 'Unplug the antenna from the radio before a storm is near. At the first thunder touch nothing.',
};
