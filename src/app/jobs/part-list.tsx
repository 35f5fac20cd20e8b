/** Parts to tick with a thumb: the whole row is the target, nothing moves when it is ticked. */
import { shopScreen } from '../../words/en/shop-screen';
import { Icon } from '../parts/icon';
import { useSay } from '../say';
import { itemText, type PartRow, shelves } from './part-rows';

interface PartListProps<R extends PartRow> {
  readonly rows: readonly R[];
  readonly list: 'shop' | 'pack';
  isTicked(row: R): boolean;
  onTick(row: R, on: boolean): void;
}

export function PartList<R extends PartRow>({ rows, ...ticking }: PartListProps<R>) {
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
                <Row key={row.key} row={row} {...ticking} />
              ))}
            </ul>
          </section>
        );
      })}
    </div>
  );
}

function Row<R extends PartRow>({ row, list, isTicked, onTick }: Omit<PartListProps<R>, 'rows'> & { readonly row: R }) {
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
        <span class="qty">
          {row.quantity}
          <small> {say(row.unit === 'metre' ? shopScreen.metres : shopScreen.times)}</small>
        </span>
        <span class="what">
          <b>{itemText(row, say.format)}</b>
          <span>{say(shopScreen.use, { use: row.for })}</span>
          {list === 'shop' && row.have > 0 && row.have < row.quantity && (
            <span class="sub">{say(shopScreen.partly, { have: row.have, of: row.quantity })}</span>
          )}
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
