/** A part of the plan under a heading that says its one result. Open or shut as it was left, for as long as the app's tab lives; open on paper. */
import { signal } from '@preact/signals';
import type { ComponentChildren } from 'preact';
import { Underway } from '../../jobs/underway';
import { recalled, remember } from '../../tab-memory';
import './fold.css';

const key = 'halyard-folds';

/** Folds that were turned from how they stand at first. Without storage they are kept as long as the page. */
const turned = signal<ReadonlySet<string>>(new Set(kept()));

function kept(): readonly string[] {
  try {
    const found: unknown = JSON.parse(recalled(key) ?? '[]');
    return Array.isArray(found) ? found.filter((id) => typeof id === 'string') : [];
  } catch {
    return []; // it holds something else: every fold stands as it does at first
  }
}

function turn(id: string, isTurned: boolean): void {
  if (turned.peek().has(id) === isTurned) return;
  const next = new Set(turned.peek());
  if (isTurned) next.add(id);
  else next.delete(id);
  turned.value = next;
  remember(key, JSON.stringify([...next]));
}

/** What a `details` needs to stand as it was left. */
export function useFold(id: string, openAtFirst = false) {
  return {
    open: turned.value.has(id) !== openAtFirst,
    onToggle: (event: { readonly currentTarget: HTMLDetailsElement }) =>
      turn(id, event.currentTarget.open !== openAtFirst),
  };
}

interface FoldProps {
  /** Also where the list of contents leads. */
  readonly id: string;
  readonly head: string;
  readonly result: string;
  /** Solved numbers for this part are on the way. */
  readonly isUnderway?: boolean;
  readonly children: ComponentChildren;
}

export function Fold({ id, head, result, isUnderway = false, children }: FoldProps) {
  return (
    <details class="fold" {...useFold(id)}>
      <summary id={id}>
        <h2>{head}</h2>
        {result !== '' && <span class="result">{result}</span>}
        <Underway isUnderway={isUnderway} />
      </summary>
      <div class="reasons">{children}</div>
    </details>
  );
}
