/** What stands on the screen around the figures of one device: its drawings and its workings. */
import type { Message } from '../message';
import { bandName } from './names';

export const deviceScreen = {
  lossHead: ({ watts, band }) => `On ${bandName(String(band))} it turns ${watts} of every 100 W into heat`,
  lossHeadSmall: 'It turns less than 1 of every 100 W into heat',
  lossAtBand: ({ band, watts, low, high }) =>
    `${bandName(String(band))} ${watts} W (${low} to ${high} with real rings)`,
  lossDrawing: ({ parts }) => `Of every 100 W this transformer turns into heat: ${parts}.`,
  lossCaption: ({ square }) =>
    `Open rings: watts of every 100 that warm it with this antenna. Upright brackets: how far real cores may lie. Line: the same with the ohms that its ratio is made for. From one line of the paper to the next: ${square} W.`,
  wattsShort: ({ watts }) => `${watts} W`,
  found: 'How its numbers were found',
  riseFound: 'How warm it gets',
  riseWorstFound: 'How warm with a core at the lossy end of its tolerance',
  mostFound: 'How much power it stands in this mode without pause',
  peakFound: 'Peak voltage on the antenna side',
} as const satisfies Readonly<Record<string, Message>>;
