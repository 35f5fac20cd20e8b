/** Parts to tick with a thumb: the whole row is the target, nothing moves when it is ticked. */
import type { SavedPlan } from '../../design/saved-plan';
import { shopScreen } from '../../words/en/shop-screen';
import { Icon } from '../parts/icon';
import { useSay } from '../say';
import { useStores } from '../stores/stores';
import { isTicked, type PartRow, shelves, tickKey } from './part-rows';

interface PartListProps {
  readonly rows: readonly PartRow[];
  readonly saved: SavedPlan;
  readonly list: 'shop' | 'pack';
  onTicked(key: string, on: boolean): void;
}

export function PartList({ rows, saved, list, onTicked }: PartListProps) {
  const say = useSay();
  return (
    <div class="shelf stack">
      {shelves.map((shelf) => {
        const here = rows.filter(({ where }) => where === shelf);
        if (here.length === 0) return null;
        return (
          <section key={shelf} aria-labelledby={`shelf-${shelf}`}>
            <h2 id={`shelf-${shelf}`}>{say(shopScreen[shelf])}</h2>
            <ul class="rows">
              {here.map((row) => (
                <Row key={row.key} row={row} saved={saved} list={list} onTicked={onTicked} />
              ))}
            </ul>
          </section>
        );
      })}
    </div>
  );
}

function Row({ row, saved, list, onTicked }: Omit<PartListProps, 'rows'> & { readonly row: PartRow }) {
  const say = useSay();
  const { library } = useStores();
  const ticked = isTicked(saved, list, row);
  const words =
    list === 'shop' ? ([shopScreen.have, shopScreen.buy] as const) : ([shopScreen.in, shopScreen.out] as const);
  const key = tickKey(list, row);
  return (
    <li>
      <label class="item">
        <input
          type="checkbox"
          checked={ticked}
          onChange={(event) => {
            library.edit(saved.id, { kind: 'tick', key, on: event.currentTarget.checked });
            onTicked(key, event.currentTarget.checked);
          }}
        />
        <span class="tk">
          <span class="tickbox" aria-hidden="true">
            <Icon name="tick" />
          </span>
          <span class="st">{say(words[ticked ? 0 : 1])}</span>
        </span>
        <span class="qty">
          {row.quantity}
          {row.unit === 'metre' && <small> {say(shopScreen.metres)}</small>}
        </span>
        <span class="what">
          <b>{row.item}</b>
          <span>{say(shopScreen.use, { use: row.for })}</span>
          {list === 'shop' && row.substitute !== '' && (
            <span class="sub">
              <b>{say(shopScreen.or)}</b> {row.substitute}
            </span>
          )}
        </span>
      </label>
    </li>
  );
}
