/**
 * A QR code as one path (ISO/IEC 18004). Four modules stay empty all round, as the standard asks. Medium correction (15 %) withstands rain
 * drops and a cracked glass; a long text takes low correction (7 %), because larger modules help a camera more.
 */
export interface QrDrawing {
  /** Modules across, with the empty ones. */
  readonly size: number;
  /** One rectangle for each run of dark modules, one unit to a module. */
  readonly path: string;
}

const QUIET_MODULES = 4;
/** Version 15 of the standard; at 320 px on a screen a module is then 4 px. */
const MOST_AT_MEDIUM = 77;

export async function qrDrawing(text: string): Promise<QrDrawing> {
  const { encodeQR } = await import('qr');
  const medium = encodeQR(text, 'raw', { ecc: 'medium', border: QUIET_MODULES });
  const small = medium.length - 2 * QUIET_MODULES <= MOST_AT_MEDIUM;
  return drawn(small ? medium : encodeQR(text, 'raw', { ecc: 'low', border: QUIET_MODULES }));
}

function drawn(modules: readonly (readonly boolean[])[]): QrDrawing {
  const runs = modules.flatMap((row, y) =>
    runsOf(row).map(([from, length]) => `M${from} ${y}h${length}v1h-${length}z`),
  );
  return { size: modules.length, path: runs.join('') };
}

function runsOf(row: readonly boolean[]): [from: number, length: number][] {
  const runs: [number, number][] = [];
  row.forEach((dark, x) => {
    const last = runs.at(-1);
    if (!dark) return;
    if (last !== undefined && last[0] + last[1] === x) last[1] += 1;
    else runs.push([x, 1]);
  });
  return runs;
}
