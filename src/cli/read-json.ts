/** Reads the one JSON record a command was given, from a file or, with `-`, from standard input. */
import type { Problem } from '../base/problem';
import type { CommandIo } from './command';

export type JsonRead = { readonly raw: unknown } | { readonly problems: readonly Problem[] };

export async function readJson(path: string, io: CommandIo): Promise<JsonRead> {
  let text: string;
  try {
    text = path === '-' ? await io.readStdin() : await io.readFile(path);
  } catch (error) {
    return { problems: [{ key: '', code: 'cannot-read', data: { detail: detailOf(error) } }] };
  }
  try {
    return { raw: JSON.parse(text) as unknown };
  } catch (error) {
    return { problems: [{ key: '', code: 'not-json', data: { detail: detailOf(error) } }] };
  }
}

const detailOf = (error: unknown): string =>
  error instanceof Error ? error.message.replaceAll('\n', ' ') : String(error);
