/** What the headless commands say of the words behind them. */
const allowed = {
  plan: 'one file of answers or - for standard input, and --fast',
  solve: 'one file of geometry or - for standard input, and --sweep from,to,points',
  schema: 'nothing behind it',
};

export const unexpectedWords = (command: keyof typeof allowed, words: readonly string[]): string =>
  `${words.join(' ')}: is not expected; allowed: ${allowed[command]}`;

export const missingFile = (command: keyof typeof allowed): string => `file: is missing; allowed: ${allowed[command]}`;

export const unknownCommand = (name: string, names: readonly string[]): string =>
  `command: ${JSON.stringify(name)} is not known; allowed: ${names.join(', ')}`;
