/** The four questions that lead to a plan: everyday words; a trade term comes with its meaning. */
import type { Message } from '../message';
import { bandNames } from './names';

export interface QuestionWords {
  readonly title: string;
  readonly meaning: string;
  /** A way to find out. */
  readonly findOut: string;
  /** What is taken until it is known. */
  readonly taken: Message;
  /** For lists: what the answer is about, in a word or two. */
  readonly short: string;
  readonly options?: Readonly<Record<string, string>>;
}

export const firstQuestions = {
  bands: {
    title: 'Which bands?',
    meaning: 'Take every band that must work. The lowest one sets the size.',
    findOut:
      'By day 40 m reaches your own country and 20 m other continents. Your licence names the bands you may use.',
    taken: '40 m and 20 m',
    short: 'Bands',
    options: bandNames,
  },
  radiator: {
    title: 'What is the radiator?',
    meaning: 'The wire that sends, not the coax.',
    findOut: 'Look for what can hold a wire up: one high point, two high points, or none.',
    taken: 'a wire over one support, both ends low',
    short: 'Radiator',
    options: {
      'straight-wire': 'Straight wire between two supports',
      'inverted-v': 'Wire over one support, both ends low',
      sloper: 'Straight wire, one end high',
      vertical: 'Upright wire or rod',
      'inverted-l': 'Wire that goes up, then along',
      loop: 'Closed ring of wire',
      'parallel-wires': 'Several wires from one point',
      'linked-wire': 'One wire with links for each band',
      'folded-wire': 'Wire folded back on itself',
      other: 'Something else',
    },
  },
  fedAt: {
    title: 'Where is it fed?',
    meaning: 'The feed point: the place where the coax or other line meets the wire.',
    findOut: 'Think where the line can reach the wire: at its middle, near one end, or at its foot.',
    taken: 'the usual place for this wire',
    short: 'Fed at',
    options: {
      centre: 'In the middle',
      'off-centre': 'About a third from one end',
      end: 'At one end',
      base: 'At the foot, against ground wires',
      corner: 'At a corner',
      'side-middle': 'In the middle of a side',
    },
  },
  shackEnd: {
    title: 'What is at the radio end?',
    meaning: 'What the line goes into. A tuner is a box that makes the radio see 50 ohms.',
    findOut:
      'Look at the socket the line goes into. Many radios have a small tuner inside, with a button named TUNE or AT.',
    taken: 'the radio alone, no tuner',
    short: 'Radio end',
    options: {
      radio: 'Radio alone',
      'radio-tuner': 'Radio with a tuner inside',
      'wide-tuner': 'Wide-range tuner beside the radio',
      'wide-tuner-4to1': 'Wide-range tuner with posts for a two-wire line',
      'balanced-tuner': 'Balanced tuner for a two-wire line',
      'feed-point-tuner': 'Tuner outside, at the wire',
    },
  },
} as const satisfies Readonly<Record<string, QuestionWords>>;
export type FirstQuestion = keyof typeof firstQuestions;

export const isFirstQuestion = (id: string): id is FirstQuestion => id in firstQuestions;
