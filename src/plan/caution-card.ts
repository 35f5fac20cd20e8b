/** The cautions of a plan on one printed page: the three numbers first, then what to do before each step. Each line stands once. */
import { gateNames, gateOrder, cardWords as words } from '../words/en/caution-card';
import { cautionLines } from '../words/en/cautions';
import type { Format } from '../words/format';
import { type Data, type Message, render } from '../words/message';
import { listOf, type Paper, textOf } from './paper';
import type { Plan } from './plan-schema';

export interface CardOptions {
  readonly name: string;
  readonly format: Format;
}

/** Every card ends with the line that sends the reader to local codes. */
const LOCAL_CODES = 44;

export function cautionCard(plan: Plan, { name, format }: CardOptions): Paper {
  const say = (message: Message, data: Data = {}): string => render(message, data, format);
  const said = new Set<number>([LOCAL_CODES]);
  const lists = gateOrder.flatMap((gate) => {
    const acts = plan.cautions
      .filter(({ before }) => before === gate)
      .flatMap(({ lines, lineTexts }) => lines.map((line, i) => ({ line, act: lineTexts[i]?.act ?? '' })))
      .filter(({ line }) => !said.has(line) && said.add(line));
    return acts.length === 0
      ? []
      : [
          listOf(
            gateNames[gate] ?? gate,
            acts.map(({ act }) => act),
          ),
        ];
  });
  const codes = cautionLines[LOCAL_CODES];
  const last = codes === undefined ? [] : [textOf(null, [say(codes.act)])];
  return { title: say(words.title, { name }), lead: numbers(plan, say), parts: [...lists, ...last] };
}

function numbers({ exposure, cautions, voltages }: Plan, say: (message: Message, data?: Data) => string): string[] {
  const distances = exposure.map(({ publicM }) => publicM);
  const known = distances.filter((metres) => metres !== null);
  const lines = cautions.find(({ distanceM }) => distanceM !== null)?.distanceM ?? null;
  const volts = Math.max(0, ...voltages.flatMap(({ feedPointV, wireEndV }) => [feedPointV ?? 0, wireEndV ?? 0]));
  return [
    ...(known.length > 0 && known.length === distances.length
      ? [say(words.keepOut, { metres: Math.max(...known) })]
      : [say(words.keepOutUnknown)]),
    ...(lines === null ? [] : [say(words.lines, { metres: lines })]),
    ...(volts === 0 ? [] : [say(words.volts, { volts })]),
  ];
}
