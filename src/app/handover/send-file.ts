/** A file out of the phone: by its own share sheet where that takes files, else kept as a download. */
import { saveFile } from '../files';

type Sharer = Partial<Pick<Navigator, 'canShare' | 'share'>>;

export function canSendFile(file: File): boolean {
  const sharer: Sharer = navigator;
  return sharer.canShare?.({ files: [file] }) === true;
}

export async function sendFile(file: File, title: string): Promise<void> {
  if (!canSendFile(file)) return saveFile(file.name, file, file.type);
  try {
    await navigator.share({ title, files: [file] });
  } catch (error) {
    // Closed by the person: nothing is wrong. Anything else: the file is kept instead.
    if (!(error instanceof DOMException && error.name === 'AbortError')) saveFile(file.name, file, file.type);
  }
}

/** A file's name from a plan's: letters and figures of any script, the rest as hyphens. */
export const fileNameOf = (name: string, ending: string): string =>
  `${
    name
      .replace(/[^\p{L}\p{N}]+/gu, '-')
      .replace(/^-|-$/g, '')
      .toLowerCase() || 'plan'
  }.${ending}`;
