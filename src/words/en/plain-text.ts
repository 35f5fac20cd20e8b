/** Headings of a plan as plain text, for messages and paper. */
import type { Message } from '../message';

export const plainText = {
  unnamed: 'Antenna plan',
  danger: 'DANGER FIRST',
  answer: 'ANSWER',
  chain: 'FROM WIRE TO RADIO',
  cut: 'CUT',
  bands: 'BANDS',
  measured: 'MEASURED',
  warnings: 'MIND THIS',
  shop: 'SHOP',
  assumed: 'ASSUMED',
  have: 'have',
  buy: 'buy',
  cutLine: (d, f) =>
    `${Number(d.count) > 1 ? `${d.count} x ` : ''}${d.name}: cut ${f.length(Number(d.cutM))}, ${f.length(Number(d.finishedM))} finished, off by ${f.length(Number(d.toleranceM))} is fine.`,
  ropeLine: (d, f) =>
    `${Number(d.count) > 1 ? `${d.count} x ` : ''}${d.name}: cut ${f.length(Number(d.cutM))}. Longer is fine.`,
  legUpTo: (d, f) => `  Joined: ${f.length(Number(d.legM))} of leg from the feed point to its outer end.`,
  marks: ({ marks }) => `  Mark at ${marks}, counted from the end where you start.`,
  deviceAt: (d, f) => `${d.name}, ${f.length(Number(d.metres))} along the line from the feed point.`,
  device: ({ name, place }) => `${name}, ${place}.`,
  line: (d, f) => `${f.length(Number(d.metres))} of ${d.name}.`,
  band: ({ band, swr, tuner }) => `${band}: SWR about ${swr}:1 at the radio${tuner === '' ? '' : `, ${tuner}`}.`,
  bandUnknown: ({ band }) => `${band}: not known yet, measure it.`,
  tuner: 'a tuner is needed',
  noTuner: 'no tuner needed',
  part: ({ state, quantity, item, use }) => `[${state}] ${quantity} × ${item} (for ${use})`,
  partMetres: (d, f) => `[${d.state}] ${f.length(Number(d.quantity))} of ${d.item} (for ${d.use})`,
  or: ({ substitute }) => `      or: ${substitute}`,
} as const satisfies Readonly<Record<string, Message>>;
