/** Danger first: what can kill, before any length. At most three lines, each opening with its name. */
import type { Plan } from '../../../plan/plan-schema';
import { cautionNames } from '../../../words/en/cautions';
import { planScreen } from '../../../words/en/plan-screen';
import { useSay } from '../../say';

/** Lines of the caution catalogue: the distance to power lines, high voltage at wire ends, the first thunder. */
const firstOfAll: readonly { readonly line: number; readonly name: string; readonly reason: boolean }[] = [
  { line: 2, name: 'power-lines', reason: false },
  { line: 34, name: 'wire-ends-voltage', reason: true },
  { line: 43, name: 'lightning', reason: false },
];

export function Danger({ plan }: { readonly plan: Plan }) {
  const say = useSay();
  const told = firstOfAll.flatMap(({ line, name, reason }) => {
    const caution = plan.cautions.find(({ lines }) => lines.includes(line));
    const text = caution?.lineTexts[caution.lines.indexOf(line)];
    return text === undefined ? [] : [{ name, text: reason ? `${text.act} ${text.reason}` : text.act }];
  });
  if (told.length === 0) return null;
  return (
    <section class="danger" aria-labelledby="danger">
      <h2 id="danger">{say(planScreen.danger)}</h2>
      <ul>
        {told.map(({ name, text }) => (
          <li key={name}>
            <b>{cautionNames[name]}.</b> {text}
          </li>
        ))}
      </ul>
    </section>
  );
}
