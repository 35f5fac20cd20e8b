/** Things to tick with a thumb: the whole row is the target, nothing moves when it is ticked. */
import type { ComponentChildren } from 'preact';
import { shopScreen } from '../../words/en/shop-screen';
import { Icon } from '../parts/icon';
import { useSay } from '../say';
import { useStores } from '../stores/stores';
import { type ListRow, shelves, type TickList } from './part-rows';

interface PartListProps<R extends ListRow> {
  readonly rows: readonly R[];
  readonly list: TickList;
  isTicked(row: R): boolean;
  onTick(row: R, on: boolean): void;
  /** What stands below the name of a row. */
  readonly more?: (row: R) => ComponentChildren;
}

export function PartList<R extends ListRow>({ rows, ...ticking }: PartListProps<R>) {
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
                <Row key={row.id} row={row} {...ticking} />
              ))}
            </ul>
          </section>
        );
      })}
    </div>
  );
}

type RowProps<R extends ListRow> = Omit<PartListProps<R>, 'rows'> & { readonly row: R };

function Row<R extends ListRow>({ row, list, isTicked, onTick, more }: RowProps<R>) {
  const say = useSay();
  const ticked = isTicked(row);
  const words =
    list === 'shop' ? ([shopScreen.have, shopScreen.buy] as const) : ([shopScreen.in, shopScreen.out] as const);
  return (
    <li>
      <label class="item">
        <input type="checkbox" checked={ticked} onChange={(event) => onTick(row, event.currentTarget.checked)} />
        <span class="tk">
          <span class="tickbox" aria-hidden="true">
            <Icon name="tick" />
          </span>
          <span class="st">{say(words[ticked ? 0 : 1])}</span>
        </span>
        <Quantity row={row} />
        <span class="what">
          <b>{row.name}</b>
          {more?.(row)}
        </span>
      </label>
    </li>
  );
}

/** Pieces are counted; of what is sold by length both units stand, rounded up to whole ones. */
function Quantity({ row: { unit, quantity } }: { readonly row: ListRow }) {
  const say = useSay();
  const isMetric = useStores().settings.units.value === 'metric';
  if (unit !== 'metre') {
    return (
      <span class="qty">
        {quantity}
        <small> {say(shopScreen.times)}</small>
      </span>
    );
  }
  const texts = [say(shopScreen.metres, { metres: quantity }), say(shopScreen.feet, { metres: quantity })];
  const [first, second] = isMetric ? texts : texts.reverse();
  return (
    <span class="qty length">
      {first} <small>{second}</small>
    </span>
  );
}
