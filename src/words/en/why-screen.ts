/** What stands on the Why screen. Figures: our own field computations for a flat dipole on 40 m, coax at a right angle, 100 W. */
import type { Message } from '../message';

export const whyScreen = {
  title: 'Coax has three roads',
  one: 'Centre wire:',
  oneIs: 'the signal out.',
  two: 'Inside of the shield:',
  twoIs: 'as much back.',
  three: 'Outside of the shield:',
  threeIs: 'a third wire that nobody asked for.',
  out: 'Choke out',
  in: 'Choke in',
  unit: 'mA',
  outIs: ({ percent }) =>
    `reach the radio end on road 3, about ${percent}\u00a0% of the antenna's own current. Your coax is antenna too.`,
  inIs: ({ percent }) => `are left on road 3, about ${percent}\u00a0%. Roads 1 and 2 do not notice the choke.`,
  choke: 'choke',
  wire: 'wire',
  radio: 'radio',
  how: 'Computed for a straight dipole on 40 m with 100 W, coax leaving at a right angle, one choke of 5 kΩ at the feed point; worst of four coax lengths and four ways the house ends. Yours depends on coax, length and site.',
  parts: 'Two parts, two jobs',
  transformer: 'A transformer changes the ohms',
  transformerIs: 'It does not care which road the current takes.',
  chokeIs: 'A choke closes the outside road',
  chokeDoes: 'It does not change the ohms.',
  wireOhms: '2,450 ohms',
  coaxOhms: '50 ohms',
  two49: '49:1',
  one1: '1:1',
  differ: 'Where people differ',
  differFor: ({ name }) => `Both sides, then the house answer. For: ${name}.`,
  differNone: 'Make a plan, and the disputes that touch it stand here with its own numbers.',
} as const satisfies Readonly<Record<string, Message>>;
