/** One of a few, side by side. */
interface SegmentsProps<T extends string> {
  readonly legend: string;
  readonly why: string;
  readonly name: string;
  readonly chosen: T;
  readonly options: readonly { readonly value: T; readonly words: string }[];
  readonly onChoose: (value: T) => void;
}

export function Segments<T extends string>({ legend, why, name, chosen, options, onChoose }: SegmentsProps<T>) {
  return (
    <fieldset>
      <legend>{legend}</legend>
      <div class="segs">
        {options.map(({ value, words }) => (
          <label key={value} class="seg">
            <input type="radio" name={name} checked={value === chosen} onChange={() => onChoose(value)} />
            {words}
          </label>
        ))}
      </div>
      <p class="small">{why}</p>
    </fieldset>
  );
}
