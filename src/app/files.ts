/** Files out of the app and into it, by the browser's own means. */
export function saveFile(name: string, content: BlobPart, type = 'application/json'): void {
  const address = URL.createObjectURL(new Blob([content], { type }));
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  // The download has taken hold of the data once the click is over, but some browsers read it a little later.
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}

/** `halyard-2026-11-24.json` */
export const fileName = (at: number): string => `halyard-${new Date(at).toISOString().slice(0, 10)}.json`;
