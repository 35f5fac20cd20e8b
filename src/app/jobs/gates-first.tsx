/** Lets nobody past a caution unread: one gate after the other, each left by ticking its lines and then pressing Next. */
import type { ComponentChildren } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import type { SavedPlan } from '../../design/saved-plan';
import { gateWords, jobs } from '../../words/en/job-screens';
import { Icon } from '../parts/icon';
import { useSay } from '../say';
import { GateView } from './gate';
import { type Gate, unreadLines } from './gates';

interface GatesFirstProps {
  readonly gates: readonly Gate[];
  readonly saved: SavedPlan;
  readonly title: string;
  readonly backHref: string;
  /** What belongs to a gate and stands under it. */
  readonly beside?: (gate: Gate) => ComponentChildren;
  /** What stands behind the gates. */
  readonly children: () => ComponentChildren;
}

const firstUnread = (saved: SavedPlan, gates: readonly Gate[], from: number): number => {
  const found = gates.findIndex((gate, index) => index >= from && unreadLines(saved, gate).length > 0);
  return found < 0 ? gates.length : found;
};

export function GatesFirst({ gates, saved, title, backHref, beside, children }: GatesFirstProps) {
  const say = useSay();
  const [at, setAt] = useState(() => firstUnread(saved, gates, 0));
  // A site answer changed in another tab opens gates again that were passed.
  const unreadBefore = firstUnread(saved, gates, 0);
  const shown = Math.min(at, unreadBefore);
  // What is behind a gate is another page to whoever reads by ear or key: it begins at its heading.
  const before = useRef(shown);
  useEffect(() => {
    if (before.current !== shown) document.querySelector<HTMLElement>('main h1')?.focus({ preventScroll: true });
    before.current = shown;
  }, [shown]);
  const gate = gates[shown];
  if (gate === undefined) return <>{children()}</>;
  const left = unreadLines(saved, gate).length;
  return (
    <>
      <main id="main">
        <h1 tabIndex={-1}>{title}</h1>
        <GateView gate={gate} saved={saved} key={`${gate.before} ${gate.lines.join(' ')}`} />
        {beside?.(gate)}
      </main>
      <section class="act" aria-label={say(jobs.next)}>
        <a class="btn tall" href={backHref}>
          <Icon name="back" />
          {say(jobs.back)}
        </a>
        <button
          type="button"
          class={left > 0 ? 'btn go wait' : 'btn go'}
          aria-describedby="left"
          onClick={() => {
            if (left > 0) document.querySelector<HTMLInputElement>('.gate input:not(:checked)')?.focus();
            else {
              setAt(firstUnread(saved, gates, shown + 1));
              scrollTo(0, 0);
            }
          }}
        >
          {left > 0 ? say(gateWords.left, { count: left }) : say(jobs.next)}
        </button>
      </section>
    </>
  );
}
