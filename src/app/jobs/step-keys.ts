/** Next and back by key, for hands in gloves and for presentation remotes: Space, Enter, arrows, Page keys. */
import { useLayoutEffect } from 'preact/hooks';

const forward = new Set([' ', 'Enter', 'ArrowRight', 'ArrowDown', 'PageDown']);
const backward = new Set(['ArrowLeft', 'ArrowUp', 'PageUp']);

const controls = ['a', 'button', 'input', 'select', 'textarea', 'summary'];

/** A key pressed on a control belongs to that control; while something covers the page, all belong to that. */
const belongsElsewhere = (target: EventTarget | null): boolean =>
  document.querySelector('dialog[open]') !== null ||
  (target instanceof Element && target.closest(controls.join()) !== null);

export function useStepKeys(onNext: () => void, onBack: () => void): void {
  // Before the next paint: a press right after another acts on the piece that is shown by then, and none is lost.
  useLayoutEffect(() => {
    const press = (event: KeyboardEvent): void => {
      if (event.altKey || event.ctrlKey || event.metaKey || event.repeat || belongsElsewhere(event.target)) return;
      const act = forward.has(event.key) ? onNext : backward.has(event.key) ? onBack : null;
      if (act === null) return;
      event.preventDefault();
      act();
    };
    addEventListener('keydown', press);
    return () => removeEventListener('keydown', press);
  }, [onNext, onBack]);
}
