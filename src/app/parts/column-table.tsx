/** A table of few columns. Where letters are too large for columns its cells stand one below the other, each under the head of its own. */
import type { ComponentChildren } from 'preact';
import './column-table.css';

export interface TableRow {
  readonly key: string;
  readonly name: string;
  /** One to each head after the first. */
  readonly cells: readonly ComponentChildren[];
}

interface ColumnTableProps {
  /** The first is that of the rows' names. */
  readonly heads: readonly string[];
  readonly rows: readonly TableRow[];
  readonly class?: string;
}

export function ColumnTable({ heads, rows, class: kind }: ColumnTableProps) {
  return (
    <Columned>
      <table class={kind}>
        <thead>
          <tr>
            {heads.map((head) => (
              <th key={head} scope="col">
                {head}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map(({ key, name, cells }) => (
            <tr key={key}>
              <th scope="row">{name}</th>
              {cells.map((cell, column) => (
                <td key={heads[column + 1]} data-head={heads[column + 1]}>
                  {cell}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </Columned>
  );
}

/** For a table of more than words: its cells name their column in `data-head`. */
export function Columned({ children }: { readonly children: ComponentChildren }) {
  return <div class="columned">{children}</div>;
}
