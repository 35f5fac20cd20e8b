/** One further tap: the formula, its inputs with their units and where they are from, the result as evaluated from that very text, and its source. */
import { useState } from 'preact/hooks';
import { planScreen } from '../../../words/en/plan-screen';
import { SourceNote } from '../../jobs/source-note';
import { useSay } from '../../say';
import type { ShownWorking } from '../../working/evaluate-working';

interface WorkingViewProps {
  readonly working: ShownWorking | null;
  /** Whose working it is, when several stand on one screen. */
  readonly what: string;
}

type Evaluated =
  | { readonly kind: 'waiting' }
  | { readonly kind: 'done'; readonly value: number }
  | { readonly kind: 'failed' };

export function WorkingView({ working, what }: WorkingViewProps) {
  const say = useSay();
  const [state, setState] = useState<Evaluated>({ kind: 'waiting' });
  if (working === null) return null;
  const evaluate = (): void => {
    if (state.kind === 'done') return;
    import('../../working/evaluate-working').then(
      ({ evaluateWorking }) => setState({ kind: 'done', value: evaluateWorking(working) }),
      () => setState({ kind: 'failed' }),
    );
  };
  return (
    <details class="show-working" onToggle={(event) => event.currentTarget.open && evaluate()}>
      <summary aria-label={say(planScreen.workingFor, { what })}>{say(planScreen.working)}</summary>
      <div class="working">
        <p class="formula">{working.formula}</p>
        <ul>
          {Object.entries(working.inputs).map(([name, { value, unit, from }]) => (
            <li key={name}>
              {say(planScreen.is, { name, value: `${say.format.number(value, 5)} ${unit}`.trim() })},{' '}
              {say(planScreen[`from_${from}`])}
            </li>
          ))}
        </ul>
        <p role="status">
          {state.kind === 'waiting' && say(planScreen.loadingWorking)}
          {state.kind === 'failed' && say(planScreen.workingFailed)}
          {state.kind === 'done' && <b>{`= ${say.format.number(state.value, 5)} ${working.result.unit}`}</b>}
        </p>
        <SourceNote sources={[working.source]} />
      </div>
    </details>
  );
}
