/** What cannot work, beside its field: what is wrong, and at least two ways out. What was typed stays. */
export interface Way {
  readonly words: string;
  readonly act: () => void;
}

interface StopProps {
  readonly id: string;
  readonly words: string;
  readonly ways: readonly Way[];
}

export const StopPanel = ({ id, words, ways }: StopProps) => (
  <div class="stop" role="alert" id={id}>
    <p>
      <b>{words}</b>
    </p>
    <div class="ways">
      {ways.map(({ words: label, act }) => (
        <button key={label} type="button" class="btn tall" onClick={act}>
          {label}
        </button>
      ))}
    </div>
  </div>
);
