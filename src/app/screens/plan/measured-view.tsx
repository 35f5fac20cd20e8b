/** What was measured on this antenna, as Trim keeps it. Nothing before the first reading. */
import type { SavedPlan } from '../../../design/saved-plan';
import { measured as words } from '../../../words/en/measured';
import { useSay } from '../../say';
import { MeasuredReading } from '../trim/measured-reading';
import { newestFirst } from '../trim/measured-text';

export function MeasuredView({ saved }: { readonly saved: SavedPlan }) {
  const say = useSay();
  if (saved.measurements.length === 0) return null;
  return (
    <section aria-labelledby="measured">
      <h2 id="measured" tabIndex={-1}>
        {say(words.head)}
      </h2>
      <ul class="rows">
        {newestFirst(saved.measurements).map((measurement) => (
          <li key={measurement.id}>
            <MeasuredReading measurement={measurement} />
          </li>
        ))}
      </ul>
    </section>
  );
}
