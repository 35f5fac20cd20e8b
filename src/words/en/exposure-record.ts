/** The evaluation of exposure as a record to keep and print. Never that a place is without danger. */
import type { Message } from '../message';

const metres = (value: unknown): number => Number(value);

export const recordWords = {
  title: 'Record of an exposure evaluation',
  made: ({ date, name }) => `Made on ${date}, for: ${name}`,
  aid: 'A planning aid worked out by the operator. The national rule and its authority decide; where they ask for a measurement or a form of their own, this record does not replace it.',
  antenna: 'Antenna and station',
  frequencies: ({ frequencies }) => `Frequencies: ${frequencies}.`,
  power: (d, f) =>
    `Power ${f.number(Number(d.powerW))} W at the crest, taken whole to the antenna: no credit for the loss of the line, for mismatch or for age.`,
  average: (d, f) =>
    `Average ${f.number(Number(d.averageW))} W: mode ${d.mode}, ${f.number(100 * Number(d.factor))} % while keyed (US exposure bulletin, table 2; AM common practice), keyed ${f.number(100 * Number(d.share))} % of the averaging time.`,
  'mode-unknown': 'not told, taken as full carrier',
  person: (d, f) => `Nearest place where somebody may stay: ${f.length(metres(d.nearestM))} from the antenna.`,
  'person-unknown': 'Nearest place where somebody may stay: not told, so no band is judged for it.',
  assumed: ({ assumed }) => `Not told and assumed: ${assumed}.`,
  limits: ({ rules }) => `Limits: ${rules}`,
  limit: ({ band, tier, field, limit, unit, average, provenance, title }) =>
    `${band}, ${tier}: ${field} ${limit} ${unit}, ${average} (${title}; ${provenance})`,
  knowing: 'people who know',
  public: 'everybody else',
  averaged: ({ minutes }) => `averaged over ${minutes} min`,
  crest: 'on the crest, never averaged',
  found: 'read in the source',
  memory: 'from memory, to be checked',
  results: 'Result: keep this far from every part, counterpoise and the outside of the coax included',
  result: (d, f) =>
    `${d.band}: people who know ${f.length(metres(d.knowingM))}, everybody else ${f.length(metres(d.publicM))}. ${d.decidedBy}`,
  refused: ({ band, decidedBy }) => `${band}: no distance. ${decidedBy}`,
  'ground-none': (d) =>
    `${d.band}, standing on the ground: both limits are met everywhere more than an arm's reach from any part.`,
  ground: (d, f) =>
    `${d.band}, standing on the ground, seen from above: people who know ${f.length(metres(d.groundKnowingM))}, everybody else ${f.length(metres(d.groundPublicM))}.`,
  'person-kept': (d, f) =>
    `${d.band}: the nearest person is outside this distance; up to ${f.number(Number(d.mostW), 2)} W would be.`,
  'person-inside': (d, f) =>
    `${d.band}: the nearest person is inside this distance. Use at most ${f.number(Number(d.mostW), 2)} W, or keep people away while you send.`,
  method: 'Method',
  solved:
    'Fields computed from the currents on this antenna (moment method, real ground, coax outside and chokes as planned) at every part, at every height above the ground, each field against its own limit; greatest value, no averaging over the body; 10 % added to every field; distances rounded up to half a metre, never below touching distance.',
  screen:
    'Published far-field formula (US exposure bulletin, supplement B) with the reflection of the ground; no final answer nearer than the wavelength over 2π.',
  'common-practice':
    'Near the wire, until its field is computed: the distance of common practice, 3 m at 100 W, growing with the square root of the power.',
  refusedMethod: 'A loop under half a wave round is refused: the far-field formula falls short there.',
  contact:
    'Limits of fields say nothing of touching: wires, ends and feed point stay out of reach whatever the distance.',
  again: 'Make it again when power, mode, antenna, place or people change, and when the rule does.',
  by: 'Made by (name, call sign): ______________________    Signed: ______________________',
} as const satisfies Readonly<Record<string, Message>>;

export const fieldNames: Readonly<Record<string, string>> = {
  electric: 'electric field',
  magnetic: 'magnetic field',
  power: 'power density',
};
export const fieldUnits: Readonly<Record<string, string>> = { electric: 'V/m', magnetic: 'A/m', power: 'W/m²' };
