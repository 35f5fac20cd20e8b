/** Where something is from: a short neutral title, the full citation one tap further. */
import type { Plan } from '../../plan/plan-schema';
import { sourceWords } from '../../words/en/job-screens';
import { useSay } from '../say';

export type Cited = Plan['cautions'][number]['source'];

export function SourceNote({ sources }: { readonly sources: readonly Cited[] }) {
  const say = useSay();
  const different = sources.filter((source, index) => sources.findIndex(({ id }) => id === source.id) === index);
  if (different.length === 0) return null;
  const only = different.length === 1 ? different[0] : undefined;
  if (only?.citation.toLowerCase().startsWith(only.title.toLowerCase()))
    return <p class="small source">{only.citation}.</p>;
  return (
    <details class="source">
      <summary>{say(sourceWords.from, { titles: different.map(({ title }) => title).join(', ') })}</summary>
      <ul>
        {different.map(({ id, citation }) => (
          <li key={id}>{citation}</li>
        ))}
      </ul>
    </details>
  );
}
