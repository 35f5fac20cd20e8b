/** Where the focus goes when a screen is opened, and when what had it is gone. */

/** To what a screen begins with; null where it has no heading yet. */
export function focusOnHeading(): HTMLElement | null {
  const place = document.querySelector<HTMLElement>('[data-focus]') ?? document.querySelector('main h1, .top h1');
  place?.focus({ preventScroll: true });
  return place;
}

/**
 * The focus is never lost: what was pressed may be gone after the press, a row that was removed or a strip that was dealt with, and the
 * browser then leaves the focus on nothing. It goes to the heading of the screen, from where the next Tab leads on.
 */
export function keepFocus(): void {
  document.addEventListener('click', ({ target }) => {
    const pressed = target instanceof Element ? target.closest('a,button,input,summary') : null;
    if (pressed === null) return;
    // After the screen was drawn anew.
    requestAnimationFrame(() => {
      if (!pressed.isConnected && document.activeElement === document.body) focusOnHeading();
    });
  });
}
