/** The line above a screen: the way up, or the screen's own title where there is none; saved or not at the right. */
import type { ComponentChildren } from 'preact';
import { Icon } from './icon';
import { SaveNote } from './save-note';

interface TopProps {
  readonly up?: { readonly href: string; readonly words: string };
  readonly title?: string;
  /** Stands at the right instead of the time of the last save. */
  readonly children?: ComponentChildren;
}

export function Top({ up, title, children }: TopProps) {
  return (
    <header class="top">
      {up !== undefined && (
        <a class="up" href={up.href}>
          <Icon name="back" />
          {up.words}
        </a>
      )}
      {title !== undefined && <h1 tabIndex={-1}>{title}</h1>}
      {children ?? <SaveNote />}
    </header>
  );
}
