/** What stands beside the exposure record and the caution card on their screens. */
import type { Message } from '../message';

export const recordScreen = {
  title: 'Exposure record',
  card: 'Caution card',
  open: 'Exposure record to keep',
  openCard: 'Cautions on one page',
  print: 'Print',
  keep: 'Keep a copy',
  how: 'The copy is a text file. The date is that of this phone.',
  howCard: 'One page, A4 or Letter. The copy is a text file.',
  keptAt: ({ date, time }) => `A copy was kept on ${date} at ${time}.`,
  changedSince: 'Answers have changed since then: keep a new one.',
  working:
    'The fields of this antenna are still being computed. Wait with keeping and printing: until then the distances are those of formulas.',
  none: 'There is nothing to evaluate',
  noneWhy: 'A record needs an antenna whose distances were worked out. See on the plan what is missing.',
  toPlan: 'Back to the plan',
} as const satisfies Readonly<Record<string, Message>>;
