/** What a designed device does, where it falls short, and what other rings would change. */
import type { Format } from '../format';
import type { Data, Message } from '../message';
import { conductorName, coreName, modeName } from './catalog-names';
import { band, figure, ohms } from './readers';

const watts = (d: Data, f: Format, key: string): string => `${figure(d, f, key)} W`;
const least = (d: Data, f: Format, key: string): string => (Number(d[key]) < 0.1 ? 'under 0.1 W' : watts(d, f, key));
const chokeHeat = (d: Data, f: Format): string =>
  `At ${watts(d, f, 'powerW')} in this mode current on the outside leaves ${least(d, f, 'heatW')} of heat in it on ${band(d)}, and the power on its way through ${least(d, f, 'cableW')} in its cable: it gets ${figure(d, f, 'riseK')} °C warmer than the air ${housed(d)}.`;
const housed = (d: Data): string => (d.isClosed === true ? 'in a closed box in the sun' : 'in free air');
const mode = (d: Data): string => (d.mode === '' ? 'without pause' : `of ${modeName(String(d.mode))}`);
const conductor = (d: Data): string => conductorName(String(d.conductor));

export const deviceNotes: Readonly<Record<string, Message>> = {
  'transformer-expect': (d, f) =>
    `It loses ${figure(d, f, 'lossDb')} dB on ${band(d)}, its worst band: ${watts(d, f, 'lostW')} of ${watts(d, f, 'powerW')}. It gets ${figure(d, f, 'riseK')} °C warmer than the air ${housed(d)}.`,
  'transformer-doubt': (d, f) =>
    `Rings differ by ± ${figure(d, f, 'percent')} %: ${figure(d, f, 'lowDb')} to ${figure(d, f, 'highDb')} dB on ${band(d)}, and up to ${figure(d, f, 'riseWorstK')} °C warmer; ${figure(d, f, 'limitK')} °C is what to keep to. The rise itself is known within a quarter.`,
  'power-by-mode': (d, f) =>
    `Without pause it stands ${watts(d, f, 'voiceW')} of voice, ${watts(d, f, 'cwW')} of Morse, ${watts(d, f, 'dataW')} of digital or FM. If the SWR climbs while you send, stop: the core is hot.`,
  'choke-expect': (d, f) =>
    `${ohms(d, f, 'ohm')} on ${band(d)}, its weakest band${d.isReactive === true ? ', mostly reactance' : ''}; ${ohms(d, f, 'neededOhm')} is asked for.`,
  'choke-doubt': (d, f) =>
    `Real rings lie up to ${figure(d, f, 'belowPercent')} % below and ${figure(d, f, 'abovePercent')} % above the maker’s curve, and the capacitance of the winding is known within a half: there it has ${ohms(d, f, 'lowOhm')} to ${ohms(d, f, 'highOhm')}. Measure it if you can.`,
  'choke-heat': (d, f) => `${chokeHeat(d, f)} Heat within a quarter.`,
  'choke-heat-likely': (d, f) =>
    `${chokeHeat(d, f)} That is the most found at antennas like this one, good to a factor of two, until this one is worked out.`,
  'choke-heat-later':
    'How warm it gets is known once this very antenna is worked out with its coax. Until then feel it after the first long over.',
  'choke-heat-unknown':
    'How warm it gets depends on how unevenly the two wires of the line are loaded, which no plan can tell. Feel it after the first long over.',
};

