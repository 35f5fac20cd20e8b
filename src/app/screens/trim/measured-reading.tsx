/** One measurement: dip, SWR and time, the wire in use, and what was noted of how the antenna hung. */
import type { Measurement } from '../../../design/saved-plan';
import { useSay } from '../../say';
import { measuredText, withWireText } from './measured-text';

export function MeasuredReading({ measurement }: { readonly measurement: Measurement }) {
  const say = useSay();
  return (
    <div class="measured">
      <p>
        <b>{measuredText(measurement, say)}</b> {withWireText(measurement, say)}
      </p>
      {measurement.note !== undefined && <p>{measurement.note}</p>}
    </div>
  );
}
