/** What stands on the screen where a wound transformer is tried out with a resistor. */
import type { Format } from '../format';
import type { Data, Message } from '../message';
import { coreName } from './catalog-names';
import { many } from './many';

const ohms = (d: Data, f: Format): string =>
  Number(d.ohm) >= 1000 ? `${f.number(Number(d.ohm) / 1000)} kΩ` : `${f.number(Number(d.ohm))} Ω`;

const ringsIn = ({ core, rings }: Data): string =>
  Number(rings) === 1 ? `one ${coreName(String(core))}` : `${rings} stacked, each a ${coreName(String(core))}`;

export const boxTest = {
  title: 'Test the box',
  open: 'Test it with a resistor',
  openFor: ({ name }) => `Test it with a resistor: ${name}`,
  meaning: 'A resistor stands in for the antenna. If the box shows your analyser a low SWR, it is wound right.',
  resistor: ohms,
  resistorIs: 'The resistor',
  how: (d, f) =>
    `Put a ${ohms(d, f)} resistor across ${d.isBalanced === true ? 'the two antenna terminals' : 'the antenna terminal and the shield'}, with the shortest leads. Carbon or metal film, 5 % or better; a wire-wound one is a coil.|Put the analyser at the coax side, right at the box: no choke and no long cable between.|Read the SWR on each band and note it below.`,
  noSending: 'Use an analyser only. From a radio this resistor burns, even at its lowest power.',
  band: 'Band',
  expected: 'Expected',
  measured: 'You read',
  aboutSwr: ({ swr }) => `about ${swr}:1`,
  fieldFor: ({ band }) => `SWR you read on ${band}`,
  wrong: 'SWR is a number from 1 up, such as 1.3. Leave the field empty to take it back.',
  good: ({ time }) => `Good. Noted ${time}.`,
  usable: ({ time }) => `Usable, not good. Noted ${time}.`,
  bad: ({ time }) => `Something is wrong. Noted ${time}.`,
  unjudged: ({ time }) => `Noted ${time}. It is judged as soon as the plan is worked out.`,
  earlier: (d) =>
    `${d.swr}:1 is of the earlier box${d.turns === 0 ? '' : ` (${many(d.turns, 'turn', 'turns')}, ${ringsIn(d)})`}. Noted ${d.time}. It says nothing of this one.`,
  acceptable: ({ good, usable }) =>
    `Up to ${good}:1 is good. Up to ${usable}:1 it can be used: the radio or its tuner copes, and a little more stays in the box. Above that, look for the fault before it goes up.`,
  acceptableHead: 'What is acceptable',
  badHead: 'Where to look',
  badChecks: ({ hasCapacitor }) =>
    `Count the turns again: one pass through the hole is one turn.${hasCapacitor === true ? '|If it is high on the highest band only: the capacitor is missing, of another value or on long leads.' : '|If it is high on the highest band only: shorten every lead.'}|If it is high on the lowest band only: too few rings, or rings of another mix.|High everywhere: another resistor, or a tap or joint that is bad or in the wrong place.`,
  doubt:
    'Expected values are of a tidy build. Stray inductance may come out 1.6 times larger or smaller, which moves the highest band most; the resistor adds up to 5 %.',
  nothing: 'Nothing to test',
  nothingWhy: 'This plan has no transformer to wind.',
  toPlan: 'Back to the plan',
} as const satisfies Readonly<Record<string, Message>>;
