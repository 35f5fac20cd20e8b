/** What is done with kept plans, and said of those that cannot be read. Apart from screens.ts: a first screen need not carry it. */
import type { Message } from '../message';

export const keptPlans = {
  copy: 'Copy',
  copyName: ({ name }) => `${name}, copy`,
  rename: 'Rename',
  renameLabel: 'Name of the plan',
  renameDone: 'Keep the name',
  remove: 'Delete',
  putBack: 'Put back',
  deletedHead: 'Deleted plans',
  destroy: 'Remove for good',
  destroyAsk: ({ name }) => `Remove ${name} for good? There is no way back.`,
  destroyYes: 'Yes, remove it',
  destroyNo: 'No, keep it',
  importFile: 'Open a file',
  unreadableHead: 'Set aside',
  newerPlan: ({ name }) => `${name}: written by a newer version of Halyard. Kept as it is; update to open it.`,
  brokenPlan: ({ name }) => `${name}: cannot be read. Kept as it is.`,
  brokenHere: 'This plan cannot be read. It is kept as it is; the Plans screen takes it out as a file.',
  takeOut: 'Take it out as a file',
} as const satisfies Readonly<Record<string, Message>>;
