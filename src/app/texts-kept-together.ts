/** Every text on its way into the page, in whatever language, keeps its numbers and units on one line; what is spoken and copied is not touched. */
import { options } from 'preact';
import { keptTogether } from '../words/kept-together';

export function keepTextsTogether(): void {
  const before = options.vnode;
  options.vnode = (node) => {
    // The node of a text has no type, and the text itself in place of properties.
    const { props }: { props: unknown } = node;
    if (typeof props === 'string') Object.assign(node, { props: keptTogether(props) });
    before?.(node);
  };
}
