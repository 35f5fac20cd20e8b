/** The camera on the back of the phone, asked for only when this is called, and let go when the screen is left. */
export type CameraTrouble = 'none' | 'refused' | 'failed';

export class CameraError extends Error {
  readonly trouble: CameraTrouble;

  constructor(trouble: CameraTrouble) {
    super(trouble);
    this.trouble = trouble;
  }
}

/** The names that browsers give to "the person or the site's policy said no" and "there is no such camera". */
const refusals = new Set(['NotAllowedError', 'SecurityError']);
const absences = new Set(['NotFoundError', 'OverconstrainedError']);

export async function startCamera(video: HTMLVideoElement): Promise<MediaStream> {
  const devices = (navigator as { mediaDevices?: MediaDevices }).mediaDevices;
  if (devices === undefined) throw new CameraError('none');
  try {
    const stream = await devices.getUserMedia({
      audio: false,
      video: { facingMode: 'environment', width: { ideal: 1280 }, height: { ideal: 1280 } },
    });
    video.srcObject = stream;
    await video.play();
    return stream;
  } catch (error) {
    const name = error instanceof DOMException ? error.name : '';
    throw new CameraError(refusals.has(name) ? 'refused' : absences.has(name) ? 'none' : 'failed');
  }
}

export function stopCamera(stream: MediaStream): void {
  for (const track of stream.getTracks()) track.stop();
}
