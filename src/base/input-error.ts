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
