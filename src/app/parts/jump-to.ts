/** Leads to a heading by its id: opens what is folded round it and puts the focus there, where a screen reader goes on. */
export function jumpTo(id: string): void {
  const heading = document.getElementById(id);
  const fold = heading?.closest('details');
  if (fold != null) fold.open = true;
  heading?.scrollIntoView();
  heading?.focus({ preventScroll: true });
}
