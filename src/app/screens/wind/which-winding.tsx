/** What is being wound: the device, which of its windings, over how many rings and with how many wires. */
import { capital } from '../../../words/capital';
import { windScreen } from '../../../words/en/wind-screen';
import { isOnRingOfItsOwn, ringsOf } from '../../jobs/windings';
import { useSay } from '../../say';
import type { CountProps } from './counted';

export function WhichWinding({ wound, count }: CountProps) {
  const say = useSay();
  const { item, windings } = wound;
  const { strands } = windings[count.winding] ?? { strands: 1 };
  const rings = ringsOf(wound);
  const now = count.winding + 1;
  const onRing = isOnRingOfItsOwn(item.device, windings);
  return (
    <div class="in-hand">
      <h1 tabIndex={-1}>
        {capital(item.name)}{' '}
        {windings.length > 1 && (
          <span>
            {say(windScreen.winding, { now, count: windings.length, onRing })}
            {!onRing && `, ${say(windScreen.side, { now })}`}
          </span>
        )}
      </h1>
      {rings > 1 && <p>{say(windScreen.stacked, { rings })}</p>}
      {strands > 1 && <p>{say(windScreen.sideBySide, { strands })}</p>}
    </div>
  );
}
