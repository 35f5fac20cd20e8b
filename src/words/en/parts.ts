/** The shopping list: trade sizes and mixes, no brands. Data: the numbers named in advice/parts and its neighbours. */
import type { Format } from '../format';
import type { Data, Message } from '../message';
import { render } from '../message';
import { conductorName, coreName, lineName, wireName } from './catalog-names';
import { deviceNames, placeNames } from './devices';

const ratio = (d: Data, f: Format): string => `${f.number(Number(d.ratio))}:1`;

export const partItems: Readonly<Record<string, Message>> = {
  wire: (d) => wireName(String(d.wire)),
  'end-insulator': (d) => `end insulator, egg or long, for ${d.peakKilovolts} kV or more`,
  'centre-insulator': 'centre insulator with strain relief',
  spacer: 'spacer between the wires',
  'link-insulator': (d) =>
    `link insulator, a strip with two holes at each end, so that it and no plug takes the pull, for ${d.peakKilovolts} kV or more`,
  'link-plug': 'plug and socket for a link, 4 mm round or flat, that hold by themselves',
  'link-label': 'waterproof labels, the two halves of a link alike',
  line: (d) => lineName(String(d.line)),
  'coax-plug': (d) => `coax plug for ${lineName(String(d.line))}`,
  'coax-socket': 'coax socket for the box',
  'wire-post': 'wire post for the box, stainless, with wing nut',
  'device-transformer': (d, f) => `${ratio(d, f)} transformer, ready made`,
  'device-choke': '1:1 choke, ready made',
  'device-tuner': 'tuner',
  ring: (d) => coreName(String(d.core)),
  'winding-coax': (d) => `${conductorName(String(d.conductor))}, to wind`,
  'winding-wire': (d) => `${conductorName(String(d.conductor))}, to wind`,
  capacitor: (d, f) =>
    `capacitor ${f.number(Number(d.capacitorPf))} pF, mica or ceramic NP0, ${d.kilovolts} kV or more`,
  box: 'weatherproof box with a hole at the bottom to breathe',
  'arrester-coax': 'coax lightning arrester',
  'arrester-open-wire': 'arrester for two wires, or a pair of spark gaps',
  'bond-wire': 'bonding wire, 16 mm² or 6 AWG, green and yellow',
  'earth-clamp': 'clamp to the main earth',
  'drain-resistor': 'resistor 330 kΩ, 2 W, high voltage type, in series',
  rope: (d, f) => `braided polyester rope, ${f.number(Number(d.diameterMm))} mm or thicker, UV-stable`,
  'throw-line': 'throw line, 2 mm, slippery',
  'throw-weight': 'throw weight, 200 to 400 g',
  'end-weight': (d, f) =>
    Number(d.weightKg) > 0
      ? `weight of ${f.number(Number(d.weightKg), 2)} kg with a pulley, for an end tied to a tree`
      : 'weight with a pulley, for an end tied to a tree',
  pole: 'glass-fibre pole with guy ring',
  stake: 'stake',
  streamers: 'bright streamers for ropes and wire ends',
  'marking-tape': 'bright tape for marks',
  'sealing-tape': 'self-amalgamating tape',
};

/** What is sold by length is told with it. */
export const partItem = (name: string, { unit, quantity }: { unit: string; quantity: number }, f: Format): string =>
  unit === 'metre' ? `${name}, ${f.length(quantity)}` : name;

const deviceName = (d: Data, f: Format): string => render(deviceNames[String(d.device)] ?? '', d, f);

export const partFor: Readonly<Record<string, Message>> = {
  'for-radiator': 'the wire in the air',
  'for-links': 'the links in the wire',
  'for-return': 'radials or counterpoise',
  'for-line': 'the feed line',
  'for-device': (d, f) => {
    const place = placeNames[String(d.at)] ?? '';
    const along =
      d.at === 'along-line' && Number(d.distanceM) > 0 ? `, ${f.length(Number(d.distanceM))} from the feed point` : '';
    return `${deviceName(d, f)} ${place}${along}`.trim();
  },
  'for-drain': 'static drain across the feed point',
  'for-raising': 'raising it',
  'for-marks': 'marks on wire and coax',
  'for-sealing': 'plugs outdoors',
};

/** Shorter: without the place of a device. */
export const partUses: Readonly<Record<string, Message>> = { ...partFor, 'for-device': deviceName };

export const partSubstitutes: Readonly<Record<string, Message>> = {
  'no-substitute': 'nothing else does it',
  'or-other-wire': 'other copper wire from 1 mm²: change the wire in the plan, the length changes with it',
  'or-any-wire': 'any insulated copper wire from 0.5 mm²',
  'or-plastic-strip': 'a strip of thick polyethylene with smooth holes',
  'or-flat-plug': 'flat blade plugs or bullet plugs, soldered and under shrink sleeve',
  'or-plastic-tube': 'plastic tube, cut and slotted',
  'or-other-coax': 'other 50 Ω coax of the same size or thicker',
  'or-other-open-wire': 'another open-wire line: change it in the plan',
  'or-bnc': 'BNC, up to 100 W',
  'or-large-socket': 'a larger one (N type), with plugs to fit',
  'or-bolt': 'a stainless M5 or M6 bolt with two nuts and washers, sealed',
  'or-thin-coax': 'other 50 Ω coax thin enough to wind, PTFE inside',
  'or-enamelled': 'enamelled wire, 1 mm, with PTFE tape round the ring',
  'or-junction-box': 'any outdoor junction box that keeps rain out and lets heat out',
  'or-other-ring': (d) =>
    `${d.count} × ${coreName(String(d.core))} with ${Number(d.secondaryTurns) > 0 ? `${d.turns} and ${d.secondaryTurns}` : d.turns} turns: its figures stand beside the device in the plan`,
  'or-thicker-bond': 'thicker, or flat copper strap; never thinner than your code asks',
  'or-drain-choke': 'a static drain choke made for it',
  'or-other-rope': 'any UV-stable rope that does not conduct',
  'or-fishing-line': 'strong fishing line, with gloves',
  'or-water-bottle': 'a small bottle filled with sand',
  'or-elastic': 'elastic cord or a long spring',
  'or-tree': 'a tree with a rope over it: then no guys',
  'or-fence-post': 'a fence post or a tree trunk',
  'or-bright-cloth': 'strips of bright cloth',
  'or-any-tape': 'any tape you can see',
  'or-pvc-tape': 'two layers of PVC tape, renewed each season',
};
