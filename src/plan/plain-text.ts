/** A plan, and its shopping list, as plain text: both units beside every length, danger first, nothing that needs a picture. */
import { cautionLines, cautionNames } from '../words/en/cautions';
import { placeNames } from '../words/en/devices';
import { bandName } from '../words/en/names';
import { plainText as words } from '../words/en/plain-text';
import { swrText } from '../words/en/swr';
import type { Format } from '../words/format';
import { type Data, type Message, render } from '../words/message';
import type { Plan } from './plan-schema';

type Part = Plan['parts'][number];

export interface TextOptions {
  readonly name: string | null;
  readonly format: Format;
}

interface PlanTextOptions extends TextOptions {
  /** What was measured on it since, in whole lines. */
  readonly measured?: readonly string[];
}

export function planAsText(plan: Plan, { name, format, measured = [] }: PlanTextOptions): string {
  const say = (message: Message, data: Data = {}): string => render(message, data, format);
  const parts: (readonly [string, readonly string[]])[] = [
    [say(words.danger), dangerFirst(plan).map(({ name: what, act, reason }) => `${what}: ${act} ${reason}`)],
    [say(words.answer), [plan.summary]],
    [say(words.chain), plan.chain.map((item) => chainLine(item, say))],
    [say(words.cut), plan.cuts.flatMap((cut) => cutLines(cut, say, format))],
    [say(words.bands), plan.bands.map((band) => bandLine(band, say))],
    [say(words.measured), measured],
    [say(words.warnings), plan.warnings.map(({ text }) => text)],
    [say(words.assumed), plan.assumed.map(({ key, value, why }) => `${key} = ${String(value)}. ${why}`)],
  ];
  const blocks = parts.flatMap(([title, lines]) => (lines.length === 0 ? [] : [[title, ...lines].join('\n')]));
  const codes = cautionLines[44];
  const last = codes === undefined ? [] : [say(codes.act)];
  return `${[name ?? say(words.unnamed), ...blocks, ...last].join('\n\n')}\n`;
}

type Said = (message: Message, data?: Data) => string;

/** Lines of the caution catalogue: the distance to power lines, high voltage at wire ends, the first thunder. */
const firstLines = [
  { line: 2, name: 'power-lines', isToldByReason: false },
  { line: 34, name: 'wire-ends-voltage', isToldByReason: true },
  { line: 43, name: 'lightning', isToldByReason: false },
] as const;

export interface DangerLine {
  readonly name: string;
  readonly act: string;
  readonly reason: string;
  /** The act alone, but where the number stands in the reason both: for a panel that must stay short. */
  readonly short: string;
}

/** What can kill, by name: the lines that stand before everything else. */
export const dangerFirst = ({ cautions }: Plan): DangerLine[] =>
  firstLines.flatMap(({ line, name, isToldByReason }) => {
    const caution = cautions.find(({ lines }) => lines.includes(line));
    const text = caution?.lineTexts[caution.lines.indexOf(line)];
    if (text === undefined) return [];
    const { act, reason } = text;
    return [{ name: cautionNames[name] ?? '', act, reason, short: isToldByReason ? `${act} ${reason}` : act }];
  });

function chainLine({ device, name, at, distanceM, lengthM }: Plan['chain'][number], say: Said): string {
  if (device === 'line') return say(words.line, { name, metres: lengthM ?? 0 });
  if (distanceM !== null && distanceM >= 0.05 && device !== 'radio')
    return say(words.deviceAt, { name, metres: distanceM });
  return say(words.device, { name, place: placeNames[at] ?? '' });
}

function cutLines(
  { name, count, cutM, finishedM, legM, toleranceM, marksM }: Plan['cuts'][number],
  say: Said,
  format: Format,
): string[] {
  const line = cutM - finishedM < 0.005 ? words.ropeLine : words.cutLine;
  const marks = marksM.map((mark) => format.length(mark)).join(', ');
  return [
    say(line, { name, count, cutM, finishedM, toleranceM }),
    ...(legM === null || legM <= finishedM ? [] : [say(words.legUpTo, { legM })]),
    ...(marks === '' ? [] : [say(words.marks, { marks })]),
  ];
}

function bandLine({ band, swrAtRadio, tunerNeeded }: Plan['bands'][number], say: Said): string {
  const name = bandName(band);
  if (swrAtRadio === null) return say(words.bandUnknown, { band: name });
  const tuner = tunerNeeded === null ? '' : say(tunerNeeded ? words.tuner : words.noTuner);
  return say(words.band, { band: name, swr: swrText(swrAtRadio), tuner });
}

/** A part as it stands on a list: `isHere` when it is ticked. */
interface ListedPart extends Pick<Part, 'name' | 'quantity' | 'unit' | 'use' | 'substitute'> {
  readonly isHere: boolean;
}

/** What is bought and what is there. */
export function shoppingAsText(parts: readonly ListedPart[], { name, format }: TextOptions): string {
  const say: Said = (message, data = {}) => render(message, data, format);
  const lines = parts.flatMap((part) => {
    const state = say(part.isHere ? words.have : words.buy);
    const { name: item, quantity, unit, use } = part;
    const row = say(unit === 'metre' ? words.partMetres : words.part, { state, quantity, item, use });
    return part.substitute === '' ? [row] : [row, say(words.or, { substitute: part.substitute })];
  });
  return `${[`${name ?? say(words.unnamed)}: ${say(words.shop)}`, '', ...lines].join('\n')}\n`;
}
