/** A length: metres and feet together, never apart, the operator's unit first and bold. */
import { feetInchesText, metresText } from '../../words/length-text';
import { useStores } from '../stores/stores';

export function Length({ metres }: { metres: number }) {
  const metric = metresText(metres);
  const imperial = feetInchesText(metres);
  const [first, second] = useStores().settings.units.value === 'metric' ? [metric, imperial] : [imperial, metric];
  return (
    <span class="len">
      <b class="nb">{first}</b> <span class="nb">({second})</span>
    </span>
  );
}
