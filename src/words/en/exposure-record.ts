/** The evaluation of exposure as a record to keep and print. Never that a place is without danger. */
import type { Message } from '../message';
import { memoryMark, whole } from './exposure';

const metres = (value: unknown): number => Number(value);

export const recordWords = {
  title: 'Record of an exposure evaluation',
  made: ({ date, name }) => `Made on ${date}, for: ${name}`,
  aid: 'A planning aid worked out by the operator. The national rule and its authority decide; where they ask for a measurement or a form of their own, this record does not replace it.',
  antenna: 'Antenna and station',
  frequencies: ({ frequencies }) => `Frequencies: ${frequencies}.`,
  crestPower: (d, f) =>
    `Power ${f.number(Number(d.powerW))} W at the crest, taken whole to the antenna: no credit for the loss of the line, for mismatch or for age.`,
  averagePower: (d, f) =>
    `Average ${f.number(Number(d.averageW))} W: mode ${d.mode}, ${f.number(100 * Number(d.factor))} % while keyed (US exposure bulletin, table 2; AM common practice), keyed ${f.number(100 * Number(d.share))} % of the averaging time.`,
  'mode-unknown': 'not told, taken as full carrier',
  person: (d, f) => `Nearest place where somebody may stay: ${f.length(metres(d.nearestM))} from the antenna.`,
  'person-unknown': 'Nearest place where somebody may stay: not told, so no band is judged for it.',
  assumed: ({ assumed }) => `Not told and assumed: ${assumed}.`,
  band: 'Band',
  knowing: 'People who know',
  public: 'Everybody else',
  results: 'Result: keep this far from every part, counterpoise and the outside of the coax included',
  resultCaption: 'At any height, from the nearest part',
  ground: 'Standing on the ground, from the nearest part seen from above',
  noDistance: 'no distance',
  nowhere: 'none beyond an arm’s reach',
  decided: ({ band, decidedBy }) => `${band}. ${decidedBy}`,
  places: 'Places of this site where people may be',
  placesCaption:
    'Strongest field over the height of a body, an arm’s length from the nearest conductor, on the worst band',
  place: 'Place',
  placeCell: (d, f) =>
    `${f.number(Number(d.percent), 2)}\u00a0% of the limit on ${whole(d.band)}; at the limit with ${f.number(Number(d.mostW), 2)}\u00a0W${Number(d.mostW) >= Number(d.topW) ? ' or more' : ''}`,
  placesNote: 'Power at the crest, in the mode and with the pauses told above.',
  limits: ({ rules }) => `Limits: ${rules}`,
  average: 'Averaged',
  averaged: ({ minutes }) => `${minutes} min`,
  crest: 'never: crest',
  electric: 'Electric V/m',
  magnetic: 'Magnetic A/m',
  power: 'Power W/m²',
  sources: ({ sources }) => `From: ${sources}.`,
  found: 'Values without a mark were read in the source.',
  memory: `${memoryMark.trim()} from memory, not yet compared with the printed table: check it before you rely on it.`,
  'person-kept': (d, f) =>
    `${d.band}: the nearest person is outside this distance; up to ${f.number(Number(d.mostW), 2)} W at the crest would be.`,
  'person-inside': (d, f) =>
    `${d.band}: the nearest person is inside this distance. Use at most ${f.number(Number(d.mostW), 2)} W at the crest, or keep people away while you send.`,
  method: 'Method',
  solved:
    'Fields computed from the currents on this antenna (moment method, real ground, coax outside and chokes as planned) at every part, at every height above the ground, each field against its own limit; greatest value, no averaging over the body; 10 % added to every field; distances rounded up to half a metre, never below touching distance.',
  screen:
    'Published far-field formula (US exposure bulletin, supplement B) with the reflection of the ground; no final answer nearer than the wavelength over 2π.',
  'common-practice':
    'Near the wire, until its field is computed: the distance of common practice, 3 m at 100 W and 10 m at 1 kW, for both groups of people.',
  refusedMethod:
    'A loop under half a wave round gets no distance from the far-field formula, which falls short there; the fields of its own currents give one.',
  contact:
    'Limits of fields say nothing of touching: wires, ends and feed point stay out of reach whatever the distance.',
  again: 'Make it again when power, mode, antenna, place or people change, and when the rule does.',
  by: 'Made by (name, call sign): ________________________________    Signed: ________________________________',
} as const satisfies Readonly<Record<string, Message>>;
