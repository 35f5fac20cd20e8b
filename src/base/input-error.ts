/**
 * An input that cannot be used. `code` names the reason and is worded in one place (words/), `data` holds the numbers or names the
 * sentence needs. Core code throws nothing else for bad input.
 */
export class InputError extends RangeError {
  override readonly name = 'InputError';
  constructor(
    readonly code: string,
    readonly data: Readonly<Record<string, number | string>> = {},
  ) {
    super(`${code} ${JSON.stringify(data)}`);
  }
}

/** Work that was called off ends with an error too; nothing is wrong with its input. */
export const isCancelled = (error: unknown): boolean => error instanceof InputError && error.code === 'cancelled';