export const shortfalls: Readonly<Record<string, Message>> = {
  'short-loss': (d, f) =>
    `It loses ${figure(d, f, 'value')} dB on ${band(d)}, and ${figure(d, f, 'limit')} dB is the most.`,
  'short-swr': (d, f) =>
    `It spoils the match on ${band(d)}: SWR ${figure(d, f, 'value')} where the antenna fits, and ${figure(d, f, 'limit')} is the most.`,
  'short-heat': (d, f) =>
    `Too hot at ${watts(d, f, 'powerW')} ${mode(d)}: ${figure(d, f, 'value')} °C above the air on ${band(d)}, and ${figure(d, f, 'limit')} is the most. Stay at ${watts(d, f, 'mostW')}.`,
  'short-flux': (d, f) => `The core comes near saturation on ${band(d)}. Stay at ${watts(d, f, 'mostW')}.`,
  'short-winding': (d, f) =>
    `Its wire is ${figure(d, f, 'value')} of a wavelength on ${band(d)}: too long for these figures to be trusted. Measure it.`,
  'short-fit': (d) => `${d.turns} turns do not go through the ${coreName(String(d.core))}.`,
  'short-ohms': (d, f) => `${ohms(d, f, 'ohm')} on ${band(d)}, and ${ohms(d, f, 'neededOhm')} is needed.`,
  'short-reactive': (d, f) =>
    `${ohms(d, f, 'ohm')} on ${band(d)}, mostly reactance: such a choke needs ${ohms(d, f, 'neededOhm')}.`,
  'short-cable': (d) => `More power than ${conductor(d)} stands.`,
  'short-manganese':
    'A manganese-zinc mix: large rings of it depart from their curve above a few megahertz. Measure before you trust it with power.',
  'short-bend': (d) => `${conductor(d)} does not bend that tightly round the ${coreName(String(d.core))}.`,
};

export const alternativeNames = {
  'on-hand': 'From the rings you have',
  'fewest-rings': 'Fewest rings',
  lightest: 'Lightest',
  coolest: 'Coolest',
  'mix-31': 'Only mix 31',
  'mix-43': 'Only mix 43',
  'mix-52': 'Only mix 52',
  'mix-61': 'Only mix 61',
  'mix-77': 'Only mix 77',
} as const;

/** Numbers closer than these are alike to anyone who builds it. */
const SAME = { grams: 10, lossDb: 0.05, riseK: 3, ohmPart: 0.1, powerPart: 0.1 } as const;

function ringText(d: Data): string {
  const rings = Number(d.rings);
  const before = Number(d.ringsBefore);
  const count = rings === before ? 'as many as planned' : `${before} planned`;
  return `${rings} × ${coreName(String(d.core))}, ${count}`;
}

/** `more` or `less` by how much; empty where nobody would notice, or where one of the two is not known. */
function difference(d: Data, key: string, least: number, say: (by: number, isMore: boolean) => string): string[] {
  if (d[key] === undefined) return [];
  const by = Number(d[key]) - Number(d[`${key}Before`]);
  return Math.abs(by) < least ? [] : [say(Math.abs(by), by > 0)];
}

export const comparison = {
  'as-planned': 'This is the one in the plan.',
  compared: (d, f) => {
    const part = (key: string): number => Math.abs(Number(d[`${key}Before`] ?? 0));
    const texts = [
      ringText(d),
      ...difference(
        d,
        'ohm',
        SAME.ohmPart * part('ohm'),
        () => `${ohms(d, f, 'ohm')} instead of ${ohms(d, f, 'ohmBefore')}`,
      ),
      ...difference(d, 'lossDb', SAME.lossDb, (by, isMore) => `${f.number(by, 2)} dB ${isMore ? 'more' : 'less'} loss`),
      ...difference(d, 'riseK', SAME.riseK, (by, isMore) => `${f.number(by, 2)} °C ${isMore ? 'warmer' : 'cooler'}`),
      ...difference(d, 'mostW', SAME.powerPart * part('mostW'), () => `good for ${watts(d, f, 'mostW')} in this mode`),
      ...difference(d, 'grams', SAME.grams, (by, isMore) => `${f.number(by, 2)} g ${isMore ? 'heavier' : 'lighter'}`),
    ];
    return `${texts.join(', ')}.`;
  },
} as const satisfies Readonly<Record<string, Message>>;
