/** What a headless command is given of the outside world. */
export interface CommandIo {
  readStdin(): Promise<string>;
  /** Relative paths count from where the person called. */
  readFile(path: string): Promise<string>;
  /** The answer: nothing else goes to standard output. */
  out(text: string): void;
  /** Problems, one line each. */
  err(text: string): void;
}

/** Each command is a file `<name>-command.ts` in this folder. */
export interface CommandModule {
  /** Returns the exit code: 0 answered, 2 bad input. */
  run(args: readonly string[], io: CommandIo): Promise<number>;
}
