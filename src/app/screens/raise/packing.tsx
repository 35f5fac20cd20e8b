/** The packing list with ticks of its own: one for the way there, one for the way back. */
import { useState } from 'preact/hooks';
import type { SavedPlan } from '../../../design/saved-plan';
import type { Plan } from '../../../plan/plan-schema';
import { raiseScreen } from '../../../words/en/raise-screen';
import { shopScreen } from '../../../words/en/shop-screen';
import { packRows } from '../../jobs/pack-rows';
import { PartList } from '../../jobs/part-list';
import { isPacked, tickKey } from '../../jobs/part-rows';
import { Icon } from '../../parts/icon';
import { useSay } from '../../say';
import { useStores } from '../../stores/stores';

interface PackingProps {
  readonly plan: Plan;
  readonly saved: SavedPlan;
  readonly list: 'pack' | 'leave';
}

export function Packing({ plan, saved, list }: PackingProps) {
  const say = useSay();
  const { library } = useStores();
  const [cleared, setCleared] = useState<readonly string[]>([]);
  const rows = packRows(plan);
  const packed = rows.filter((row) => isPacked(saved, list, row));
  const setAll = (keys: readonly string[], on: boolean): void =>
    library.edit(saved.id, ...keys.map((key) => ({ kind: 'tick', key, on }) as const));
  return (
    <section aria-labelledby="packing" class="packing">
      <h2 id="packing">{say(raiseScreen.packing)}</h2>
      <p role="status">{say(shopScreen.packed, { have: packed.length, buy: rows.length - packed.length })}</p>
      <PartList
        rows={rows}
        list={list}
        isTicked={(row) => isPacked(saved, list, row)}
        onTick={(row, on) => {
          library.edit(saved.id, { kind: 'tick', key: tickKey(list, row), on });
          setCleared([]);
        }}
      />
      {packed.length > 0 && (
        <button
          type="button"
          class="btn tall"
          onClick={() => {
            const keys = packed.map((row) => tickKey(list, row));
            setAll(keys, false);
            setCleared(keys);
          }}
        >
          {say(raiseScreen.clearPack)}
        </button>
      )}
      {cleared.length > 0 && (
        <button
          type="button"
          class="btn tall"
          onClick={() => {
            setAll(cleared, true);
            setCleared([]);
          }}
        >
          <Icon name="undo" />
          {say(shopScreen.undo)}
        </button>
      )}
    </section>
  );
}
